// What the page costs the hand, in a real browser on the built page: a junction dragged with the fill following, a view
// panned over ten thousand pieces beside a plain canvas loop in the same run, and the first view from a cold start.
// Prints; it never passes or fails by the clock. Software drawing, so a card does better.

import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { type Browser, chromium, type Page } from "@playwright/test";
import { chromiumArguments, findChromium } from "../../scripts/browser.mjs";
import { readProject } from "../../src/plan/read.ts";
import { writeProject } from "../../src/plan/write.ts";
import { gridUnit } from "./gridUnit.ts";

const PORT = 4181;
const ADDRESS = `http://127.0.0.1:${PORT}/`;
const SIZE = { width: 1440, height: 900 };

function gridProject(columns: number, rows: number): string {
  const sample = readProject(readFileSync("samples/one-room.json", "utf8"));
  if (sample.status === "invalid") throw new Error("the sample cannot be read");
  return writeProject({ ...sample.project, name: "Bench", units: [gridUnit(columns, rows)], pours: [] });
}

async function openGrid(page: Page, columns: number, rows: number): Promise<void> {
  await page.goto(ADDRESS);
  await page.locator('.plan[data-pieces]:not([data-pieces=""])').waitFor();
  const chooser = page.waitForEvent("filechooser");
  await page.keyboard.press("Control+K");
  await page.getByRole("combobox", { name: "Find a command" }).fill("Open a file");
  await page.keyboard.press("Enter");
  const buffer = Buffer.from(gridProject(columns, rows));
  await (await chooser).setFiles({ name: "bench.json", mimeType: "application/json", buffer });
  const walls = columns * (rows + 1) + rows * (columns + 1);
  await page.locator(`.plan[data-walls="${walls}"]`).waitFor();
  await page.locator('.plan[data-pieces]:not([data-pieces=""])').waitFor({ timeout: 30_000 });
  await page.waitForTimeout(800);
}

/** Where a place of the plan is on the page, px. */
async function onScreen(page: Page, [x, y]: readonly [number, number]): Promise<readonly [number, number]> {
  return page.locator(".plan").evaluate(
    (plan, [px = 0, py = 0]) => {
      const [cx = 0, cy = 0] = (plan.getAttribute("data-centre") ?? "").split(" ").map(Number);
      const scale = Number(plan.getAttribute("data-scale"));
      const box = plan.getBoundingClientRect();
      return [
        box.left + box.width / 2 + (px - cx) * scale,
        box.top + box.height / 2 - (py - cy) * scale,
      ] as const;
    },
    [x, y],
  );
}

// From the pointer's event to the task after the frame that shows it.
const WATCH_POINTER = `
  window.paints = [];
  document.querySelector(".plan-host").addEventListener("pointermove", () => {
    const start = performance.now();
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => window.paints.push(performance.now() - start);
      channel.port2.postMessage(0);
    });
  }, true);
`;

function spread(times: readonly number[]): string {
  const sorted = [...times].sort((a, b) => a - b);
  const at = (share: number) => (sorted[Math.floor(share * (sorted.length - 1))] ?? 0).toFixed(1);
  return `p50 ${at(0.5)} ms, p95 ${at(0.95)} ms of ${sorted.length}`;
}

async function dragJunction(browser: Browser, columns: number, rows: number): Promise<void> {
  const page = await browser.newPage({ viewport: SIZE });
  await openGrid(page, columns, rows);
  const unit = gridUnit(columns, rows);
  // A wall inside the block, taken by its middle: it moves across itself with everything that ends on it.
  const wall = unit.walls[columns * Math.floor((rows + 1) / 2) + Math.floor(columns / 2)];
  if (wall === undefined) throw new Error("the grid has no such wall");
  const [x, y] = await onScreen(page, [
    wall.from[0] * 0.85 + wall.to[0] * 0.15,
    (wall.from[1] + wall.to[1]) / 2,
  ]);
  await page.mouse.click(x, y);
  await page.waitForTimeout(300);
  await page.evaluate(WATCH_POINTER);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let k = 1; k <= 120; k++) {
    await page.mouse.move(x, y - 4 - (k % 30));
    await page.waitForTimeout(columns > 10 ? 90 : 45);
  }
  const paints = await page.evaluate<number[]>("window.paints.slice(10)");
  await page.keyboard.press("Escape");
  console.log(`drag, ${unit.walls.length} walls, input to paint: ${spread(paints)}`);
  await page.close();
}

