// Pours and set: the table ordered by hand and by keys, each change one step, and the search begun, stopped and held to what
// the core finds in Node.

import { readFileSync } from "node:fs";
import { AxeBuilder } from "@axe-core/playwright";
import { expect, type Page, test } from "@playwright/test";
import { coreTools } from "../../src/cli/coreTools.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { readProject } from "../../src/plan/read.ts";
import { readInstance } from "../support/setInstance.ts";
import { drawnInstance } from "../support/setProject.ts";
import { openPage } from "./planPage.ts";

test.describe.configure({ timeout: 120_000 });

const SCHEME = "samples/row-of-three.json";

async function openFile(
  page: Page,
  files: Parameters<Page["setInputFiles"]>[1],
  name: string,
): Promise<void> {
  await openPage(page);
  const chooser = page.waitForEvent("filechooser");
  await page.keyboard.press("Control+O");
  await (await chooser).setFiles(files);
  await expect(page.locator(".project-name")).toContainText(name);
}

/** Opens the view on the row of houses, and waits until what each pour adds is counted. */
async function openSet(page: Page): Promise<void> {
  await openFile(page, SCHEME, "Pellowick Rise");
  await page.keyboard.press("Shift+S");
  await counted(page);
}

async function counted(page: Page): Promise<void> {
  await expect(page.locator(".set-pours .set-counting")).toHaveText("", { timeout: 30_000 });
  await expect(page.locator(".pour-row")).not.toHaveCount(0);
}

const names = (page: Page) =>
  page
    .getByLabel("Name of the pour")
    .evaluateAll((all) => all.map((each) => (each instanceof HTMLInputElement ? each.value : "")));

async function faults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, nodes }) => `${id}: ${nodes[0]?.target.join(" ")}`);
}

const HOUSES = ["House 1", "House 2", "House 3", "House 4", "House 5", "House 6"];

test("pours are ordered by keys and by hand, one step each, and undo takes them back", async ({ page }) => {
  await openSet(page);
  expect(await names(page)).toEqual(HOUSES);
  const handle = page.locator(".set-handle");
  await handle.first().focus();
  await page.keyboard.press("ArrowDown");
  await expect(page.getByText("Pour 1, House 1 is number 2 of 6.")).toBeAttached();
  // The hand stays on the row that moved.
  await page.keyboard.press("ArrowDown");
  expect((await names(page)).slice(0, 3)).toEqual(["House 2", "House 3", "House 1"]);
  await page.keyboard.press("Control+Z");
  expect((await names(page)).slice(0, 3)).toEqual(["House 2", "House 1", "House 3"]);
  await page.keyboard.press("Control+Z");
  expect(await names(page)).toEqual(HOUSES);

  const from = await handle.nth(4).boundingBox();
  const to = await page.locator(".pour-row").nth(1).boundingBox();
  if (from === null || to === null) throw new Error("the rows are not on the page");
  const grab = async () => {
    await page.mouse.move(from.x + 9, from.y + from.height / 2);
    await page.mouse.down();
    await page.mouse.move(from.x + 9, to.y + 40, { steps: 4 });
    await page.mouse.move(from.x + 9, to.y + 4, { steps: 4 });
  };
  await grab();
  await page.keyboard.press("Escape");
  await page.mouse.up();
  expect(await names(page)).toEqual(HOUSES);
  await grab();
  await page.mouse.up();
  expect(await names(page)).toEqual(["House 1", "House 5", "House 2", "House 3", "House 4", "House 6"]);
  await page.keyboard.press("Control+Z");
  expect(await names(page)).toEqual(HOUSES);
});

test("a pour is changed, duplicated and deleted in place, and a project without pours says what it takes", async ({
  page,
}) => {
  await openSet(page);
  const row = page.locator(".pour-row");
  const adds = () => row.locator(".adds-count").allTextContents();
  const before = await adds();
  await row.nth(1).getByLabel("Day").fill("1");
  await page.keyboard.press("Enter");
  await expect(row.nth(1)).toContainText("Same day as pour 1");
  await counted(page);
  expect(await adds()).not.toEqual(before);
  await row.nth(0).getByRole("button", { name: "Duplicate Pour 1, House 1" }).click();
  expect((await names(page)).slice(0, 3)).toEqual(["House 1", "House 1", "House 2"]);
  await row.nth(2).getByLabel("Clear height, mm").fill("2700");
  await page.keyboard.press("Enter");
  await counted(page);
  await expect(row.nth(2).getByLabel("Clear height, mm")).toHaveValue("2\u202f700");
  for (let k = 0; k < 3; k++) await page.keyboard.press("Control+Z");
  await counted(page);
  expect(await adds()).toEqual(before);

  for (const house of HOUSES)
    await page.getByRole("button", { name: new RegExp(`^Delete .*${house}$`) }).click();
  await expect(page.getByRole("note")).toContainText("each of the 3 units is one pour");
  await page.getByRole("button", { name: "List them, to order them" }).click();
  await expect(row).toHaveCount(3);
});

