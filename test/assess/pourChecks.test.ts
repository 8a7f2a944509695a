// What only all pours together tell, on two small units poured in turn.

import { describe, expect, it } from "vitest";
import type { Check } from "../../src/assess/checkDocument.ts";
import type { FillDocument } from "../../src/fill/result.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Kit } from "../../src/kit/kit.ts";
import type { Pour, Project } from "../../src/plan/project.ts";
import { assessed } from "../support/assessed.ts";
import { fillDocument, projectOf } from "../support/filled.ts";
import { roomPlan } from "../support/roomPlan.ts";

const pour = (id: string, day: number | null, more: Partial<Pour> = {}): Pour => ({
  id,
  name: id,
  unit: "A",
  mirror: false,
  day,
  storey: null,
  ...more,
});
const projectWith = (more: Partial<Project>): Project => projectOf(roomPlan(0), more);
const of = (project: Project, kind: string, { fill, kit }: { fill?: FillDocument; kit?: Kit } = {}): Check =>
  assessed({ project, fill: fill ?? fillDocument(project), ...(kit !== undefined && { kit }) }).checks.find(
    (each) => each.kind === kind,
  )!;

describe("the set beside the pours", () => {
  const fill = fillDocument(projectWith({}));
  const counted = Object.fromEntries(fill.units[0]!.bill.map(({ code, quantity }) => [code, quantity]));
  const props = demoKit.pieces.find(({ family, code }) => family === "prop" && counted[code] !== undefined)!;
  // Three pours in turn: panels are passed on, props stand under three slabs at once.
  const pours = [pour("p1", 1), pour("p2", 2), pour("p3", 3)];
  const enough = { ...counted };
  for (const { code, stays, family } of demoKit.pieces)
    if (counted[code] !== undefined)
      enough[code] = counted[code] * (family === "tie-sleeve" ? 3 : Math.min(3, stays + 1));

  it("is no limit where pieces are bought", () => {
    expect(of(projectWith({ pours }), "set-covers-pours").status).toBe("not-applicable");
  });

  it("is enough with what one pour takes, and what stays counted on", () => {
    expect(of(projectWith({ pours, buy: false, stock: enough }), "set-covers-pours")).toMatchObject({
      status: "within",
      value: 0,
    });
  });

  it("is short by one panel, and by the props that stay", () => {
    const panel = demoKit.pieces.find(
      ({ family, code }) => family === "wall-panel" && counted[code] !== undefined,
    )!;
    const short = { ...enough, [panel.code]: enough[panel.code]! - 1, [props.code]: counted[props.code]! };
    const found = of(projectWith({ pours, buy: false, stock: short }), "set-covers-pours");
    expect(found).toMatchObject({ status: "over", value: 2 });
    expect(found.reason).toContain(`${panel.code}: ${enough[panel.code]! - 1} of ${enough[panel.code]}`);
    expect(found.reason).toContain(props.code);
  });

  it("is short of sleeves that are enough for one pour only: they stay in the concrete", () => {
    const sleeve = demoKit.pieces.find(
      ({ family, code }) => family === "tie-sleeve" && counted[code] !== undefined,
    )!;
    const short = { ...enough, [sleeve.code]: counted[sleeve.code]! };
    const found = of(projectWith({ pours, buy: false, stock: short }), "set-covers-pours");
    expect(found).toMatchObject({ status: "over", value: 1 });
    expect(found.reason).toContain(`${sleeve.code}: ${counted[sleeve.code]} of ${3 * counted[sleeve.code]!}`);
  });

  it("is short where two pours of one day share it", () => {
    const sameDay = [pour("p1", 1), pour("p2", 1)];
    expect(of(projectWith({ pours: sameDay, buy: false, stock: enough }), "set-covers-pours").status).toBe(
      "over",
    );
  });
});

