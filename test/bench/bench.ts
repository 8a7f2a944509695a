// What the fill and the choice of a set cost: seeded units of 60, 600 and 6,000 walls, warm medians, ratios within one run, memory, and the
// built command on a sample. Prints; it never passes or fails by the clock.

import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { fillUnit } from "../../src/fill/fillUnit.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import { gridUnit } from "./gridUnit.ts";
import { benchSets } from "./setBench.ts";

const STOREY = { clearHeight: 2400, slab: 100 };
const SIZES = [
  { name: "S", columns: 5, runs: 400 },
  { name: "M", columns: 17, runs: 20 },
  { name: "L", columns: 54, runs: 5 },
] as const;

function median(run: () => unknown, runs: number): number {
  const times: number[] = [];
  for (let k = 0; k < runs; k++) {
    const start = performance.now();
    run();
    times.push(performance.now() - start);
  }
  times.sort((a, b) => a - b);
  return times[Math.floor(runs / 2)] ?? 0;
}

const union = await loadUnion();
const rows: Record<string, string | number>[] = [];
let smallest = 0;
for (const { name, columns, runs } of SIZES) {
  const unit = gridUnit(columns, columns);
  const input = { unit, storey: STOREY, kit: demoKit, union, prefix: "G", fillers: "corner" } as const;
  median(() => fillUnit(input), Math.ceil(runs / 4)); // warm
  const outline = median(() => buildOutline(unit, union), runs);
  const fill = median(() => fillUnit(input), runs);
  if (smallest === 0) smallest = fill;
  const { totals, ties } = fillUnit(input).fill;
  rows.push({
    size: name,
    walls: unit.walls.length,
    "outline ms": Number(outline.toFixed(2)),
    "fill ms": Number(fill.toFixed(2)),
    "× S": Number((fill / smallest).toFixed(1)),
    panels: totals.panels,
    "tie joints": ties.length,
    "memory MB": Math.round(process.memoryUsage().rss / 1e6),
  });
}
console.table(rows);

const command = "dist-cli/panelwright.js";
const sample = "samples/two-bedroom.json";
if (existsSync(command) && existsSync(sample)) {
  const once = () =>
    spawnSync(process.execPath, [command, "fill", sample, "--json", "-"], { stdio: "ignore" });
  console.log(`built command on ${sample}: ${Math.round(median(once, 9))} ms including start-up`);
  const bare = () => spawnSync(process.execPath, ["-e", "0"], { stdio: "ignore" });
  console.log(`Node alone: ${Math.round(median(bare, 9))} ms`);
}

await benchSets();
