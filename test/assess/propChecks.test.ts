// Checks of props on fills of known rooms, worked out by hand beside the rows.

import { describe, expect, it } from "vitest";
import type { Check, CheckDocument } from "../../src/assess/checkDocument.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit, PropClass } from "../../src/kit/kit.ts";
import { assessed as assessFilled } from "../support/assessed.ts";
import { DEMO_PROP, type Given, PROPS, propped } from "../support/proppedFill.ts";

/** The demo kit with its prop of another class. */
const kitWith = (name: PropClass | null): Kit => ({
  ...demoKit,
  pieces: demoKit.pieces.map((piece) => (piece.family === "prop" ? { ...piece, class: name } : piece)),
});

const assessed = (given: Given = {}, kit = kitWith("B")): CheckDocument =>
  assessFilled({ ...propped(given), kit });

const input = (check: Check | undefined, name: string) =>
  check?.inputs.find((one) => one.name === name)?.value;

describe("the check of a prop", () => {
  // 150 mm: q = 3.75 + 0.5 + 0.75 + 0.75 = 5.75 kPa. B35 at 2400: R_k = 68 · 3.5 / 2.4² = 41.319 kN.
  it.each<{ why: string; given: Given; name: PropClass; value: number; limit: number; status: string }>([
    { why: "B at 2400", given: {}, name: "B", value: 8.28, limit: 41.3194 / 1.65, status: "within" },
    { why: "D at any extension", given: {}, name: "D", value: 8.28, limit: 34 / 1.65, status: "within" },
    {
      why: "load with its factor beside the design strength",
      given: { loads: { propStrength: "design" } },
      name: "B",
      value: 8.28 * 1.5,
      limit: 41.3194 / 1.1,
      status: "within",
    },
    {
      why: "0.15 m at 24 kN/m³ by ACI 347 with carts: 3.6 + 0.5 + 3.6 = 7.7 kPa",
      given: { loads: { slabModel: "ACI 347", motorisedCarts: true } },
      name: "B",
      value: 7.7 * 1.44,
      limit: 41.3194 / 1.65,
      status: "within",
    },
    {
      why: "a soffit dropped by 200: extension 2200, and the cap of 51 kN over 68 · 3.5 / 2.2² = 49.17",
      given: { drop: 200 },
      name: "B",
      value: 8.28,
      limit: 49.1736 / 1.65,
      status: "within",
    },
    {
      why: "0.8 m of concrete on 1.44 m²: 20 + 0.5 + 0.75 + 1.75 = 23 kPa, by two-span bearers",
      given: { storey: { clearHeight: 2400, slab: 800 }, loads: { continuity: 1.25 } },
      name: "B",
      value: 23 * 1.44 * 1.25,
      limit: 41.3194 / 1.65,
      status: "over",
    },
  ])("$why", ({ given, name, value, limit, status }) => {
    const [check] = assessed(given, kitWith(name)).checks;
    expect(check).toMatchObject({ status, unit: "kN", id: "A/p900/prop-load" });
    expect(check?.value).toBeCloseTo(value, 6);
    expect(check?.limit).toBeCloseTo(limit, 3);
    expect(check?.utilisation).toBeCloseTo(value / limit, 4);
    expect(check?.reason).toBeUndefined();
  });

  it("says where the prop stands and what went into the figures", () => {
    const [check, other] = assessed().checks;
    expect(check?.where).toEqual({
      unit: "A",
      room: "Bath",
      piece: "A/p900",
      code: DEMO_PROP,
      at: [1000, 1000],
    });
    expect(other?.value).toBeCloseTo(check!.value! / 2, 9);
    expect(input(check, "extension of the prop")).toBe(2.4);
    expect(input(check, "slab thickness")).toBe(0.15);
    expect(input(check, "load on the form")).toBe(5.75);
    expect(input(check, "class of EN 1065")).toBe("B");
    expect(check?.formula).toContain("min(68·l_max/l², 51)");
    expect(check?.source).toContain("from memory of EN 1065");
  });

  it.each<{ why: string; given: Given; kit?: Kit; reason: RegExp; hasLoad: boolean }>([
    {
      why: "the kit gives no class",
      given: {},
      kit: kitWith(null),
      reason: /^the kit gives no class of EN 1065 for Prop2000-3500$/,
      hasLoad: true,
    },
    {
      why: "the kit has no such prop",
      given: { props: [{ ...PROPS[0]!, code: "other" }] },
      reason: /^the kit has no prop other$/,
      hasLoad: true,
    },
    {
      why: "a panel's code is no prop's",
      given: { props: [{ ...PROPS[0]!, code: "W600x2250" }] },
      reason: /^the kit has no prop W600x2250$/,
      hasLoad: true,
    },
    {
      why: "the room is higher than the prop reaches",
      given: { storey: { clearHeight: 3600, slab: 150 } },
      reason: /^the extension of the prop is 3600 mm; the figure holds from 2000 to 3500 mm$/,
      hasLoad: true,
    },
    {
      why: "the slab is thinner than any slab",
      given: { storey: { clearHeight: 2400, slab: 15 } },
      reason: /^the slab thickness is 15 mm; the figure holds from 20 to 2000 mm$/,
      hasLoad: false,
    },
    {
      why: "the area is none",
      given: { props: [{ ...PROPS[0]!, area: -1 }] },
      reason: /^the area carried by the prop is -1 m²/,
      hasLoad: false,
    },
  ])("is not made where $why", ({ given, kit, reason, hasLoad }) => {
    const document = assessed(given, kit);
    const [check] = document.checks;
    expect(check).toMatchObject({ status: "not-checked", limit: null, utilisation: null });
    expect(check?.reason).toMatch(reason);
    expect(check?.value !== null).toBe(hasLoad);
    expect(document.totals).toMatchObject({ within: 0, over: 0, notChecked: document.checks.length });
  });

  it("has nothing to say where no slab is cast", () => {
    const { checks, totals } = assessed({ storey: { clearHeight: 2400, slab: 0 } });
    expect(totals).toEqual({ within: 0, over: 0, notChecked: 0, notApplicable: 2 });
    for (const check of checks) {
      expect(check).toMatchObject({ status: "not-applicable", value: null, limit: null });
      expect(check.reason).toBe("no slab is cast in this storey");
    }
  });

  it("goes by the storey of each entry, and names the second storey of a unit", () => {
    const { project, fill } = propped();
    const [first] = fill.units;
    const upper = { ...first!, storey: { clearHeight: 2400, slab: 200 } };
    const both = { ...fill, units: [first!, upper] };
    const { checks } = assessFilled({ project, fill: both });
    expect(checks.map(({ where }) => where.unit)).toEqual(["A", "A", "A@2", "A@2"]);
    expect(checks[2]?.value).toBeCloseTo(7 * 1.44, 9); // 200 mm: 5 + 0.5 + 0.75 + 0.75
  });

  it("finds none where the fill has no soffits", () => {
    expect(assessed({ props: [] })).toMatchObject({ checks: [], totals: { within: 0 } });
  });
});

it("can be worked out again by hand from the inputs it lists", () => {
  const [check] = assessed().checks;
  const of = (sign: string) => Number(check?.inputs.find((one) => one.sign === sign)?.value);
  const load = (of("γ") * of("h") + of("g") + 0.75 + of("q_heap")) * of("A") * of("k");
  expect(load).toBeCloseTo(check!.value!, 9);
  expect(Math.min((68 * of("l_max")) / of("l") ** 2, 51) / (1.1 * 1.5)).toBeCloseTo(check!.limit!, 9);
});
