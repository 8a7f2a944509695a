import { describe, expect, it } from "vitest";
import { describeFound, formatIssue, formatPath } from "../../src/json/issue.ts";
import type { Json } from "../../src/json/value.ts";

describe("paths", () => {
  it.each([
    { why: "the file itself", keys: [], path: "" },
    {
      why: "names and places",
      keys: ["units", 0, "walls", 3, "thickness"],
      path: "units[0].walls[3].thickness",
    },
    { why: "a piece code", keys: ["stock", "WP-60x225"], path: "stock.WP-60x225" },
    { why: "a name with a dot", keys: ["stock", "a.b"], path: 'stock["a.b"]' },
    { why: "the empty name", keys: [""], path: '[""]' },
    { why: "a name with a line end", keys: ["a\nb"], path: '["a\\nb"]' },
  ])("$why", ({ keys, path }) => {
    expect(formatPath(keys)).toBe(path);
  });

  it("stay short, however long the names", () => {
    expect(formatPath(Array(64).fill("x".repeat(1000))).length).toBeLessThan(310);
  });
});

describe("what was found", () => {
  it.each<{ why: string; value: Json | undefined; found: string }>([
    { why: "nothing", value: undefined, found: "nothing" },
    { why: "null", value: null, found: "null" },
    { why: "a number", value: 12.5, found: "12.5" },
    { why: "a text", value: "12", found: '"12"' },
    { why: "an empty list", value: [], found: "an empty list" },
    { why: "a point is shown", value: [1, -2.5], found: "[1, -2.5]" },
    { why: "a list", value: [1, 2, 3, 4], found: "a list of 4" },
    { why: "a list of texts", value: ["a"], found: "a list of 1" },
    { why: "an empty object", value: {}, found: "an object with no members" },
    { why: "one member", value: { x: 1 }, found: 'an object with the member "x"' },
    { why: "members", value: { x: 1, y: 2, z: 3 }, found: 'an object with the member "x" and 2 more' },
  ])("$why", ({ value, found }) => {
    expect(describeFound(value)).toBe(found);
  });

  it("is shortened to about sixty characters", () => {
    const found = describeFound("x".repeat(1e6));
    expect(found.length).toBeLessThanOrEqual(62);
    expect(found).toContain("…");
  });
});

describe("the sentence", () => {
  it.each([
    { why: "a terminal escape", hostile: "\u001b[31mred" },
    { why: "a line end forging a second message", hostile: "x\nunits: expected" },
    { why: "a mark turning the line", hostile: "\u202egnp.exe" },
    { why: "a line separator", hostile: "a\u2028b" },
    { why: "half a character", hostile: "\ud800" },
    { why: "a long one", hostile: "y".repeat(100_000) },
  ])("is one visible line: $why", ({ hostile }) => {
    const issue = { path: formatPath([hostile]), expected: "an id", found: describeFound(hostile) };
    const sentence = formatIssue(issue);
    expect(sentence).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
    expect(sentence.length).toBeLessThan(250);
    expect(
      formatIssue({ path: hostile.slice(0, 200), expected: hostile.slice(0, 200), found: hostile }),
    ).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
  });

  it("names the path, what belongs there and what was found", () => {
    const issue = {
      path: "units[0].walls[3].thickness",
      expected: "a number from 20 to 2000 mm",
      found: "5",
    };
    expect(formatIssue(issue)).toBe(
      "units[0].walls[3].thickness: expected a number from 20 to 2000 mm, found 5.",
    );
  });
});
