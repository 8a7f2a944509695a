// The rules of the demo kit. Nearly all are habits of the trade that no published source could be named for; they say so.

import type { Rule, Rules } from "../kit.ts";

const PRACTICE = "common practice, no source";
const INVENTED = "invented for the demo";

/**
 * There is no `tieLoad`: what a tie may carry is known to whoever made and tested it, so the loads of ties stay
 * unchecked until somebody enters a figure.
 */
export const DEMO_RULES: Rules = {
  cornerLeg: practice(150, "mm"),
  frameDepth: practice(65, "mm"),
  holes: practice({ first: 150, pitch: 150 }, "mm"),
  tieTolerance: practice(2, "mm"),
  tieRows: practice([150, 450, 750, 1200, 1800], "mm"),
  tieSpacing: practice(600, "mm"),
  tieEdge: practice(100, "mm"),
  narrowUnder: practice(100, "mm"),
  pinPitch: practice(300, "mm"),
  bracketSpacing: practice(600, "mm"),
  alignerSpacing: practice(1800, "mm"),
  braceSpacing: practice(2400, "mm"),
  propPitch: practice(1200, "mm"),
  firstOutMax: practice(300, "mm"),
  personLimit: practice(25, "kg"),
  panelPressure: { value: 70, unit: "kPa", origin: INVENTED },
};

function practice<V>(value: V, unit: string): Rule<V> {
  return { value, unit, origin: PRACTICE };
}
