// Many storeys over a room with two props, worked out by hand beside the rows.

import { describe, expect, it } from "vitest";
import { shoringChecks, shoringRows } from "../../src/assess/shoringChecks.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit } from "../../src/kit/kit.ts";
import { readLoads } from "../../src/plan/loads.ts";
import { entryOf } from "../support/assessed.ts";
import { propped } from "../support/proppedFill.ts";

const classed: Kit = {
  ...demoKit,
  pieces: demoKit.pieces.map((piece) => (piece.family === "prop" ? { ...piece, class: "B" } : piece)),
};

const checksOf = (shoring: object | null, serviceLoad: number | null, kit = classed) => {
  const given = propped({ loads: shoring === null ? {} : { shoring: shoring as never } });
  const concrete = serviceLoad === null ? {} : { serviceLoad };
  return shoringChecks(entryOf({ ...given, project: { ...given.project, concrete }, kit }));
};

describe("storey over storey", () => {
  // D = 25 · 0.15 = 3.75 kPa; forms and work 1.25 kPa; the greater prop carries 1.44 m².
  it.each([
    {
      why: "two on shores",
      shoring: { shores: 2, storeys: 8 },
      slab: 2.25 * 3.75 + 1.25,
      prop: (2 * 3.75 + 1.25) * 1.44,
      status: "over",
    },
    {
      why: "one on shores, two on reshores",
      shoring: { shores: 1, reshores: 2, storeys: 8 },
      slab: 5 + 1.25,
      prop: 5 * 1.44,
      status: "within",
    },
  ])("$why: slab $slab kPa, prop $prop kN", ({ shoring, slab, prop, status }) => {
    const [bySlab, byProp] = checksOf(shoring, 7);
    expect(bySlab).toMatchObject({ status, limit: 7, unit: "kPa" });
    expect(bySlab!.value).toBeCloseTo(slab, 9);
    expect(byProp).toMatchObject({ status: "within", unit: "kN", where: { piece: "A/p900", room: "Bath" } });
    expect(byProp!.value).toBeCloseTo(prop, 9);
    // B35 at 2400: 68 · 3.5 / 2.4² / 1.65
    const told = byProp!.inputs.flatMap(({ sign, value, unit }) =>
      sign === "" ? [] : [{ sign, value, unit }],
    );
    expect(told).toContainEqual({ sign: "l_max", value: 3.5, unit: "m" });
    expect(told).toContainEqual({ sign: "l", value: 2.4, unit: "m" });
    expect(byProp!.limit).toBeCloseTo((68 * 3.5) / 2.4 ** 2 / 1.65, 6);
  });

  // D = 24 · 0.15 = 3.6 kPa, forms 0.5 kPa; ACI 347 takes 2.4 kPa of live load, 3.6 kPa with motorised carts.
  it.each([
    { motorisedCarts: false, live: 2.4 },
    { motorisedCarts: true, live: 3.6 },
  ])(
    "takes the work of the load model: ACI 347, carts $motorisedCarts, $live kPa",
    ({ motorisedCarts, live }) => {
      const loads = { slabModel: "ACI 347", motorisedCarts, shoring: { shores: 1, storeys: 3 } };
      const given = propped({ loads: loads as never });
      const [slab, prop] = shoringChecks(
        entryOf({ ...given, project: { ...given.project, concrete: { serviceLoad: 12 } }, kit: classed }),
      );
      expect(slab!.value).toBeCloseTo(2 * 3.6 + 0.5 + live, 9);
      expect(prop!.value).toBeCloseTo((3.6 + 0.5 + live) * 1.44, 9);
      expect(slab!.source).toMatch(/people at work: ACI 347/);
    },
  );

  it("is not judged without what slab and prop bear", () => {
    const [slab, prop] = checksOf({ shores: 2, storeys: 8 }, null, {
      ...demoKit,
      pieces: demoKit.pieces.map((piece) => (piece.family === "prop" ? { ...piece, class: null } : piece)),
    });
    expect(slab).toMatchObject({ status: "not-checked", limit: null, value: expect.closeTo(9.6875, 9) });
    expect(prop!.reason).toMatch(/gives no class of EN 1065/);
  });

  it("is not asked where the project says nothing of it", () => {
    expect(checksOf(null, 7)).toEqual([]);
    const read = readLoads({});
    expect(read.status === "ok" && shoringRows(read.value)).toEqual([]);
  });

  it("lists its steps", () => {
    const read = readLoads({ shoring: { shores: 2, storeys: 4 } });
    if (read.status === "invalid") throw new Error("loads");
    const rows = shoringRows(read.value);
    expect(rows.map(({ step }) => step)).toEqual([
      "pour 1",
      "pour 2",
      "remove 1",
      "pour 3",
      "remove 2",
      "pour 4",
      "remove 3",
      "remove 4",
    ]);
    expect(rows[5]!.slabs[1]).toBeCloseTo(2.25, 9);
  });
});
