// The checks over the plan: filtered, walked by keys, opened, gone to in the plan; loads and concrete changed and taken back.

import { readFileSync } from "node:fs";
import { AxeBuilder } from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { assessFill } from "../../src/assess/assessFill.ts";
import { CAUTIONS } from "../../src/check/cautions.ts";
import { coreTools } from "../../src/cli/coreTools.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { readConcrete } from "../../src/plan/concrete.ts";
import { readLoads } from "../../src/plan/loads.ts";
import { readProject } from "../../src/plan/read.ts";
import { checkText } from "../../src/sheet/checkWords/checkText.ts";
import { kindText } from "../../src/sheet/checkWords/kinds.ts";
import { openPage } from "./planPage.ts";

test.describe.configure({ timeout: 90_000 });

const read = readProject(readFileSync("samples/two-bedroom.json", "utf8"));
if (read.status === "invalid") throw new Error("the sample cannot be read");
const { project } = read;

async function coreChecks() {
  const [loads, concrete] = [readLoads(project.loads), readConcrete(project.concrete)];
  if (loads.status === "invalid" || concrete.status === "invalid") throw new Error("loads or concrete");
  return assessFill({
    project,
    kit: demoKit,
    fill: await coreTools.fill(project, demoKit),
    loads: loads.value,
    defaults: loads.defaults,
    concrete: concrete.value,
    concreteDefaults: concrete.defaults,
  });
}

async function openChecks(page: Page): Promise<void> {
  await openPage(page);
  await page.keyboard.press("Shift+C");
  await expect(page.locator(".check-line").first()).toBeVisible({ timeout: 30_000 });
}

const line = (page: Page, kind: string) => page.locator(`.check-line[data-kind="${kind}"]`);

/** Lists one kind alone: of a long list only what is in view is drawn. */
async function only(page: Page, name: string): Promise<void> {
  await page.locator(".check-asks select").nth(2).selectOption({ label: name });
}
const field = (page: Page, name: string) => page.locator(`[data-field="${name}"]`).locator("input, select");
const tab = (page: Page, name: string) => page.getByRole("tab", { name });

/** The checks shown are those of the plan as it is. */
async function settled(page: Page): Promise<void> {
  await expect(page.locator(".checks")).toHaveAttribute("data-stale", "false");
  await expect(page.locator(".checks-bar [role=status]")).toHaveText("");
}

async function faults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, nodes }) => `${id}: ${nodes[0]?.target.join(" ")}`);
}

test("the checks are those of the core, counted by verdict, with every caution in view", async ({ page }) => {
  const core = await coreChecks();
  await openChecks(page);
  const totals = page.locator(".check-total b");
  const { over, notChecked, within, notApplicable } = core.totals;
  await expect(totals).toHaveText([over, notChecked, within, notApplicable].map(String));
  await expect(page.locator(".caution-texts ol li")).toHaveText([...core.cautions]);
  await expect(page.locator(".caution-texts li").first()).toBeInViewport();
  for (const name of ["Pressure", "Striking", "Slab and props", "Lifting"]) {
    await tab(page, name).click();
    await expect(page.locator(".caution-texts li").first()).toBeInViewport();
  }
});

test("hundreds of ties are one line, open by keys to walls and ties, and each says all that went into it", async ({
  page,
}) => {
  const core = await coreChecks();
  const ties = core.checks.filter(({ kind }) => kind === "tie-load");
  await openChecks(page);
  await only(page, kindText("tie-load", "en"));
  const lines = page.getByRole("treeitem");
  await expect(lines).toHaveCount(1);
  await expect(lines).toContainText(String(ties.length));
  await page.getByRole("tree").focus();
  for (const key of ["ArrowRight", "ArrowDown", "ArrowRight", "ArrowDown"]) await page.keyboard.press(key);
  const hand = page.locator('.check-line[aria-selected="true"]');
  await expect(hand).toHaveAttribute("aria-level", "3");
  const card = page.locator(".check-card");
  const worst = ties.toSorted((a, b) => (b.value ?? 0) - (a.value ?? 0))[0]!;
  await expect(card).toHaveAttribute("data-check", worst.id);
  await expect(card).toContainText(worst.reason ?? "no reason");
  for (const { name, sign } of worst.inputs) {
    await expect(card.locator(".check-inputs tr").filter({ hasText: name }).first()).toContainText(sign);
  }
  await expect(card.locator(".check-formula").first()).toBeVisible();
  await page.keyboard.press("ArrowDown");
  await expect(card).not.toHaveAttribute("data-check", worst.id);
  // Of the many only those in view are drawn.
  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("ArrowLeft");
  await expect(hand).toHaveAttribute("aria-level", "2");
  expect(await lines.count()).toBeLessThan(80);
});

