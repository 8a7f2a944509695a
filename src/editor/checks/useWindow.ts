// Which lines of a long list are in view: only those are drawn, the others keep their room.

import { type RefObject, useLayoutEffect, useState } from "react";

export interface Seen {
  readonly from: number;
  readonly to: number;
}

const MORE = 8; // lines drawn beyond either edge, so that a quick hand finds them there

/** @param height - of a line, px; all are alike */
export function useWindow(host: RefObject<HTMLElement | null>, count: number, height: number): Seen {
  const [seen, setSeen] = useState<Seen>({ from: 0, to: 40 });
  useLayoutEffect(() => {
    const own = host.current;
    if (own === null) return;
    const look = () => {
      const from = Math.max(0, Math.floor(own.scrollTop / height) - MORE);
      const to = Math.ceil((own.scrollTop + own.clientHeight) / height) + MORE;
      setSeen((now) => (now.from === from && now.to === to ? now : { from, to }));
    };
    look();
    const observer = new ResizeObserver(look);
    observer.observe(own);
    own.addEventListener("scroll", look, { passive: true });
    return () => {
      observer.disconnect();
      own.removeEventListener("scroll", look);
    };
  }, [host, height]);
  return { from: Math.min(seen.from, Math.max(0, count - 1)), to: Math.min(seen.to, count) };
}
