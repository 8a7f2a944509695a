import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { demoKit, demoKitJson } from "../../src/kit/demo.ts";
import { FAMILIES } from "../../src/kit/kit.ts";
import { parseKit } from "../../src/kit/parse.ts";
import { resolveKit, shippedKits } from "../../src/kit/resolve.ts";
import { serializeKit } from "../../src/kit/serialize.ts";
import { anyKit } from "../support/kitArbitrary.ts";

const PANEL = { code: "P1", family: "wall-panel", mass: 29.7, width: 600, height: 2250 };
const OTHER = { ...PANEL, code: "P0", width: 300 };
const RULE = { value: 150, unit: "mm", origin: "common practice, no source" };

const withPiece = (given: object) => ({ name: "k", pieces: [OTHER, { ...PANEL, ...given }], rules: {} });
const withRule = (name: string, given: object) => ({
  name: "k",
  pieces: [OTHER],
  rules: { [name]: { ...RULE, ...given } },
});

function issuesOf(json: unknown) {
  const answer = parseKit(json);
  return answer.status === "invalid" ? answer.issues : [];
}

describe("a kit with one mistake in the second piece", () => {
  it.each([
    {
      why: "a width of a fraction",
      given: { width: 12.5 },
      member: ".width",
      telling: "whole number from 1 to 20000",
    },
    { why: "a width of nothing", given: { width: 0 }, member: ".width", telling: "found 0" },
    { why: "a negative height", given: { height: -2250 }, member: ".height", telling: "-2250" },
    { why: "a height beyond any panel", given: { height: 20_001 }, member: ".height", telling: "20001" },
    { why: "a width as text", given: { width: "600" }, member: ".width", telling: '"600"' },
    { why: "a width that is not a number", given: { width: Number.NaN }, member: ".width", telling: "NaN" },
    {
      why: "a width without end",
      given: { width: Number.POSITIVE_INFINITY },
      member: ".width",
      telling: "Infinity",
    },
    { why: "a width of 1e308", given: { width: 1e308 }, member: ".width", telling: "1e+308" },
    { why: "a width left out", given: { width: undefined }, member: ".width", telling: "found nothing" },
    { why: "a width of null", given: { width: null }, member: ".width", telling: "null" },
    { why: "a negative mass", given: { mass: -0.1 }, member: ".mass", telling: "kg" },
    { why: "a mass of 1e308", given: { mass: 1e308 }, member: ".mass", telling: "1e+308" },
    { why: "a mass that is not a number", given: { mass: Number.NaN }, member: ".mass", telling: "NaN" },
    { why: "a negative price", given: { price: -1 }, member: ".price", telling: "-1" },
    { why: "a price as a list", given: { price: [1, 2] }, member: ".price", telling: "a number from 0" },
    { why: "standard as a word", given: { standard: "yes" }, member: ".standard", telling: "true or false" },
    { why: "a third hand", given: { hand: "both" }, member: ".hand", telling: '"left" or "right"' },
    { why: "stays half a pour", given: { stays: 0.5 }, member: ".stays", telling: "whole number" },
    { why: "an unknown family", given: { family: "beam" }, member: ".family", telling: '"wall-panel"' },
    {
      why: "a family of the language",
      given: { family: "constructor" },
      member: ".family",
      telling: '"constructor"',
    },
    {
      why: "a family reached by the prototype",
      given: { family: "__proto__" },
      member: ".family",
      telling: "__proto__",
    },
    { why: "one leg", given: { family: "inside-corner", legs: [150] }, member: ".legs", telling: "two legs" },
    {
      why: "a leg of nothing",
      given: { family: "inside-corner", legs: [150, 0] },
      member: ".legs[1]",
      telling: "found 0",
    },
    {
      why: "a corner that turns nowhere",
      given: { family: "cap-corner", legs: [65, 65], turn: "left" },
      member: ".turn",
      telling: '"inside" or "outside"',
    },
    {
      why: "a range upside down",
      given: { family: "prop", least: 3500, greatest: 2000 },
      member: ".greatest",
      telling: "3500",
    },
    {
      why: "a prop of a class that is none",
      given: { family: "prop", least: 2000, greatest: 3500, class: "F" },
      member: ".class",
      telling: '"D" or "E" (piece "P1"), found "F"',
    },
    {
      why: "a closure range upside down",
      given: { family: "closure-strip", least: 59, greatest: 10 },
      member: ".greatest",
      telling: "59",
    },
    { why: "a tie without length", given: { family: "tie" }, member: ".length", telling: "found nothing" },
    {
      why: "a pin as long as a text",
      given: { family: "pin", length: "60" },
      member: ".length",
      telling: '"60"',
    },
  ])("names the piece: $why", ({ given, member, telling }) => {
    const [issue, ...others] = issuesOf(withPiece(given));
    expect(others).toEqual([]);
    expect(issue?.path).toBe(`pieces[1]${member}`);
    expect(`${issue?.expected}, found ${issue?.found}`).toContain(telling);
    expect(issue?.expected).toContain('(piece "P1")');
  });

  it.each([
    { why: "no code", code: undefined, telling: "found nothing" },
    { why: "an empty code", code: "", telling: "1 to 64 characters" },
    { why: "a code of 65 characters", code: "x".repeat(65), telling: "1 to 64 characters" },
    { why: "a number for a code", code: 7, telling: "found 7" },
    { why: "a line end in a code", code: "P\n1", telling: "without control characters" },
    { why: "a mark that turns the line round", code: "P\u202e1", telling: "without control characters" },
    { why: "a code that reaches the prototype", code: "__proto__", telling: "reserved" },
    { why: "the code of the piece before", code: "P0", telling: "pieces[0]" },
  ])("names its place: $why", ({ code, telling }) => {
    const [issue, ...others] = issuesOf(withPiece({ code }));
    expect(others).toEqual([]);
    expect(issue?.path).toBe("pieces[1].code");
    expect(`${issue?.expected}, found ${issue?.found}`).toContain(telling);
  });
});

