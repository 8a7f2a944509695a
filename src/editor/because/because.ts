// Why a piece is where it is: the two joints it stands between, the arithmetic, the rules that made it with their
// origin. Pure; the words are put in by the card.
//
//   A 3650  the corner leg at wall 6        = 100 remains between the standard panels, which take 3000
//   B 3750  the jamb of door 2              Rule narrow under = 100 mm. Origin: common practice, no source.

import { type FilledWith, tableFor } from "../../fill/choices.ts";
import type { FaceJoint } from "../../fill/stretchPieces.ts";
import { type RuleName, type Rules, ruleValue } from "../../kit/kit.ts";
import type { Kg, Mm } from "../../units.ts";
import { bookOf, type DrawnPart, type DrawnTie } from "../pane/elevation.ts";
import type { Focused } from "../pane/paneWalk.ts";
import { type Words, words } from "../words/say.ts";

export interface RuleLine {
  readonly name: RuleName &
    ("cornerLeg" | "narrowUnder" | "tieRows" | "tieEdge" | "tieSpacing" | "tieTolerance");
  /** null: the kit does not give it. */
  readonly rule: { readonly value: string; readonly unit: string; readonly origin: string } | null;
}

export interface Because {
  readonly about:
    | { readonly kind: "part"; readonly part: DrawnPart }
    | { readonly kind: "tie"; readonly tie: DrawnTie };
  readonly isOnBothFaces: boolean;
  /** Of one piece; null where the kit does not list it (a strip cut to measure). */
  readonly mass: Kg | null;
  readonly needsTwo: boolean;
  /** The joints of the interval; none for pieces that stand in none. */
  readonly joints: readonly [left: FaceJoint, right: FaceJoint] | null;
  readonly arithmetic: readonly Words[];
  readonly rules: readonly RuleLine[];
}

/** The reasons of what the hand is on; null on whole faces and intervals. */
export function becauseOf(now: Focused, given: FilledWith, isPinned: boolean): Because | null {
  if (now.focus.level === "tie") return tieReason(now, given);
  const { part, seen } = now;
  if (part === null || part.kind === "unfilled") return null;
  const stands = seen?.pieces.some(({ x }) => x === part.x && part.kind !== "band") === true;
  const piece = bookOf(given.kit).get(part.code);
  const isStrip = part.kind === "closure";
  return {
    about: { kind: "part", part },
    isOnBothFaces: stands && seen?.stretch.opposite !== null,
    mass: piece === undefined || isStrip ? null : piece.mass,
    needsTwo: part.needsTwo,
    joints: stands && seen !== null ? [seen.left, seen.right] : null,
    arithmetic: stands ? arithmeticOf(now, given, isPinned) : [],
    rules: rulesOf(part, now, given),
  };
}

function arithmeticOf({ seen }: Focused, given: FilledWith, isPinned: boolean): readonly Words[] {
  if (seen === null) return [];
  if (seen.isZone) return [words("because.zone", { length: seen.length })];
  const table = tableFor(given, seen.stretch);
  const taken = seen.pieces
    .filter(({ kind, width }) => kind === "panel" && table.isStandard(width))
    .reduce((sum, { width }) => sum + width, 0);
  const rest: Mm = seen.length - taken;
  return [
    ...(rest === 0 ? [] : [restWords(seen.length, taken, rest)]),
    words(isPinned ? "because.pinned" : "because.sequence"),
  ];
}

function restWords(length: Mm, taken: Mm, rest: Mm): Words {
  return taken === 0 ? words("because.alone", { length }) : words("because.remains", { rest, taken });
}

function rulesOf(part: DrawnPart, { seen }: Focused, { kit }: FilledWith): readonly RuleLine[] {
  const isAtLeg = [seen?.left, seen?.right].some((joint) => joint?.causes.some(({ kind }) => kind === "leg"));
  const narrow = ruleValue(kit, "narrowUnder");
  const isNarrow = part.kind === "filler" && narrow !== undefined && part.width < narrow;
  const names: RuleLine["name"][] = [];
  if (isAtLeg || part.kind === "corner") names.push("cornerLeg");
  if (isNarrow) names.push("narrowUnder");
  if (part.isZone) names.push("tieSpacing");
  return names.map((name) => ruleLine(name, kit.rules));
}

function tieReason({ focus, drawn }: Focused, given: FilledWith): Because | null {
  const tie = drawn.ties.find(({ x }) => x === focus.x);
  if (tie === undefined) return null;
  const heights = tie.heights.join(", ");
  return {
    about: { kind: "tie", tie },
    isOnBothFaces: true,
    mass: bookOf(given.kit).get(tie.code)?.mass ?? null,
    needsTwo: false,
    joints: null,
    arithmetic: [words("because.tie", { heights }), words("because.tie-length", { length: tie.length })],
    rules: (["tieRows", "tieEdge", "tieSpacing"] as const).map((name) => ruleLine(name, given.kit.rules)),
  };
}

function ruleLine(name: RuleLine["name"], rules: Rules): RuleLine {
  const rule = rules[name];
  if (rule === undefined) return { name, rule: null };
  const value = typeof rule.value === "number" ? String(rule.value) : rule.value.join(" ");
  return { name, rule: { value, unit: rule.unit, origin: rule.origin } };
}
