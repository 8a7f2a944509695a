import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatIssue, type Issue, MAX_ISSUES } from "../../src/json/issue.ts";
import { MAX_DEPTH, MAX_LENGTH, MAX_VALUES, parseJson } from "../../src/json/parse.ts";

const seed = 20240611;
const BREAK = "\\";

function issuesOf(text: string): readonly Issue[] {
  const result = parseJson(text);
  expect(result.status).toBe("broken");
  return result.issues;
}

function flawsOf(text: string): string[] {
  const result = parseJson(text);
  expect(result.status).toBe("read");
  return result.issues.map(formatIssue);
}

/** What the language's own reader makes of a text: undefined where it refuses it. */
function byLanguage(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) };
  } catch {
    return undefined;
  }
}

describe("against the language's own JSON.parse", () => {
  it("reads what it reads, to the same value", () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 4 }), fc.integer({ min: 0, max: 4 }), (text, indent) => {
        fc.pre(!/"(__proto__|constructor|prototype)":/.test(text));
        const laidOut = JSON.stringify(JSON.parse(text), null, indent);
        const expected = JSON.parse(laidOut);
        expect(parseJson(laidOut)).toEqual({ status: "read", value: expected, issues: [] });
      }),
      { seed, numRuns: 300 },
    );
  });

  it("refuses what it refuses, however a text is damaged", () => {
    const character = fc.constantFrom(...'{}[]:,"0123-+.eE truefalsnu\n\r\t\u0001\u00a0/*xé', BREAK);
    const text = fc.constantFrom(
      '{"a": [1, -2.5e3, {"b": "x\\u00e9"}], "c": null}',
      '[true, false, "", [], {}]',
      '"\\n\\u12aF"',
      "-0.5E+10",
    );
    fc.assert(
      fc.property(
        text,
        fc.nat(60),
        fc.nat(2),
        fc.array(character, { maxLength: 3 }),
        (whole, at, cut, put) => {
          const damaged = whole.slice(0, at) + put.join("") + whole.slice(at + cut);
          const oracle = byLanguage(damaged);
          const result = parseJson(damaged);
          expect({ damaged, isRead: result.status === "read" }).toEqual({
            damaged,
            isRead: oracle !== undefined,
          });
          if (result.status === "read" && result.issues.length === 0 && !Object.is(oracle?.value, -0)) {
            expect(JSON.stringify(result.value)).toBe(JSON.stringify(oracle?.value));
          }
        },
      ),
      { seed, numRuns: 5000 },
    );
  });
});

describe("where a text is broken", () => {
  it.each([
    { why: "nothing at all", text: "", says: "a value at line 1, column 1, found the end of the file" },
    { why: "only spaces", text: " \n ", says: "a value at line 2, column 2, found the end of the file" },
    { why: "cut off in a list", text: "[1,", says: "a value at line 1, column 4, found the end" },
    { why: "cut off in a text", text: '["ab', says: 'a closing " at line 1, column 5, found the end' },
    {
      why: "comma before a bracket",
      text: "[1,\n2,\n]",
      says: 'no comma before ] at line 3, column 1, found "]"',
    },
    {
      why: "comma before a brace",
      text: '{"a":1,}',
      says: 'no comma before } at line 1, column 8, found "}"',
    },
    {
      why: "missing comma, after CR LF",
      text: '{\r\n"a":1\r\n"b":2}',
      says: 'a comma or } at line 3, column 1, found "\\""',
    },
    { why: "lines ended by CR alone", text: "[\r1\r2]", says: 'a comma or ] at line 3, column 1, found "2"' },
    { why: "a comment", text: "// plan\n{}", says: 'a value at line 1, column 1, found "/"' },
    {
      why: "single marks",
      text: "{'a':1}",
      says: `the name of a member, between " at line 1, column 2, found "'"`,
    },
    {
      why: "a bare name",
      text: "{a:1}",
      says: 'the name of a member, between " at line 1, column 2, found "a"',
    },
    {
      why: "no colon",
      text: '{"a" 1}',
      says: 'a colon after the name of a member at line 1, column 6, found "1"',
    },
    { why: "NaN", text: "[NaN]", says: 'a value at line 1, column 2, found "NaN"' },
    { why: "Infinity", text: "[Infinity]", says: 'a value at line 1, column 2, found "Infinity"' },
    { why: "minus Infinity", text: "[-Infinity]", says: 'a value at line 1, column 2, found "-Infinity"' },
    { why: "a leading zero", text: "[01]", says: 'a comma or ] at line 1, column 3, found "1"' },
    { why: "a leading plus", text: "[+1]", says: 'a value at line 1, column 2, found "+1"' },
    { why: "a hexadecimal number", text: "[0x10]", says: 'a comma or ] at line 1, column 3, found "x10"' },
    {
      why: "a tab in a text",
      text: '["a\tb"]',
      says: "no line end or control character inside a text at line 1, column 4",
    },
    { why: "a bad escape", text: `["${BREAK}q"]`, says: "an escape as" },
    { why: "a short escape", text: `["${BREAK}u12"]`, says: "an escape as" },
    {
      why: "a second value",
      text: "{} {}",
      says: 'nothing after the end of the value at line 1, column 4, found "{"',
    },
    {
      why: "a mark turning the line",
      text: "\u202e{}",
      says: 'a value at line 1, column 1, found "\\u202e"',
    },
  ])("$why", ({ text, says }) => {
    const issues = issuesOf(text);
    expect(issues.map((issue) => issue.path)).toEqual([""]);
    expect(formatIssue(issues[0]!)).toContain(`the file: expected ${says}`);
  });
});