describe("a kit with a mistake elsewhere", () => {
  it.each([
    { why: "nothing", json: undefined, path: "", telling: "a kit" },
    { why: "null", json: null, path: "", telling: "null" },
    { why: "a list", json: [], path: "", telling: "an empty list" },
    { why: "a name left out", json: { pieces: [], rules: {} }, path: "name", telling: "nothing" },
    {
      why: "members of the prototype only",
      json: Object.create({ name: "k", pieces: [] }, { pieces: { value: [], enumerable: true } }),
      path: "name",
      telling: "nothing",
    },
    {
      why: "no list of pieces",
      json: { name: "k", pieces: { length: 1 }, rules: {} },
      path: "pieces",
      telling: "a list of pieces",
    },
    {
      why: "a piece of null",
      json: { name: "k", pieces: [null], rules: {} },
      path: "pieces[0]",
      telling: "null",
    },
    {
      why: "rules in a list",
      json: { name: "k", pieces: [], rules: [] },
      path: "rules",
      telling: "the rules",
    },
    {
      why: "a currency of 17 letters",
      json: { name: "k", currency: "x".repeat(17), pieces: [] },
      path: "currency",
      telling: "1 to 16",
    },
    {
      why: "a bare value for a rule",
      json: { name: "k", pieces: [], rules: { cornerLeg: 150 } },
      path: "rules.cornerLeg",
      telling: "value, unit, origin",
    },
    {
      why: "a rule in centimetres",
      json: withRule("cornerLeg", { value: 15, unit: "cm" }),
      path: "rules.cornerLeg.unit",
      telling: '"mm"',
    },
    {
      why: "a rule without origin",
      json: withRule("cornerLeg", { origin: undefined }),
      path: "rules.cornerLeg.origin",
      telling: "comes from",
    },
    {
      why: "a leg of nothing",
      json: withRule("cornerLeg", { value: 0 }),
      path: "rules.cornerLeg.value",
      telling: "from 1",
    },
    {
      why: "holes as one number",
      json: withRule("holes", {}),
      path: "rules.holes.value",
      telling: "first and pitch",
    },
    {
      why: "holes without pitch",
      json: withRule("holes", { value: { first: 150, pitch: 0 } }),
      path: "rules.holes.value.pitch",
      telling: "found 0",
    },
    {
      why: "tie rows out of order",
      json: withRule("tieRows", { value: [450, 150] }),
      path: "rules.tieRows.value[1]",
      telling: "above 450",
    },
    {
      why: "a tie row twice",
      json: withRule("tieRows", { value: [150, 150] }),
      path: "rules.tieRows.value[1]",
      telling: "above 150",
    },
    {
      why: "a person who lifts nothing",
      json: withRule("personLimit", { value: 0, unit: "kg" }),
      path: "rules.personLimit.value",
      telling: "kg",
    },
    {
      why: "a pressure without end",
      json: withRule("panelPressure", { value: 1e308, unit: "kPa" }),
      path: "rules.panelPressure.value",
      telling: "1e+308",
    },
  ])("$why", ({ json, path, telling }) => {
    const [issue, ...others] = issuesOf(json);
    expect(others).toEqual([]);
    expect(issue?.path).toBe(path);
    expect(`${issue?.expected}, found ${issue?.found}`).toContain(telling);
  });

  it("takes 20,000 pieces and no more", () => {
    const many = (count: number) => Array.from({ length: count }, (_, i) => ({ ...PANEL, code: `P${i}` }));
    expect(parseKit({ name: "k", pieces: many(20_000), rules: {} }).status).toBe("ok");
    expect(issuesOf({ name: "k", pieces: many(20_001), rules: {} })[0]?.expected).toContain("20000");
  });

  it("reports every mistake of one reading, fifty at most", () => {
    const bad = { code: "P", family: "wall-panel", mass: -1, width: 0, height: 0 };
    expect(issuesOf({ name: "k", pieces: [bad], rules: {} })).toHaveLength(3);
    expect(issuesOf({ name: "k", pieces: new Array(1000).fill(bad), rules: {} })).toHaveLength(50);
  });

  it("reads nothing through the prototype", () => {
    const json: unknown = JSON.parse(
      '{"name":"k","pieces":[{"__proto__":{"code":"P1","family":"tie","mass":1,"length":100}}],"rules":{}}',
    );
    expect(issuesOf(json)[0]?.path).toBe("pieces[0].family");
    expect(issuesOf(JSON.parse('{"__proto__":{"name":"k"},"pieces":[]}'))[0]?.path).toBe("name");
  });
});

