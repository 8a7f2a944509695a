// A kit as the JSON object a file carries. Members that say what goes without saying are left out.

import type { Json, JsonObject } from "../json/value.ts";
import type { Family, Kit, Piece, Rules } from "./kit.ts";
import { RULE_NAMES } from "./ruleChecker.ts";

/** Members of a family's own, in the order in which files give them. */
export const OWN_MEMBERS: { readonly [F in Family]: readonly string[] } = {
  "wall-panel": ["width", "height"],
  "inside-corner": ["legs", "height"],
  "outside-corner": ["length"],
  "stop-end": ["width", "height"],
  "reveal-closure": ["width", "length"],
  "reveal-corner": ["width", "legs"],
  "wall-slab-connector": ["height", "depth", "length"],
  "connector-corner": ["turn", "height", "depth", "legs"],
  "slab-edge-cap": ["height", "length"],
  "cap-corner": ["turn", "height", "legs"],
  "slab-panel": ["width", "length"],
  "shoring-strip": ["width", "length"],
  prop: ["least", "greatest", "class"],
  tie: ["length"],
  "tie-sleeve": ["length"],
  "closure-strip": ["least", "greatest"],
  pin: ["length"],
  wedge: ["length"],
  "wall-bracket": ["length"],
  "alignment-ledger": ["length"],
  brace: ["length"],
  "opening-brace": ["length"],
  "facade-aligner": ["length"],
};

/** The kit as a JSON object, its members in the order of the file format. Reading it gives an equal kit. */
export function serializeKit(kit: Kit): JsonObject {
  return {
    name: kit.name,
    ...(kit.currency === null ? {} : { currency: kit.currency }),
    pieces: kit.pieces.map(pieceJson),
    rules: rulesJson(kit.rules),
  };
}

function pieceJson(piece: Piece): JsonObject {
  const { code, family, mass, price, standard, hand, stays } = piece;
  const members: JsonObject = { ...piece };
  const own = OWN_MEMBERS[family].map((name): [string, Json] => [name, members[name] ?? null]);
  return {
    code,
    family,
    mass,
    ...(price === null ? {} : { price }),
    ...(standard ? { standard } : {}),
    ...(hand === null ? {} : { hand }),
    ...(stays === 0 ? {} : { stays }),
    ...Object.fromEntries(own.filter(([, value]) => value !== null)),
  };
}

function rulesJson(rules: Rules): JsonObject {
  const json: { [name: string]: Json } = {};
  for (const name of RULE_NAMES) {
    const rule = rules[name];
    if (rule !== undefined)
      json[name] = { value: valueJson(rule.value), unit: rule.unit, origin: rule.origin };
  }
  return json;
}

function valueJson(value: NonNullable<Rules[keyof Rules]>["value"]): Json {
  return typeof value === "object" && "pitch" in value ? { first: value.first, pitch: value.pitch } : value;
}
