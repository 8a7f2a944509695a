// A tablet: one finger pans, two fingers pinch, a tap selects, and what is selected follows the finger.

import { type CDPSession, expect, type Page, test } from "@playwright/test";
import { onScreen, openPage, scores } from "./planPage.ts";

test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true });

type Finger = readonly [x: number, y: number];

async function touch(session: CDPSession, ...paths: readonly (readonly Finger[])[]): Promise<void> {
  const points = (step: number) =>
    paths.map((path, id) => {
      const [x = 0, y = 0] = path[Math.min(step, path.length - 1)] ?? [];
      return { x, y, id };
    });
  const steps = Math.max(...paths.map(({ length }) => length));
  await session.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: points(0) });
  for (let step = 1; step < steps; step++) {
    await session.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: points(step) });
  }
  await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
}

function along(from: Finger, to: Finger): readonly Finger[] {
  return Array.from({ length: 9 }, (_, k): Finger => {
    const share = k / 8;
    return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
  });
}

async function viewOf(page: Page) {
  const plan = page.locator(".plan");
  const [x = 0, y = 0] = ((await plan.getAttribute("data-centre")) ?? "").split(" ").map(Number);
  return { x, y, scale: Number(await plan.getAttribute("data-scale")) };
}

test("one finger on the paper pans and changes nothing", async ({ page, context }) => {
  await openPage(page);
  const session = await context.newCDPSession(page);
  const [before, figures] = [await viewOf(page), await scores(page)];
  const start = await onScreen(page, [2400, 3000]);
  await touch(session, along(start, [start[0] + 80, start[1] - 40]));
  const after = await viewOf(page);
  expect(after.scale).toBe(before.scale);
  expect((before.x - after.x) * before.scale).toBeCloseTo(80, 0);
  expect((before.y - after.y) * before.scale).toBeCloseTo(40, 0);
  expect(await scores(page)).toEqual(figures);
});

test("two fingers pinch, and the place between them stays", async ({ page, context }) => {
  await openPage(page);
  const session = await context.newCDPSession(page);
  const before = await viewOf(page);
  const [x, y] = await onScreen(page, [5000, 4000]);
  await touch(session, along([x - 40, y], [x - 120, y]), along([x + 40, y], [x + 120, y]));
  const after = await viewOf(page);
  expect(after.scale / before.scale).toBeCloseTo(3, 1);
  const [u, v] = await onScreen(page, [5000, 4000]);
  expect(Math.abs(u - x)).toBeLessThan(6);
  expect(Math.abs(v - y)).toBeLessThan(6);
});

test("a tap selects a wall, and the selected wall follows the finger", async ({ page, context }) => {
  await openPage(page);
  const session = await context.newCDPSession(page);
  const wall = await onScreen(page, [6200, 4050]);
  await touch(session, [wall]);
  await expect(page.locator(".pane-header")).toContainText("Wall w8");
  const [before, figures] = [await viewOf(page), await scores(page)];
  await touch(session, along(wall, [wall[0], wall[1] + 40]));
  expect(await viewOf(page)).toEqual(before);
  expect(await scores(page)).not.toEqual(figures);
  await page.getByRole("button", { name: /^Undo/ }).click();
  expect(await scores(page)).toEqual(figures);
});

test("every tool is large enough for a finger", async ({ page }) => {
  await openPage(page);
  for (const button of await page.locator(".rail-button").all()) {
    const box = await button.boundingBox();
    expect(box?.width).toBeGreaterThanOrEqual(44);
    expect(box?.height).toBeGreaterThanOrEqual(44);
  }
});
