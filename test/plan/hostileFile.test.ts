import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatIssue, formatPath, type Issue, MAX_ISSUES } from "../../src/json/issue.ts";
import { readProject } from "../../src/plan/read.ts";
import { type Keys, SOUND, spoiled } from "../support/spoiledProject.ts";

const seed = 20240613;
const FOLDER = new URL("../data/bad/", import.meta.url);
const UNREADABLE_IN_A_LINE = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u;

function issuesOf(text: string): readonly Issue[] {
  const result = readProject(text);
  expect(result.status).toBe("invalid");
  return result.status === "invalid" ? result.issues : [];
}

describe("whole files that are no project", () => {
  const rows: readonly { readonly file: string; readonly paths: readonly string[]; readonly says: string }[] =
    [
      { file: "a-kit", paths: ["format"], says: '"panelwright-project", found "panelwright-kit"' },
      { file: "archive", paths: [""], says: "a value at line 1, column 1" },
      { file: "bare-names", paths: [""], says: "the name of a member" },
      { file: "comment", paths: [""], says: 'a value at line 1, column 1, found "/"' },
      { file: "cut-off", paths: [""], says: "a colon after the name of a member at line 1, column 87" },
      { file: "cut-off-in-a-text", paths: [""], says: 'a closing " at line 1' },
      { file: "drawing", paths: [""], says: "nothing after the end of the value at line 2, column 1" },
      { file: "empty", paths: [""], says: "a value at line 1, column 1, found the end of the file" },
      {
        file: "everything-in-the-prototype",
        paths: ["__proto__", "storey", "kit", "units"],
        says: "not reserved",
      },
      { file: "mark-and-crlf", paths: [""], says: "no comma before } at line 4, column 1" },
      { file: "merge-conflict", paths: [""], says: "a value at line 1, column 1" },
      { file: "null", paths: [""], says: "a project (an object), found null" },
      {
        file: "null-everywhere",
        paths: "name revision language storey kit units pours stock buy objective concrete loads".split(" "),
        says: "a name of up to 200 characters",
      },
      { file: "only-a-list", paths: [""], says: "a project (an object), found an empty list" },
      { file: "only-a-text", paths: [""], says: "a project (an object)" },
      { file: "only-braces", paths: ["format"], says: "found nothing" },
      {
        file: "only-byte-order-mark",
        paths: [""],
        says: "a value at line 1, column 1, found the end of the file",
      },
      { file: "only-space", paths: [""], says: "a value at line 2, column 2, found the end of the file" },
      { file: "project-in-a-list", paths: [""], says: "a project (an object), found a list of 1" },
      { file: "single-marks", paths: [""], says: "the name of a member" },
      { file: "trailing-commas", paths: [""], says: "no comma before }" },
      { file: "two-projects", paths: [""], says: "nothing after the end of the value" },
      { file: "utf16", paths: [""], says: 'the name of a member, between " at line 1, column 2' },
      { file: "xml", paths: [""], says: 'a value at line 1, column 1, found "<"' },
    ];

  it.each(rows)("$file", ({ file, paths, says }) => {
    const issues = issuesOf(readFileSync(new URL(`${file}.json`, FOLDER), "utf8"));
    expect(issues.map((issue) => issue.path)).toEqual(paths);
    expect(formatIssue(issues[0]!)).toContain(says);
  });

  it("every file of the folder has its row", () => {
    expect(readdirSync(FOLDER).sort()).toEqual(rows.map(({ file }) => `${file}.json`).sort());
  });
});

