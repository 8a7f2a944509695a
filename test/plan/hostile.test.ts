import { describe, expect, it } from "vitest";
import { formatIssue, type Issue } from "../../src/json/issue.ts";
import { readProject } from "../../src/plan/read.ts";
import { type Keys, SOUND, spoiled, without } from "../support/spoiledProject.ts";

const BREAK = "\\";

function issuesOf(text: string): readonly Issue[] {
  const result = readProject(text);
  expect(result.status).toBe("invalid");
  return result.status === "invalid" ? result.issues : [];
}

/** Path of a place as a person writes it. */
function pathOf(keys: Keys): string {
  return keys
    .map((key) => (typeof key === "number" ? `[${key}]` : `.${key}`))
    .join("")
    .slice(1);
}

it("the file that the tests spoil is sound", () => {
  expect(readProject(JSON.stringify(SOUND))).toMatchObject({ status: "ok", warnings: [] });
});

const A = ["units", 0] as const;
const WALL = [...A, "walls", 0] as const;
const DOOR = [...A, "openings", 0] as const;
/** Where w1 is mentioned: there is no w1 any more once its own id is spoiled. */
const NAMED_W1 = ["units[0].openings[0].wall", "units[0].pinned[0].wall"];
const ROOM = [...A, "rooms", 0] as const;

