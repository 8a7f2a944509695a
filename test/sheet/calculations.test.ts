// What must hold on every calculation sheet: on the paper, nothing over another, every check there, the caution on every
// page, kinds that nobody foresaw as rows, and a slip in the loads told.

import { describe, expect, it, vi } from "vitest";
import type { Check } from "../../src/assess/checkDocument.ts";
import { demoKit } from "../../src/kit/demo.ts";
import type { Sheet } from "../../src/sheet/mark.ts";
import { sheetToSvg } from "../../src/sheet/svg.ts";
import { CONCRETE, calculated, LOADS, toldProject } from "../support/calculated.ts";
import { besideMarkup, outsidePaper, overlappingTexts } from "../support/sheetClaims.ts";
import { HOSTILE_NAMES } from "../support/sheetFills.ts";

// A busy machine takes its time over many sheets, and that is no fault of theirs.
vi.setConfig({ testTimeout: 60_000 });

function textsOf(sheet: Sheet): readonly string[] {
  return sheet.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
}

function hold(sheets: readonly Sheet[]): void {
  expect(sheets.length).toBeGreaterThan(0);
  for (const sheet of sheets) {
    expect(outsidePaper(sheet, 9)).toEqual([]);
    expect(overlappingTexts(sheet)).toEqual([]);
    expect(sheet.name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  }
}

const CASES = (["en", "es", "pt"] as const).flatMap((language) =>
  (["A4", "Letter"] as const).map((paper) => ({ language, paper })),
);

describe.each(CASES)("calculation sheets in $language on $paper", ({ language, paper }) => {
  it.each([
    { why: "everything told", project: toldProject("one-room", { language }) },
    {
      why: "nothing told",
      project: toldProject("one-room", { language, concrete: {}, loads: {} }),
      kit: demoKit,
    },
    {
      why: "ACI 347 in inches, design strengths",
      project: toldProject("one-room", {
        language,
        concrete: {
          pressureModel: "ACI 347 inch-pound",
          rate: 1,
          temperature: 20,
          cement: "blend",
          slump: 100,
          formStrength: "design",
          bottomTie: "half",
        },
        loads: { slabModel: "ACI 347", motorisedCarts: true, propStrength: "design" },
      }),
    },
    {
      why: "DIN 18218",
      project: toldProject("one-room", {
        language,
        concrete: {
          pressureModel: "DIN 18218",
          rate: 1,
          consistence: "F3",
          settingEnd: 7,
          measuredStrength: 12,
        },
      }),
    },
    {
      why: "tests of the mix, struck before the first of them",
      project: toldProject("one-room", {
        language,
        concrete: {
          ...CONCRETE,
          log: CONCRETE.log.map((reading) => [...reading]),
          strengthTests: [
            [2000, 14],
            [4000, 24],
          ],
        },
      }),
    },
  ])("keep to the paper: $why", (given) => {
    hold(calculated({ ...given, fields: { paper } }).sheets);
  });
});

describe("the calculation sheets of a whole flat", () => {
  const { sheets, checks } = calculated({ project: toldProject("two-bedroom") });
  const texts = sheets.flatMap(textsOf);

  it("keep to the paper", () => {
    hold(sheets);
  });

  it("say on every page that they are no design", () => {
    for (const sheet of sheets) expect(textsOf(sheet).join(" ")).toContain("planning aid and no design");
  });

  it("count every check, and call none by another word than the stated limit", () => {
    const all = checks.status === "checked" ? checks.document.checks : [];
    const count = (status: Check["status"]) => `${all.filter((check) => check.status === status).length}`;
    expect(textsOf(sheets[0]!)).toEqual(
      expect.arrayContaining([count("within"), count("over"), count("not-checked")]),
    );
    expect(texts).toContain("within the stated limit");
    expect(texts.join(" ")).not.toMatch(/\bsafe(ly|ty)?\b(?!-time-to-strip)/i); // but in the address of a source
  });

  it("have every line of ties, every prop and every piece in a row", () => {
    const document = checks.status === "checked" ? checks.document : null;
    const rows = (kind: string) => document!.checks.filter((check) => check.kind === kind);
    const props = rows("prop-load").length;
    for (let prop = 1; prop <= props; prop++)
      expect(texts.some((text) => text.includes(`, prop ${prop}, (`))).toBe(true);
    for (const { where } of rows("lift")) expect(texts).toContain(where.code);
    const lines = new Set(rows("tie-load").map(({ id }) => /\/t(\d+)\//.exec(id)![1]));
    for (const line of lines) expect(texts).toContain(line);
  });

  it("are made once for both hands, with the pours of both", () => {
    expect(texts.some((text) => text.includes("(mirrored)"))).toBe(true);
    expect(new Set(sheets.map(({ name }) => name)).size).toBe(sheets.length);
  });
});

describe("the calculation sheets of two units", () => {
  const one = toldProject("one-room");
  const [unit] = one.units;
  const other = { ...unit!, id: "Z", name: "Second" };
  const { sheets, checks } = calculated({ project: { ...one, units: [unit!, other] } });
  const document = checks.status === "checked" ? checks.document : null;
  const firstPages = sheets.filter((sheet) => textsOf(sheet).includes("At a glance"));

  it("count every check once, those of all pours together with the first unit", () => {
    expect(firstPages).toHaveLength(2);
    for (const [label, total] of [
      ["within the stated limit", document!.totals.within],
      ["over the stated limit", document!.totals.over],
      ["not checked", document!.totals.notChecked],
      ["nothing to check", document!.totals.notApplicable],
    ] as const) {
      // The figure stands before its label.
      const counts = firstPages.map((sheet) => {
        const texts = textsOf(sheet);
        return Number(texts[texts.indexOf(label) - 1]);
      });
      expect([label, counts[0]! + counts[1]!]).toEqual([label, total]);
    }
  });

  it("say once what only all pours together tell", () => {
    const said = sheets.flatMap((sheet, page) =>
      textsOf(sheet).flatMap((text) => (text.startsWith("All pours together") ? [page] : [])),
    );
    expect(said).toHaveLength(document!.checks.filter(({ where }) => where.unit === "").length);
    const second = sheets.indexOf(firstPages[1]!);
    expect(said.every((page) => page < second)).toBe(true);
  });
});

describe("a kind of check that nobody foresaw", () => {
  const strange: Check = {
    id: "X/strange",
    kind: "wind-on-forms",
    where: { unit: "", room: "", piece: "", code: "", at: null },
    value: 0.72,
    limit: 0.9,
    utilisation: 0.8,
    unit: "kPa",
    inputs: [{ sign: "v", name: "speed of the wind", value: 34, unit: "m/s" }],
    formula: "q = 0.613·v²/1000",
    source: "somebody's own",
    status: "within",
  };

  it.each(["en", "es"] as const)("is written out, and each further one is a row: %s", (language) => {
    const { sheets } = calculated({
      project: toldProject("one-room", { language }),
      change: (checks) => {
        if (checks.status !== "checked") return checks;
        const { document } = checks;
        const unit = document.checks[0]!.where.unit;
        const added = [1, 2, 3].map((k) => ({
          ...strange,
          where: { ...strange.where, unit, code: `Wall${k}` },
        }));
        return { ...checks, document: { ...document, checks: [...document.checks, ...added] } };
      },
    });
    hold(sheets);
    const texts = sheets.flatMap(textsOf);
    expect(texts).toContain("Wind on forms");
    expect(texts.some((text) => text.includes("speed of the wind"))).toBe(true);
    for (const k of [1, 2, 3]) expect(texts.some((text) => text.startsWith(`Wall${k}`))).toBe(true);
    const line = texts.find((text) => text.includes("v²/1000"));
    expect(line).toContain(language === "en" ? "= 0.613 × 34²/1000" : "= 0,613 × 34²/1000");
  });
});

describe("what the project says wrongly", () => {
  it("is told with its place in the file, in place of the calculations", () => {
    const { sheets } = calculated({ project: toldProject("one-room", { loads: { continuity: 9 } }) });
    expect(sheets).toHaveLength(1);
    hold(sheets);
    expect(textsOf(sheets[0]!).join(" ")).toContain("loads.continuity");
  });

  it.each(HOSTILE_NAMES)("cannot break the document: %j", (name) => {
    const project = toldProject("one-room", { name, loads: LOADS });
    const units = project.units.map((unit) => ({
      ...unit,
      name,
      rooms: unit.rooms.map((room) => ({ ...room, name })),
    }));
    const { sheets } = calculated({ project: { ...project, units } });
    hold(sheets);
    for (const sheet of sheets) expect(besideMarkup(sheetToSvg(sheet))).not.toMatch(/[<>&]/);
  });
});