test("a verdict and a room narrow the list", async ({ page }) => {
  await openChecks(page);
  await page.getByRole("button", { name: /not checked$/ }).click();
  await expect(page.locator('.check-line[data-status="within"]')).toHaveCount(0);
  await page.getByRole("button", { name: /not checked$/ }).click();
  await page.getByRole("combobox", { name: "Room" }).selectOption({ label: "Bathroom" });
  await only(page, kindText("prop-load", "en"));
  const core = await coreChecks();
  const own = core.checks.filter(({ kind, where }) => kind === "prop-load" && where.room === "Bathroom");
  await expect(line(page, "prop-load").first()).toContainText(own.length === 1 ? "kN" : String(own.length));
});

test("a tie is shown in plan and elevation, a prop in the soffit", async ({ page }) => {
  await openChecks(page);
  await only(page, kindText("tie-load", "en"));
  await line(page, "tie-load").click();
  await page.getByRole("button", { name: "Show in the plan" }).click();
  await expect(page.locator(".checks")).toBeHidden();
  const plan = page.locator(".plan");
  const core = await coreChecks();
  const worst = core.checks
    .filter(({ kind }) => kind === "tie-load")
    .toSorted((a, b) => (b.value ?? 0) - (a.value ?? 0))[0]!;
  await expect(plan).toHaveAttribute("data-centre", (worst.where.at ?? []).join(" "));
  await expect(page.locator(".pane")).toContainText("Tie");

  await page.keyboard.press("Shift+C");
  await only(page, kindText("prop-load", "en"));
  await line(page, "prop-load").click();
  await expect(page.locator(".check-card h3")).toHaveText(kindText("prop-load", "en"));
  await page.getByRole("button", { name: "Show in the plan" }).click();
  await expect(page.locator(".checks")).toBeHidden();
  await expect(page.getByText("Within the stated limit")).toBeVisible();
});

test("a change of the concrete is one step, follows at once, and undo takes it back", async ({ page }) => {
  await openChecks(page);
  await tab(page, "Pressure").click();
  const card = page.locator('.check-card[data-check$="panel-pressure"]');
  await expect(card).toContainText("62.5 kPa");
  await field(page, "density").fill("24");
  await page.keyboard.press("Enter");
  await expect(card).toContainText("60 kPa", { timeout: 20_000 });
  await page.getByRole("heading", { name: "Checks" }).focus();
  await page.keyboard.press("Control+Z");
  await expect(card).toContainText("62.5 kPa", { timeout: 20_000 });
  await expect(field(page, "density")).toHaveValue("");
  await settled(page);
});

test("a figure out of its range is refused with the range, and nothing is changed", async ({ page }) => {
  await openChecks(page);
  await tab(page, "Pressure").click();
  await field(page, "density").fill("400");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("alert")).toContainText("400 is out of range: give 8 to 40 kN/m³.");
  await expect(page.locator('.check-card[data-check$="panel-pressure"]')).toContainText("62.5 kPa");
  await field(page, "density").fill("heavy");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("alert")).toContainText("is no figure");
  await page.keyboard.press("Escape");
  await expect(page.getByRole("alert")).toHaveCount(0);
  await expect(page.locator(".checks")).toBeVisible();
});

test("a method waits for what it asks for, is taken as one step, and answers both ways", async ({ page }) => {
  await openChecks(page);
  await tab(page, "Pressure").click();
  await field(page, "pressureModel").selectOption({ label: "DIN 18218" });
  await expect(
    page.getByText(/still asks for: Rate of placing, Consistence, End of setting\./),
  ).toBeVisible();
  await field(page, "rate").fill("1");
  await field(page, "consistence").selectOption("F3");
  await field(page, "settingEnd").fill("5");
  await page.keyboard.press("Enter");
  const picture = page.locator(".check-picture").first();
  await expect(picture).not.toHaveAttribute("aria-label", /62\.5 kPa/, { timeout: 20_000 });
  // What a rate presses with, that pressure allows.
  await page.getByLabel("At a rate of").fill("2");
  const pressure = (await page.locator(".try-line output").first().textContent()) ?? "";
  await page.getByLabel("For a pressure of").fill(/[\d.]+/.exec(pressure)?.[0] ?? "");
  const rate = (await page.locator(".try-line output").nth(1).textContent()) ?? "";
  expect(Math.abs(Number(/[\d.]+/.exec(rate)?.[0]) - 2)).toBeLessThan(0.05);
  await page.getByRole("heading", { name: "Checks" }).focus();
  await page.keyboard.press("Control+Z");
  await expect(picture).toHaveAttribute("aria-label", /62\.5 kPa/, { timeout: 20_000 });
});

