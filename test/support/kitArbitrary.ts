// Arbitrary kits, every family among them, for properties.

import fc from "fast-check";
import { isReservedName } from "../../src/json/value.ts";
import { FAMILIES, type Family, type Kit, type Piece, type Rules } from "../../src/kit/kit.ts";

const size = fc.integer({ min: 1, max: 20_000 });
const legs = fc.tuple(size, size);
const turn = fc.constantFrom<"inside" | "outside">("inside", "outside");
const length = fc.record({ length: size });
const maybeLength = fc.record({ length: fc.option(size) });
const range = fc.tuple(size, size).map(([a, b]) => ({ least: Math.min(a, b), greatest: Math.max(a, b) }));

const OWN: { readonly [F in Family]: fc.Arbitrary<object> } = {
  "wall-panel": fc.record({ width: size, height: size }),
  "inside-corner": fc.record({ legs, height: size }),
  "outside-corner": length,
  "stop-end": fc.record({ width: size, height: size }),
  "reveal-closure": fc.record({ width: size, length: size }),
  "reveal-corner": fc.record({ width: size, legs }),
  "wall-slab-connector": fc.record({ height: size, depth: size, length: size }),
  "connector-corner": fc.record({ turn, height: size, depth: size, legs }),
  "slab-edge-cap": fc.record({ height: size, length: size }),
  "cap-corner": fc.record({ turn, height: size, legs }),
  "slab-panel": fc.record({ width: size, length: size }),
  "shoring-strip": fc.record({ width: size, length: size }),
  prop: fc
    .tuple(range, fc.option(fc.constantFrom("A", "B", "C", "D", "E")))
    .map(([ends, name]) => ({ ...ends, class: name })),
  tie: length,
  "tie-sleeve": length,
  "closure-strip": range,
  pin: maybeLength,
  wedge: maybeLength,
  "wall-bracket": maybeLength,
  "alignment-ledger": maybeLength,
  brace: maybeLength,
  "opening-brace": maybeLength,
  "facade-aligner": maybeLength,
};

const common = fc.record({
  code: fc
    .string({ minLength: 1, maxLength: 12, unit: "grapheme-ascii" })
    .filter((code) => !isReservedName(code)),
  mass: fc.double({ min: 0, max: 1000, noNaN: true }).map((mass) => mass + 0),
  price: fc.option(fc.integer({ min: 0, max: 99_999 }).map((cents) => cents / 100)),
  standard: fc.boolean(),
  hand: fc.option(fc.constantFrom<"left" | "right">("left", "right")),
  stays: fc.nat(3),
});

const anyPiece = fc.constantFrom(...FAMILIES).chain((family) =>
  // The table above gives each family its own members.
  fc.tuple(common, OWN[family]).map(([base, own]) => ({ ...base, family, ...own }) as Piece),
);

const rule = <V>(value: fc.Arbitrary<V>, unit: string) =>
  fc.record({
    value,
    unit: fc.constant(unit),
    origin: fc.constantFrom("published: a book", "invented for the demo"),
  });

const rules: fc.Arbitrary<Rules> = fc.record(
  {
    cornerLeg: rule(size, "mm"),
    holes: rule(fc.record({ first: size, pitch: size }), "mm"),
    tieTolerance: rule(
      fc.double({ min: 0, max: 50, noNaN: true }).map((value) => value + 0),
      "mm",
    ),
    tieRows: rule(
      fc.uniqueArray(size, { maxLength: 6 }).map((rows) => rows.sort((a, b) => a - b)),
      "mm",
    ),
    personLimit: rule(fc.integer({ min: 1, max: 100 }), "kg"),
    panelPressure: rule(fc.integer({ min: 1, max: 200 }), "kPa"),
    tieLoad: rule(fc.integer({ min: 1, max: 100 }), "kN"),
  },
  { requiredKeys: [] },
);

export const anyKit: fc.Arbitrary<Kit> = fc.record({
  name: fc.constantFrom("mine", "Kit 2", "Encofrado ñ"),
  currency: fc.option(fc.constantFrom("EUR", "BRL")),
  pieces: fc.uniqueArray(anyPiece, { maxLength: 12, selector: (piece) => piece.code }),
  rules,
});
