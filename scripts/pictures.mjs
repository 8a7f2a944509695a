// Makes the README's pictures with the program itself: a room sheet from the command line, the page from the built site.
//
//   npm run build && node scripts/pictures.mjs

import { spawn, spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "@playwright/test";
import { chromiumArguments, findChromium } from "./browser.mjs";

const FONTS = "node_modules/@fontsource/ibm-plex-sans-condensed/files";
const PORT = 4179;

const browser = await chromium.launch({
  executablePath: findChromium() ?? undefined,
  args: [...chromiumArguments],
});
await pictureSheet();
await picturePage();
await browser.close();

async function pictureSheet() {
  const folder = mkdtempSync(join(tmpdir(), "panelwright-"));
  spawnSync(
    process.execPath,
    ["dist-cli/panelwright.js", "fill", "samples/two-bedroom.json", "--out", folder],
    {
      stdio: "ignore",
    },
  );
  const sheet = readdirSync(folder).find((name) => name.includes("bedroom-2"));
  if (sheet === undefined) throw new Error("the sample has no sheet for bedroom 2");
  const svg = readFileSync(join(folder, sheet), "utf8").replace(/^<\?xml[^>]*>/, "");
  const faces = [400, 600, 700].map((weight) => {
    const font = readFileSync(`${FONTS}/ibm-plex-sans-condensed-latin-${weight}-normal.woff2`).toString(
      "base64",
    );
    return `@font-face{font-family:"IBM Plex Sans Condensed";font-weight:${weight};src:url(data:font/woff2;base64,${font})}`;
  });
  const page = await browser.newPage({ viewport: { width: 1188, height: 840 }, deviceScaleFactor: 1.5 });
  await page.setContent(
    `<style>${faces.join("")}body{margin:0}svg{width:1188px;height:840px;display:block}</style>${svg}`,
  );
  await page.evaluate(() => document.fonts.ready.then(() => true));
  await page.screenshot({ path: "docs/room-sheet.png" });
  await page.close();
  rmSync(folder, { recursive: true });
}

async function picturePage() {
  const server = spawn("npx", ["vite", "preview", "--port", String(PORT)], {
    stdio: "ignore",
    detached: true,
  });
  try {
    for (const scheme of ["light", "dark"]) {
      const context = await browser.newContext({
        viewport: { width: 1440, height: 900 },
        colorScheme: scheme,
      });
      const page = await context.newPage();
      await open(page);
      await page.waitForTimeout(600);
      await page.screenshot({ path: `docs/editor-${scheme}.png` });
      if (scheme === "light") {
        await pictureSoffit(page);
        await page.keyboard.press("g");
        await pictureSheets(page);
        await page.keyboard.press("Escape");
        await pictureChecks(page);
        await page.keyboard.press("Escape");
        await pictureSet(page);
      }
      await context.close();
    }
  } finally {
    process.kill(-server.pid);
  }
}

// The list of checks with the ties of one wall open.
async function pictureChecks(page) {
  await page.keyboard.press("Shift+C");
  const ties = page.locator(".check-line[data-kind=tie-load]");
  await ties.first().locator(".check-open").click();
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("ArrowDown");
  await page.locator(".check-card[data-check$=tie-load]").waitFor();
  await page.waitForTimeout(300);
  await page.screenshot({ path: "docs/checks-view.png" });
}

// Pours and set, when the search for the cheapest set has come to its end.
async function pictureSet(page) {
  await page.keyboard.press("Shift+S");
  await page.getByRole("button", { name: "Find the cheapest set" }).click();
  await page.getByRole("button", { name: "Keep in the plan" }).waitFor();
  await page.waitForTimeout(300);
  await page.screenshot({ path: "docs/set-view.png" });
}

async function pictureSheets(page) {
  await page.keyboard.press("Control+P");
  // All sheets are there when they can be printed.
  await page.locator(".sheets-acts .strong[aria-disabled=false]").waitFor();
  await page.getByRole("treeitem").filter({ hasText: "Setting-out" }).nth(1).locator("span").last().click();
  await page.locator(".paper[data-stale=false] svg").waitFor();
  await page.waitForTimeout(300);
  await page.screenshot({ path: "docs/sheets-view.png" });
}

// With the soffit over the plan, and the card of one of its props.
async function pictureSoffit(page) {
  await page.keyboard.press("g");
  await page.locator('.plan[data-soffits]:not([data-soffits=""])').waitFor();
  await page.getByRole("button", { name: /^Show or hide the soffit/ }).blur();
  const [x, y] = await page.locator(".plan").evaluate((plan) => {
    const [cx, cy] = plan.getAttribute("data-centre").split(" ").map(Number);
    const scale = Number(plan.getAttribute("data-scale"));
    const { left, top, width, height } = plan.getBoundingClientRect();
    return [left + width / 2 + (900 - cx) * scale, top + height / 2 - (3125 - cy) * scale];
  });
  await page.mouse.click(x, y);
  await page.locator(".soffit-card").waitFor();
  await page.waitForTimeout(300);
  await page.screenshot({ path: "docs/editor-soffit.png" });
}

async function open(page) {
  for (let k = 0; ; k++) {
    try {
      await page.goto(`http://127.0.0.1:${PORT}/`);
      await page.locator("canvas").first().waitFor();
      return;
    } catch (error) {
      if (k > 40) throw error;
      await new Promise((resolve) => setTimeout(resolve, 250));
    }
  }
}
