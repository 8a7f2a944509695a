// Completeness: a sound fill has no fault, and each fault put in by hand is found by the check that is for it.

import { describe, expect, it } from "vitest";
import type { CheckedEntry } from "../../src/assess/entry.ts";
import { pointOn } from "../../src/assess/openingPlaces.ts";
import { wholeChecks } from "../../src/assess/wholeChecks.ts";
import type { UnitFill } from "../../src/fill/result.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { entryOf } from "../support/assessed.ts";
import { fillDocument, opening, projectOf } from "../support/filled.ts";
import { roomPlan } from "../support/roomPlan.ts";
import { samples } from "../support/samples.ts";

const project = projectOf({
  ...roomPlan(0),
  openings: [opening("d1", "w1", [1050, 900, 0, 2100]), opening("n1", "w3", [910, 1200, 900, 2100])],
});
const plain = entryOf({ project, fill: fillDocument(project) });
const faults = (entry: CheckedEntry) =>
  wholeChecks(entry)
    .filter(({ status }) => status === "over")
    .map(({ kind }) => kind);

it("a sound fill has no fault, and every check says its rule", () => {
  expect(faults(plain)).toEqual([]);
  for (const check of wholeChecks(plain)) {
    if (check.status === "within") expect(check).toMatchObject({ value: 0, limit: 0 });
    else expect(check.reason, check.kind).toBeTruthy();
  }
});

it("the samples are sound but for what their own fill calls an error", () => {
  for (const { project: sample, fill } of samples()) {
    const entry = entryOf({ project: sample, fill });
    const hasErrors = entry.fill.problems.some(({ severity }) => severity === "error");
    expect(faults(entry).filter((kind) => !["nothing-open", "first-out"].includes(kind))).toEqual([]);
    if (!hasErrors) expect(faults(entry)).toEqual([]);
  }
});

const firstFace = (fill: UnitFill, change: (face: UnitFill["faces"][number]) => object) => ({
  faces: fill.faces.map((face, k) => (k === 0 ? { ...face, ...change(face) } : face)),
});
const firstTie = (fill: UnitFill, change: object) => ({
  ties: fill.ties.map((tie, k) => (k === 0 ? { ...tie, ...change } : tie)),
});

it("finds a tie in an opening though the kit does not say how near one may stand", () => {
  const { tieEdge: _, ...rules } = demoKit.rules;
  const entry: CheckedEntry = { ...plain, kit: { ...plain.kit, rules } };
  expect(faults(entry)).toEqual([]);
  const face = plain.fill.faces.find(({ openings }) => openings.some(({ id }) => id === "n1"))!;
  const { x, width } = face.openings.find(({ id }) => id === "n1")!;
  const at = pointOn(face, x + width / 2);
  const fill = { ...plain.fill, ...firstTie(plain.fill, { at, heights: [1500], faces: [face.id, face.id] }) };
  const check = wholeChecks({ ...entry, fill }).find(({ kind }) => kind === "ties-clear");
  expect(check).toMatchObject({ status: "over", reason: "tie 1 at 1500 mm" });
});

describe("a fault put in by hand", () => {
  it.each<{ kind: string; spoil: (fill: UnitFill) => Partial<UnitFill> }>([
    { kind: "faces-tiled", spoil: (fill) => firstFace(fill, ({ pieces }) => ({ pieces: pieces.slice(1) })) },
    {
      kind: "nothing-open",
      spoil: (fill) =>
        firstFace(fill, () => ({ unfilled: [{ x: 0, z: 0, width: 0, height: 1, problem: 0 }] })),
    },
    {
      kind: "ties-in-joints",
      spoil: (fill) => firstTie(fill, { at: [fill.ties[0]!.at[0] + 40, fill.ties[0]!.at[1] + 40] }),
    },
    { kind: "lowest-ties", spoil: (fill) => firstTie(fill, { heights: [750, 1200] }) },
    {
      kind: "ties-clear",
      spoil: (fill) => {
        const beside = fill.faces.find(({ openings }) => openings.some(({ id }) => id === "n1"))!;
        const line = fill.ties.findIndex(
          ({ faces, heights }) => faces.includes(beside.id) && heights.length < 5,
        );
        return { ties: fill.ties.map((tie, k) => (k === line ? { ...tie, heights: [150, 850] } : tie)) };
      },
    },
    { kind: "ties-single", spoil: ({ ties }) => ({ ties: [...ties, ties[0]!] }) },
    {
      kind: "opening-kits",
      spoil: ({ reveals }) => ({
        reveals: reveals.filter(({ opening: id, side }) => id !== "n1" || side !== "sill"),
      }),
    },
    {
      kind: "closures-explained",
      spoil: (fill) =>
        firstFace(fill, ({ pieces }) => ({
          pieces: pieces.map((piece, k) => {
            const { reason: _, ...bare } = piece;
            return k === 0 ? { ...bare, family: "closure-strip" } : piece;
          }),
        })),
    },
    {
      kind: "first-out",
      spoil: () => ({
        problems: [{ severity: "error", kind: "locked-ring", message: "", where: { room: "Bath" } }],
      }),
    },
    {
      kind: "bill-counts",
      spoil: ({ bill }) => ({ bill: bill.map((line, k) => (k === 0 ? { ...line, quantity: 99 } : line)) }),
    },
  ])("is found by $kind", ({ kind, spoil }) => {
    const spoiled: CheckedEntry = { ...plain, fill: { ...plain.fill, ...spoil(plain.fill) } };
    expect(faults(spoiled)).toContain(kind);
    const check = wholeChecks(spoiled).find((each) => each.kind === kind);
    expect(check!.reason).toBeTruthy();
    expect(check!.value).toBeGreaterThan(0);
  });
});
