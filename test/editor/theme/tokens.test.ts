// The colours of the page against the contrast rules of WCAG 2.2, worked out from the style sheet itself.

import { describe, expect, it } from "vitest";
import {
  chosenColour,
  fillerTone,
  inkOnFiller,
  type Theme,
  TOKENS,
  type Token,
} from "../../../src/editor/theme/palette.ts";
import { paletteOf } from "../scene/sampleScene.ts";

const THEMES: readonly Theme[] = ["light", "dark"];

/** Relative luminance. @see https://www.w3.org/TR/WCAG22/#dfn-relative-luminance */
function luminance(colour: string): number {
  const channel = (at: number) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

function contrast(a: string, b: string): number {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
}

describe("the palette", () => {
  it("knows the published ends of the scale", () => {
    expect(contrast("#000000", "#ffffff")).toBe(21);
    expect(contrast("#777777", "#ffffff")).toBeCloseTo(4.48, 2);
  });

  it.each(THEMES)("has every colour in %s", (theme) => {
    const palette = paletteOf(theme);
    for (const name of TOKENS) expect(palette[name], name).toMatch(/^#[0-9a-f]{6}$/);
  });

  it("takes the side of a pair that belongs to the theme", () => {
    expect(chosenColour(" light-dark(#111111, #eeeeee)", "light")).toBe("#111111");
    expect(chosenColour(" light-dark(#111111, #eeeeee)", "dark")).toBe("#eeeeee");
    expect(chosenColour(" #123456 ", "dark")).toBe("#123456");
  });

  const TEXT: readonly (readonly [ink: Token, on: Token, least: number, why: string])[] = [
    ["ink", "ground", 7, "figures on the plan"],
    ["ink", "chrome", 7, "the bar"],
    ["ink", "raise", 7, "fields and cards"],
    ["ink", "wash", 7, "the chosen row of a list"],
    ["ink2", "ground", 4.5, "second text"],
    ["ink2", "chrome", 4.5, "second text in the bar"],
    ["ink2", "raise", 4.5, "second text in fields"],
    ["ink2", "wash", 4.5, "second text in the chosen row"],
    ["accent", "ground", 4.5, "figures of dimensions"],
    ["accent", "wash", 4.5, "a pressed toggle"],
    ["on-accent", "accent", 4.5, "the reason of a snap"],
    ["on-corner", "corner", 4.5, "the leg of a corner"],
    ["fault", "ground", 4.5, "numbers in rings"],
    ["fault", "chrome", 4.5, "a count that grew"],
    ["better", "better-wash", 4.5, "a count that fell"],
    ["ink", "concrete", 4.5, "names of walls"],
    ["ink2", "panel", 4.5, "widths on panels"],
  ];
  it.each(TEXT.flatMap((row) => THEMES.map((theme) => [theme, ...row] as const)))(
    "in %s: %s on %s at least %f : 1 (%s)",
    (theme, ink, on, least) => {
      const palette = paletteOf(theme);
      expect(contrast(palette[ink], palette[on])).toBeGreaterThanOrEqual(least);
    },
  );

  const LINES: readonly (readonly [line: Token, on: Token, why: string])[] = [
    ["ink3", "ground", "thin lines"],
    ["pline", "ground", "edges of panels"],
    ["pline", "panel", "joints between panels"],
    ["accent", "ground", "what is selected"],
    ["fault", "ground", "rings"],
    ["corner", "panel", "corners beside panels"],
    ["closure", "raise", "the hatch of closures"],
  ];
  it.each(LINES.flatMap((row) => THEMES.map((theme) => [theme, ...row] as const)))(
    "in %s: %s on %s at least 3 : 1 (%s)",
    (theme, line, on) => {
      const palette = paletteOf(theme);
      expect(contrast(palette[line], palette[on])).toBeGreaterThanOrEqual(3);
    },
  );

  it.each(THEMES)("in %s a filler stands out the more, the narrower it is", (theme) => {
    const palette = paletteOf(theme);
    const tones = [250, 200, 150, 100, 50, 25].map((width) => fillerTone(palette, width));
    const contrasts = tones.map((tone) => contrast(tone, palette.ground));
    expect(contrasts).toEqual([...contrasts].sort((a, b) => a - b));
    expect(new Set(tones).size).toBe(6);
  });

  it.each(THEMES.flatMap((theme) => [250, 200, 150, 100, 50, 25].map((width) => [theme, width] as const)))(
    "in %s a width reads on a filler of %i",
    (theme, width) => {
      const palette = paletteOf(theme);
      const ink = inkOnFiller(palette, theme, width);
      expect(contrast(ink, fillerTone(palette, width))).toBeGreaterThanOrEqual(4.5);
    },
  );
});
