// The figure in the answer of a formula, for tests that expect one.

import { type Answer, refusalText } from "../../src/check/range.ts";

/** @throws {Error} if the formula refused its input */
export function value<V>(answer: Answer<V>): V {
  if (answer.status === "refused") throw new Error(`refused: ${refusalText(answer)}`);
  return answer.value;
}
