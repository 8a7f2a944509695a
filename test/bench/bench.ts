// What the fill and the choice of a set cost: seeded units of 60, 600 and 6,000 walls, warm medians, ratios within one run, memory, and the
// built command on a sample. Prints; it never passes or fails by the clock.

import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { fillUnit } from "../../src/fill/fillUnit.ts";
import type { FilledUnit, FillInput } from "../../src/fill/fillWalls.ts";
import { createPieceBook } from "../../src/fill/pieceBook.ts";
import { createProblemLog } from "../../src/fill/problems.ts";
import { placeSoffits } from "../../src/fill/soffit/placeSoffits.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { buildOutline } from "../../src/plan/outline.ts";
import { awkwardUnit, gridUnit } from "./gridUnit.ts";
import { benchInstances } from "./instanceBench.ts";
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

/** The soffits of a filled unit once more, alone. */
function soffitsOf({ unit, kit, storey, prefix }: FillInput, { outline, drafts, fill }: FilledUnit) {
  return placeSoffits({
    outline,
    unit,
    slab: storey.slab,
    clearHeight: storey.clearHeight,
    drafts,
    corners: fill.corners,
    kit,
    book: createPieceBook(kit, prefix),
    log: createProblemLog(),
  });
}

const soffitRows: Record<string, string | number>[] = [];
for (const { name, unit, runs } of [
  { name: "ten rooms", unit: gridUnit(5, 2), runs: 200 },
  { name: "ten rooms off the grid, with columns", unit: awkwardUnit(5, 2), runs: 100 },
  { name: "S", unit: gridUnit(5, 5), runs: 200 },
]) {
  const input = { unit, storey: STOREY, kit: demoKit, union, prefix: "G", fillers: "corner" } as const;
  median(() => fillUnit(input), Math.ceil(runs / 4)); // warm
  const filled = fillUnit(input);
  const fill = median(() => fillUnit(input), runs);
  const soffit = median(() => soffitsOf(input, filled), runs);
  soffitRows.push({
    unit: name,
    rooms: filled.fill.soffits.length,
    "fill ms": Number(fill.toFixed(2)),
    "soffits ms": Number(soffit.toFixed(2)),
    "share %": Math.round((100 * soffit) / fill),
    "soffit pieces": filled.fill.soffits.reduce((sum, { pieces }) => sum + pieces.length, 0),
  });
}
console.table(soffitRows);

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
await benchInstances();
