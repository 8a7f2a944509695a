// Drawing in a browser: two rooms from nothing by mouse and typed lengths, by keyboard alone, undo and redo of all of it.

import { AxeBuilder } from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { scoresOf } from "../../src/editor/live/scores.ts";
import { fillUnit } from "../../src/fill/fillUnit.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { documentToUnit, emptyUnit } from "../../src/plan/documentProject.ts";
import type { Position } from "../../src/plan/project.ts";
import { clickPlan, command, counts, dragPlan, movePlan, openPage, scores } from "./planPage.ts";

const STOREY = { clearHeight: 2400, slab: 100 };

// The figures the core gives for the same walls, as the drawing is meant to have them.
async function expected(lines: readonly (readonly [Position, Position])[], door: boolean) {
  const unit = documentToUnit(emptyUnit("U", "", 0));
  const walls = lines.map(([from, to], k) => ({
    ...{ id: `w${k + 1}`, from, to, thickness: 100, justify: "centre" as const },
  }));
  const openings = door
    ? [{ id: "d1", wall: "w5", at: 1000, width: 900, sill: 0, head: 2100, formed: "band" as const }]
    : [];
  const union = await loadUnion();
  const { outline, fill } = fillUnit({
    ...{ unit: { ...unit, walls, openings }, storey: STOREY, kit: demoKit, union },
    ...{ prefix: "U", fillers: "corner" },
  });
  const { closures, fillers, sizes, panels, mass } = scoresOf({
    outline,
    fill,
    kit: demoKit,
    hasSoffits: true,
  });
  return { closures, fillers, sizes, panels, mass };
}

const TWO_ROOMS: readonly (readonly [Position, Position])[] = [
  [
    [1000, 1000],
    [7000, 1000],
  ],
  [
    [7000, 1000],
    [7000, 4500],
  ],
  [
    [7000, 4500],
    [1000, 4500],
  ],
  [
    [1000, 4500],
    [1000, 1000],
  ],
  [
    [4000, 1000],
    [4000, 4500],
  ],
];

async function typeWall(page: Page, towards: Position, length: string): Promise<void> {
  await movePlan(page, towards);
  await page.keyboard.type(length);
  await page.keyboard.press("Enter");
}

async function drawTwoRooms(page: Page): Promise<void> {
  await command(page, "new unit");
  await clickPlan(page, [1000, 1000]);
  await typeWall(page, [3000, 1100], "6000");
  await typeWall(page, [6900, 3000], "3500");
  await typeWall(page, [4000, 4400], "6000");
  await typeWall(page, [1100, 2500], "3500");
  await clickPlan(page, [4000, 1000]);
  await typeWall(page, [4050, 3000], "3500");
  await page.keyboard.press("Escape");
}

test("two rooms drawn from nothing have the counts the core gives for them", async ({ page }) => {
  await openPage(page);
  await drawTwoRooms(page);
  expect(await counts(page)).toEqual([5, 0, 0]);
  expect(await scores(page)).toEqual(await expected(TWO_ROOMS, false));

  await page.keyboard.press("d");
  await movePlan(page, [4000, 2600]);
  await page.keyboard.type("950");
  await page.keyboard.press("Enter");
  expect(await counts(page)).toEqual([5, 1, 0]);
  expect(await scores(page)).toEqual(await expected(TWO_ROOMS, true));

  await page.keyboard.press("r");
  await clickPlan(page, [2500, 2500]);
  await page.keyboard.type("Workshop");
  await page.keyboard.press("Enter");
  expect(await counts(page)).toEqual([5, 1, 1]);
  await page.keyboard.press("Shift+T");
  await expect(page.getByRole("button", { name: /^Workshop 9\.\d m²$/ })).toBeVisible();
});

test("every step goes back to the empty plan and forth again", async ({ page }) => {
  await openPage(page);
  await drawTwoRooms(page);
  const drawn = await scores(page);
  for (const walls of [4, 3, 2, 1, 0]) {
    await page.keyboard.press("Control+Z");
    expect(await counts(page)).toEqual([walls, 0, 0]);
  }
  await expect(page.getByText("Click to start a wall")).toBeVisible();
  for (const walls of [1, 2, 3, 4, 5]) {
    await page.keyboard.press("Control+Shift+Z");
    expect(await counts(page)).toEqual([walls, 0, 0]);
  }
  expect(await scores(page)).toEqual(drawn);
  await page.keyboard.press("Control+Shift+Z");
  await expect(page.getByText("Nothing to redo.")).toBeVisible();
});

