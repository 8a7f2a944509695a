// The sign of a verdict, told apart by form as well as by colour: a full triangle, a tick, an open ring, a dash.

import type { CheckStatus } from "../../assess/checkDocument.ts";

export function StatusSign({ status }: { status: CheckStatus }) {
  return (
    <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" className={`verdict-sign ${status}`}>
      {SIGNS[status]}
    </svg>
  );
}

const SIGNS = {
  over: (
    <>
      <path className="full" d="M8 1.5L15 14H1z" />
      <path className="hole" d="M8 5.6v4.2M8 11.4v1.2" />
    </>
  ),
  within: <path d="M2.5 8.6l3.6 3.6L13.5 4.4" />,
  "not-checked": (
    <>
      <circle cx="8" cy="8" r="6" strokeDasharray="2.4 1.37" />
      <path d="M8 11.2v.4M6.6 6.5c0-1.9 2.9-1.9 2.9 0 0 1.1-1.5 1.3-1.5 2.7" />
    </>
  ),
  "not-applicable": <path d="M4 8h8" />,
} as const;
