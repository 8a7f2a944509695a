// The canvas in its place on the page, as large as that, and the whole plan shown when it first has a size.

import { type RefObject, useEffect, useRef, useState } from "react";
import { changeScreen, fitPlan, isFitted } from "../live/actions.ts";
import { useBench, useEditorState } from "../live/useWorkbench.tsx";
import { createStage, type PlanStage } from "./stage.ts";

export function useStage(host: RefObject<HTMLDivElement | null>): PlanStage | null {
  const bench = useBench();
  const [stage, setStage] = useState<PlanStage | null>(null);
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    const built = createStage(element);
    setStage(built);
    const measure = new ResizeObserver(() => {
      const { clientWidth: width, clientHeight: height } = element;
      if (width === 0 || height === 0) return;
      const follows = bench.screen.get().size.width === 0 || isFitted(bench);
      built.resize(width, height);
      changeScreen(bench, { size: { width, height } });
      if (follows) fitPlan(bench);
    });
    measure.observe(element);
    return () => {
      measure.disconnect();
      built.destroy();
      setStage(null);
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
  return stage;
}
