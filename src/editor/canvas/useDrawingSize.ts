// The drawing in its place on the page, as large as that, and the whole plan shown when it first has a size.

import { type RefObject, useEffect, useRef } from "react";
import { changeScreen, fitPlan, isFitted } from "../live/actions.ts";
import { useBench, useEditorState } from "../live/useWorkbench.tsx";

/** Measures the drawing's place and keeps the plan fitted to it as long as nobody has moved the view. */
export function useDrawingSize(host: RefObject<HTMLDivElement | null>): void {
  const bench = useBench();
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    const measure = new ResizeObserver(() => {
      const { clientWidth: width, clientHeight: height } = element;
      if (width === 0 || height === 0) return;
      const follows = bench.screen.get().size.width === 0 || isFitted(bench);
      changeScreen(bench, { size: { width, height } });
      if (follows) fitPlan(bench);
    });
    measure.observe(element);
    return () => {
      measure.disconnect();
      changeScreen(bench, { size: { width: 0, height: 0 } });
    };
  }, [bench, host]);
  const { unit } = useEditorState().session.selection;
  const shown = useRef(unit);
  useEffect(() => {
    if (shown.current === unit) return;
    shown.current = unit;
    fitPlan(bench);
  }, [bench, unit]);
}
