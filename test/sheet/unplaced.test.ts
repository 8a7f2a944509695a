// What is said in words of slab panels that the drawing has no paper for: their size, and where the nameless ones lie.

import { describe, expect, it } from "vitest";
import type { SoffitPiece } from "../../src/fill/result.ts";
import type { Band } from "../../src/sheet/soffit/bands.ts";
import { unplacedOf, unplacedText } from "../../src/sheet/soffit/unplaced.ts";

/** A band of panels 600 × 300 side by side from x 0; rows lie 1000 mm apart. */
function band(letter: string, row: number, count: number): Band {
  const pieces = Array.from({ length: count }, (_, k): SoffitPiece => {
    const [left, low] = [600 * k, 1000 * row];
    return {
      piece: `${letter}${k + 1}`,
      code: "S",
      family: "slab-panel",
      outline: [
        [left, low],
        [left + 600, low],
        [left + 600, low + 300],
        [left, low + 300],
      ],
    };
  });
  return { letter, pieces };
}

const BANDS = [band("E", 0, 6), band("F", 1, 6), band("G", 2, 1)];

function pick(ids: string): ReadonlySet<SoffitPiece> {
  const among = ids.split(" ");
  return new Set(BANDS.flatMap(({ pieces }) => pieces).filter(({ piece }) => among.includes(piece)));
}

describe("pieces without paper on the drawing", () => {
  it.each([
    {
      why: "a name that is drawn needs no place",
      sizeless: "E2 E3 E4",
      nameless: "",
      said: "E2–E4 300 × 600",
    },
    { why: "one between two", sizeless: "", nameless: "E3", said: "E3 300 × 600 (between E2 and E4)" },
    {
      why: "neighbours that are hidden too are passed over",
      sizeless: "E2 E3",
      nameless: "E2 E3",
      said: "E2, E3 300 × 600 (between E1 and E4)",
    },
    { why: "first of its band", sizeless: "", nameless: "F1", said: "F1 300 × 600 (before F2)" },
    { why: "last of its band", sizeless: "", nameless: "F5 F6", said: "F5, F6 300 × 600 (after F4)" },
    {
      why: "named and nameless apart",
      sizeless: "E1",
      nameless: "E2",
      said: "E1 300 × 600; E2 300 × 600 (between E1 and E3)",
    },
    {
      why: "a hidden band lies along the nearest one, E being 1000 mm away, G the same only at its first piece",
      sizeless: "",
      nameless: "F1 F2 F3 F4 F5 F6 G1",
      said: "F1–F6 300 × 600 (beside E1–E6); G1 300 × 600 (beside E1)",
    },
    { why: "a band of one piece", sizeless: "", nameless: "G1", said: "G1 300 × 600 (beside F1)" },
    {
      why: "no name is drawn at all: nothing to go by",
      sizeless: "",
      nameless: "E1 E2 E3 E4 E5 E6 F1 F2 F3 F4 F5 F6 G1",
      said: "E1–E6 300 × 600; F1–F6 300 × 600; G1 300 × 600",
    },
  ])("$said: $why", ({ sizeless, nameless, said }) => {
    expect(unplacedText(unplacedOf(BANDS, pick(sizeless), pick(nameless)), "en")).toBe(said);
  });
});