describe("flaws that leave a text readable", () => {
  it.each([
    {
      why: "two members of one name",
      text: '{"a": {"b": 1, "c": 2, "b": 3}}',
      says: ["a.b: expected one member of this name, found a second one."],
    },
    {
      why: "a member of the prototype",
      text: '{"__proto__": {"x": 1}}',
      says: ['__proto__: expected a member name that is not reserved, found "__proto__".'],
    },
    {
      why: "the same, escaped",
      text: `[{"${BREAK}u005f_proto__": 1}]`,
      says: ['[0].__proto__: expected a member name that is not reserved, found "__proto__".'],
    },
    {
      why: "the constructor's",
      text: '{"constructor": {"prototype": 1}}',
      says: [
        'constructor: expected a member name that is not reserved, found "constructor".',
        'constructor.prototype: expected a member name that is not reserved, found "prototype".',
      ],
    },
    {
      why: "a number that is too large",
      text: '{"at": [1e309, -1e400]}',
      says: [
        "at[0]: expected a number below 1.8e308, found a larger one.",
        "at[1]: expected a number below 1.8e308, found a larger one.",
      ],
    },
    {
      why: "half a character, escaped",
      text: `["${BREAK}ud800x"]`,
      says: ['[0]: expected a text without half characters (lone surrogates), found "\\ud800x".'],
    },
    {
      why: "half a character, raw",
      text: '["\udfff"]',
      says: ['[0]: expected a text without half characters (lone surrogates), found "\\udfff".'],
    },
  ])("$why", ({ text, says }) => {
    expect(flawsOf(text)).toEqual(says);
  });

  it("keeps the first of two and nothing under a reserved name", () => {
    const result = parseJson('{"a": 1, "a": 2, "__proto__": {"polluted": true}, "b": {"constructor": 3}}');
    expect(result).toMatchObject({ status: "read", value: { a: 1, b: {} } });
    expect(JSON.stringify("value" in result && result.value)).toBe('{"a":1,"b":{}}');
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it("reads whole characters made of two halves", () => {
    expect(parseJson(`["${BREAK}ud83d${BREAK}ude00", "\u{1f600}"]`)).toMatchObject({
      value: ["😀", "😀"],
      issues: [],
    });
  });

  it("reads past a byte order mark and gives no minus zero", () => {
    const result = parseJson("\ufeff[-0, -0.0, -0e5]");
    expect(result).toEqual({ status: "read", value: [0, 0, 0], issues: [] });
  });
});

describe("limits", () => {
  const nested = (depth: number) => "[".repeat(depth) + "]".repeat(depth);

  it.each([
    { why: "as deep as allowed", text: nested(MAX_DEPTH), status: "read", says: "" },
    { why: "one deeper", text: nested(MAX_DEPTH + 1), status: "broken", says: "at most 64 lists" },
    {
      why: "10 MB of opening brackets",
      text: "[".repeat(10_000_000),
      status: "broken",
      says: "at most 64 lists",
    },
    {
      why: "10 MB of opening objects",
      text: '{"a":'.repeat(2_000_000),
      status: "broken",
      says: "at most 64 lists",
    },
    { why: "a text of 10 MB", text: `"${"x".repeat(10_000_000)}"`, status: "read", says: "" },
    {
      why: "a text of 10 MB never closed",
      text: `"${"x".repeat(10_000_000)}`,
      status: "broken",
      says: "a closing",
    },
    {
      why: "a number of a million digits",
      text: "1".repeat(1_000_000),
      status: "read",
      says: "a number below",
    },
    { why: "a fraction of 10 MB", text: `0.${"1".repeat(10_000_000)}`, status: "read", says: "" },
    { why: "10 MB of spaces", text: `${" ".repeat(10_000_000)}1`, status: "read", says: "" },
    {
      why: "more values than allowed",
      text: `[${"0,".repeat(MAX_VALUES)}0]`,
      status: "broken",
      says: "at most 2500000 values",
    },
    {
      why: "longer than allowed",
      text: " ".repeat(MAX_LENGTH + 1),
      status: "broken",
      says: "at most 64000000 characters",
    },
  ])("$why", ({ text, status, says }) => {
    const result = parseJson(text);
    expect(result.status).toBe(status);
    expect(result.issues.map(formatIssue).join().slice(0, 300)).toContain(says);
    expect(result.issues.length).toBeLessThanOrEqual(1);
  });

  it("names no more than fifty flaws, the place where it broke among them", () => {
    const flaws = `[${'{"a":1,"a":2},'.repeat(100)}`;
    const issues = issuesOf(flaws);
    expect(issues.length).toBe(MAX_ISSUES);
    expect(issues.at(-1)?.path).toBe("");
  });
});
