import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { chooseStack, droppedStack, type Stack, type StackInput } from "../../src/fill/stack.ts";
import { everyMultiset } from "../support/coverOracle.ts";

const STRIP = { least: 10, greatest: 59 };

function input(parts: Partial<StackInput>): StackInput {
  return {
    clearHeight: 2400,
    slab: 100,
    panelHeights: [2250],
    connectorHeights: [150],
    capHeights: [250],
    closure: STRIP,
    ...parts,
  };
}

/** Panels from the floor up, a closure in brackets, then connector and cap. */
function text({ status, rows, connector, cap, missing }: Stack): string {
  const heights = rows.map(({ height, kind }) => (kind === "closure" ? `(${height})` : `${height}`));
  return [status, heights.join(" "), `${connector}/${cap}`, `${missing}`].join(" | ");
}

describe("chooseStack", () => {
  it.each<{ why: string; storey: Partial<StackInput>; expected: string }>([
    { why: "one panel and the connector", storey: {}, expected: "stacked | 2250 | 150/250 | null" },
    {
      why: "the taller panel of two that fit with one piece",
      storey: { panelHeights: [2200, 2250], connectorHeights: [200, 150], capHeights: [250, 300] },
      expected: "stacked | 2250 | 150/250 | null",
    },
    {
      why: "one panel before two, even with the taller one at the bottom",
      storey: { panelHeights: [2250, 2100, 150], connectorHeights: [150], clearHeight: 2400 },
      expected: "stacked | 2250 | 150/250 | null",
    },
    {
      why: "an extension for a taller storey, above the panel",
      storey: { clearHeight: 2700, panelHeights: [300, 2250] },
      expected: "stacked | 2250 300 | 150/250 | null",
    },
    {
      why: "an extension before a closure",
      storey: { clearHeight: 2450, panelHeights: [2250, 25] },
      expected: "stacked | 2250 25 25 | 150/250 | null",
    },
    {
      why: "a closure above the panels where nothing else reaches",
      storey: { clearHeight: 2430 },
      expected: "stacked | 2250 (30) | 150/250 | null",
    },
    {
      why: "the tallest panel before the narrowest closure",
      storey: {
        clearHeight: 2430,
        panelHeights: [2250, 2230],
        connectorHeights: [150, 160],
        capHeights: [250, 260],
      },
      expected: "stacked | 2250 (20) | 160/260 | null",
    },
    {
      why: "the connector with its cap before fewer closures",
      storey: { clearHeight: 2430, connectorHeights: [180, 150], capHeights: [250] },
      expected: "stacked | 2250 (30) | 150/250 | null",
    },
    {
      why: "a connector without its cap where no other fits",
      storey: { clearHeight: 2500, connectorHeights: [250, 150] },
      expected: "stacked | 2250 | 250/null | cap",
    },
    {
      why: "no slab: panels to the clear height",
      storey: { slab: 0, clearHeight: 2250 },
      expected: "stacked | 2250 | null/null | null",
    },
    {
      why: "no slab, and panels that do not reach",
      storey: { slab: 0 },
      expected: "no-stack | 2250 | null/null | null",
    },
    {
      why: "no caps in the kit",
      storey: { capHeights: [] },
      expected: "stacked | 2250 | 150/null | cap",
    },
    {
      why: "no connectors: the caps tell where they would begin",
      storey: { connectorHeights: [] },
      expected: "stacked | 2250 | null/250 | connector",
    },
    {
      why: "no connectors and no stack under one: panels to the clear height",
      storey: { connectorHeights: [], panelHeights: [2400] },
      expected: "stacked | 2400 | null/null | both",
    },
    {
      why: "neither family: panels to the clear height",
      storey: { connectorHeights: [], capHeights: [], panelHeights: [2250, 2400] },
      expected: "stacked | 2400 | null/null | both",
    },
    {
      why: "neither family: as high as panels reach",
      storey: { connectorHeights: [], capHeights: [] },
      expected: "stacked | 2250 | null/null | both",
    },
    {
      why: "nothing reaches the connector",
      storey: { clearHeight: 3000 },
      expected: "no-stack | 2250 | null/null | null",
    },
    {
      why: "nothing fits under the connector",
      storey: { clearHeight: 2000 },
      expected: "no-stack |  | null/null | null",
    },
    {
      why: "no panels: a connector alone is no stack",
      storey: { clearHeight: 150, panelHeights: [] },
      expected: "no-stack |  | null/null | null",
    },
    {
      why: "rows that share no width are not taken",
      storey: {
        clearHeight: 2700,
        panelHeights: [2250, 2000, 550, 300],
        heightsByWidth: [[2250], [300], [2000, 550]],
      },
      expected: "stacked | 2000 550 | 150/250 | null",
    },
    {
      why: "any width that they share will do",
      storey: {
        clearHeight: 2700,
        panelHeights: [2250, 2000, 550, 300],
        heightsByWidth: [
          [2000, 550],
          [2250, 300],
        ],
      },
      expected: "stacked | 2250 300 | 150/250 | null",
    },
  ])("$why", ({ storey, expected }) => {
    expect(text(chooseStack(input(storey)))).toBe(expected);
  });

  it("tells where each row stands and where the connector begins", () => {
    const stack = chooseStack(input({ clearHeight: 2720, panelHeights: [2250, 300] }));
    expect(stack.rows).toEqual([
      { z: 0, height: 2250, kind: "panel" },
      { z: 2250, height: 300, kind: "panel" },
      { z: 2550, height: 20, kind: "closure" },
    ]);
    expect(stack.top).toBe(2570);
  });

  it("is the best of all stacks of panels, one closure at most, and a connector with its cap", () => {
    const anything = fc.record({
      clearHeight: fc.integer({ min: 20, max: 70 }),
      panelHeights: fc.uniqueArray(fc.integer({ min: 4, max: 60 }), { minLength: 1, maxLength: 4 }),
      connectorHeights: fc.uniqueArray(fc.integer({ min: 3, max: 12 }), { minLength: 1, maxLength: 3 }),
      closure: fc.constantFrom(null, { least: 1, greatest: 3 }, { least: 2, greatest: 9 }),
    });
    fc.assert(
      fc.property(anything, (parts) => {
        const capHeights = parts.connectorHeights.map((height) => height + 5);
        const stack = chooseStack({ ...parts, slab: 5, capHeights });
        const best = everyStack({ ...parts, slab: 5, capHeights }).sort(compareStacks)[0];
        if (best === undefined) {
          expect(stack.status).toBe("no-stack");
          return;
        }
        const closure = stack.rows.find(({ kind }) => kind === "closure")?.height ?? 0;
        const panels = stack.rows.filter(({ kind }) => kind === "panel").map(({ height }) => height);
        expect({ panels, closure }).toEqual({ panels: best.panels, closure: best.closure });
        expect(stack.top + (stack.connector ?? 0)).toBe(parts.clearHeight);
        expect(stack.top + (stack.cap ?? 0)).toBe(parts.clearHeight + 5);
      }),
      { seed: 61, numRuns: 500 },
    );
  });
});

