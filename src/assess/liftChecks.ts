// Who can lift each piece: one person, two, or nobody by hand? With the lifting index of the lifts it is made for.

import { type Lift, NIOSH_FORMULA, NIOSH_SOURCE, nioshLimit } from "../check/nioshLift.ts";
import { computed, refusalText } from "../check/range.ts";
import { TEAM_FORMULA, TEAM_SOURCE, teamLift } from "../check/teamLift.ts";
import type { BillLine } from "../fill/result.ts";
import type { Family } from "../kit/kit.ts";
import type { Check, CheckInput, TwoPersonPiece } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";
import { input, judgedBy, notChecked, placeIn, unjudged } from "./judging.ts";

/** What the checks of lifts take for granted. */
export const LIFT_ASSUMPTIONS: readonly string[] = [
  "A piece that is over the limit of one person is carried by two, who may lift two thirds of twice that limit; its mass is taken as shared equally.",
  "The lifting index goes by plain lifts: from a stack 350 mm away and 400 to 900 mm up, to a wall with a twist of 30°, overhead to 1750 mm; good footing, fair grip, an hour or two at a time. Common practice, no source: measure the real ones.",
  "Pieces under 3 kg are not listed.",
];

/** Lighter ones are no manual handling task in the sense of ISO 11228-1. */
const LIGHTEST = 3;
/** FM up to two hours at a lift every minute or two, CM a fair grip: from memory of the method's tables. */
const SHIFT = { frequency: 0.85, coupling: 0.95 } as const;

/** The lifts that stand for all of their sort. */
export const LIFTS: Readonly<Record<"stack" | "wall" | "overhead", Lift>> = {
  stack: { reach: 350, height: 400, travel: 500, twist: 0, ...SHIFT },
  wall: { reach: 350, height: 750, travel: 250, twist: 30, ...SHIFT },
  overhead: { reach: 300, height: 1750, travel: 950, twist: 0, ...SHIFT },
};
const OVERHEAD: readonly Family[] = [
  "slab-panel",
  "shoring-strip",
  "wall-slab-connector",
  "connector-corner",
  "slab-edge-cap",
  "cap-corner",
];
const UPRIGHT: readonly Family[] = ["wall-panel", "inside-corner", "outside-corner", "stop-end"];

/** The checks of one entry: each piece of its bill that weighs anything to a person. */
export function liftChecks(entry: CheckedEntry): readonly Check[] {
  return heavyLines(entry).map((line) => liftCheck(entry, line));
}

/** The pieces two have to carry. */
export function twoPersonPieces(entry: CheckedEntry): readonly TwoPersonPiece[] {
  const limit = entry.kit.rules.personLimit?.value;
  if (limit === undefined) return [];
  return heavyLines(entry)
    .filter((line) => massOf(line) > limit)
    .map((line) => ({
      unit: entry.name,
      code: line.code,
      mass: massOf(line),
      quantity: line.quantity,
    }));
}

function heavyLines({ fill }: CheckedEntry): readonly BillLine[] {
  return fill.bill.filter((line) => line.quantity > 0 && massOf(line) >= LIGHTEST);
}

function massOf({ mass, quantity }: BillLine): number {
  return mass / quantity;
}

function liftCheck({ name, kit }: CheckedEntry, line: BillLine): Check {
  const mass = massOf(line);
  const rule = kit.rules.personLimit;
  const start = unjudged({
    id: `${name}/${line.code}/lift`,
    kind: "lift",
    where: placeIn(name, { code: line.code }),
    unit: "kg",
    formula: `m ≤ personLimit; ${TEAM_FORMULA}; ${NIOSH_FORMULA}`,
    source: `limit: the kit's rule personLimit; ${TEAM_SOURCE}; ${NIOSH_SOURCE}`,
  });
  const known = {
    ...start,
    value: mass,
    inputs: [input("", "pieces in the bill", line.quantity), input("m", "mass", mass, "kg")],
  };
  if (rule === undefined)
    return notChecked(known, "the kit states no limit for one person (rule personLimit)");
  const people = mass > rule.value ? 2 : 1;
  const limit = people === 1 ? computed(rule.value) : teamLift(rule.value);
  if (limit.status === "refused") return notChecked(known, refusalText(limit));
  const inputs = [
    ...known.inputs,
    input("m_1", "limit of one person", rule.value, "kg"),
    input("", "origin of the kit's figure", rule.origin),
    input("", "people", people),
    ...indices(line.family, mass / people),
  ];
  return judgedBy({ ...known, inputs }, mass, limit.value);
}

// The share of one person in each lift the family is made for.
function indices(family: Family, share: number): readonly CheckInput[] {
  const kinds: readonly (keyof typeof LIFTS)[] = OVERHEAD.includes(family)
    ? ["stack", "overhead"]
    : UPRIGHT.includes(family)
      ? ["stack", "wall"]
      : ["stack"];
  return kinds.flatMap((kind) => {
    const limit = nioshLimit(LIFTS[kind]);
    if (limit.status === "refused") return [];
    return [
      input("RWL", `recommended weight, ${kind} lift`, limit.value, "kg"),
      input("LI", `lifting index, ${kind} lift`, share / limit.value),
    ];
  });
}
