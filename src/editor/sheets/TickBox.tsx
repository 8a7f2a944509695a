// A box that is ticked, not ticked, or ticked in part, as it looks. Who holds it says to others what it is.

import type { Ticked } from "./choice.ts";

export function TickBox({ ticked }: { ticked: Ticked }) {
  return (
    <span className={`tick ${ticked}`} aria-hidden="true">
      <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" className="icon">
        {ticked === "all" ? <path d="M3 7.4l2.8 2.8L11 4.2" /> : null}
        {ticked === "some" ? <path d="M3.5 7h7" /> : null}
      </svg>
    </span>
  );
}
