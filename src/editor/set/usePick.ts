// Picks a point of a curve: one step that writes it into limits or weights, and the search for its set.

import type { CurvePoint } from "../../fill/optimise/tradeOff.ts";
import { useBench } from "../live/useWorkbench.tsx";
import { planInHand } from "../over/planInHand.ts";
import type { CurveName } from "./curvePlot.ts";
import { inputsOf } from "./inputs.ts";
import { changeLimits } from "./limitEdits.ts";
import { useOptimiser } from "./useOptimiser.ts";
import { useStep } from "./useStep.ts";

export function usePick(): (curve: CurveName, point: CurvePoint) => void {
  const { editor } = useBench();
  const { optimiser } = useOptimiser();
  const step = useStep();
  return (curve, { mostWidths, filler }) => {
    const { doc } = editor.get().history;
    const objective = { ...doc.objective, filler };
    step(
      "step.set-weights",
      curve === "widths"
        ? changeLimits(doc, { mostWidths })
        : [{ kind: "change-project", set: { objective } }],
    );
    const after = editor.get().history.doc;
    const plan = planInHand(after);
    if (plan !== null) optimiser.begin({ plan, inputs: inputsOf(after), isLong: false });
  };
}
