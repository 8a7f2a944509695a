// The packing list against the bill it deals out, against the room sheets it packs for, and against its own limits.

import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { UnitFill } from "../../../src/fill/result.ts";
import { roomPartsOf } from "../../../src/fill/roomParts.ts";
import { FAMILIES, type Family } from "../../../src/kit/kit.ts";
import { countRows } from "../../../src/sheet/countRows.ts";
import { boxCount } from "../../../src/sheet/lists/boxes.ts";
import type { Bundle } from "../../../src/sheet/lists/bundle.ts";
import { packingOf } from "../../../src/sheet/lists/bundles.ts";
import { stageOf } from "../../../src/sheet/lists/stages.ts";
import { unitEntry } from "../../support/fillDocument.ts";
import { oneRoomInfo } from "../../support/fixtureFill.ts";
import { type Listed, listedHostile, listedHouses, listedSample } from "../../support/listFills.ts";

const SAMPLES = ["one-room", "two-bedroom", "row-of-three", "mirrored-pair"];
const all = SAMPLES.flatMap((name) => listedSample(name).map((listed) => ({ name, listed })));
const RUNS = { seed: 20_261_127, numRuns: 25, endOnFailure: true };

/** Common practice, no source: what a small fork lifts, and what stands by itself. */
const MOST_KG = 600;
const MOST_LAYERS = 20;
const LAYER_MM = 600;