test("the cheapest set is the one the core finds, and an older drawing's is said to be one", async ({
  page,
}) => {
  const read = readProject(readFileSync(SCHEME, "utf8"));
  if (read.status !== "ok") throw new Error("the sample cannot be read");
  const { set } = await coreTools.optimise(read.project, demoKit, null);
  await openSet(page);
  await page.getByRole("button", { name: "Find the cheapest set" }).click();
  const result = page.locator(".set-result");
  await expect(result).toBeVisible({ timeout: 60_000 });
  await expect(result).toContainText("Proven optimal");
  const figures = (await result.locator(".set-sum").textContent())?.replaceAll(/[^0-9.]/g, "");
  expect(Number(figures)).toBeCloseTo(set!.cost, 2);
  for (const { code, needed } of set!.pieces.filter(
    ({ family, needed }) => family === "wall-panel" && needed > 0,
  ))
    await expect(page.locator(`[data-piece="${code}"] .need-figure`)).toHaveText(`${needed}`);

  // Which pieces are owned changes the set; a name does not.
  await page.getByLabel("Name of the pour").first().fill("First");
  await page.keyboard.press("Enter");
  await expect(result).toHaveAttribute("data-old", "false");
  await page.getByLabel("Owned of W600x2250").fill("20");
  await page.keyboard.press("Enter");
  await expect(result).toContainText("Of an earlier state of the project.");
  await page.keyboard.press("Control+Z");
  await expect(result).toHaveAttribute("data-old", "false");

  // It is there when the view is opened again.
  await page.getByRole("button", { name: "Back to the plan" }).click();
  await expect(page.locator(".set")).toBeHidden();
  await page.getByRole("button", { name: "Set", exact: true }).click();
  await expect(result).toContainText("Proven optimal");
});

test("a set is kept in the plan by one step, and its point picked from the curve", async ({ page }) => {
  await openSet(page);
  const fillers = page.locator('[data-score="fillers"]');
  const before = await fillers.getAttribute("data-value");
  await page.getByRole("button", { name: "Find the cheapest set" }).click();
  await page.getByRole("button", { name: "Keep in the plan" }).click({ timeout: 60_000 });
  await expect(page.getByText("In the plan: drawing and sheets show it.")).toBeVisible();
  await expect(fillers).not.toHaveAttribute("data-value", before ?? "");
  // What is kept is what was found: the plan needs it, piece for piece, and the result is still of this state.
  await counted(page);
  await expect(page.locator(".set-result")).toHaveAttribute("data-old", "false");
  await expect(page.locator(".pieces .chip.better, .pieces .chip.worse")).toHaveCount(0);
  await page.getByRole("button", { name: "Take it out again" }).click();
  await expect(fillers).toHaveAttribute("data-value", before ?? "");

  await page.getByRole("button", { name: "Draw what they cost" }).click();
  const point = page.locator(".curve button").filter({ hasText: "5 widths" });
  await point.click({ timeout: 90_000 });
  await expect(page.getByLabel("Most widths")).toHaveValue("5");
  await expect(point).toHaveAttribute("aria-pressed", "true");
  const cost = (await point.textContent())?.match(/widths([\d\s.\u202f]+)/u)?.[1];
  await expect(page.locator(".set-sum")).toContainText(cost?.trim() ?? "none", { timeout: 60_000 });
  await page.keyboard.press("Control+Z");
  await expect(page.getByLabel("Most widths")).toHaveValue("");
});

test("a long search is stopped at once and keeps its best, or is cancelled and keeps nothing", async ({
  page,
}) => {
  const project = { ...drawnInstance(readInstance("apt-06x60-a")), name: "Long search" };
  const buffer = Buffer.from(JSON.stringify(project));
  await openFile(page, { name: "long.json", mimeType: "application/json", buffer }, "Long search");
  await page.keyboard.press("Shift+S");
  await counted(page);
  const find = page.getByRole("button", { name: "Find the cheapest set" });
  await find.click();
  await expect(page.locator(".chart-best")).toBeAttached({ timeout: 60_000 });
  await page.getByRole("button", { name: "Cancel" }).click();
  await expect(find).toBeVisible();
  await expect(page.locator(".set-result")).toHaveCount(0);
  await find.click();
  await expect(page.locator(".chart-best")).toBeAttached({ timeout: 60_000 });
  await page.getByRole("button", { name: "Stop, keep the best" }).click();
  await expect(page.locator(".set-result")).toContainText(/Stopped within [\d.]+ % of the least possible/, {
    timeout: 60_000,
  });
});

