// What a rule in a kit file must say: its value, its unit and where it comes from.

import { andThen, type Checker, fail, inside, list, number, oneOf, text } from "../json/checker.ts";
import { object, optional, required } from "../json/members.ts";
import type { Mm } from "../units.ts";
import type { Rule, RuleName, Rules } from "./kit.ts";
import { orNull, UNSEEN } from "./pieceChecker.ts";

const LONGEST: Mm = 20_000;
const MOST_ROWS = 100;

const distance = number({ least: 1, greatest: LONGEST, whole: true, unit: "mm" });
const distanceOrNone = number({ least: 0, greatest: LONGEST, whole: true, unit: "mm" });
const tolerance = number({ least: 0, greatest: 50, unit: "mm" });
const mass = number({ least: 0.1, greatest: 1000, unit: "kg" });
const pressure = number({ least: 0.1, greatest: 10_000, unit: "kPa" });
const force = number({ least: 0.1, greatest: 10_000, unit: "kN" });

const holeFields = object("first and pitch of the holes", {
  first: required(distance),
  pitch: required(distance),
});
const holes = andThen(holeFields, ({ first, pitch }) => ({ first, pitch }));

const rows = andThen(list(distance, { what: "a list of heights", greatest: MOST_ROWS }), (heights, place) => {
  const at = heights.findIndex((height, i) => i > 0 && height <= heights[i - 1]!);
  if (at < 0) return heights;
  return fail(inside(place, at), `a height above ${heights[at - 1]}, the row before it`, heights[at]);
});

/** The unit is checked, never converted: a length in another unit would be off by a factor without anybody noticing. */
function rule<V>(value: Checker<V>, ...units: readonly string[]): Checker<Rule<V>> {
  const fields = object("a rule { value, unit, origin }", {
    value: required(value),
    unit: required(oneOf(...units)),
    origin: required(
      text({ what: "where the rule comes from, a text", least: 1, greatest: 500, not: UNSEEN }),
    ),
  });
  return andThen(fields, (read) => ({ value: read.value, unit: read.unit, origin: read.origin }));
}

const KILOPASCALS = ["kPa", "kN/m²", "kN/m2"] as const;

const CHECKERS: { readonly [K in RuleName]: Checker<NonNullable<Rules[K]>> } = {
  cornerLeg: rule(distance, "mm"),
  frameDepth: rule(distanceOrNone, "mm"),
  holes: rule(holes, "mm"),
  tieTolerance: rule(tolerance, "mm"),
  tieRows: rule(rows, "mm"),
  tieSpacing: rule(distance, "mm"),
  tieEdge: rule(distanceOrNone, "mm"),
  narrowUnder: rule(distanceOrNone, "mm"),
  pinPitch: rule(distance, "mm"),
  bracketSpacing: rule(distance, "mm"),
  alignerSpacing: rule(distance, "mm"),
  braceSpacing: rule(distance, "mm"),
  propPitch: rule(distance, "mm"),
  firstOutMax: rule(distanceOrNone, "mm"),
  personLimit: rule(mass, "kg"),
  panelPressure: rule(pressure, ...KILOPASCALS),
  tieLoad: rule(force, "kN"),
};

/** The rules a kit may give, in the order in which files give them. */
export const RULE_NAMES = Object.keys(CHECKERS) as readonly RuleName[];

const members = object(
  "the rules",
  Object.fromEntries(
    Object.entries(CHECKERS).map(([name, checker]) => [name, optional(orNull<unknown>(checker), null)]),
  ),
);

/** The rules a kit gives. Names this version does not know are reported and left out. */
export const rules: Checker<Rules> = andThen(members, ({ extra: _extra, ...given }) => {
  const known = Object.entries(given).filter(([, value]) => value !== null);
  return Object.fromEntries(known) as Rules;
});
