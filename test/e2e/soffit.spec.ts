// The soffit in a browser: shown by a key, a prop and its check, the way the panels of a room lie, and all of it undone.

import { AxeBuilder } from "@axe-core/playwright";
import { expect, test } from "@playwright/test";
import { clickPlan, command, filled, openPage, scores } from "./planPage.ts";

// Of the sample: a prop under the living room's soffit, a panel beside it, the label of bedroom 1.
const PROP = [900, 3125] as const;
const PANEL = [900, 2500] as const;

test("the soffit comes and goes by a key, and a prop tells what it carries", async ({ page }) => {
  await openPage(page);
  const soffit = page.getByRole("button", { name: /^Show or hide the soffit/ });
  const card = page.getByRole("region", { name: "In the soffit" });
  await clickPlan(page, PROP);
  await expect(card).toBeHidden();
  await page.keyboard.press("g");
  await expect(soffit).toHaveAttribute("aria-pressed", "true");
  await clickPlan(page, PROP);
  await expect(card.getByRole("heading")).toHaveText("Prop");
  await expect(card).toContainText("It carries 1.2 m² of soffit");
  await expect(card.locator(".verdict")).toHaveAttribute("data-status", "within");
  await expect(card).toContainText("Within the stated limit");
  await expect(card).toContainText("A planning aid and no design");
  const axe = await new AxeBuilder({ page }).include(".soffit-card").analyze();
  expect(axe.violations).toEqual([]);
  await clickPlan(page, PANEL);
  await expect(card.getByRole("heading")).toHaveText(/Slab panel 600 × 1.200/);
  await card.getByRole("button", { name: "Next piece" }).click();
  await expect(card.getByRole("heading")).toHaveText(/Slab panel/);
  await page.locator(".plan-host").focus();
  await page.keyboard.press("Escape");
  await expect(card).toBeHidden();
  await page.keyboard.press("g");
  await expect(soffit).toHaveAttribute("aria-pressed", "false");
});

test("slab panels lie the other way when asked, and undo lays them back", async ({ page }) => {
  await openPage(page);
  const first = await scores(page);
  await page.keyboard.press("g");
  await clickPlan(page, PANEL);
  const card = page.getByRole("region", { name: "In the soffit" });
  const way = card.getByRole("combobox", { name: "Slab panels lie" });
  await expect(way).toHaveValue("better");
  await expect(way.locator("option").first()).toHaveText("the better way: top to bottom");
  await way.selectOption("x");
  await expect(way).toHaveValue("x");
  const turned = await scores(page);
  expect(turned.mass).not.toBe(first.mass);
  expect(turned.fillers).toBe(first.fillers);
  await command(page, "undo");
  await expect(way).toHaveValue("better");
  expect(await scores(page)).toEqual(first);
});

test("a room that is selected says what is over it, as steps that can be undone", async ({ page }) => {
  await openPage(page);
  await page.keyboard.press("Shift+T");
  await page.getByRole("button", { name: /^Bedroom 1 / }).click();
  await expect(page.locator(".pane-header")).toContainText("face to Bedroom 1");
  const drop = page.getByRole("textbox", { name: "Soffit lower by" });
  await expect(drop).toHaveValue("0");
  await drop.fill("200");
  await drop.press("Enter");
  await filled(page);
  await page.keyboard.press("Control+Z");
  await expect(drop).toHaveValue("0");
  await page.getByRole("button", { name: "Show its soffit" }).click();
  await expect(page.getByRole("region", { name: "In the soffit" })).toContainText("soffit of Bedroom 1");
  const kind = page.getByRole("combobox", { name: "Room is" });
  await kind.selectOption("open");
  await expect(page.getByRole("region", { name: "In the soffit" })).toBeHidden();
  await expect(page.getByRole("button", { name: "Show its soffit" })).toBeHidden();
  await page.locator(".plan-host").focus();
  await page.keyboard.press("Control+Z");
  await expect(page.getByRole("button", { name: "Show its soffit" })).toBeVisible();
});
