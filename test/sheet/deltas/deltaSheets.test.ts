// The delta lists on paper and as a table: every piece told once, in every language, whatever names a project has.

import { describe, expect, it, vi } from "vitest";
import { fillProject } from "../../../src/fill/fillProject.ts";
import { mirrorFill } from "../../../src/fill/mirror.ts";
import { loadUnion } from "../../../src/geom/union.ts";
import { demoKit } from "../../../src/kit/demo.ts";
import type { Kit } from "../../../src/kit/kit.ts";
import type { Language, Project } from "../../../src/plan/project.ts";
import { deltaContent } from "../../../src/sheet/deltas/deltaGroups.ts";
import { deltaSheets, planOf } from "../../../src/sheet/deltas/deltaSheet.ts";
import { deltasCsv } from "../../../src/sheet/deltas/deltasCsv.ts";
import { DELTA_WORDS } from "../../../src/sheet/deltas/words.ts";
import type { SmallPaper } from "../../../src/sheet/paper.ts";
import { handedEntries, sheetSets } from "../../../src/sheet/sheetSet.ts";
import { sheetToSvg } from "../../../src/sheet/svg.ts";
import { piece } from "../../support/kits.ts";
import { LANGUAGES } from "../../support/listFills.ts";
import { readCsv } from "../../support/readCsv.ts";
import { filled, sampleProject } from "../../support/samples.ts";
import { besideMarkup, outsidePaper, overlappingTexts } from "../../support/sheetClaims.ts";
import { HOSTILE_NAMES } from "../../support/sheetFills.ts";

vi.setConfig({ testTimeout: 60_000 });

const union = await loadUnion();
const SAMPLES = ["row-of-three", "two-bedroom", "mirrored-pair"] as const;

const fillOf = (project: Project, kit: Kit) =>
  kit === demoKit ? filled(project) : fillProject(project, kit, union);

function printed(
  project: Project,
  paper: SmallPaper = "A4",
  kit: Kit = demoKit,
  fill = fillOf(project, kit),
) {
  return handedEntries({ fill, project, kit }, { paper }).flatMap((entry) =>
    deltaSheets({ ...entry, fill: entry.whole }, entry.fill, entry, entry.info).map((sheet) => ({
      ...sheet,
      name: sheet.name + entry.ending,
    })),
  );
}

const textsOf = (sheet: ReturnType<typeof printed>[number]) =>
  sheet.marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));

describe("the sheets", () => {
  const cases = SAMPLES.flatMap((name) =>
    LANGUAGES.flatMap((language) => (["A4", "Letter"] as const).map((paper) => ({ name, language, paper }))),
  );
  it.each(cases)(
    "of $name in $language on $paper stay on the paper and lay no text over another",
    (given) => {
      const sheets = printed({ ...sampleProject(given.name), language: given.language }, given.paper);
      expect(sheets.length).toBeGreaterThan(0);
      for (const sheet of sheets) {
        expect(outsidePaper(sheet, 9)).toEqual([]);
        expect(overlappingTexts(sheet)).toEqual([]);
      }
    },
  );

  it("are bound behind the other lists", () => {
    const project = sampleProject("mirrored-pair");
    const sets = sheetSets({ fill: filled(project), project, kit: demoKit, union });
    for (const { sheets } of sets) {
      const lists = sheets.map(({ kind }) => kind).filter((kind) => kind !== "calculations");
      expect(lists.at(-1)).toBe("delta");
    }
  });

  it("are one list a pour, with names of their own", () => {
    const project = sampleProject("row-of-three");
    const sheets = printed(project);
    const lists = new Set(sheets.map(({ name }) => name.replace(/-p\d+(?=-mirrored|$)/, "")));
    expect([...lists].sort()).toEqual([
      "f-delta-1",
      "f-delta-6-mirrored",
      "n-delta-2",
      "n-delta-5-mirrored",
      "t-delta-3",
      "t-delta-4-mirrored",
    ]);
    expect(new Set(sheets.map(({ name }) => name)).size).toBe(sheets.length);
  });

  it("are none where there is one day of work", () => {
    expect(printed(sampleProject("one-room"))).toEqual([]);
    const project = sampleProject("row-of-three");
    expect(printed({ ...project, pours: project.pours.map((pour) => ({ ...pour, day: 1 })) })).toEqual([]);
  });

  it("follow the units in turn where the project names no pours", () => {
    const sheets = printed({ ...sampleProject("row-of-three"), pours: [] });
    expect(
      sheets.filter(({ name }) => !/-p[2-9]$/.test(name)).map(({ name }) => name.replace(/-p1$/, "")),
    ).toEqual(["f-delta-1", "n-delta-2", "t-delta-3"]);
  });

  it("say how many sets of props turn over, and that the kit reckons with fewer", () => {
    const project = { ...sampleProject("two-bedroom"), concrete: { propRetention: 7, cycle: 4 } };
    const all = printed(project).flatMap(textsOf).join(" ");
    expect(all).toContain("7 days under the slab at a pour every 4 days make 3 sets");
    expect(all).not.toContain("This list goes by the kit");
    expect(printed(sampleProject("two-bedroom")).flatMap(textsOf).join(" ")).toMatch(
      /every day make 8 sets.*unless the project says otherwise.*goes by the kit: 3 sets/,
    );
  });

  it("tell which left and right pieces change rooms", () => {
    const kit: Kit = {
      ...demoKit,
      pieces: demoKit.pieces.flatMap((each) =>
        each.family === "brace"
          ? [
              piece({ family: "brace", code: "Brace-left", length: 1500, hand: "left" }),
              piece({ family: "brace", code: "Brace-right", length: 1500, hand: "right" }),
            ]
          : [each],
      ),
    };
    const project = sampleProject("two-bedroom");
    const second = printed(project, "A4", kit).filter(({ name }) => name.startsWith("h-delta-2"));
    const texts = second.flatMap(textsOf);
    expect(texts).toContain(DELTA_WORDS.en.swap);
    expect(texts.filter((text) => /^\d+ → \d+$/.test(text)).length).toBeGreaterThan(0);
    const fill = fillProject(project, kit, union);
    const unit = fill.units[0]!;
    const braces = (bill: typeof unit.bill) =>
      Object.fromEntries(
        bill.filter(({ family }) => family === "brace").map((line) => [line.code, line.quantity]),
      );
    const left = braces(unit.bill);
    expect(braces(mirrorFill(unit, kit).bill)).toEqual({
      ...(left["Brace-left"] !== undefined && { "Brace-right": left["Brace-left"] }),
      ...(left["Brace-right"] !== undefined && { "Brace-left": left["Brace-right"] }),
    });
  });

  it.each(HOSTILE_NAMES)("cannot be broken by names: %j", (name) => {
    const project = sampleProject("mirrored-pair");
    const hostile: Project = {
      ...project,
      name,
      pours: project.pours.map((pour) => ({ ...pour, name })),
      units: project.units.map((unit) => ({
        ...unit,
        name,
        rooms: unit.rooms.map((room) => ({ ...room, name: name === "" ? "x" : name })),
      })),
    };
    for (const sheet of printed(hostile)) {
      const svg = sheetToSvg(sheet);
      expect(besideMarkup(svg)).not.toMatch(/[<>&]/);
      expect(svg.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\ufffe\uffff]/u);
      expect(outsidePaper(sheet, 9)).toEqual([]);
      expect(overlappingTexts(sheet)).toEqual([]);
    }
  });
});

