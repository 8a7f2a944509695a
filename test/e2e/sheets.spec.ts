// The sheets over the plan: paged through, chosen, saved with the bytes of the core and of the command line, printed.

import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { AxeBuilder } from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { coreTools } from "../../src/cli/coreTools.ts";
import { fontFiles } from "../../src/cli/fontFiles.ts";
import { loadUnion } from "../../src/geom/union.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { readProject } from "../../src/plan/read.ts";
import type { SheetFields } from "../../src/sheet/info.ts";
import { sheetsToPdf } from "../../src/sheet/pdf/write.ts";
import { fileTitle, sheetSets } from "../../src/sheet/sheetSet.ts";
import { sheetToSvg } from "../../src/sheet/svg.ts";
import { openPage } from "./planPage.ts";

// All sheets of a project are made several times over, in the page and beside it.
test.describe.configure({ timeout: 150_000 });

const SAMPLE = "samples/two-bedroom.json";
const DATE = "2026-03-04";
const read = readProject(readFileSync(SAMPLE, "utf8"));
if (read.status === "invalid") throw new Error("the sample cannot be read");
const { project } = read;

/** The sheets of the sample by the core, in Node. */
async function coreSheets(fields: SheetFields) {
  const fill = await coreTools.fill(project, demoKit);
  return sheetSets({ project, kit: demoKit, fill, union: await loadUnion() }, fields);
}

async function openSheets(page: Page): Promise<void> {
  await openPage(page);
  await page.keyboard.press("Control+P");
  await expect(page.locator(".paper svg")).toBeVisible({ timeout: 30_000 });
  await isMade(page);
}

/** Waits until all sheets are there and those in view are of this state. */
async function isMade(page: Page): Promise<void> {
  await expect(page.locator(".sheets-acts .strong")).toHaveAttribute("aria-disabled", "false", {
    timeout: 30_000,
  });
  await expect(page.locator(".paper")).toHaveAttribute("data-stale", "false");
}

async function saved(page: Page, name: string | RegExp): Promise<{ name: string; bytes: Buffer }> {
  const download = page.waitForEvent("download", { timeout: 30_000 });
  await page.getByRole("button", { name }).click();
  const done = await download;
  return { name: done.suggestedFilename(), bytes: readFileSync(await done.path()) };
}

/** Width and height of every page, mm. */
async function pageSizes(bytes: Uint8Array): Promise<readonly (readonly [number, number])[]> {
  const { getDocument } = await import("pdfjs-dist/legacy/build/pdf.mjs");
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const pdf = await task.promise;
  const sizes: (readonly [number, number])[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const { view } = await pdf.getPage(number);
    const [left = 0, top = 0, right = 0, bottom = 0] = view;
    sizes.push([((right - left) * 25.4) / 72, ((bottom - top) * 25.4) / 72]);
  }
  await task.destroy();
  return sizes;
}

function expectSizes(
  sizes: readonly (readonly [number, number])[],
  sheets: readonly { readonly width: number; readonly height: number }[],
): void {
  expect(sizes).toHaveLength(sheets.length);
  for (const [index, { width, height }] of sheets.entries()) {
    expect(Math.abs((sizes[index]?.[0] ?? 0) - width)).toBeLessThan(0.3);
    expect(Math.abs((sizes[index]?.[1] ?? 0) - height)).toBeLessThan(0.3);
  }
}

async function faults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, nodes }) => `${id}: ${nodes[0]?.target.join(" ")}`);
}

