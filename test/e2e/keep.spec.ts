// Keeping the project in a real browser: killed and opened again, two tabs, files in and out, no room, no store, a record
// that cannot be read.

import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, expect, type Page, test } from "@playwright/test";
import { chromiumArguments, findChromium } from "../../scripts/browser.mjs";
import { readProject } from "../../src/plan/read.ts";
import { command, counts, openPage } from "./planPage.ts";

const ADDRESS = "http://127.0.0.1:4173/";
const saved = (page: Page) => page.locator(".saved");
const notices = (page: Page) => page.getByRole("region", { name: "About keeping this project" });

/** A step that shows in the plan: everything is copied beside itself. */
async function takeStep(page: Page): Promise<void> {
  const [before] = await counts(page);
  await page.locator(".plan").focus();
  await page.keyboard.press("Control+A");
  await page.keyboard.press("Control+C");
  await page.keyboard.press("Control+V");
  await expect.poll(async () => (await counts(page))[0]).toBe(2 * (before ?? 0));
}

async function openProjects(page: Page): Promise<void> {
  await page.locator(".project-name").click();
  await expect(page.getByRole("complementary", { name: "Projects" })).toBeVisible();
}

test("a browser killed in the middle opens again on what was kept", async () => {
  const folder = mkdtempSync(join(tmpdir(), "panelwright-profile-"));
  const launch = (): Promise<BrowserContext> =>
    chromium.launchPersistentContext(folder, {
      executablePath: findChromium() ?? "",
      args: [...chromiumArguments],
      viewport: { width: 1440, height: 900 },
      baseURL: ADDRESS,
    });
  try {
    const first = await launch();
    const page = first.pages()[0] ?? (await first.newPage());
    await openPage(page);
    const before = await counts(page);
    await takeStep(page);
    await expect(saved(page)).toHaveText("Saved");
    const after = await counts(page);
    expect(after).not.toEqual(before);
    // The whole browser goes down as if its process had been killed.
    const session = await first.newCDPSession(page);
    await Promise.race([
      session.send("Browser.crash").catch(() => {}),
      new Promise((resolve) => first.on("close", resolve)),
    ]);
    await first.close().catch(() => {});

    const second = await launch();
    const again = second.pages()[0] ?? (await second.newPage());
    await openPage(again);
    expect(await counts(again)).toEqual(after);
    await expect(saved(again)).toHaveText("Saved");
    await second.close();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test("two tabs on one project are told, one writes, and the pen changes hands", async ({ context }) => {
  const a = await context.newPage();
  await openPage(a);
  await takeStep(a);
  await expect(saved(a)).toHaveText("Saved");
  const b = await context.newPage();
  await openPage(b);
  await expect(notices(b)).toContainText("open in another tab");
  await expect(a.locator(".others")).toHaveText("Open in another tab, too");
  const [walls] = await counts(a);
  expect((await counts(b))[0]).toBe(walls);

  // A tab that only reads changes nothing, and follows what the other one does.
  await b.locator(".plan").focus();
  await b.keyboard.press("Control+A");
  await b.keyboard.press("Delete");
  await expect(b.locator(".notes")).toContainText("Take it over");
  expect((await counts(b))[0]).toBe(walls);
  await a.locator(".plan").focus();
  await a.keyboard.press("Control+z");
  await expect.poll(async () => (await counts(b))[0]).toBe((walls ?? 0) / 2);

  await notices(b).getByRole("button", { name: "Take over" }).click();
  await expect(notices(b)).toBeHidden();
  await expect(notices(a)).toContainText("open in another tab");
  await takeStep(b);
  await expect.poll(async () => (await counts(a))[0]).toBe(walls);

  // The one that stays is the writer.
  await b.close();
  await expect(notices(a)).toBeHidden();
  await expect(a.locator(".others")).toBeHidden();
});

test("a project goes out as a file and comes in as a project of its own", async ({ page }) => {
  await openPage(page);
  await takeStep(page);
  const before = await counts(page);
  const download = page.waitForEvent("download");
  await command(page, "Save as a file");
  const path = await (await download).path();
  const read = readProject(readFileSync(path, "utf8"));
  expect(read.status === "ok" && read.project.units[0]?.walls.length).toBe(before[0]);

  await openProjects(page);
  await page.getByRole("button", { name: "New project" }).click();
  await expect.poll(() => counts(page)).toEqual([0, 0, 0]);
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Open a file" }).click();
  await (await chooser).setFiles({
    name: "plan.json",
    mimeType: "application/json",
    buffer: readFileSync(path),
  });
  await expect.poll(() => counts(page)).toEqual(before);
  await expect(page.locator(".projects > li")).toHaveCount(2);

  const broken = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Open a file" }).click();
  await (await broken).setFiles({
    name: "broken.json",
    mimeType: "application/json",
    buffer: Buffer.from('{"format": "panelwright-project", '),
  });
  await expect(page.locator(".notes")).toContainText("broken.json cannot be opened.");
  expect(await counts(page)).toEqual(before);
});

test("projects are renamed, opened and deleted from the list", async ({ page }) => {
  await openPage(page);
  const name = await page.locator(".project-name").textContent();
  await takeStep(page);
  await openProjects(page);
  await page.getByLabel("Name of this project").fill("Mine");
  await page.keyboard.press("Enter");
  await expect(page.locator(".project-name")).toHaveText("Mine");
  await page.getByRole("button", { name: "Open the sample" }).click();
  await expect(page.locator(".project-name")).toHaveText(name ?? "");
  await page.getByRole("button", { name: "Open Mine" }).click();
  await expect(page.locator(".project-name")).toHaveText("Mine");
  await page.getByRole("button", { name: `Delete ${name}`, exact: true }).click();
  await page.getByRole("button", { name: `Delete for good: ${name}` }).click();
  await expect(page.locator(".projects > li")).toHaveCount(0);
  await page.reload();
  await expect(page.locator(".project-name")).toHaveText("Mine");
});

test("a project is duplicated, and a dropped file opens beside it", async ({ page }) => {
  await openPage(page);
  const name = await page.locator(".project-name").textContent();
  await takeStep(page);
  const before = await counts(page);
  const download = page.waitForEvent("download");
  await command(page, "Save as a file");
  const text = readFileSync(await (await download).path(), "utf8");
  await openProjects(page);
  await page.getByRole("button", { name: "Duplicate", exact: true }).click();
  await expect(page.locator(".project-name")).toHaveText(`${name}, copy`);
  expect(await counts(page)).toEqual(before);
  await expect(page.getByRole("button", { name: `Open ${name}`, exact: true })).toBeVisible();

  const dropped = await page.evaluateHandle((content) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([content], "dropped.json", { type: "application/json" }));
    return transfer;
  }, text);
  await page.dispatchEvent(".plan", "drop", { dataTransfer: dropped });
  await expect(page.locator(".project-name")).toHaveText(name ?? "");
  expect(await counts(page)).toEqual(before);
  await expect(page.locator(".projects > li")).toHaveCount(2);
});

test("a store without room is told, and a file is the way out", async ({ page, context }) => {
  await openPage(page);
  const session = await context.newCDPSession(page);
  const origin = new URL(ADDRESS).origin;
  const usage = await page.evaluate(async () => (await navigator.storage.estimate()).usage ?? 0);
  await session.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: Math.max(1, usage - 1) });
  await takeStep(page);
  await expect(notices(page)).toContainText("no room left");
  await expect(saved(page)).toHaveText("Not saved");
  const download = page.waitForEvent("download");
  await notices(page).getByRole("button", { name: "Save as a file" }).click();
  expect((await download).suggestedFilename()).toMatch(/\.json$/);
  await session.send("Storage.overrideQuotaForOrigin", { origin });
  await notices(page).getByRole("button", { name: "Try again" }).click();
  await expect(notices(page)).toBeHidden();
  await expect(saved(page)).toHaveText("Saved");
});

test("a browser that keeps nothing says so and goes on working", async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException("storage is switched off", "SecurityError");
    };
  });
  await openPage(page);
  await expect(notices(page)).toContainText("keeps nothing for this page");
  await takeStep(page);
  await expect(saved(page)).toHaveText("Not saved");
});

test("a record that cannot be read is told, and what is there is saved as a file", async ({ page }) => {
  await openPage(page);
  await takeStep(page);
  await expect(saved(page)).toHaveText("Saved");
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open("panelwright");
        opening.onerror = reject;
        opening.onsuccess = () => {
          const tx = opening.result.transaction("texts", "readwrite");
          const all = tx.objectStore("texts").getAll();
          all.onsuccess = () => {
            for (const record of all.result) {
              tx.objectStore("texts").put({ ...record, text: record.text.slice(0, 700) });
            }
          };
          tx.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
  );
  await page.reload();
  await expect(notices(page)).toContainText("cannot be read, and is left as it is");
  const download = page.waitForEvent("download");
  await notices(page).getByRole("button", { name: "Save what is there as a file" }).click();
  const text = readFileSync(await (await download).path(), "utf8");
  expect(text).toHaveLength(700);
  expect(text).toContain("panelwright-project");
});