describe("the content", () => {
  it.each(SAMPLES)("of %s sums: what is needed comes along, from a room or from the store", (name) => {
    const project = sampleProject(name);
    const plan = planOf({ fill: filled(project), project, kit: demoKit });
    for (const delta of plan.days.flatMap(({ pours }) => pours)) {
      const { figures, sections, handovers } = deltaContent(plan, delta, project);
      expect(figures.goAlong + figures.moved + figures.fetched).toBe(figures.needed);
      const total = (sign: string) => sections.find((section) => section.sign === sign)?.total ?? 0;
      expect(total("→")).toBe(figures.moved);
      expect(total("−")).toBe(figures.returned);
      expect(total("+")).toBe(figures.fetched);
      expect(total("0")).toBe(figures.idle);
      expect(handovers.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(figures.goAlong);
    }
  });
});

describe("the table", () => {
  const project = sampleProject("row-of-three");
  const fill = filled(project);
  const [head, ...rows] = readCsv(deltasCsv(planOf({ fill, project, kit: demoKit }), demoKit));
  const at = (name: string) => head!.indexOf(name);

  it("gives every pour all that its bill counts", () => {
    for (const { id, unit } of project.pours) {
      const bill = fill.units.find((each) => each.unit === unit)!.bill;
      for (const { code, quantity } of bill) {
        const come = rows.filter(
          (row) =>
            row[at("pour")] === id &&
            row[at("code")] === code &&
            ["along", "move", "fetch"].includes(row[at("action")]!),
        );
        expect([id, code, come.reduce((sum, row) => sum + Number(row[at("quantity")]), 0)]).toEqual([
          id,
          code,
          quantity,
        ]);
      }
    }
  });

  it("takes nothing from the store but what was never fetched or came back", () => {
    const codes = new Set(
      rows.filter((row) => row[at("family")] !== "tie-sleeve").map((row) => row[at("code")]!),
    );
    for (const code of codes) {
      const of = (action: string) =>
        rows
          .filter((row) => row[at("code")] === code && row[at("action")] === action)
          .reduce((sum, row) => sum + Number(row[at("quantity")]), 0);
      expect(of("fetch")).toBeGreaterThanOrEqual(of("return"));
    }
  });
});

describe("the words", () => {
  it.each(LANGUAGES)("speak of one day in %s without a number of days", (language: Language) => {
    const words = DELTA_WORDS[language];
    const told = words.props({ retention: "7", cycle: "1", sets: 8, pieces: "10", isDefault: false });
    expect(told).not.toMatch(/\b1 (days|días|dias)\b/);
    expect(told).toContain("8");
  });
});