describe("files made to be too much", () => {
  const WALLS: Keys = ["units", 0, "walls"];
  const LOADS: Keys = ["loads"];

  it.each<{ why: string; text: () => string; path: string; says: string }>([
    {
      why: "10 MB of lists in lists",
      text: () => "[".repeat(10_000_000),
      path: "",
      says: "at most 64 lists",
    },
    {
      why: "10 MB of objects in unread loads",
      text: () => spoiled(LOADS, '{"a":'.repeat(2_000_000)),
      path: "",
      says: "at most 64 lists",
    },
    {
      why: "10 MB of nesting, well closed",
      text: () => spoiled(LOADS, `${"[".repeat(5_000_000)}${"]".repeat(5_000_000)}`),
      path: "",
      says: "at most 64 lists",
    },
    {
      why: "a name of 10 MB",
      text: () => spoiled(["name"], `"${"x".repeat(10_000_000)}"`),
      path: "name",
      says: "up to 200 characters",
    },
    {
      why: "an id of 10 MB of escapes",
      text: () => spoiled([...WALLS, 0, "id"], `"${"\\u0041".repeat(1_600_000)}"`),
      path: "units[0].walls[0].id",
      says: "1 to 64 characters",
    },
    {
      why: "a member's name of 10 MB, twice",
      text: () => spoiled(LOADS, `{${`"${"x".repeat(5_000_000)}":1,`.repeat(2)}"y":1}`),
      path: `loads["${"x".repeat(59)}…"]`,
      says: "one member of this name",
    },
    {
      why: "100,000 walls",
      text: () => spoiled(WALLS, `[${"{},".repeat(99_999)}{}]`),
      path: "units[0].walls",
      says: "up to 20000",
    },
    {
      why: "a million units",
      text: () => spoiled(["units"], `[${"0,".repeat(999_999)}0]`),
      path: "units",
      says: "from 1 to 1000",
    },
    {
      why: "an outline of a million points",
      text: () => spoiled(["units", 0, "slabs", 0, "outline"], `[${"[0,0],".repeat(500_000)}[0,0]]`),
      path: "units[0].slabs[0].outline",
      says: "from 3 to 10000",
    },
    {
      why: "3 million values",
      text: () => spoiled(LOADS, `{"a": [${"0,".repeat(3_000_000)}0]}`),
      path: "",
      says: "at most 2500000 values",
    },
    {
      why: "more than 64 MB",
      text: () => " ".repeat(64_000_001),
      path: "",
      says: "at most 64000000 characters",
    },
  ])(
    "$why",
    ({ text, path, says }) => {
      const issue = issuesOf(text()).find((each) => each.path === path);
      expect({ path: issue?.path, expected: issue?.expected }).toEqual({
        path,
        expected: expect.stringContaining(says),
      });
      expect(JSON.stringify(issue).length).toBeLessThan(400);
    },
    10_000,
  );

  it("20,000 walls wrong in two ways give fifty issues, each at a place of its own", () => {
    const walls = Array.from(
      { length: 20_000 },
      () => '{"id": "w", "from": [0, 0], "to": [9, 0], "thickness": 1}',
    );
    const issues = issuesOf(spoiled(WALLS, `[${walls.join()}]`));
    expect(issues.length).toBe(MAX_ISSUES);
    expect(new Set(issues.map((issue) => issue.path)).size).toBe(MAX_ISSUES);
  });

  it("thousands of unknown members give fifty warnings and are all kept", () => {
    const members = Array.from({ length: 5_000 }, (_, index) => `"m${index}": ${index}`).join();
    const result = readProject(spoiled(["storey"], `{"clearHeight": 2400, "slab": 0, ${members}}`));
    expect(result.status).toBe("ok");
    if (result.status !== "ok") return;
    expect(result.warnings.length).toBe(MAX_ISSUES);
    expect(Object.keys(result.project.storey.extra ?? {}).length).toBe(5_000);
  });

  it("nothing of the language is changed by any of it", () => {
    const evil = '{"polluted": 1, "toString": 1}';
    for (const name of ["__proto__", "constructor", "prototype"]) {
      for (const keys of [
        ["x"],
        ["stock", "x"],
        ["loads", "x"],
        ["units", 0, "x"],
        ["units", 0, "walls", 0, "x"],
      ]) {
        issuesOf(spoiled(keys, `1, "${name}": ${evil}`));
      }
    }
    expect("polluted" in {}).toBe(false);
    expect(`${{}}`).toBe("[object Object]");
  });
});

describe("files spoiled at random", () => {
  const text = JSON.stringify(SOUND);

  /** Every place of the sound file. */
  function places(value: unknown, keys: Keys = []): Keys[] {
    if (typeof value !== "object" || value === null) return [keys];
    const inner = Object.entries(value).flatMap(([key, each]) =>
      places(each, [...keys, Array.isArray(value) ? Number(key) : key]),
    );
    return [keys, ...inner];
  }

  it("no value at any place makes reading throw or speak in more than a line", () => {
    const value = fc.oneof(
      fc.json({ maxDepth: 2 }),
      fc.constantFrom("1e308", "-0", "1e-320", '"\\u202e"', "[[[]]]"),
    );
    fc.assert(
      fc.property(fc.constantFrom(...places(SOUND)), value, (keys, raw) => {
        const result = readProject(spoiled(keys, raw));
        const issues = result.status === "ok" ? result.warnings : result.issues;
        expect(result.status === "ok" || issues.length > 0).toBe(true);
        for (const issue of issues) expect(formatIssue(issue)).not.toMatch(UNREADABLE_IN_A_LINE);
      }),
      { seed, numRuns: 2000 },
    );
  });

  it("no file cut short is taken for a project", () => {
    for (let length = 0; length < text.length; length++) {
      expect(readProject(text.slice(0, length)).status).toBe("invalid");
    }
  });

  it("every place of another type is reported by its path", () => {
    for (const keys of places(SOUND)) {
      const path = formatPath(keys);
      if (path.startsWith("concrete.")) continue; // passed on unread
      const isList = Array.isArray(keys.reduce<unknown>((value, key) => Object(value)[key], SOUND));
      const paths = issuesOf(spoiled(keys, isList ? "7" : "[null]")).map((issue) => issue.path);
      expect(paths).toContain(path);
    }
  });
});