test("a drag is one step, and Escape leaves nothing behind", async ({ page }) => {
  await openPage(page);
  const first = await scores(page);
  await dragPlan(page, [5800, 4050], [5800, 4250]);
  const moved = await scores(page);
  expect(moved).not.toEqual(first);
  await expect(page.locator('[data-score="fillers"] .chip')).not.toHaveText("±0");
  await page.keyboard.press("Control+Z");
  expect(await scores(page)).toEqual(first);
  await movePlan(page, [5800, 4050]);
  await page.mouse.down();
  await movePlan(page, [5800, 4250]);
  await page.keyboard.press("Escape");
  await page.mouse.up();
  expect(await scores(page)).toEqual(first);
});

test("a clear width typed on the drawing moves the wall, and Escape in the field takes it back", async ({
  page,
}) => {
  await openPage(page);
  const first = await scores(page);
  await clickPlan(page, [5800, 4050]);
  const field = page.getByRole("textbox", { name: "Clear width" });
  await page.getByRole("button", { name: "Clear width 1\u202f200" }).click();
  await page.keyboard.type("1100");
  await expect(field).toHaveValue("1100");
  await page.keyboard.press("Escape");
  expect(await scores(page)).toEqual(first);
  await page.getByRole("button", { name: "Clear width 1\u202f200" }).click();
  await page.keyboard.type("1100");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("button", { name: "Clear width 1\u202f100" })).toBeVisible();
  await expect(page.getByRole("button", { name: "Clear width 4\u202f000" })).toBeVisible();
});

test("a wall is drawn, chosen and typed by keyboard alone", async ({ page }) => {
  await openPage(page);
  await command(page, "new unit");
  const arrow = async (key: string, times: number) => {
    for (let k = 0; k < times; k++) await page.keyboard.press(key);
  };
  await page.keyboard.press("w");
  await arrow("ArrowLeft", 2);
  await page.keyboard.press("Enter");
  await arrow("Shift+ArrowRight", 3);
  await page.keyboard.press("Enter");
  await arrow("ArrowUp", 4);
  await page.keyboard.type("2400");
  await page.keyboard.press("Enter");
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
  expect(await counts(page)).toEqual([2, 0, 0]);
  await page.keyboard.press("Shift+T");
  await expect(page.getByRole("button", { name: "Wall w1 1\u202f500 long" })).toBeVisible();
  const second = page.getByRole("button", { name: "Wall w2 2\u202f400 long" });
  await second.focus();
  await page.keyboard.press("Space");
  await expect(second).toHaveAttribute("aria-pressed", "true");
  await page.keyboard.type("2100");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("button", { name: "Wall w2 2\u202f100 long" })).toBeVisible();
});

test("F6 walks the parts of the window and every tool shows its key", async ({ page }) => {
  await openPage(page);
  const regions: string[] = [];
  for (let k = 0; k < 5; k++) {
    await page.keyboard.press("F6");
    const region = await page.evaluate(
      () => document.activeElement?.closest("[data-region]")?.getAttribute("data-region") ?? "",
    );
    regions.push(region);
  }
  expect(new Set(regions).size).toBeGreaterThanOrEqual(4);
  for (const [name, key] of [
    ["Wall", "W"],
    ["Door", "D"],
    ["Measure", "M"],
  ] as const) {
    await expect(page.getByRole("button", { name: `${name} (${key})`, exact: true })).toHaveAttribute(
      "title",
      `${name} (${key})`,
    );
  }
});

test("the plan keeps three quarters of the window with the pane open", async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  await openPage(page);
  const box = await page.locator(".plan").boundingBox();
  expect((box?.width ?? 0) * (box?.height ?? 0)).toBeGreaterThanOrEqual(0.75 * 1440 * 900);
});

for (const colorScheme of ["light", "dark"] as const) {
  test(`axe finds no serious fault in ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await openPage(page);
    const faults = async () => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      return violations
        .filter(({ impact }) => impact === "serious" || impact === "critical")
        .map(({ id }) => id);
    };
    expect(await faults()).toEqual([]);
    await clickPlan(page, [5800, 4050]);
    await page.keyboard.press("Shift+P");
    expect(await faults()).toEqual([]);
    await page.keyboard.press("Shift+T");
    expect(await faults()).toEqual([]);
    await page.keyboard.press("Control+K");
    expect(await faults()).toEqual([]);
  });
}
