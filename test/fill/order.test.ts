import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { orderFromClosingEnd } from "../../src/fill/order.ts";
import type { FillerPlace } from "../../src/plan/project.ts";

const isStandard = (width: number): boolean => width === 600 || width === 450;

/** The sequence as text, a closure in brackets. */
function sequence(
  widths: number[],
  closure: number | null,
  options: { corner: boolean; fillers?: FillerPlace },
): string {
  const { corner: cornerAtClosingEnd, fillers = "corner" } = options;
  return orderFromClosingEnd({ widths, closure }, isStandard, { cornerAtClosingEnd, fillers })
    .map(({ width, kind }) => (kind === "closure" ? `(${width})` : `${width}`))
    .join(" ");
}

describe("orderFromClosingEnd", () => {
  it.each([
    { why: "nothing", widths: [], closure: null, corner: true, expected: "" },
    {
      why: "fillers before standard panels",
      widths: [600, 600, 300, 250],
      closure: null,
      corner: true,
      expected: "250 300 600 600",
    },
    {
      why: "standard panels narrow to wide",
      widths: [600, 450, 600],
      closure: null,
      corner: true,
      expected: "450 600 600",
    },
    {
      why: "a filler wider than a standard panel",
      widths: [600, 500, 450],
      closure: null,
      corner: true,
      expected: "500 450 600",
    },
    {
      why: "the closure at the corner",
      widths: [600, 300],
      closure: 20,
      corner: true,
      expected: "(20) 300 600",
    },
    {
      why: "no corner: the closure behind the first panel",
      widths: [600, 300],
      closure: 20,
      corner: false,
      expected: "300 (20) 600",
    },
    {
      why: "no corner and one panel: the closure at the closing end",
      widths: [600],
      closure: 20,
      corner: false,
      expected: "(20) 600",
    },
    { why: "a closure alone", widths: [], closure: 20, corner: false, expected: "(20)" },
    {
      why: "no corner and no closure changes nothing",
      widths: [600, 300],
      closure: null,
      corner: false,
      expected: "300 600",
    },
  ])("$why", ({ widths, closure, corner, expected }) => {
    expect(sequence(widths, closure, { corner })).toBe(expected);
  });

  it.each<{
    why: string;
    fillers: FillerPlace;
    widths: number[];
    closure: number | null;
    corner: boolean;
    expected: string;
  }>([
    {
      why: "standard panels at both ends",
      fillers: "middle",
      widths: [600, 600, 600, 300],
      closure: null,
      corner: true,
      expected: "600 600 300 600",
    },
    {
      why: "the closure beside the filler",
      fillers: "middle",
      widths: [600, 600, 300],
      closure: 20,
      corner: true,
      expected: "600 (20) 300 600",
    },
    {
      why: "the closure between panels without fillers",
      fillers: "middle",
      widths: [600, 600],
      closure: 20,
      corner: false,
      expected: "600 (20) 600",
    },
    {
      why: "one standard panel keeps the closing end",
      fillers: "middle",
      widths: [600, 300],
      closure: 20,
      corner: false,
      expected: "600 (20) 300",
    },
    {
      why: "one panel: the closure at the closing end",
      fillers: "middle",
      widths: [600],
      closure: 20,
      corner: true,
      expected: "(20) 600",
    },
    {
      why: "fillers only, no corner",
      fillers: "middle",
      widths: [300, 250],
      closure: 20,
      corner: false,
      expected: "250 (20) 300",
    },
    {
      why: "the narrowest filler at the far end",
      fillers: "jamb",
      widths: [600, 450, 300, 250],
      closure: null,
      corner: true,
      expected: "600 450 300 250",
    },
    {
      why: "the closure stays at the corner",
      fillers: "jamb",
      widths: [600, 300],
      closure: 20,
      corner: true,
      expected: "(20) 600 300",
    },
    {
      why: "never the closure at a jamb",
      fillers: "jamb",
      widths: [600, 300],
      closure: 20,
      corner: false,
      expected: "600 (20) 300",
    },
  ])("fillers at the $fillers: $why", ({ fillers, widths, closure, corner, expected }) => {
    expect(sequence(widths, closure, { corner, fillers })).toBe(expected);
  });

  it("keeps every piece, whatever the order the cover came in", () => {
    const input = fc.record({
      widths: fc.array(fc.constantFrom(600, 450, 300, 250, 50), { maxLength: 8 }),
      closure: fc.option(fc.integer({ min: 10, max: 59 }), { nil: null }),
      corner: fc.boolean(),
      fillers: fc.constantFrom<FillerPlace>("corner", "middle", "jamb"),
    });
    fc.assert(
      fc.property(input, ({ widths, closure, corner, fillers }) => {
        const text = sequence(widths, closure, { corner, fillers });
        expect(sequence([...widths].sort(), closure, { corner, fillers })).toBe(text);
        const pieces = text.split(" ").filter((piece) => piece !== "");
        const expected = [...widths.map(String), ...(closure === null ? [] : [`(${closure})`])];
        expect(pieces.sort()).toEqual(expected.sort());
      }),
      { seed: 51, numRuns: 400 },
    );
  });

  it("puts a closure at an end only at a corner or beside a single panel", () => {
    for (const fillers of ["corner", "middle", "jamb"] as const) {
      for (const widths of [
        [600, 300],
        [600, 600],
        [300, 250],
        [600, 600, 300, 250],
      ]) {
        const pieces = sequence(widths, 20, { corner: false, fillers }).split(" ");
        expect(pieces[0], `${fillers} ${widths}`).not.toBe("(20)");
        expect(pieces.at(-1), `${fillers} ${widths}`).not.toBe("(20)");
      }
    }
  });
});