describe("a kit that can be used", () => {
  it("fills in what goes without saying", () => {
    expect(parseKit({ name: "k", pieces: [PANEL] })).toMatchObject({
      status: "ok",
      kit: {
        name: "k",
        currency: null,
        pieces: [{ ...PANEL, price: null, standard: false, hand: null, stays: 0 }],
        rules: {},
      },
    });
  });

  it("takes null for a member that may be left out", () => {
    const pin = { code: "Pin", family: "pin", mass: 0.2, price: null, hand: null, length: null };
    const answer = parseKit({ name: "k", currency: null, pieces: [pin], rules: { tieLoad: null } });
    expect(answer).toMatchObject({
      status: "ok",
      kit: { pieces: [{ length: null, price: null }], rules: {} },
    });
  });

  it("reads, of what it does not know, nothing, and says so", () => {
    const answer = parseKit({
      ...withRule("tieRow", {}),
      pieces: [{ ...PANEL, shelf: "B", bay: 4 }],
      owner: "yard",
    });
    expect(answer.status === "ok" && answer.kit.rules).toEqual({});
    expect(answer.status === "ok" && answer.kit.pieces[0]).not.toHaveProperty("shelf");
    const warnings = answer.status === "ok" ? answer.warnings.join("\n") : "";
    expect(warnings).toContain("rules.tieRow is no rule of this version");
    expect(warnings).toContain("pieces[0].shelf and 2");
  });

  it("is the demo kit, from its JSON and from the text of its JSON", () => {
    expect(parseKit(demoKitJson)).toEqual({ status: "ok", kit: demoKit, warnings: [] });
    expect(parseKit(JSON.parse(JSON.stringify(demoKitJson)))).toEqual({
      status: "ok",
      kit: demoKit,
      warnings: [],
    });
  });

  it("comes back from its JSON as it was, whatever it holds", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(anyKit, (kit) => {
        const answer = parseKit(JSON.parse(JSON.stringify(serializeKit(kit))));
        expect(answer).toMatchObject({ status: "ok" });
        expect(answer.status === "ok" && answer.kit).toEqual(kit);
        for (const piece of kit.pieces) seen.add(piece.family);
      }),
      { seed: 75, numRuns: 200 },
    );
    expect(seen.size).toBe(FAMILIES.length);
  });

  it("is written in the order of the file format", () => {
    const written = serializeKit(demoKit);
    expect(Object.keys(written)).toEqual(["name", "currency", "pieces", "rules"]);
    expect(JSON.stringify(written.pieces)).toContain(
      '{"code":"W600x2250","family":"wall-panel","mass":29.7,"price":139.5,"standard":true,"width":600,"height":2250}',
    );
  });
});

describe("the kit of a project", () => {
  it("is the shipped one by name", () => {
    expect(resolveKit("demo")).toEqual({ status: "ok", kit: demoKit, warnings: [] });
    expect(shippedKits).toEqual(["demo"]);
  });

  it.each(["Demo", "", "constructor", "__proto__"])("is not one called %j", (name) => {
    const answer = resolveKit(name);
    expect(answer).toMatchObject({
      status: "invalid",
      issues: [{ path: "kit", found: JSON.stringify(name) }],
    });
    expect(answer.status === "invalid" && answer.issues[0]?.expected).toContain('"demo"');
  });

  it("is the one it carries, its mistakes placed in the project", () => {
    expect(resolveKit(demoKitJson)).toMatchObject({ status: "ok", kit: { name: "demo" } });
    const answer = resolveKit(withPiece({ width: 0 }));
    expect(answer).toMatchObject({ status: "invalid", issues: [{ path: "kit.pieces[1].width" }] });
    expect(answer.status === "invalid" && answer.issues[0]?.expected).toContain('(piece "P1")');
  });
});
