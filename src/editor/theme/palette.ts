// The colours of the drawing, read from the style sheet of the page, where each stands once for light and once for dark.

import type { Mm } from "../../units.ts";

export type Theme = "light" | "dark";

/** The names of the colours, without the two dashes of the style sheet. */
export const TOKENS = [
  "ground",
  "chrome",
  "raise",
  "ink",
  "ink2",
  "ink3",
  "pline",
  "concrete",
  "panel",
  "corner",
  "on-corner",
  "accent",
  "on-accent",
  "wash",
  "fault",
  "better",
  "better-wash",
  "line",
  "grid",
  "filler-250",
  "filler-200",
  "filler-150",
  "filler-100",
  "filler-50",
  "filler-25",
  "closure",
] as const;

export type Token = (typeof TOKENS)[number];
export type Palette = { readonly [name in Token]: string };

/** One side of a `light-dark(…)` pair; any other value as it is. */
export function chosenColour(value: string, theme: Theme): string {
  const pair = /light-dark\(\s*(#[0-9a-f]+)\s*,\s*(#[0-9a-f]+)\s*\)/i.exec(value);
  return (theme === "light" ? pair?.[1] : pair?.[2]) ?? value.trim();
}

/** @param declared - what the style sheet says for a custom property */
export function readPalette(declared: (property: string) => string, theme: Theme): Palette {
  const entries = TOKENS.map((name) => [name, chosenColour(declared(`--${name}`), theme)] as const);
  return Object.fromEntries(entries) as Palette;
}

const STEPS: readonly (readonly [least: Mm, token: Token])[] = [
  [225, "filler-250"],
  [175, "filler-200"],
  [125, "filler-150"],
  [75, "filler-100"],
  [38, "filler-50"],
];

/** The tone of a filler: the narrower, the stronger against the ground. */
export function fillerTone(palette: Palette, width: Mm): string {
  return palette[fillerToken(width)];
}

/** The name of a filler's tone in the style sheet. */
export function fillerToken(width: Mm): Token {
  return STEPS.find(([least]) => width >= least)?.[1] ?? "filler-25";
}

/** {@link inkOnFiller} as the style sheet says it, for either theme. */
export function inkOnFillerRule(width: Mm): string {
  const [ink, ground] = ["var(--ink)", "var(--ground)"];
  return `light-dark(${width >= PALE_FROM ? ink : ground}, ${width < DARK_FROM ? ground : ink})`;
}

/** Tones of fillers at least this wide are pale in light … */
const PALE_FROM: Mm = 75;
/** … and dark in dark, mm. */
const DARK_FROM: Mm = 175;

/** The colour of a width printed on a filler. */
export function inkOnFiller(palette: Palette, theme: Theme, width: Mm): string {
  const isPale = theme === "light" ? width >= PALE_FROM : width < DARK_FROM;
  const [dark, light] = theme === "light" ? [palette.ink, palette.ground] : [palette.ground, palette.ink];
  return isPale ? dark : light;
}
