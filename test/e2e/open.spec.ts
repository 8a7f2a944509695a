// The page opens filled, asks nothing of the network, and goes on without one.

import { readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "@playwright/test";
import { openPage } from "./planPage.ts";

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

test("may ask nobody else, whatever asks", async ({ page }) => {
  await openPage(page);
  const refused = await page.evaluate(async () => {
    const broken: string[] = [];
    document.addEventListener("securitypolicyviolation", (event) => broken.push(event.effectiveDirective));
    await fetch("http://127.0.0.1:9/").catch(() => {});
    const image = new Image();
    await new Promise((resolve) => {
      image.onerror = resolve;
      image.src = "http://127.0.0.1:9/picture.png";
    });
    return broken;
  });
  expect(refused).toEqual(["connect-src", "img-src"]);
});

test("a later version waits until it is asked for", async ({ page }) => {
  await openPage(page);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  await page.reload();
  const worker = "dist/sw.js";
  const before = readFileSync(worker, "utf8");
  try {
    writeFileSync(worker, `${before}\n// later`);
    await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      await registration?.update();
    });
    const notice = page.getByRole("status").filter({ hasText: "A later version" });
    await expect(notice).toBeVisible();
    const loaded = page.waitForEvent("load");
    await notice.getByRole("button", { name: "Load the page anew" }).click();
    await loaded;
    await expect(page.locator(".plan")).not.toHaveAttribute("data-pieces", "");
    await expect(notice).toBeHidden();
  } finally {
    writeFileSync(worker, before);
  }
});