interface PlainStack {
  readonly panels: number[];
  readonly closure: number;
}

function everyStack({ clearHeight, panelHeights, connectorHeights, closure }: StackInput): PlainStack[] {
  const heights = [...panelHeights].sort((a, b) => b - a);
  const strips = [0];
  for (let strip = closure?.least ?? 1; strip <= (closure?.greatest ?? 0); strip++) strips.push(strip);
  return connectorHeights
    .flatMap((connector) =>
      strips.flatMap((strip) =>
        everyMultiset(clearHeight - connector - strip, heights).map((panels) => ({ panels, closure: strip })),
      ),
    )
    .filter(({ panels }) => panels.length > 0);
}

function compareStacks(a: PlainStack, b: PlainStack): number {
  const closures = Math.sign(a.closure) - Math.sign(b.closure);
  if (closures !== 0) return closures;
  if (a.panels.length !== b.panels.length) return a.panels.length - b.panels.length;
  for (const [index, height] of a.panels.entries()) {
    if (height !== b.panels[index]) return b.panels[index]! - height;
  }
  return a.closure - b.closure;
}

describe("droppedStack", () => {
  const storey = input({
    clearHeight: 2700,
    panelHeights: [2250, 2100, 300, 250, 200, 150],
    connectorHeights: [150],
  });

  it.each<{ why: string; storey: StackInput; drop: number; expected: string }>([
    {
      why: "no drop: the storey's own stack",
      storey,
      drop: 0,
      expected: "stacked | 2250 300 | 150/null | null",
    },
    {
      why: "a shorter extension on the same panel",
      storey,
      drop: 100,
      expected: "stacked | 2250 200 | 150/null | null",
    },
    { why: "the same panel alone", storey, drop: 300, expected: "stacked | 2250 | 150/null | null" },
    {
      why: "under the first joint: a stack of its own",
      storey,
      drop: 450,
      expected: "stacked | 2100 | 150/null | null",
    },
    {
      why: "keeps the joint though one taller panel would do",
      storey: input({ clearHeight: 2700, panelHeights: [2250, 2450, 300, 200] }),
      drop: 100,
      expected: "stacked | 2250 200 | 150/null | null",
    },
    {
      why: "gives the joint up where nothing fits above it",
      storey: input({ clearHeight: 2700, panelHeights: [2250, 2450, 300] }),
      drop: 100,
      expected: "stacked | 2450 | 150/null | null",
    },
    {
      why: "a closure above the common rows",
      storey: input({ clearHeight: 2700, panelHeights: [2250, 300] }),
      drop: 260,
      expected: "stacked | 2250 (40) | 150/null | null",
    },
    {
      why: "no cap is wanted under a dropped soffit",
      storey: input({
        clearHeight: 2700,
        panelHeights: [2250, 300],
        connectorHeights: [150, 250],
        capHeights: [250],
      }),
      drop: 200,
      expected: "stacked | 2250 | 250/null | null",
    },
    {
      why: "no connectors: the caps tell where they would begin",
      storey: input({ clearHeight: 2700, panelHeights: [2250, 300], connectorHeights: [] }),
      drop: 300,
      expected: "stacked | 2250 | null/null | connector",
    },
    {
      why: "lower than every panel",
      storey: input({}),
      drop: 500,
      expected: "no-stack |  | null/null | null",
    },
    {
      why: "deeper than the storey",
      storey: input({}),
      drop: 2500,
      expected: "no-stack |  | null/null | null",
    },
  ])("$why", ({ storey: over, drop, expected }) => {
    expect(text(droppedStack(over, drop, chooseStack(over).rows))).toBe(expected);
  });
});
