// Problems: counted in the bar, listed with their sentence, shown on the plan, and a click goes to the place.

import { expect, type Page, test } from "@playwright/test";
import { dragPlan, filled, onScreen, openPage } from "./planPage.ts";

// Wall w8 moved 200 mm to the north runs into the doors at both ends of the hall.
async function makeProblems(page: Page): Promise<number> {
  await openPage(page);
  const button = page.locator(".problems-button");
  const before = Number(await button.getAttribute("data-problems"));
  await dragPlan(page, [5800, 4050], [5800, 4250]);
  await page.keyboard.press("Escape");
  await filled(page);
  const after = Number(await button.getAttribute("data-problems"));
  expect(after).toBeGreaterThan(before);
  return after;
}

test("a click on a problem goes there and selects what it is about", async ({ page }) => {
  const count = await makeProblems(page);
  await page.locator(".problems-button").click();
  await expect(page.locator("[data-problem]")).toHaveCount(count);
  await page.locator('[data-problem="1"]').click();
  await expect(page.locator('[data-problem="1"]')).toHaveAttribute("aria-current", "true");
  await expect(page.locator('[data-problem="1"]')).toContainText("Door d1");
  await expect(page.locator(".pane-header")).toContainText("Door d1");
  const [x, y] = await onScreen(page, [10_925, 4300]);
  const box = await page.locator(".plan").boundingBox();
  expect(x).toBeGreaterThan(box?.x ?? 0);
  expect(x).toBeLessThan((box?.x ?? 0) + (box?.width ?? 0));
  expect(y).toBeGreaterThan(box?.y ?? 0);
  expect(y).toBeLessThan((box?.y ?? 0) + (box?.height ?? 0));
});

test("the panel pushes the plan aside and covers nothing of it", async ({ page }) => {
  await makeProblems(page);
  const wide = await page.locator(".plan").boundingBox();
  await page.keyboard.press("Shift+P");
  await expect(page.locator(".panel")).toBeVisible();
  const narrow = await page.locator(".plan").boundingBox();
  const panel = await page.locator(".panel").boundingBox();
  expect((wide?.width ?? 0) - (narrow?.width ?? 0)).toBe(372);
  expect(panel?.x).toBe((narrow?.x ?? 0) + (narrow?.width ?? 0));
  await page.keyboard.press("Shift+P");
  await expect(page.locator(".panel")).toBeHidden();
});

test("the list is walked with the arrows", async ({ page }) => {
  await makeProblems(page);
  await page.keyboard.press("Shift+P");
  await page.locator('[data-problem="1"]').focus();
  await page.keyboard.press("ArrowDown");
  await expect(page.locator('[data-problem="2"]')).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(page.locator('[data-problem="2"]')).toHaveAttribute("aria-current", "true");
});

test("an undone fault is gone from the list", async ({ page }) => {
  const count = await makeProblems(page);
  await page.keyboard.press("Shift+P");
  await page.keyboard.press("Control+Z");
  await expect.poll(() => page.locator("[data-problem]").count()).toBeLessThan(count);
});
