// What the soffit plan says in words beside its table: what stays, what is made to measure, what is not built.

import type { Soffit, SoffitPiece, UnitFill } from "../../fill/result.ts";
import type { Language } from "../../plan/project.ts";
import { FAMILY_WORDS } from "../familyWords.ts";
import { plainText } from "../plainText.ts";
import { problemText } from "../problemText.ts";
import { rangesText } from "../ranges.ts";
import { type Block, noteBlock } from "../settingOut/block.ts";
import { heldEnds } from "../soffit/heldEnds.ts";
import { sidesOf } from "../soffit/overheadPiece.ts";
import type { SoffitPlanWords } from "./words.ts";

export function staysBlock(
  { soffits }: UnitFill,
  props: { readonly [piece: string]: number },
  words: SoffitPlanWords,
): Block | null {
  const strips = soffits.flatMap(({ pieces }) => pieces.filter(({ family }) => family === "shoring-strip"));
  const standing = soffits.flatMap((soffit) => soffit.props);
  if (strips.length + standing.length === 0) return null;
  const holders = soffits.flatMap((soffit) => heldEnds(soffit).map(({ prop }) => props[prop.piece] ?? 0));
  return noteBlock(words.stays, [
    words.staysAll(strips.length, standing.length),
    words.reach(heightsText(soffits)),
    ...(holders.length > 0 ? [words.ends(rangesText(holders))] : []),
  ]);
}

/** The height most soffits have, then the rooms that differ. */
function heightsText(soffits: readonly Soffit[]): string {
  const counts = new Map<number, number>();
  for (const { height } of soffits) counts.set(height, (counts.get(height) ?? 0) + 1);
  const [usual = 0] = [...counts.keys()].sort((a, b) => counts.get(b)! - counts.get(a)! || b - a);
  const others = soffits.filter(({ height }) => height !== usual);
  return [`${usual}`, ...others.map(({ room, height }) => `${plainText(room)} ${height}`)].join("; ");
}

/** Room by room, equal ones together: "Hall: strip 900 (3), closure 35 × 1200". */
export function madeBlock({ soffits }: UnitFill, language: Language, words: SoffitPlanWords): Block | null {
  const lines = soffits.flatMap((soffit) => {
    const made = madeIn(soffit, language);
    return made.length > 0 ? [`${plainText(soffit.room)}: ${made.join(", ")}`] : [];
  });
  return lines.length > 0 ? noteBlock(words.made, lines) : null;
}

function madeIn({ pieces }: Soffit, language: Language): readonly string[] {
  const counts = new Map<string, number>();
  for (const piece of pieces) {
    if (piece.madeToMeasure !== true && piece.family !== "closure-strip") continue;
    const text = `${FAMILY_WORDS[language][piece.family]} ${measureOf(piece)}`;
    counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  return [...counts].map(([text, count]) => (count === 1 ? text : `${text} (${count})`));
}

function measureOf({ family, outline }: SoffitPiece): string {
  const { short, long } = sidesOf(outline);
  return family === "shoring-strip" || family === "wall-slab-connector" ? `${long}` : `${short} × ${long}`;
}

/** The problems of places that are not built, by the number they carry everywhere. */
export function openBlock(
  { soffits, problems }: UnitFill,
  language: Language,
  words: SoffitPlanWords,
): Block | null {
  const numbers = [
    ...new Set(soffits.flatMap(({ unfilled }) => unfilled.map(({ problem }) => problem))),
  ].sort((a, b) => a - b);
  const lines = numbers.flatMap((number) => {
    const problem = problems[number];
    return problem === undefined
      ? []
      : [`${number + 1}: ${plainText(problemText(problem.message, language))}`];
  });
  return lines.length > 0 ? noteBlock(words.open, lines) : null;
}
