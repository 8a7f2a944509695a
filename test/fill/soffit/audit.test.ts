// The audit of soffits must be able to fail: a right fill spoiled in one way at a time, and what the audit says of it.

import { describe, expect, it } from "vitest";
import type { Soffit, SoffitPiece, UnitFill } from "../../../src/fill/result.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import type { Position } from "../../../src/plan/project.ts";
import { soffitFaults } from "../../support/audit/soffits.ts";
import { fillOne } from "../../support/filled.ts";
import { roundRoom, unitOf } from "../../support/walls.ts";

const fill = fillOne(unitOf(roundRoom([-50, -50], [3050, 3650], 100)));
const faults = (spoiled: UnitFill) => soffitFaults(spoiled, demoKit);
const withSoffit = (change: (soffit: Soffit) => Partial<Soffit>): UnitFill => ({
  ...fill,
  soffits: fill.soffits.map((soffit) => ({ ...soffit, ...change(soffit) })),
});
const withPieces = (change: (pieces: readonly SoffitPiece[]) => readonly SoffitPiece[]) =>
  withSoffit(({ pieces }) => ({ pieces: change(pieces) }));
const firstOf = (pieces: readonly SoffitPiece[], family: string) =>
  pieces.find((one) => one.family === family)!;
const moved = (one: SoffitPiece, dx: number, dy: number): SoffitPiece => ({
  ...one,
  outline: one.outline.map(([x, y]): Position => [x + dx, y + dy]),
});

describe("the audit of soffits", () => {
  it("finds nothing in a right fill", () => {
    expect(faults(fill)).toEqual([]);
  });

  it.each<{ why: string; says: RegExp; spoiled: UnitFill }>([
    {
      why: "a panel left out",
      says: /not covered once/,
      spoiled: withPieces((all) => all.filter((one) => one !== firstOf(all, "slab-panel"))),
    },
    {
      why: "a panel laid over its neighbour",
      says: /not covered once/,
      spoiled: withPieces((all) =>
        all.map((one) => (one === firstOf(all, "slab-panel") ? moved(one, 50, 0) : one)),
      ),
    },
    {
      why: "a fraction",
      says: /not on whole mm/,
      spoiled: withPieces((all) =>
        all.map((one) => (one.family === "slab-panel" ? moved(one, 0.5, 0) : one)),
      ),
    },
    {
      why: "a strip left out: panels hang",
      says: /hangs at an end/,
      spoiled: withPieces((all) => all.filter((one) => one !== firstOf(all, "shoring-strip"))),
    },
    {
      why: "connectors left out: panels hang",
      says: /hangs at an end/,
      spoiled: withPieces((all) => all.filter(({ family }) => family !== "wall-slab-connector")),
    },
    {
      why: "a hole no error explains",
      says: /points at no error/,
      spoiled: withSoffit(({ pieces }) => {
        const lost = firstOf(pieces, "slab-panel");
        return {
          pieces: pieces.filter((one) => one !== lost),
          unfilled: [{ outline: lost.outline, problem: 99 }],
        };
      }),
    },
    {
      why: "a code of another size",
      says: /S500x1200 is /,
      spoiled: withPieces((all) =>
        all.map((one) => (one.code === "S600x1200" ? { ...one, code: "S500x1200" } : one)),
      ),
    },
    {
      why: "a connector that hangs on no face",
      says: /hangs on no face/,
      spoiled: withPieces((all) =>
        all.map((one) => (one.family === "wall-slab-connector" ? { ...one, piece: "x" } : one)),
      ),
    },
    {
      why: "one id for two pieces",
      says: /listed twice/,
      spoiled: withPieces((all) =>
        all.map((one) => (one.family === "slab-panel" ? { ...one, piece: "x" } : one)),
      ),
    },
    {
      why: "a prop left out where four panels meet",
      says: /no head at/,
      spoiled: withSoffit(({ props }) => ({ props: props.slice(1) })),
    },
    {
      why: "props too far apart",
      says: /between heads/,
      spoiled: withSoffit(({ props }) => ({ props: props.filter((_, k) => k % 4 === 0 || k % 4 === 3) })),
    },
    {
      why: "a prop beside its strip",
      says: /stands under no strip/,
      spoiled: withSoffit(({ props }) => ({
        props: props.map((prop) => ({ ...prop, at: [prop.at[0], prop.at[1] + 100] as const })),
      })),
    },
    {
      why: "an end held by nobody",
      says: /its (first|last) end is held by/,
      spoiled: withPieces((all) => all.map(({ heldBy: _, ...one }) => one)),
    },
    {
      why: "a prop that carries more than lies on it",
      says: /heads carry/,
      spoiled: withSoffit(({ props }) => ({
        props: props.map((prop) => ({ ...prop, area: prop.area + 0.01 })),
      })),
    },
    {
      why: "a wrong count",
      says: /panels 14, counted 15/,
      spoiled: withSoffit(({ counts }) => ({ counts: { ...counts, panels: 14 } })),
    },
    { why: "a soffit too many", says: /for the rooms/, spoiled: { ...fill, rooms: [] } },
  ])("finds $why", ({ says, spoiled }) => {
    expect(faults(spoiled).filter((fault) => says.test(fault))).not.toEqual([]);
  });
});