test("every sheet is paged through by keys, with the marks of the command line", async ({ page }) => {
  const sheets = (await coreSheets({})).flatMap(({ sheets: own }) => own);
  await openSheets(page);
  const paper = page.locator(".paper");
  for (const [index, sheet] of sheets.slice(0, 4).entries()) {
    if (index > 0) await page.keyboard.press("PageDown");
    await expect(paper).toHaveAttribute("data-shown", new RegExp(`/${sheet.name}$`));
    const text = await paper.locator("svg").evaluate((svg) => new XMLSerializer().serializeToString(svg));
    // The serializer writes the same document, but its own way.
    const wanted = await page.evaluate((svg) => {
      const parsed = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
      return new XMLSerializer().serializeToString(parsed);
    }, sheetToSvg(sheet));
    expect(text === wanted).toBe(true);
  }
  await page.keyboard.press("PageUp");
  await expect(paper).toHaveAttribute("data-shown", new RegExp(`/${sheets[2]?.name}$`));
  expect(await paper.evaluate(() => document.fonts.check('600 12px "IBM Plex Sans Condensed"'))).toBe(true);

  // As large as on paper, and back to the window.
  await page.keyboard.press("1");
  const width = async () => (await paper.boundingBox())?.width ?? 0;
  await expect.poll(width).toBeCloseTo((297 * 96) / 25.4, 0);
  await page.keyboard.press("0");
  await expect.poll(width).toBeLessThan(1100);
  await page.keyboard.press("Escape");
  await expect(page.locator(".sheets")).toBeHidden();
});

test("the plan under the sheets is out of reach of keys and hands", async ({ page }) => {
  await openSheets(page);
  const walls = await page.locator(".plan").getAttribute("data-walls");
  for (const key of ["Control+A", "Delete", "W", "H"]) await page.keyboard.press(key);
  expect(await page.locator(".plan").getAttribute("data-walls")).toBe(walls);
  await expect(page.locator(".sheets")).toBeVisible();
  for (let k = 0; k < 30; k++) {
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.closest(".middle, .pane") === null)).toBe(true);
  }
});

test("two sheets are chosen by keys and saved as a PDF with the bytes of the core", async ({ page }) => {
  const fields = { date: DATE, document: "D-12 & <3>", madeBy: "A. Mason" };
  await openSheets(page);
  await page.getByLabel("Issued").fill(DATE);
  await page.getByLabel("Document").fill(fields.document);
  await page.getByLabel("Made by").fill(fields.madeBy);
  await page.getByRole("checkbox", { name: "All in the list" }).uncheck({ force: true });
  const row = page.getByRole("treeitem");
  await row.filter({ hasText: "Bathroom" }).first().click();
  await page.keyboard.press("Space");
  await page.getByLabel("Kind", { exact: true }).selectOption({ label: "Panel plan and elevations" });
  await row
    .filter({ hasText: /^Panel plan$/ })
    .first()
    .click();
  await page.keyboard.press("Space");
  await expect(page.getByText(/^2 of /)).toBeVisible();
  await isMade(page);
  const { name, bytes } = await saved(page, /^Save .* as PDF$/);

  const [set] = await coreSheets(fields);
  const two = ["bathroom", "panel-plan"].flatMap(
    (part) => set?.sheets.find((sheet) => sheet.name.includes(part)) ?? [],
  );
  expect(name).toBe(`${set?.name}.pdf`);
  expectSizes(await pageSizes(bytes), two);
  const about = {
    title: fileTitle(project.name, set?.name),
    author: "",
    language: project.language,
    date: DATE,
  };
  expect(Buffer.compare(bytes, sheetsToPdf(two, await fontFiles(), about))).toBe(0);

  // Kept for the next time, and out of the project.
  await page.reload();
  await openSheets(page);
  await expect(page.getByLabel("Document")).toHaveValue(fields.document);
});