// The same frames in one page: the plan panned, and a bare loop that draws as many rectangles with strokes and labels.
async function panPieces(browser: Browser): Promise<void> {
  const page = await browser.newPage({ viewport: SIZE });
  await openGrid(page, 20, 20);
  const [x, y] = [700, 400];
  const pieces = Number(await page.locator(".plan").getAttribute("data-pieces"));
  await page.evaluate(WATCH_POINTER);
  await page.mouse.move(x, y);
  await page.mouse.down({ button: "middle" });
  for (let k = 1; k <= 60; k++) {
    await page.mouse.move(x + (k % 20) * 6, y + (k % 10) * 4);
    await page.waitForTimeout(90);
  }
  await page.mouse.up({ button: "middle" });
  const paints = await page.evaluate<number[]>("window.paints.slice(5)");
  const plain = await page.evaluate<number[]>(PLAIN_LOOP);
  console.log(`pan, ${pieces} pieces in view, input to paint: ${spread(paints)}`);
  console.log(`plain canvas loop, 10000 rectangles with labels, a frame: ${spread(plain)}`);
  await page.close();
}

const PLAIN_LOOP = `(async () => {
  const canvas = document.createElement("canvas");
  canvas.width = 1440; canvas.height = 900;
  canvas.style.cssText = "position:fixed;inset:0;z-index:99";
  document.body.append(canvas);
  const pen = canvas.getContext("2d");
  const times = [];
  for (let frame = 0; frame < 40; frame++) {
    const start = performance.now();
    pen.clearRect(0, 0, 1440, 900);
    pen.font = "8px sans-serif";
    for (let k = 0; k < 10000; k++) {
      const x = (k % 125) * 11 + frame % 7, y = Math.floor(k / 125) * 11;
      pen.fillStyle = "#edf0f2"; pen.fillRect(x, y, 10, 4);
      pen.strokeRect(x, y, 10, 4);
      pen.fillStyle = "#1a1e23"; pen.fillText("600", x, y + 4);
    }
    await new Promise((done) => requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => done();
      channel.port2.postMessage(0);
    }));
    times.push(performance.now() - start);
  }
  canvas.remove();
  return times.slice(5);
})()`;

async function coldStarts(): Promise<void> {
  const times: number[] = [];
  for (let k = 0; k < 5; k++) {
    const browser = await chromium.launch({
      executablePath: findChromium() ?? "",
      args: [...chromiumArguments],
    });
    const page = await browser.newPage({ viewport: SIZE });
    const start = performance.now();
    await page.goto(ADDRESS);
    await page.locator('.plan[data-pieces]:not([data-pieces=""])').waitFor();
    times.push(performance.now() - start);
    await browser.close();
  }
  console.log(`first view of the filled sample, fresh browser: ${spread(times)}`);
}

const server = spawn("npx", ["vite", "preview", "--port", String(PORT)], { stdio: "ignore", detached: true });
try {
  await new Promise((done) => setTimeout(done, 2500));
  await coldStarts();
  const browser = await chromium.launch({
    executablePath: findChromium() ?? "",
    args: [...chromiumArguments],
  });
  await dragJunction(browser, 5, 5);
  await dragJunction(browser, 17, 16);
  await panPieces(browser);
  await browser.close();
} finally {
  if (server.pid !== undefined) process.kill(-server.pid);
}
