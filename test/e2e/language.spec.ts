// The language is the project's: chosen in the bar, spoken by the page, kept in the file, printed on the sheets.

import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "@playwright/test";
import { readProject } from "../../src/plan/read.ts";
import { openPage } from "./planPage.ts";

const CHOICE = "Language / Idioma / Língua";

test("a chosen language is spoken at once, undone like any step, and kept", async ({ page }) => {
  await openPage(page);
  await expect(page.locator("html")).toHaveAttribute("lang", "en");
  await page.getByLabel(CHOICE).selectOption({ label: "Español" });
  await expect(page.getByRole("button", { name: "Muro (W)" })).toBeVisible();
  await expect(page.locator("html")).toHaveAttribute("lang", "es-419");
  await page.getByLabel(CHOICE).selectOption({ label: "Português" });
  await expect(page.getByRole("button", { name: "Parede (W)" })).toBeVisible();
  await expect(page.locator("html")).toHaveAttribute("lang", "pt-BR");

  await page.keyboard.press("Control+Z");
  await expect(page.getByRole("button", { name: "Muro (W)" })).toBeVisible();
  await expect(page.getByLabel(CHOICE)).toHaveValue("es");

  await expect(page.getByText("Guardado", { exact: true })).toBeVisible();
  await page.reload();
  await expect(page.getByRole("button", { name: "Muro (W)" })).toBeVisible();
});

test("the file keeps the language, and its sheets speak it", async ({ page }) => {
  await openPage(page);
  await page.getByLabel(CHOICE).selectOption("pt");
  await expect(page.getByRole("button", { name: "Parede (W)" })).toBeVisible();
  const download = page.waitForEvent("download");
  await page.keyboard.press("Control+S");
  const path = await (await download).path();
  const read = readProject(readFileSync(path, "utf8"));
  expect(read).toMatchObject({ status: "ok", project: { language: "pt" } });

  const folder = mkdtempSync(join(tmpdir(), "panelwright-"));
  try {
    const run = spawnSync(process.execPath, ["dist-cli/panelwright.js", "fill", path, "--out", folder]);
    expect(run.status).toBe(0);
    // The front and the back of the sheet of one room.
    const pages = readdirSync(folder).filter((name) => name.includes("bedroom-2"));
    const svg = pages.map((name) => readFileSync(join(folder, name), "utf8")).join("");
    expect(svg.includes("Folha de cômodo, Bedroom 2")).toBe(true);
    expect(svg.includes("Desformar só por ordem do engenheiro.")).toBe(true);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test.describe("somebody whose browser speaks Portuguese", () => {
  test.use({ locale: "pt-BR" });
  test("is met in Portuguese, with no word of the page in English", async ({ page }) => {
    await page.goto("/");
    await expect(page.getByRole("button", { name: "Parede (W)" })).toBeVisible();
    await expect(page.getByText("Complementos", { exact: true })).toBeVisible();
    const said = await page.evaluate(() =>
      [...document.querySelectorAll("[aria-label], [title]")].flatMap((each) => [
        each.getAttribute("aria-label") ?? "",
        each.getAttribute("title") ?? "",
      ]),
    );
    expect(said.filter((text) => /\b(the|wall|open|close|undo|plan|tools)\b/i.test(text))).toEqual([]);
  });
});
