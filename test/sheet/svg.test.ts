import { describe, expect, it } from "vitest";
import type { Mark, Sheet } from "../../src/sheet/mark.ts";
import { filePart, plainText, xmlText } from "../../src/sheet/plainText.ts";
import { sheetNumber, sheetToSvg } from "../../src/sheet/svg.ts";
import { paperMm } from "../../src/units.ts";

function sheet(...marks: readonly Mark[]): Sheet {
  const size = { width: paperMm(297), height: paperMm(210) };
  return { name: "a-01-kitchen", ...size, title: "Room sheet, Kitchen", description: "Four faces.", marks };
}

describe("numbers", () => {
  it.each([
    { why: "whole", value: 12, text: "12" },
    { why: "rounded to 0.01", value: 7.14159, text: "7.14" },
    { why: "binary noise", value: 0.1 + 0.2, text: "0.3" },
    { why: "half away from zero", value: -1.005, text: "-1.01" },
    { why: "no minus before a zero", value: -0.001, text: "0" },
    { why: "no exponent", value: 1e-7, text: "0" },
  ])("are written to 0.01: $why", ({ value, text }) => {
    expect(sheetNumber(value)).toBe(text);
  });
});

describe("names as text", () => {
  it.each([
    { why: "markup", text: "<script>", plain: "<script>", xml: "&lt;script&gt;" },
    {
      why: "both quotes and an ampersand",
      text: `"a" & 'b'`,
      plain: `"a" & 'b'`,
      xml: "&quot;a&quot; &amp; &#39;b&#39;",
    },
    { why: "control characters", text: "a\u0000b\u001bc", plain: "abc", xml: "abc" },
    { why: "lines and tabs become one space", text: " a\n\t\r b ", plain: "a b", xml: "a b" },
    { why: "an override of the direction", text: "a\u202ecba\u202c", plain: "acba", xml: "acba" },
    { why: "invisible characters", text: "a\u200bb\ufeff", plain: "ab", xml: "ab" },
    { why: "half of a pair", text: "a\ud83d b", plain: "a b", xml: "a b" },
    { why: "what XML has no place for", text: "a\ufffe\uffff", plain: "a", xml: "a" },
    { why: "letters of any script stay", text: "厨房 Küche", plain: "厨房 Küche", xml: "厨房 Küche" },
  ])("$why", ({ text, plain, xml }) => {
    expect(plainText(text)).toBe(plain);
    expect(xmlText(text)).toBe(xml);
  });

  it.each([
    { why: "accents fall off", text: "Baño núm. 2", part: "bano-num-2" },
    { why: "a way out of the folder", text: "../../etc/passwd", part: "etc-passwd" },
    { why: "nothing left", text: "厨房", part: "" },
    { why: "too long", text: "x".repeat(99), part: "x".repeat(40) },
    { why: "no hyphen where it is cut", text: `${"x".repeat(39)} y`, part: "x".repeat(39) },
  ])("as part of a file's name: $why", ({ text, part }) => {
    expect(filePart(text)).toBe(part);
  });
});

describe("the document", () => {
  it("states its size in millimetres, and title and description for a reader", () => {
    const svg = sheetToSvg(sheet());
    expect(svg).toContain('width="297mm" height="210mm" viewBox="0 0 297 210"');
    expect(svg).toContain('<title id="a-01-kitchen-title">Room sheet, Kitchen</title>');
    expect(svg).toContain('aria-labelledby="a-01-kitchen-title a-01-kitchen-desc"');
    expect(svg.endsWith("</svg>\n")).toBe(true);
  });

  const stroke = { weight: 0.35, ink: "ink" } as const;
  const box = { x: 10, y: 20, width: 4, height: 6 };
  const mark: { readonly [kind: string]: Mark } = {
    line: { kind: "line", from: [1, 2], to: [3, 4.005], stroke: { ...stroke, dash: [2, 1.2] } },
    rect: { kind: "rect", box, fill: "tone1", stroke, piece: "A/p<1" },
    polygon: {
      kind: "polygon",
      points: [
        [0, 0],
        [1, 0],
        [0, 1],
      ],
      fill: "ink",
    },
    text: { kind: "text", at: [5, 6], text: "a<b", height: 5, weight: 700, ink: "ink", anchor: "middle" },
  };
  it.each([
    [
      "line",
      '<path d="M1 2L3 4.01" fill="none" stroke="#111111" stroke-width="0.35" stroke-dasharray="2 1.2"/>',
    ],
    [
      "rect",
      '<rect x="10" y="20" width="4" height="6" fill="#deebf7" stroke="#111111" stroke-width="0.35" data-piece="A/p&lt;1"/>',
    ],
    ["polygon", '<path d="M0 0L1 0L0 1Z" fill="#111111"/>'],
    ["text", 'text-anchor="middle"'],
    ["text", ">a&lt;b</text>"],
  ])("writes a %s", (kind, expected) => {
    expect(sheetToSvg(sheet(mark[kind]!))).toContain(expected);
  });

  it("keeps the lines and dots of a hatch within its box", () => {
    const plain = { kind: "hatch", box, pitch: 1.6, weight: 0.5, ink: "ink" } as const;
    const lines = sheetToSvg(sheet({ ...plain, pattern: "lines" }));
    const ends = [...lines.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
    const dots = sheetToSvg(sheet({ ...plain, pattern: "dots" }));
    const middles = [...dots.matchAll(/cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ]);
    expect(ends.length).toBeGreaterThan(4);
    expect(middles.length).toBeGreaterThan(4);
    for (const [x, y] of [...ends, ...middles]) {
      expect(x).toBeGreaterThanOrEqual(10);
      expect(x).toBeLessThanOrEqual(14);
      expect(y).toBeGreaterThanOrEqual(20);
      expect(y).toBeLessThanOrEqual(26);
    }
  });
});
