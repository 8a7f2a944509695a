// The page opens filled, asks nothing of the network, and goes on without one.

import { expect, test } from "@playwright/test";

test("opens on the filled sample, asks nobody else, and works offline", async ({ page, context }) => {
  const elsewhere: string[] = [];
  const complaints: string[] = [];
  page.on("request", (request) => {
    if (!/^(http:\/\/127\.0\.0\.1:4173\/|data:|blob:)/.test(request.url())) elsewhere.push(request.url());
  });
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(String(error)));

  await page.goto("/");
  await expect(page.locator("canvas").first()).toBeVisible();
  await expect(page.getByText("Fillers", { exact: true })).toBeVisible();

  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  await page.reload();
  await context.setOffline(true);
  await page.reload();
  await expect(page.locator("canvas").first()).toBeVisible();
  await expect(page.getByText("Fillers", { exact: true })).toBeVisible();

  expect(elsewhere).toEqual([]);
  expect(complaints).toEqual([]);
});
