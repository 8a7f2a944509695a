// The panel sets with known optima as drawn projects: every run a free-standing wall, so that all of it stands on two faces.

import type { JsonObject } from "../../src/json/value.ts";
import type { Instance } from "./setInstance.ts";

const HEIGHT = 2400;

/** A project file; amounts in euros, each twice that of the instance. */
export function drawnInstance(instance: Instance): JsonObject {
  const { widths, standard, price, closure, handling, pours } = instance;
  const code = (width: number) => `P${width}`;
  const stock = instance.most ?? instance.owned;
  return {
    format: "panelwright-project",
    version: 1,
    name: instance.name,
    storey: { clearHeight: HEIGHT, slab: 0 },
    kit: {
      name: "set",
      currency: "EUR",
      pieces: [
        ...widths.map((width) => ({
          code: code(width),
          family: "wall-panel",
          width,
          height: HEIGHT,
          mass: (width * HEIGHT * 22) / 1e6,
          price: price[width]! / 100,
          standard: width === standard,
        })),
        { code: "Strip", family: "closure-strip", least: closure.min, greatest: closure.max, mass: 1 },
        { code: "Corner", family: "inside-corner", legs: [150, 150], height: HEIGHT, mass: 8 },
        { code: "Angle", family: "outside-corner", length: HEIGHT, mass: 3 },
        { code: "End", family: "stop-end", width: 100, height: HEIGHT, mass: 5 },
      ],
      rules: {},
    },
    units: pours.map(({ id, runs }) => ({
      id,
      walls: runs
        .flatMap(([length, count]) => new Array<number>(count).fill(length))
        .map((length, k) => ({ id: `w${k}`, from: [0, k * 1000], to: [length, k * 1000], thickness: 100 })),
    })),
    pours: pours.map(({ id }) => ({ id, unit: id })),
    ...(stock !== undefined && {
      // One face of the instance, two of the wall.
      stock: Object.fromEntries(
        Object.entries(stock).map(([width, count]) => [code(Number(width)), 2 * count]),
      ),
    }),
    buy: instance.most === undefined,
    objective: { handling: handling / 100, closure: closure.cost / 100, closurePerMm: closure.perMm / 100 },
  };
}