function counts(entries: readonly (readonly [string, number])[]): Record<string, number> {
  const sums = new Map<string, number>();
  for (const [code, count] of entries) sums.set(code, (sums.get(code) ?? 0) + count);
  return Object.fromEntries([...sums].filter(([, count]) => count > 0).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function packed(bundles: readonly Bundle[]): Record<string, number> {
  return counts(
    bundles.flatMap(({ rows }) => rows.map(({ item, quantity }) => [item.code, quantity] as const)),
  );
}

function billed(unit: UnitFill): Record<string, number> {
  return counts(unit.bill.map(({ code, quantity }) => [code, quantity] as const));
}

/** What a bundle may not be, in words; the arithmetic is this test's own. */
function faults({ unit, info }: Listed): readonly string[] {
  const { bundles, places } = packingOf(unit, info);
  return bundles.flatMap((bundle, index) => {
    const { rows, number, quantity, isOver } = bundle;
    const grams = rows.reduce(
      (sum, { item, quantity: some }) => sum + Math.round(item.mass * 1000) * some,
      0,
    );
    const layers = rows.reduce((sum, { item, quantity: some }) => {
      const short = item.height === 0 ? info.frameDepth : Math.min(item.width, item.height);
      const beside = item.width === 0 || short === null ? 1 : Math.max(1, Math.trunc(LAYER_MM / short));
      return sum + Math.ceil(some / beside);
    }, 0);
    const isAlone = quantity === 1 || (bundle.boxes?.full ?? 0) + (bundle.boxes?.rest ? 1 : 0) === 1;
    const boxed = bundle.boxes === null ? null : bundle.boxes.full * bundle.boxes.each + bundle.boxes.rest;
    return [
      ...(number === index + 1 ? [] : [`${number} is not the ${index + 1}th`]),
      ...(rows.every(({ item }) => item.family === bundle.family) ? [] : [`${number} mixes families`]),
      ...(grams <= MOST_KG * 1000 || (isOver && isAlone) ? [] : [`${number} weighs ${grams} g`]),
      ...(isOver === grams > MOST_KG * 1000 ? [] : [`${number} does not say that it is too heavy`]),
      ...(Math.abs(bundle.mass - grams / 1000) < 0.006 ? [] : [`${number} says ${bundle.mass} kg`]),
      ...(boxed !== null || layers <= MOST_LAYERS || quantity === 1
        ? []
        : [`${number} has ${layers} layers`]),
      ...(boxed === null || boxed === quantity ? [] : [`the boxes of ${number} hold ${boxed}`]),
      ...rows
        .filter(
          ({ byPlace, quantity: some }) =>
            byPlace.length !== places.length || byPlace.reduce((sum, one) => sum + one, 0) !== some,
        )
        .map(({ item }) => `the places of ${item.code} in ${number} do not sum`),
    ];
  });
}

describe("the bundles", () => {
  it.each(all)("of $name sum to the bill and keep their limits", ({ listed }) => {
    expect(packed(packingOf(listed.unit, listed.info).bundles)).toEqual(billed(listed.unit));
    expect(faults(listed)).toEqual([]);
  });

  it("of any house sum to its bill and keep their limits", () => {
    fc.assert(
      fc.property(listedHouses, (listed) => {
        expect(packed(packingOf(listed.unit, listed.info).bundles)).toEqual(billed(listed.unit));
        expect(faults(listed)).toEqual([]);
      }),
      RUNS,
    );
  });

  it("of any fill, whatever its pieces weigh and are called", () => {
    fc.assert(
      fc.property(listedHostile, (listed) => {
        expect(packed(packingOf(listed.unit, listed.info).bundles)).toEqual(billed(listed.unit));
        expect(faults(listed)).toEqual([]);
      }),
      RUNS,
    );
  });

  it("are the same whatever the order in which the fill lists its pieces", () => {
    fc.assert(
      fc.property(listedHouses, ({ unit, info }) => {
        const turned: UnitFill = {
          ...unit,
          faces: [...unit.faces].reverse().map((face) => ({ ...face, pieces: [...face.pieces].reverse() })),
          corners: [...unit.corners].reverse(),
          ties: [...unit.ties].reverse(),
          fittings: [...unit.fittings].reverse(),
        };
        expect(packingOf(turned, info)).toEqual(packingOf(unit, info));
      }),
      RUNS,
    );
  });

  it("hold one height each, but for heights that together weigh little", () => {
    const { unit, info } = all.find(({ name }) => name === "two-bedroom")!.listed;
    for (const { family, rows, height, mass } of packingOf(unit, info).bundles) {
      const heights = new Set(rows.map(({ item }) => item.height || item.width));
      if (heights.size === 1) continue;
      expect(height).toBeNull();
      for (const one of heights) {
        const same = unit.bill.filter(
          (line) =>
            line.family === family &&
            rows.some(({ item }) => item.code === line.code && (item.height || item.width) === one),
        );
        expect(same.reduce((sum, line) => sum + line.mass, 0)).toBeLessThan(100);
      }
      expect(mass).toBeLessThanOrEqual(MOST_KG);
    }
  });
});

describe("a full bundle", () => {
  it.each([
    { why: "20 × 30 is 600", mass: 30, needed: 61, bundles: [20, 20, 20, 1] },
    { why: "20 × 30.05 is 601", mass: 30.05, needed: 40, bundles: [19, 19, 2] },
    { why: "20 layers of what is light", mass: 12, needed: 50, bundles: [20, 20, 10] },
    { why: "one of 600", mass: 600, needed: 2, bundles: [1, 1] },
    { why: "one alone over it", mass: 600.01, needed: 2, bundles: [1, 1] },
  ])("$why", ({ mass, needed, bundles }) => {
    const bill = [
      { code: "P", family: "wall-panel" as const, quantity: needed, mass: mass * needed, area: 1 },
    ];
    const info = oneRoomInfo({ pieces: { P: { mass, standard: true, size: "600 × 2250" } } });
    const made = packingOf(unitEntry({ bill }), info).bundles;
    expect(made.map(({ quantity }) => quantity)).toEqual(bundles);
    expect(made.map(({ isOver }) => isOver)).toEqual(bundles.map(() => mass > MOST_KG));
  });
});

describe("the rooms of a bundle", () => {
  it.each(all)("get what the room sheets of $name count", ({ listed: { unit, info } }) => {
    const { bundles, places } = packingOf(unit, info);
    const parts = roomPartsOf(unit);
    const rooms = parts.filter(({ isOutside }) => !isOutside);
    places.slice(0, -1).forEach((place, index) => {
      const own = place.kind === "outside" ? parts.find(({ isOutside }) => isOutside) : rooms[index];
      const sheet = own === undefined ? [] : countRows(own, info).filter(({ isOwn }) => isOwn);
      const given = bundles.flatMap(({ rows }) =>
        rows.map(({ item, byPlace }) => [item.code, byPlace[index]!] as const),
      );
      expect(counts(given)).toEqual(counts(sheet.map(({ code, quantity }) => [code, quantity] as const)));
    });
  });

  it.each(all)(
    "leave only what has no place of its own to all rooms: $name",
    ({ listed: { unit, info } }) => {
      const { bundles } = packingOf(unit, info);
      const shared = bundles.filter(({ rows }) => rows.some(({ byPlace }) => byPlace.at(-1)! > 0));
      expect([...new Set(shared.map(({ family }) => family))].sort()).toEqual(["pin", "tie-sleeve", "wedge"]);
    },
  );
});

describe("the order of need", () => {
  it("begins with ties and corners, and ends with the slab panels on their props", () => {
    const { unit, info } = all.find(({ name }) => name === "two-bedroom")!.listed;
    const families = [...new Set(packingOf(unit, info).bundles.map(({ family }) => family))];
    const isBefore = (a: Family, b: Family) =>
      expect([a, b, families.indexOf(a) < families.indexOf(b)]).toEqual([a, b, true]);
    isBefore("pin", "inside-corner");
    isBefore("inside-corner", "wall-panel");
    isBefore("wall-panel", "wall-bracket");
    isBefore("wall-panel", "wall-slab-connector");
    isBefore("wall-slab-connector", "shoring-strip");
    isBefore("shoring-strip", "prop");
    isBefore("prop", "slab-panel");
  });

  it("knows every family", () => {
    expect(new Set(FAMILIES.map(stageOf)).size).toBe(FAMILIES.length);
    expect(Math.max(...FAMILIES.map(stageOf))).toBe(FAMILIES.length - 1);
  });
});

describe("a box", () => {
  it.each([
    { why: "0.18 × 100 = 18, × 200 = 36", mass: 0.18, count: 100 },
    { why: "0.12 × 200 = 24", mass: 0.12, count: 200 },
    { why: "0.3 × 50 = 15, × 100 = 30", mass: 0.3, count: 50 },
    { why: "no box holds more than a thousand", mass: 0.001, count: 1000 },
    { why: "weightless things too", mass: 0, count: 1000 },
    { why: "exactly the limit", mass: 12.5, count: 2 },
    { why: "one of what is too heavy", mass: 80, count: 1 },
  ])("holds a round number: $why", ({ mass, count }) => {
    expect(boxCount({ mass }, 25)).toBe(count);
  });
});
