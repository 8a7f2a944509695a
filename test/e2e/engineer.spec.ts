// The engineer's hand in the browser: the elevation lights up with the plan, pins, covers, a nudge, the kit, an underlay.

import { AxeBuilder } from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { clickPlan, openPage, scores } from "./planPage.ts";

/** Puts the hand on the first piece of the first interval with a filler on the faces of the room in view. */
async function goToFiller(page: Page): Promise<void> {
  await page.locator(".elevation").focus();
  const filler = page.locator(".el-face.chosen .el-filler").first();
  for (let k = 0; k < 8 && (await filler.count()) === 0; k++) await page.keyboard.press("ArrowRight");
  await goToPiece(page, "Filler");
}

/** Walks the pieces of the face in view from its left end to the first of a kind. */
async function goToPiece(page: Page, kind: string): Promise<void> {
  const said = page.locator(".elevation output");
  await page.locator(".elevation").focus();
  for (let k = 0; k < 3; k++) await page.keyboard.press("ArrowUp");
  for (let k = 0; k < 2; k++) await page.keyboard.press("Enter");
  for (let k = 0; k < 60; k++) {
    if ((await said.textContent())?.startsWith(kind) === true) return;
    await page.keyboard.press("ArrowRight");
  }
  throw new Error(`no ${kind} on the face in view`);
}

/** Opens a drawing over the plan from a file that the page itself makes. */
async function layPicture(page: Page): Promise<void> {
  await page.keyboard.press("U");
  const data = await page.evaluate(() => {
    const canvas = document.createElement("canvas");
    canvas.width = 800;
    canvas.height = 600;
    canvas.getContext("2d")?.fillRect(100, 100, 400, 20);
    return canvas.toDataURL("image/png").split(",")[1] ?? "";
  });
  await page
    .locator(".underlay input[type=file]")
    .setInputFiles({ name: "plan.png", mimeType: "image/png", buffer: Buffer.from(data, "base64") });
  await expect(page.locator(".underlay")).toContainText("plan.png");
}

async function faults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, nodes }) => `${id}: ${nodes[0]?.target.join(" ")}`);
}

test("a piece says by which joints and rules it is there, all by keys", async ({ page }) => {
  await openPage(page);
  await goToFiller(page);
  await page.keyboard.press("Enter");
  const card = page.locator(".because");
  await expect(card).toContainText("Filler");
  await expect(card).toContainText("common practice, no source");
  await expect(card).toBeFocused();
  expect(await faults(page)).toEqual([]);
  await page.keyboard.press("Escape");
  await expect(card).toBeHidden();
  await expect(page.locator(".elevation")).toBeFocused();
});

test("hovering a piece in the elevation lights the same piece up in the plan", async ({ page }) => {
  await openPage(page);
  const piece = page.locator(".el-panel").first();
  const canvas = page.locator(".plan canvas").last();
  const ink = () =>
    canvas.evaluate((element) => (element instanceof HTMLCanvasElement ? element.toDataURL() : ""));
  const before = await ink();
  await piece.hover();
  await expect(page.locator(".el-lit").first()).toBeVisible();
  await expect.poll(ink).not.toBe(before);
});

test("another cover is chosen, pinned, and taken back by one undo", async ({ page }) => {
  await openPage(page);
  await goToFiller(page);
  const covers = page.getByRole("radio");
  const first = await covers.first().getAttribute("data-cover");
  await page.keyboard.press("O");
  await page.keyboard.press("ArrowDown");
  const wanted = await covers.nth(1).getAttribute("data-cover");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("radio", { checked: true })).toHaveAttribute("data-cover", wanted ?? "");
  await expect(page.locator(".pinned-chip")).toBeVisible();
  await page.locator(".elevation").focus();
  await page.keyboard.press("Control+Z");
  await expect(page.getByRole("radio", { checked: true })).toHaveAttribute("data-cover", first ?? "");
  await expect(page.locator(".pinned-chip")).toBeHidden();
});

test("a piece is swapped, pinned and unpinned by letters", async ({ page }) => {
  await openPage(page);
  await goToFiller(page);
  const used = page.getByRole("radio", { checked: true });
  const before = await used.getAttribute("data-cover");
  // The filler is the last of its interval: the panel to its left has it for a neighbour.
  const said = page.locator(".elevation output");
  do await page.keyboard.press("ArrowLeft");
  while (!(await said.textContent())?.startsWith("Panel"));
  await page.keyboard.press("X");
  await expect(used).not.toHaveAttribute("data-cover", before ?? "");
  await page.keyboard.press("P");
  await expect(used).toHaveAttribute("data-cover", before ?? "");
  await page.keyboard.press("P");
  await expect(page.locator(".pinned-chip")).toBeVisible();
});

