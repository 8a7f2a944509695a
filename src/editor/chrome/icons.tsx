// Pictures of the tools: 20 px, drawn with the line of the plan itself.

import type { ReactNode } from "react";
import type { ToolName } from "../tools/tool.ts";

function Icon({ children }: { children: ReactNode }) {
  return (
    <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" className="icon">
      {children}
    </svg>
  );
}

type IconName = ToolName | "soffit" | "underlay" | "undo" | "redo";

export function ToolIcon({ name }: { name: IconName }) {
  return <Icon>{DRAWN[name]}</Icon>;
}

const DRAWN: Readonly<Record<IconName, ReactNode>> = {
  soffit: (
    <>
      <path d="M2.5 3.5h15v5h-15zM7.5 3.5v5M12.5 3.5v5" />
      <path d="M5 8.5V17M15 8.5V17M3 17h4M13 17h4" />
    </>
  ),
  select: <path d="M5 3l10.5 7-5 1.1 3 5.2-2 1.2-3-5.3-3.5 3.6z" />,
  wall: (
    <>
      <path d="M2.5 7.5h15v5h-15z" />
      <path d="M6 12.5l5-5M10 12.5l5-5" strokeWidth="0.9" />
    </>
  ),
  door: (
    <>
      <path d="M2 16.5h3.5M14.5 16.5H18" strokeWidth="2.6" />
      <path d="M5.5 16.5V6.5a10 10 0 0 1 9 10" />
    </>
  ),
  window: (
    <>
      <path d="M1.5 10h3.5M15 10h3.5" strokeWidth="2.6" />
      <path d="M5 8h10M5 12h10M5 6.5v7M15 6.5v7" />
    </>
  ),
  column: (
    <>
      <path d="M5.5 5.5h9v9h-9z" />
      <path d="M5.5 5.5l9 9M14.5 5.5l-9 9" strokeWidth="0.9" />
    </>
  ),
  room: (
    <>
      <path d="M3 3.5h14v13H3z" />
      <path d="M7 7h6M10 7v6.5" />
    </>
  ),
  service: (
    <>
      <path d="M2.5 13.5h5l4-7h6" strokeDasharray="3.4 1.8" />
      <circle cx="2.8" cy="13.5" r="1.4" />
      <circle cx="17" cy="6.5" r="1.4" />
    </>
  ),
  "control-line": (
    <>
      <path d="M8.5 10h10" strokeDasharray="4 1.4 1 1.4" />
      <circle cx="5" cy="10" r="3.4" />
    </>
  ),
  measure: (
    <>
      <path d="M3 10h14" />
      <path d="M1.5 12.5l3.5-5M15 12.5l3.5-5" strokeWidth="1.8" />
      <path d="M3 5.5v9M17 5.5v9" strokeWidth="0.9" />
    </>
  ),
  calibrate: (
    <>
      <path d="M10 2.5l7.5 4-7.5 4-7.5-4z" strokeWidth="0.9" />
      <path d="M3 15.5h14M3 13v5M17 13v5" />
    </>
  ),
  slab: <path d="M3 12.5l5-6h9l-5 6zM3 12.5v2.2h9v-2.2M12 14.7l5-6V6.5" />,
  "slab-opening": (
    <>
      <path d="M2.5 4.5h15v11h-15z" />
      <path d="M6.5 7.5h7v5h-7zM6.5 7.5l7 5" strokeWidth="0.9" />
    </>
  ),
  undo: <path d="M7.5 4.5L4 8l3.5 3.5M4 8h7.5a4 4 0 0 1 0 8H8" />,
  redo: <path d="M12.5 4.5L16 8l-3.5 3.5M16 8H8.5a4 4 0 0 0 0 8H12" />,
  underlay: <path d="M10 3.5l7.5 4-7.5 4-7.5-4zM3.6 11L10 14.4 16.4 11" />,
};

/** The sign of the program: a wall corner with its panels. */
export function Sign() {
  return (
    <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" className="sign">
      <path d="M2 2h16v5H7v11H2z" className="sign-panel" />
      <path d="M5 5h13v3.4H8.4V18H5z" className="sign-wall" />
    </svg>
  );
}

export function Check() {
  return (
    <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" className="icon">
      <path d="M2 7.5l3.4 3.4L12 3.8" />
    </svg>
  );
}

export function RingSign({ isDouble }: { isDouble: boolean }) {
  return (
    <svg viewBox="0 0 18 18" width="18" height="18" aria-hidden="true" className="ring-sign">
      <circle cx="9" cy="9" r={isDouble ? 5 : 6.5} strokeWidth="1.75" />
      {isDouble ? <circle cx="9" cy="9" r="8" strokeWidth="1" /> : null}
    </svg>
  );
}
