import fc from "fast-check";
import { expect, it } from "vitest";
import { fileNames } from "../../src/cli/fileNames.ts";

it.each([
  { why: "spaces become dashes", titles: ["A Kitchen"], names: ["A-Kitchen.svg"] },
  {
    why: "letters of every script stay",
    titles: ["Cozinha à direita", "厨房"],
    names: ["Cozinha-à-direita.svg", "厨房.svg"],
  },
  { why: "no way out of the folder", titles: ["../../etc/passwd"], names: ["etc-passwd.svg"] },
  { why: "no way out by the other separator", titles: ["..\\..\\x"], names: ["x.svg"] },
  { why: "not hidden", titles: [".profile"], names: ["profile.svg"] },
  { why: "no dot, so no ending of its own", titles: ["a.exe"], names: ["a-exe.svg"] },
  { why: "no end of text, no control", titles: ["a\u0000b\u001b[31m\nc"], names: ["a-b-31m-c.svg"] },
  { why: "nothing for a shell", titles: ['$(rm -r) `x` "y" *'], names: ["rm-r-x-y.svg"] },
  { why: "no option", titles: ["--out"], names: ["out.svg"] },
  { why: "nothing left", titles: ["///", "", "…"], names: ["sheet.svg", "sheet-2.svg", "sheet-3.svg"] },
  { why: "a device", titles: ["con", "LPT1"], names: ["con_.svg", "LPT1_.svg"] },
  { why: "alike", titles: ["a", "a", "a"], names: ["a.svg", "a-2.svg", "a-3.svg"] },
  { why: "alike but for capitals", titles: ["Bath", "BATH"], names: ["Bath.svg", "BATH-2.svg"] },
  { why: "a number already there", titles: ["a", "a-2", "a"], names: ["a.svg", "a-2.svg", "a-3.svg"] },
  { why: "one letter in two codings", titles: ["\u00e9", "e\u0301"], names: ["\u00e9.svg", "\u00e9-2.svg"] },
])("$why", ({ titles, names }) => {
  expect(fileNames(titles, ".svg")).toEqual(names);
});

it("gives short names that differ and stay in their folder, whatever the titles", () => {
  const title = fc.oneof(
    fc.string({ unit: fc.constantFrom(".", "/", "\\", "a", "A", "-", "2", "ß", "s", " ") }),
    fc.string({ unit: "binary", maxLength: 300 }),
  );
  fc.assert(
    fc.property(fc.array(title, { maxLength: 12 }), (titles) => {
      const names = fileNames(titles, ".svg");
      expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(titles.length);
      for (const name of names) {
        expect(name).toMatch(/^[\p{L}\p{N}_][\p{L}\p{M}\p{N}_-]*\.svg$/u);
        expect(Buffer.byteLength(name)).toBeLessThan(255);
      }
    }),
    { seed: 90_210, numRuns: 300 },
  );
});