test("a nudge takes a closure away with one key, and one undo brings it back", async ({ page }) => {
  await openPage(page);
  await page.keyboard.press("Shift+T");
  await page.locator(".things button", { hasText: "Door d4" }).click();
  await page.keyboard.press("Shift+T");
  await page.locator(".plan-host").focus();
  for (let k = 0; k < 25; k++) await page.keyboard.press("Alt+ArrowRight");
  await expect.poll(async () => (await scores(page)).closures).toBeGreaterThan(0);
  const before = (await scores(page)).closures ?? 0;
  const strip = page.locator(".el-face.chosen .el-closure");
  for (let k = 0; k < 4 && (await strip.count()) === 0; k++) await page.keyboard.press("F");
  await goToPiece(page, "Closure");
  await page.keyboard.press("T");
  await expect.poll(async () => (await scores(page)).closures).toBeLessThan(before);
  await page.keyboard.press("Control+Z");
  await expect.poll(async () => (await scores(page)).closures).toBe(before);
});

test("a piece taken out of the kit shows its effect at once and comes back by undo", async ({ page }) => {
  await openPage(page);
  await page.keyboard.press("Shift+K");
  await page.getByRole("searchbox", { name: "Find a code" }).fill("W100x2250");
  await page.getByRole("button", { name: "Remove W100x2250" }).click();
  const narrower = page.locator('[data-effect="closures"], [data-effect="fillers"], [data-effect="errors"]');
  await expect(narrower.locator(".chip").first()).toBeVisible();
  expect(await faults(page)).toEqual([]);
  await page.locator(".kit-grid").focus();
  await page.keyboard.press("Control+Z");
  await expect(page.getByRole("button", { name: "Remove W100x2250" })).toBeVisible();
});

test("what is typed wrongly into the kit is kept, named, and changes nothing", async ({ page }) => {
  await openPage(page);
  const before = await scores(page);
  await page.keyboard.press("Shift+K");
  await page.locator(".kit-grid").focus();
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.type("wide");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("alert")).toContainText('found "wide"');
  await expect(page.locator(".kit-cell.wrong")).toHaveText("wide");
  expect(await scores(page)).toEqual(before);
  await page.keyboard.press("ArrowUp");
  await page.keyboard.type("600");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("alert")).toBeHidden();
});

test("the kit goes out as CSV and comes in again", async ({ page }) => {
  await openPage(page);
  await page.keyboard.press("Shift+K");
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save as CSV" }).click(),
  ]);
  const path = await download.path();
  await page.locator('.kit input[type="file"]').setInputFiles(path);
  await expect(page.getByRole("alert")).toBeHidden();
  await page.locator('.kit input[type="file"]').setInputFiles({
    name: "kit.csv",
    mimeType: "text/csv",
    buffer: Buffer.from("record,name\nkit,mine\npiece,P\n"),
  });
  await expect(page.getByRole("alert")).toContainText("Line 3");
});

test("a picture is laid under the plan and scaled by two points", async ({ page }) => {
  await openPage(page);
  await layPicture(page);
  const size = page.locator(".underlay p").first();
  const before = await size.textContent();
  await page.getByRole("button", { name: "Set the scale by two points" }).click();
  await clickPlan(page, [4000, 3000]);
  await clickPlan(page, [6000, 3000]);
  await page.keyboard.type("4000");
  await page.keyboard.press("Enter");
  await expect(size).not.toHaveText(before ?? "");
  expect(await faults(page)).toEqual([]);
  const wide = (text: string | null) => Number(/^[\d\s]+/.exec(text ?? "")?.[0].replaceAll(/\s/g, ""));
  expect(wide(await size.textContent()) / wide(before)).toBeCloseTo(2, 2);
  await page.keyboard.press("Control+Z");
  await expect(size).toHaveText(before ?? "");
});

test("a file that is no picture is refused in a sentence", async ({ page }) => {
  await openPage(page);
  await page.keyboard.press("U");
  await page
    .locator(".underlay input[type=file]")
    .setInputFiles({ name: "notes.png", mimeType: "image/png", buffer: Buffer.from("no picture") });
  await expect(page.getByText("“notes.png” is no PNG, JPEG or PDF")).toBeVisible();
});
