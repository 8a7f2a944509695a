import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseJson } from "../../src/json/parse.ts";
import type { Json } from "../../src/json/value.ts";
import { writeJson } from "../../src/json/write.ts";

const seed = 20240614;

describe("the layout", () => {
  it.each<{ why: string; value: Json; text: string }>([
    { why: "a bare value", value: "x", text: '"x"\n' },
    { why: "nothing inside", value: { a: [], b: {} }, text: '{\n  "a": [],\n  "b": {}\n}\n' },
    { why: "a point on one line", value: { at: [0, -2.5] }, text: '{\n  "at": [0, -2.5]\n}\n' },
    {
      why: "points one below the other",
      value: [
        [0, 0],
        [1, 0],
      ],
      text: "[\n  [0, 0],\n  [1, 0]\n]\n",
    },
    { why: "texts one below the other", value: ["a", 1], text: '[\n  "a",\n  1\n]\n' },
    { why: "minus zero is zero", value: [-0, { a: -0 }], text: '[\n  0,\n  {\n    "a": 0\n  }\n]\n' },
    { why: "words and marks", value: [true, null, 'a"\n'], text: '[\n  true,\n  null,\n  "a\\"\\n"\n]\n' },
  ])("$why", ({ value, text }) => {
    expect(writeJson(value)).toBe(text);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    "refuses %d, which JSON cannot hold",
    (value) => {
      expect(() => writeJson({ a: [value] })).toThrow(RangeError);
    },
  );
});

it("is the language's own layout, but for lists of numbers", () => {
  const value = fc.jsonValue({ maxDepth: 4 }).filter((each) => !/\[-?\d/.test(JSON.stringify(each)));
  fc.assert(
    fc.property(value, (each) => {
      expect(writeJson(each as Json)).toBe(`${JSON.stringify(each, null, 2)}\n`);
    }),
    { seed, numRuns: 300 },
  );
});

it("is read back to the same value", () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 4 }), (each) => {
      const plain = JSON.parse(JSON.stringify(each));
      fc.pre(!/"(__proto__|constructor|prototype)":/.test(JSON.stringify(each)));
      expect(parseJson(writeJson(plain))).toEqual({ status: "read", value: plain, issues: [] });
    }),
    { seed, numRuns: 300 },
  );
});