describe("one place spoiled", () => {
  it.each<{ why: string; keys: Keys; put: string; says: string; path?: string; also?: string[] }>([
    { why: "another format", keys: ["format"], put: '"panelwright-fill"', says: '"panelwright-project"' },
    {
      why: "format in capitals",
      keys: ["format"],
      put: '"PANELWRIGHT-PROJECT"',
      says: '"panelwright-project"',
    },
    { why: "a later version", keys: ["version"], put: "2", says: "made by a later program" },
    { why: "version zero", keys: ["version"], put: "0", says: "the number 1" },
    { why: "a version between", keys: ["version"], put: "1.5", says: "the number 1" },
    { why: "a version in words", keys: ["version"], put: '"1"', says: "the number 1" },
    {
      why: "no units",
      keys: ["units"],
      put: "[]",
      says: "a list of units (from 1 to",
      also: ["pours[0].unit", "pours[1].unit"],
    },
    { why: "units as an object", keys: ["units"], put: '{"0": {}}', says: "a list of units" },
    { why: "a unit that is null", keys: A, put: "null", says: "a unit" },
    { why: "a unit that is a list", keys: A, put: "[]", says: "a unit" },
    { why: "walls as a text", keys: [...A, "walls"], put: '"none"', says: "a list of walls" },
    { why: "walls null", keys: [...A, "walls"], put: "null", says: "a list of walls" },
    { why: "a wall as a number", keys: WALL, put: "7", says: "a wall" },
    {
      why: "NaN written by a script",
      keys: [...WALL, "thickness"],
      put: "NaN",
      says: "a value at line 1",
      path: "",
    },
    { why: "Infinity", keys: [...WALL, "to", 0], put: "Infinity", says: "a value at line 1", path: "" },
    {
      why: "minus Infinity",
      keys: [...WALL, "to", 0],
      put: "-Infinity",
      says: "a value at line 1",
      path: "",
    },
    {
      why: "a number that overflows",
      keys: [...WALL, "to", 0],
      put: "1e999",
      says: "a number below 1.8e308",
    },
    { why: "1e308", keys: [...WALL, "to", 0], put: "1e308", says: "-10000000 to 10000000 mm" },
    {
      why: "beyond ten kilometres",
      keys: [...WALL, "from", 1],
      put: "-10000001",
      says: "-10000000 to 10000000 mm",
    },
    { why: "thickness minus zero", keys: [...WALL, "thickness"], put: "-0", says: "from 20 to 2000 mm" },
    { why: "thickness in words", keys: [...WALL, "thickness"], put: '"100"', says: "from 20 to 2000 mm" },
    { why: "thickness in metres", keys: [...WALL, "thickness"], put: "0.1", says: "from 20 to 2000 mm" },
    { why: "a point of three", keys: [...WALL, "to"], put: "[1, 2, 3]", says: "a point [x, y]" },
    { why: "a point as an object", keys: [...WALL, "to"], put: '{"x": 1, "y": 2}', says: "a point [x, y]" },
    { why: "null in a point", keys: [...WALL, "to", 1], put: "null", says: "a number" },
    {
      why: "a wall of no length",
      keys: [...WALL, "to"],
      put: "[0, 0]",
      says: "from 1 to 1000000 mm long",
      path: "units[0].walls[0]",
    },
    {
      why: "a wall of minus no length",
      keys: [...WALL, "to"],
      put: "[-0, -0.0]",
      says: "from 1 to 1000000 mm long",
      path: "units[0].walls[0]",
    },
    {
      why: "a wall of two kilometres",
      keys: [...WALL, "to"],
      put: "[2000000, 0]",
      says: "from 1 to 1000000 mm long",
      path: "units[0].walls[0]",
    },
    {
      why: "justified to the middle",
      keys: [...WALL, "justify"],
      put: '"middle"',
      says: '"centre", "left" or "right"',
    },
    { why: "an empty id", keys: [...WALL, "id"], put: '""', says: "1 to 64 characters", also: NAMED_W1 },
    { why: "a number as id", keys: [...WALL, "id"], put: "1", says: "an id" },
    { why: "a slash in an id", keys: [...WALL, "id"], put: '"a/b"', says: "without /", also: NAMED_W1 },
    {
      why: "a line end in an id",
      keys: [...WALL, "id"],
      put: '"a\\nb"',
      says: "control characters",
      also: NAMED_W1,
    },
    {
      why: "half a character in an id",
      keys: [...WALL, "id"],
      put: `"${BREAK}ud800"`,
      says: "lone surrogates",
      also: NAMED_W1,
    },
    { why: "half a character, raw, in a name", keys: ["name"], put: '"\udc00"', says: "lone surrogates" },
    { why: "a character no XML can hold", keys: ["name"], put: '"\\uffff"', says: "control characters" },
    {
      why: "two walls of one id",
      keys: [...A, "walls", 1, "id"],
      put: '"w1"',
      says: "an id of its own, for walls[0]",
    },
    {
      why: "two units of one id",
      keys: ["units", 1, "id"],
      put: '"A"',
      says: "an id of its own, for units[0]",
      also: ["pours[1].unit"],
    },
    {
      why: "a unit that could be a storey of another",
      keys: ["units", 1, "id"],
      put: '"A@2"',
      says: "a storey of the unit A",
      also: ["pours[1].unit"],
    },
    {
      why: "two pours of one id",
      keys: ["pours", 1, "id"],
      put: '"p1"',
      says: "an id of its own, for pours[0]",
    },
    {
      why: "an opening in no wall",
      keys: [...DOOR, "wall"],
      put: '"w9"',
      says: "the id of a wall of this unit",
    },
    {
      why: "an opening in a wall named as a built-in",
      keys: [...DOOR, "wall"],
      put: '"toString"',
      says: "the id of a wall",
    },
    {
      why: "pinned to no wall",
      keys: [...A, "pinned", 0, "wall"],
      put: '"w9"',
      says: "the id of a wall of this unit",
    },
    { why: "a pour of no unit", keys: ["pours", 0, "unit"], put: '"C"', says: "the id of a unit" },
    { why: "a sill below the floor", keys: [...DOOR, "sill"], put: "-1", says: "from 0" },
    { why: "a head at the sill", keys: [...DOOR, "head"], put: "0", says: "a head above the sill (0 mm)" },
    {
      why: "a head under the sill",
      keys: [...DOOR, "sill"],
      put: "2200",
      says: "a head above the sill (2200 mm)",
      path: "units[0].openings[0].head",
    },
    { why: "an opening without width", keys: [...DOOR, "width"], put: "0", says: "from 1" },
    { why: "formed otherwise", keys: [...DOOR, "formed"], put: "null", says: '"band" or "box"' },
    { why: "a room of a third kind", keys: [...ROOM, "kind"], put: '"attic"', says: '"room" or "open"' },
    {
      why: "a room without a name",
      keys: [...ROOM, "name"],
      put: '""',
      says: "a name of 1 to 200 characters",
    },
    { why: "a raised soffit", keys: [...ROOM, "soffitDrop"], put: "-5", says: "from 0" },
    {
      why: "an outline of two points",
      keys: [...A, "slabs", 0, "outline"],
      put: "[[0,0],[1,1]]",
      says: "from 3 to",
    },
    {
      why: "an outline of two points, closed",
      keys: [...A, "slabs", 0, "outline"],
      put: "[[0,0],[9,9],[0,0]]",
      says: "at least 3 different points",
    },
    {
      why: "an outline of one point thrice",
      keys: [...A, "slabOpenings", 0, "outline"],
      put: "[[0,0],[0,0],[0,0]]",
      says: "at least 3 different points",
    },
    { why: "a service of one point", keys: [...A, "services", 0, "path"], put: "[[0,0]]", says: "from 2 to" },
    {
      why: "a control line of no length",
      keys: [...A, "controlLines", 0, "to"],
      put: "[500, 0]",
      says: "a control line from 1",
      path: "units[0].controlLines[0]",
    },
    {
      why: "a pinned width of half a millimetre",
      keys: [...A, "pinned", 0, "widths", 1],
      put: "600.5",
      says: "a whole number",
    },
    {
      why: "pinned widths of none",
      keys: [...A, "pinned", 0, "widths"],
      put: "[]",
      says: "a list of widths (from 1",
    },
    { why: "a storey of no height", keys: ["storey", "clearHeight"], put: "0", says: "from 300 to 20000 mm" },
    {
      why: "a pour's storey spoiled",
      keys: ["pours", 1, "storey", "slab"],
      put: '"x"',
      says: "from 0 to 2000 mm",
    },
    { why: "a kit that is a list", keys: ["kit"], put: "[]", says: "the name of a kit" },
    { why: "a kit without a name", keys: ["kit"], put: '""', says: "the name of a kit" },
    { why: "half a piece in stock", keys: ["stock", "P-60"], put: "0.5", says: "a whole number from 0" },
    { why: "a debt of pieces", keys: ["stock", "P-60"], put: "-1", says: "a whole number from 0" },
    { why: "a stock as a list", keys: ["stock"], put: "[40]", says: "counts by piece code" },
    { why: "buy in words", keys: ["buy"], put: '"yes"', says: "true or false" },
    { why: "a language not spoken", keys: ["language"], put: '"de"', says: '"en", "es" or "pt"' },
    { why: "a negative weight", keys: ["objective", "closure"], put: "-1", says: "from 0" },
    {
      why: "no width at all",
      keys: ["limits"],
      put: '{"mostWidths": 0}',
      path: "limits.mostWidths",
      says: "from 1",
    },
    {
      why: "a forbidden size",
      keys: ["limits"],
      put: '{"forbidden": [600]}',
      path: "limits.forbidden[0]",
      says: "a piece code",
    },
    {
      why: "a panel lighter than air",
      keys: ["limits"],
      put: '{"greatestMass": -1}',
      path: "limits.greatestMass",
      says: "from 0",
    },
    { why: "limits as a list", keys: ["limits"], put: "[]", says: "limits (an object)" },
    { why: "a pin by somebody", keys: [...A, "pinned", 0, "by"], put: '"me"', says: '"set"' },
    {
      why: "a closure that is none of the widths",
      keys: [...A, "pinned", 0, "closure"],
      put: "9",
      says: "one of 3 widths",
    },
    { why: "loads as a text", keys: ["loads"], put: '"none"', says: "an object" },
    {
      why: "a member of the prototype",
      keys: ["__proto__x"],
      put: '1, "__proto__": {"buy": false}',
      says: "not reserved",
      path: "__proto__",
    },
    {
      why: "a constructor in the stock",
      keys: ["stock", "P-60"],
      put: '1, "constructor": 1',
      says: "not reserved",
      path: "stock.constructor",
    },
    {
      why: "a prototype in unread loads",
      keys: ["loads"],
      put: '{"a": [{"prototype": 1}]}',
      says: "not reserved",
      path: "loads.a[0].prototype",
    },
    {
      why: "two members of one name",
      keys: [...WALL, "thickness"],
      put: '100, "thickness": 200',
      says: "one member of this name",
    },
    {
      why: "a comma too many",
      keys: [...WALL, "thickness"],
      put: "100,",
      says: 'the name of a member, between "',
      path: "",
    },
    {
      why: "a comment",
      keys: [...WALL, "thickness"],
      put: "100 /* thick */",
      says: "a comma or }",
      path: "",
    },
  ])("$why", ({ keys, put, says, path = pathOf(keys), also = [] }) => {
    const text = spoiled(keys, put);
    const issues = issuesOf(text);
    const issue = issues.find((each) => each.path === path);
    expect({ path: issue?.path, sentence: issue && formatIssue(issue) }).toEqual({
      path,
      sentence: expect.stringContaining(says),
    });
    expect(issues.map((each) => each.path)).toEqual([path, ...also]);
  });

  it.each<{ keys: Keys }>([
    { keys: ["format"] },
    { keys: ["version"] },
    { keys: ["storey"] },
    { keys: ["storey", "slab"] },
    { keys: ["kit"] },
    { keys: ["units"] },
    { keys: [...A, "id"] },
    { keys: [...WALL, "id"] },
    { keys: [...WALL, "to"] },
    { keys: [...WALL, "thickness"] },
    { keys: [...DOOR, "wall"] },
    { keys: [...DOOR, "head"] },
    { keys: [...ROOM, "at"] },
    { keys: ["pours", 0, "unit"] },
  ])("member missing: $keys", ({ keys }) => {
    const found = issuesOf(without(keys)).find((issue) => issue.path === pathOf(keys));
    expect(found).toMatchObject({ found: "nothing" });
  });

  it.each(["walls", "openings", "slabs", "slabOpenings", "services", "controlLines"] as const)(
    "two of one id among the %s",
    (list) => {
      const [first] = SOUND.units[0][list];
      const issues = issuesOf(
        spoiled([...A, list], JSON.stringify([first, { ...first, id: "other" }, first])),
      );
      expect(issues.map((issue) => [issue.path, issue.expected])).toEqual([
        [`units[0].${list}[2].id`, `an id of its own, for ${list}[0] has this one`],
      ]);
    },
  );
});
