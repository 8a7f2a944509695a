// Short ways to work the plan in a browser: places are given in plan millimetres.

import { expect, type Page } from "@playwright/test";

type Place = readonly [x: number, y: number];

/** Opens the page and waits until the sample is filled. */
export async function openPage(page: Page): Promise<void> {
  await page.goto("/");
  await filled(page);
  await expect(page.locator('[data-score="fillers"]')).toBeVisible();
}

/** Waits until walls and soffits of what is drawn are filled. */
export async function filled(page: Page): Promise<void> {
  await expect(page.locator(".plan")).not.toHaveAttribute("data-pieces", "");
  await expect(page.locator(".plan")).not.toHaveAttribute("data-soffits", "");
}

/** Where a place of the plan is on the page, px. */
export async function onScreen(page: Page, [x, y]: Place): Promise<Place> {
  const plan = page.locator(".plan");
  const box = await plan.boundingBox();
  const scale = Number(await plan.getAttribute("data-scale"));
  const [cx = 0, cy = 0] = ((await plan.getAttribute("data-centre")) ?? "").split(" ").map(Number);
  if (box === null) throw new Error("the plan is not on the page");
  return [box.x + box.width / 2 + (x - cx) * scale, box.y + box.height / 2 - (y - cy) * scale];
}

export async function clickPlan(page: Page, place: Place): Promise<void> {
  const [x, y] = await onScreen(page, place);
  await page.mouse.click(x, y);
}

export async function movePlan(page: Page, place: Place): Promise<void> {
  const [x, y] = await onScreen(page, place);
  await page.mouse.move(x, y, { steps: 3 });
}

export async function dragPlan(page: Page, from: Place, to: Place): Promise<void> {
  const [x, y] = await onScreen(page, from);
  const [u, v] = await onScreen(page, to);
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move((x + u) / 2, (y + v) / 2, { steps: 4 });
  await page.mouse.move(u, v, { steps: 4 });
  await page.mouse.up();
}

/** Carries out a command by its name in the search. */
export async function command(page: Page, name: string): Promise<void> {
  await page.keyboard.press("Control+K");
  await page.getByRole("combobox", { name: "Find a command" }).fill(name);
  await page.keyboard.press("Enter");
  await expect(page.getByRole("combobox", { name: "Find a command" })).toBeHidden();
}

/** The figures of the bar, as numbers, once the fill of what is drawn is there. */
export async function scores(page: Page): Promise<Readonly<Record<string, number>>> {
  await filled(page);
  const entries = await page
    .locator("[data-score]")
    .evaluateAll((all) =>
      all.map(
        (each) => [each.getAttribute("data-score") ?? "", Number(each.getAttribute("data-value"))] as const,
      ),
    );
  return Object.fromEntries(entries);
}

/** How many walls, openings and room names are in the plan. */
export async function counts(page: Page): Promise<readonly number[]> {
  const plan = page.locator(".plan");
  const names = ["data-walls", "data-openings", "data-rooms"];
  return Promise.all(names.map(async (name) => Number(await plan.getAttribute(name))));
}
