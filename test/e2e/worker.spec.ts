// A unit too large to be filled between two frames: a worker fills it, and the page shows what the core gives.

import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { scoresOf } from "../../src/editor/live/scores.ts";
import { fillUnit } from "../../src/fill/fillUnit.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { readProject } from "../../src/plan/read.ts";
import { writeProject } from "../../src/plan/write.ts";
import { gridUnit } from "../bench/gridUnit.ts";
import { command, counts, openPage, scores } from "./planPage.ts";

const sample = readProject(readFileSync("samples/one-room.json", "utf8"));
if (sample.status === "invalid") throw new Error("the sample cannot be read");
const block = { ...sample.project, name: "Block", units: [gridUnit(16, 17)], pours: [], buy: true };

async function openBlock(page: Page): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await command(page, "Open a file");
  await (await chooser).setFiles({
    name: "block.json",
    mimeType: "application/json",
    buffer: Buffer.from(writeProject(block)),
  });
  await expect.poll(async () => (await counts(page))[0]).toBe(block.units[0]?.walls.length);
}

test("a large unit is filled in one worker, with the figures of the core", async ({ page }) => {
  await openPage(page);
  // The one that places soffits.
  expect(page.workers()).toHaveLength(1);
  await openBlock(page);
  const walls = block.units[0]?.walls.length ?? 0;
  // The list of things names every wall; each step takes one away.
  await command(page, "Open or close the list of things");
  for (let step = 1; step <= 3; step++) {
    await page.locator(".things button", { hasText: "Wall" }).first().click();
    await page.locator(".plan").focus();
    await page.keyboard.press("Delete");
    await expect.poll(async () => (await counts(page))[0]).toBe(walls - step);
  }
  await expect.poll(() => page.workers().length).toBe(1);

  const download = page.waitForEvent("download");
  await command(page, "Save as a file");
  const read = readProject(readFileSync(await (await download).path(), "utf8"));
  if (read.status === "invalid") throw new Error("the file saved cannot be read");
  const [unit] = read.project.units;
  if (unit === undefined) throw new Error("the file saved has no unit");
  const { storey, fillers } = read.project;
  const { outline, fill } = fillUnit({
    unit,
    storey,
    fillers,
    kit: demoKit,
    prefix: unit.id,
    union: await loadUnion(),
  });
  const {
    closures,
    fillers: narrow,
    sizes,
    panels,
  } = scoresOf({ outline, fill, kit: demoKit, hasSoffits: true });
  await expect
    .poll(() => scores(page), { timeout: 20_000 })
    .toMatchObject({ closures, fillers: narrow, sizes, panels });
  expect(page.workers()).toHaveLength(1);
});