test("a log is taken from a paste, refused with its line, and drawn", async ({ page }) => {
  await openChecks(page);
  await tab(page, "Striking").click();
  const log = page.getByLabel("Readings as text").first();
  await log.fill("hours;°C\n0;21\n4;26\n3;27");
  await page.getByRole("button", { name: "Take these readings" }).click();
  await expect(page.getByRole("alert")).toContainText("Line 4 is not later than the line before");
  await log.fill("hours;°C\n0;21\n4;26\n12;31\n30;24");
  await page.getByRole("button", { name: "Take these readings" }).click();
  await expect(page.getByText("4 readings from 0 to 30 h, 21 to 31 °C.")).toBeVisible();
  await expect(page.locator(".curve-line").first()).toBeVisible({ timeout: 20_000 });
});

test("storeys on shores are said, drawn step by step, with the peak that is published", async ({ page }) => {
  await openChecks(page);
  await tab(page, "Slab and props").click();
  await page.getByRole("button", { name: "Say how" }).click();
  await field(page, "shores").fill("3");
  await page.keyboard.press("Enter");
  await field(page, "storeys").fill("8");
  await page.keyboard.press("Enter");
  // Three storeys of shores: 2.36 by Grundy and Kabaila, 2.37 unrounded.
  await expect(page.locator(".shoring-peaks")).toContainText("2.3", { timeout: 20_000 });
  await page.getByRole("button", { name: "Next step" }).click();
  await expect(page.locator(".shoring-steps [role=status]")).toContainText("take out under slab");
});

test("nothing under the view takes a key or the focus", async ({ page }) => {
  await openChecks(page);
  const walls = await page.locator(".plan").getAttribute("data-walls");
  for (const key of ["Control+A", "Delete", "W", "H"]) await page.keyboard.press(key);
  expect(await page.locator(".plan").getAttribute("data-walls")).toBe(walls);
  for (let k = 0; k < 25; k++) {
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.closest(".middle, .pane") === null)).toBe(true);
  }
  await page.keyboard.press("Control+P");
  await expect(page.locator(".sheets")).toBeVisible();
  await expect(page.locator(".checks")).toBeHidden();
});

for (const theme of ["light", "dark"] as const) {
  test(`can be used by everyone, ${theme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: theme });
    await openChecks(page);
    for (const name of ["Results", "Pressure", "Striking", "Slab and props", "Lifting"]) {
      await tab(page, name).click();
      await settled(page);
      expect([name, await faults(page)]).toEqual([name, []]);
    }
  });
}

for (const [language, heading] of [
  ["es", "Verificaciones"],
  ["pt", "Verificações"],
] as const) {
  test(`speaks ${language}`, async ({ page }) => {
    const kind = kindText("tie-load", language);
    const caution = checkText(CAUTIONS[0] ?? "", language);
    expect(caution).not.toBe(CAUTIONS[0]);
    await openChecks(page);
    await page.getByLabel("Language / Idioma / Língua").selectOption(language);
    await expect(page.getByRole("heading", { name: heading })).toBeVisible();
    await expect(page.locator(".caution-texts li").first()).toHaveText(caution);
    await only(page, kind);
    await expect(line(page, "tie-load")).toContainText(kind);
    await line(page, "tie-load").click();
    await expect(page.locator(".check-card")).toContainText(checkText("density of the concrete", language));
  });
}

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  test("nothing is cut off, and what is touched is large enough for a glove", async ({ page }) => {
    await openPage(page);
    await page.getByRole("button", { name: "Checks" }).tap();
    await expect(page.locator(".check-line").first()).toBeVisible({ timeout: 30_000 });
    for (const name of ["Pressure", "Striking", "Slab and props", "Lifting", "Results"]) {
      await tab(page, name).tap();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    }
    const boxes = page.locator(".check-line, .checks-tabs button, .check-asks select, .check-total");
    const heights = await boxes.evaluateAll((all) => all.map((each) => each.getBoundingClientRect().height));
    expect(heights.filter((height) => height < 39.5)).toEqual([]);
    await page.locator(".check-line").nth(2).tap();
    await expect(page.locator('.check-line[aria-selected="true"]')).toHaveCount(1);
  });
});