test("a wall drawn 7 mm off is found, moved by one step, and saves what was said", async ({ page }) => {
  const plan = JSON.parse(readFileSync("samples/two-bedroom.json", "utf8"));
  const wall = plan.units[0].walls.find(({ id }: { id: string }) => id === "w10");
  for (const end of [wall.from, wall.to]) end[0] += 7;
  const buffer = Buffer.from(JSON.stringify({ ...plan, name: "Seven off" }));
  await openFile(page, { name: "off.json", mimeType: "application/json", buffer }, "Seven off");
  await page.keyboard.press("Shift+S");
  await counted(page);
  const amount = (text: string | null) => Number(text?.replaceAll(/[^0-9.]/g, ""));
  const cost = async () => {
    await page
      .getByRole("button", { name: "Find the cheapest set" })
      .or(page.getByRole("button", { name: "Find it again" }))
      .click();
    await expect(page.locator(".set-result")).toContainText("Proven optimal", { timeout: 60_000 });
    await expect(page.locator(".set-result")).toHaveAttribute("data-old", "false");
    return amount(await page.locator(".set-sum").textContent());
  };
  const before = await cost();
  await page.getByRole("button", { name: "Find moves that save" }).click();
  const move = page.locator(".nudges li").filter({ hasText: "w10" });
  await expect(move).toContainText("7 mm to the left", { timeout: 60_000 });
  const saving = amount(await move.locator(".chip").textContent());
  const closures = page.locator('[data-score="closures"]');
  const drawn = await closures.getAttribute("data-value");
  await move.getByRole("button", { name: /^Move it/ }).click();
  await expect(closures).toHaveAttribute("data-value", "0");
  await expect(move.getByRole("button", { name: /^Move it/ })).toHaveAttribute("aria-disabled", "true");
  await counted(page);
  expect(before - (await cost())).toBeCloseTo(saving, 2);
  await page.keyboard.press("Control+Z");
  await expect(closures).toHaveAttribute("data-value", drawn ?? "");
  await expect(move.getByRole("button", { name: /^Move it/ })).toHaveAttribute("aria-disabled", "false");
});

test("what is owned is taken from a list in one step, and a faulty list leaves it as it was", async ({
  page,
}) => {
  await openSet(page);
  const owned = page.getByLabel("Owned of W600x2250");
  const take = async (name: string, text: string) => {
    const chooser = page.waitForEvent("filechooser");
    await page.getByRole("button", { name: "Take owned from a file" }).click();
    await (await chooser).setFiles({ name, mimeType: "text/csv", buffer: Buffer.from(text) });
  };
  await take("store.csv", "code;quantity\nW600x2250;30,0\nOther;4\n");
  await expect(owned).toHaveValue("30");
  const notice = page.locator(".set-pieces");
  await expect(notice).toContainText("One code taken: 30 pieces owned.");
  await expect(notice).toContainText('line 3: the kit has no piece "Other"; the line is left out.');
  for (const [list, says] of [
    ["code;quantity\nW600x2250;-3\n", 'line 2: "-3" of "W600x2250" is less than none.'],
    ["", "line 1: there is nothing in it."],
  ] as const) {
    await take("store.csv", list);
    await expect(notice).toContainText("Nothing was taken from the file.");
    await expect(notice).toContainText(says);
    await expect(owned).toHaveValue("30");
  }
  await page.keyboard.press("Control+Z");
  await expect(owned).toHaveValue("");
});

test("a change of the set leads to its own interval in plan and elevation", async ({ page }) => {
  await openSet(page);
  await page.getByRole("button", { name: "Find the cheapest set" }).click();
  await page.locator(".change").first().click({ timeout: 60_000 });
  await expect(page.locator(".set")).toBeHidden();
  // The pane offers other covers only where the hand is on an interval.
  await expect(page.getByText("Choose a free interval of the face to see its other covers.")).toBeHidden();
});

for (const theme of ["light", "dark"] as const) {
  test(`can be used by everyone, ${theme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: theme });
    await openSet(page);
    await page.locator(".adds").first().click();
    expect(await faults(page)).toEqual([]);
    await page.getByRole("button", { name: "Find the cheapest set" }).click();
    await expect(page.locator(".set-result")).toBeVisible({ timeout: 60_000 });
    expect(await faults(page)).toEqual([]);
  });
}

test("the solver works without a network", async ({ page, context }) => {
  await openPage(page);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
  await page.reload();
  await context.setOffline(true);
  await openPage(page);
  await page.keyboard.press("Shift+S");
  await counted(page);
  await page.getByRole("button", { name: "Find the cheapest set" }).click();
  await expect(page.locator(".set-result")).toContainText("Proven optimal", { timeout: 60_000 });
});

test.describe("on a tablet", () => {
  test.use({ viewport: { width: 820, height: 1180 }, hasTouch: true, isMobile: true });
  test("all that is touched is large enough for a glove, and nothing runs out of the window", async ({
    page,
  }) => {
    await openPage(page);
    await page.getByRole("button", { name: "Set", exact: true }).tap();
    await counted(page);
    const boxes = page.locator(
      ".set button, .set select, .set input:not([type=checkbox], .hidden), .set label",
    );
    const heights = await boxes.evaluateAll((all) =>
      all.flatMap((each) => (each.checkVisibility() ? Math.round(each.getBoundingClientRect().height) : [])),
    );
    expect(heights.filter((height) => height < 44)).toEqual([]);
    const width = await page.locator(".set-scroll").evaluate((box) => [box.scrollWidth, box.clientWidth]);
    expect(width[0]).toBe(width[1]);
  });
});