describe("props that stay", () => {
  const { stays } = demoKit.pieces.find(({ family }) => family === "prop")!;
  const every = (days: number, count: number) =>
    Array.from({ length: count }, (_, k) => pour(`p${k}`, 1 + k * days));

  it.each([
    { why: "no days", pours: [pour("p1", null)], status: "not-checked", reason: /no days/ },
    { why: "one pour", pours: every(1, 1), status: "not-applicable", reason: /no later pour/ },
    {
      why: "a day a pour",
      pours: every(1, 12),
      status: "not-checked",
      reason: /asks for 7: shorter only on strength/,
    },
  ])("are not judged with $why", ({ pours, status, reason }) => {
    const found = of(projectWith({ pours }), "prop-retention");
    expect(found.status).toBe(status);
    expect(found.reason).toMatch(reason);
  });

  it("stay long enough where a week goes by before they are needed again", () => {
    const found = of(projectWith({ pours: every(4, 12) }), "prop-retention");
    expect(found).toMatchObject({ status: "within", value: 7, limit: 4 * (stays + 1), unit: "d" });
  });
});

describe("mirrored pours", () => {
  it("need the other hand of each handed piece", () => {
    const pours = [pour("p1", 1), pour("p2", 2, { mirror: true })];
    const project = projectWith({ pours });
    expect(of(project, "handed-pieces").status).toBe("within");
    expect(of(projectWith({ pours: [pour("p1", 1)] }), "handed-pieces").status).toBe("not-applicable");
    const [unit] = fillDocument(project).units;
    const used = new Set(unit!.bill.map(({ code }) => code));
    const handed: Kit = {
      ...demoKit,
      pieces: demoKit.pieces.map((piece) =>
        piece.family === "wall-panel" && used.has(piece.code) ? { ...piece, hand: "left" } : piece,
      ),
    };
    const found = of(project, "handed-pieces", { kit: handed });
    expect(found.status).toBe("over");
    expect(found.reason).toContain("in unit A");
  });
});

describe("props over props", () => {
  const storey = { clearHeight: 2600, slab: 100 };
  const project = projectWith({ pours: [pour("p1", 1), pour("p2", 2, { storey })] });
  const fill = fillDocument(project);

  it("stand in line from storey to storey", () => {
    expect(fill.units).toHaveLength(2);
    expect(of(project, "props-aligned")).toMatchObject({ status: "within", value: 0 });
    expect(of(projectWith({}), "props-aligned").status).toBe("not-applicable");
  });

  it("are found where one stands 30 mm beside", () => {
    const [below, above] = fill.units;
    const moved = {
      ...above!,
      soffits: above!.soffits.map((soffit) => ({
        ...soffit,
        props: soffit.props.map((prop, k) =>
          k === 0 ? { ...prop, at: [prop.at[0] + 30, prop.at[1]] as const } : prop,
        ),
      })),
    };
    const found = of(project, "props-aligned", { fill: { ...fill, units: [below!, moved] } });
    expect(found).toMatchObject({ status: "over", value: 1 });
  });
});

describe("a set chosen for all pours", () => {
  const project = projectWith({ pours: [pour("p1", 1)] });
  const fill = fillDocument(project);
  const [line] = fill.units[0]!.bill;
  const others = fill.units[0]!.bill.slice(1).map(({ code, family, quantity }) => ({
    code,
    family,
    needed: quantity,
    owned: 0,
    toBuy: quantity,
    price: 1,
  }));
  const setOf = (needed: number, owned: number, rest = others): FillDocument => ({
    ...fill,
    set: {
      status: "optimal",
      countedBy: "price",
      pieces: [
        { code: line!.code, family: line!.family, needed, owned, toBuy: needed - owned, price: 1 },
        ...rest,
      ],
      cost: 0,
      parts: { set: 0, handling: 0, closures: 0, distinctSizes: 0, fixed: 0 },
      lowerBound: 0,
      proof: null,
      chosen: { widths: 1, fillers: 0 },
      wallByWall: null,
    },
  });

  it("covers what the bills count, not a piece fewer", () => {
    expect(of(project, "set-covers-pours", { fill: setOf(line!.quantity, 1) }).status).toBe("within");
    expect(of(project, "set-covers-pours", { fill: setOf(line!.quantity - 1, 1) }).status).toBe("over");
  });

  it("lists every kind of piece that the bills count", () => {
    const [absent, ...rest] = others;
    const found = of(project, "set-covers-pours", { fill: setOf(line!.quantity, 1, rest) });
    expect(found).toMatchObject({ status: "over", value: 1 });
    expect(found.reason).toContain(`${absent!.code}: 0 of ${absent!.needed}`);
  });
});