test("all sheets of a hand are the file that the command line writes", async ({ page }) => {
  const folder = mkdtempSync(join(tmpdir(), "panelwright-"));
  try {
    const run = spawnSync(process.execPath, [
      ...["dist-cli/panelwright.js", "sheets", SAMPLE, "--out", folder, "--date", DATE],
    ]);
    expect(run.status).toBe(0);
    await openSheets(page);
    await page.getByLabel("Issued").fill(DATE);
    const mirrored = page.getByRole("treeitem").filter({ hasText: "mirrored" }).first();
    await mirrored.locator(".tick").click();
    await expect(mirrored).toHaveAttribute("aria-checked", "false");
    await isMade(page);
    const pdf = await saved(page, /^Save .* as PDF$/);
    expect(Buffer.compare(pdf.bytes, readFileSync(join(folder, pdf.name)))).toBe(0);

    await page.locator("summary", { hasText: "More files" }).click();
    for (const name of ["packing.csv", "sheets.csv"]) {
      const table = await saved(page, name);
      expect(table.name).toBe(name);
      expect(table.bytes.toString("utf8") === readFileSync(join(folder, name), "utf8")).toBe(true);
      await page.locator("summary", { hasText: "More files" }).click();
    }
    const svg = await saved(page, "This sheet as SVG");
    const sheets = (await coreSheets({ date: DATE })).flatMap(({ sheets: own }) => own);
    const own = sheets.find(({ name }) => `${name}.svg` === svg.name);
    expect(svg.bytes.toString("utf8") === sheetToSvg(own ?? sheets[0]!)).toBe(true);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("prints one page a sheet on paper of its size, with the typeface of its own", async ({
  page,
  context,
}) => {
  await page.addInitScript(() => {
    // What would go to the printer is kept instead, on the page itself.
    window.print = () => {
      const faces = [...document.fonts].map(({ weight, status }) => `${weight} ${status}`);
      const html = document.documentElement.outerHTML;
      const host = (window.parent as Window).document.body;
      host.dataset.printed = html;
      host.dataset.faces = faces.sort().join();
      window.dispatchEvent(new Event("afterprint"));
    };
  });
  await openSheets(page);
  await page.getByRole("combobox", { name: "Paper" }).selectOption("Letter");
  await page.getByRole("combobox", { name: "Room" }).selectOption("Hall");
  const first = page.getByRole("treeitem").first();
  await page.getByRole("checkbox", { name: "All in the list" }).uncheck({ force: true });
  await page.getByRole("combobox", { name: "Room" }).selectOption("");
  await page.getByLabel("Kind", { exact: true }).selectOption("elevations");
  await page.getByRole("checkbox", { name: "All in the list" }).uncheck({ force: true });
  await expect(first).toHaveAttribute("aria-checked", "false");
  await isMade(page);
  await page.keyboard.press("Control+P");
  const body = page.locator("body");
  await expect(body).toHaveAttribute("data-printed", /<svg/, { timeout: 30_000 });
  await expect(page.locator(".print-frame")).toHaveCount(0);
  expect(await body.getAttribute("data-faces")).toBe("400 loaded,600 loaded,700 loaded");

  const chosen = (await coreSheets({ paper: "Letter" }))
    .flatMap(({ sheets }) => sheets)
    .filter(({ kind, room }) => kind !== "elevations" && room !== "Hall");
  const sheet = await context.newPage();
  await sheet.setContent((await body.getAttribute("data-printed")) ?? "");
  expectSizes(await pageSizes(await sheet.pdf({ preferCSSPageSize: true })), chosen);
  expect(new Set(chosen.map(({ width }) => width))).toEqual(new Set([279.4, 431.8]));
});

test("the sheets follow the project: its language, and what undo takes back", async ({ page }) => {
  await openSheets(page);
  const paper = page.locator(".paper");
  await expect(paper).toContainText("Room sheet");
  await page.getByLabel("Language / Idioma / Língua").selectOption("es");
  await expect(paper).toContainText("Hoja de recinto", { timeout: 30_000 });
  await expect(page.getByRole("heading", { name: "Hojas" })).toBeVisible();
  await expect(page.getByRole("button", { name: "Volver al plano" })).toBeVisible();
  await page.keyboard.press("Control+Z");
  await expect(paper).toContainText("Room sheet", { timeout: 30_000 });
});

test("what is not built is said beside the sheets, with the way to the list of problems", async ({
  page,
}) => {
  await openPage(page);
  const chooser = page.waitForEvent("filechooser");
  await page.keyboard.press("Control+O");
  await (await chooser).setFiles("samples/awkward.json");
  await expect(page.locator(".project-name")).toContainText("the odd");
  await page.getByRole("button", { name: "Sheets" }).click();
  const notice = page.getByRole("note");
  await expect(notice).toContainText(/^\d+ places are not built:/, { timeout: 30_000 });
  await notice.getByRole("button", { name: "Show the problems" }).click();
  await expect(page.locator(".sheets")).toBeHidden();
  await expect(page.locator(".problems")).toBeVisible();
});

for (const theme of ["light", "dark"] as const) {
  test(`can be used by everyone, ${theme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: theme });
    await openSheets(page);
    await page.locator("summary", { hasText: "More files" }).click();
    expect(await faults(page)).toEqual([]);
    // The paper stays white.
    const ground = await page.locator(".paper").evaluate((paper) => getComputedStyle(paper).backgroundColor);
    expect(ground).toBe("rgb(255, 255, 255)");
  });
}

test("works without a network", async ({ page, context }) => {
  await openPage(page);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  await page.reload();
  await context.setOffline(true);
  await openSheets(page);
  await page.getByRole("treeitem").nth(1).locator(".tick").click();
  const { bytes } = await saved(page, /^Save .* as PDF$/);
  expect((await pageSizes(bytes)).length).toBeGreaterThan(1);
});

test.describe("on a tablet", () => {
  test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true, isMobile: true });
  test("all that is touched is large enough for a glove", async ({ page }) => {
    await openPage(page);
    await page.getByRole("button", { name: "Sheets" }).tap();
    await expect(page.locator(".paper svg")).toBeVisible({ timeout: 30_000 });
    await page.locator(".stage-button").nth(1).tap();
    await expect(page.locator(".stage-title")).toContainText("2 of");
    const boxes = page.locator(".sheets button, .sheets [role=treeitem], .sheets select, .sheets summary");
    const heights = await boxes.evaluateAll((all) =>
      all.flatMap((each) => (each.checkVisibility() ? Math.round(each.getBoundingClientRect().height) : [])),
    );
    expect(heights.filter((height) => height < 44)).toEqual([]);
  });
});

test("the buttons say how many sheets they take, and the bar how many of them the filter hides", async ({
  page,
}) => {
  await openSheets(page);
  const sheets = (await coreSheets({})).flatMap(({ sheets: own }) => own);
  const bills = sheets.filter(({ kind }) => kind === "bill").length;
  const print = page.getByRole("button", { name: /^Print / });
  const note = page.locator(".sheets-unlisted");
  await expect(print).toContainText(`Print ${sheets.length} sheets`);
  await expect(note).toHaveCount(0);
  await page.getByLabel("Kind", { exact: true }).selectOption("bill");
  await expect(print).toContainText(`Print ${sheets.length} sheets`);
  await expect(note).toContainText(`${sheets.length - bills} of these sheets`);
  await page.getByRole("checkbox", { name: "All in the list" }).uncheck({ force: true });
  await expect(
    page.getByRole("button", { name: `Save ${sheets.length - bills} sheets as PDF` }),
  ).toBeVisible();
});

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  test("nothing of the bar is cut off, and the sheets are within reach", async ({ page }) => {
    await openPage(page);
    const width = () => page.evaluate(() => document.documentElement.scrollWidth);
    expect(await width()).toBe(390);
    await page.getByRole("button", { name: "Sheets" }).tap();
    await expect(page.locator(".paper svg")).toBeVisible({ timeout: 30_000 });
    const boxes = page.locator(".bar button, .bar select, .sheets-bar button, .sheets-bar summary");
    const rights = await boxes.evaluateAll((all) =>
      all.flatMap((each) => (each.checkVisibility() ? each.getBoundingClientRect().right : [])),
    );
    expect(Math.max(...rights)).toBeLessThanOrEqual(390);
    expect(await width()).toBe(390);
  });
});
