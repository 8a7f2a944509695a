// What a delta list says in small letters: by which rule pieces go where, and how many sets of props turn over.

import type { PourNeed } from "../../fill/deliver/pourNeeds.ts";
import { type PropSets, propSets } from "../../fill/deliver/propSets.ts";
import { dayNeedsOf } from "../../fill/deliver/shortage.ts";
import { readConcrete } from "../../plan/concrete.ts";
import { roundTo } from "../../units.ts";
import type { SheetInfo } from "../info.ts";
import { figure } from "../lists/figures.ts";
import type { DeltaSource } from "./deltaItems.ts";
import { DELTA_WORDS } from "./words.ts";

export interface StatedProps extends PropSets {
  /** Whether the project leaves retention or cycle to the defaults. */
  readonly isDefault: boolean;
}

/** Null where the concrete of the project cannot be read: `check` says what is wrong with it. */
export function statedProps({ fill, kit, project }: DeltaSource): StatedProps | null {
  const concrete = readConcrete(project.concrete);
  if (concrete.status === "invalid") return null;
  const { propRetention: retention, cycle } = concrete.value;
  const isDefault = concrete.defaults.includes("propRetention") || concrete.defaults.includes("cycle");
  return { ...propSets(dayNeedsOf(fill, kit, project), kit, { retention, cycle }), isDefault };
}

export function noteText(need: PourNeed, props: StatedProps | null, info: SheetInfo): string {
  const words = DELTA_WORDS[info.language];
  const hasSleeves = need.lines.some(({ item }) => item.family === "tie-sleeve");
  return [
    ...(need.day === 0 ? [] : [words.rule]),
    ...(hasSleeves ? [words.sleeves] : []),
    ...(props === null || props.lines.length === 0 ? [] : propTexts(props, info)),
  ].join(" ");
}

function propTexts(
  { retention, cycle, sets, lines, isDefault }: StatedProps,
  info: SheetInfo,
): readonly string[] {
  const words = DELTA_WORDS[info.language];
  const days = (value: number) => figure(roundTo(value, 2), Number.isInteger(value) ? 0 : 2, info.language);
  const pieces = figure(
    lines.reduce((sum, { needed }) => sum + needed, 0),
    0,
    info.language,
  );
  const others = [...new Set(lines.map(({ kitSets }) => kitSets))].filter((each) => each !== sets);
  return [
    words.props({ retention: days(retention), cycle: days(cycle), sets, pieces, isDefault }),
    ...(others.length === 0 ? [] : [words.propsDiffer(others.sort((a, b) => a - b).join(", "))]),
  ];
}
