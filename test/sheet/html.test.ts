// The HTML of sheets: one section a sheet, paper of its own size, and names that stay text.

import { describe, expect, it } from "vitest";
import { sheetsToHtml } from "../../src/sheet/html.ts";
import type { Sheet } from "../../src/sheet/mark.ts";
import { PAPERS, type PaperSize } from "../../src/sheet/paper.ts";
import { HOSTILE_NAMES } from "../support/sheetFills.ts";

function sheet(paper: PaperSize, title = "Sheet"): Sheet {
  return { name: "a-01", ...PAPERS[paper], title, description: "Four faces.", marks: [] };
}

const plain = { title: "Seven Kilns", language: "es", fonts: null } as const;

describe("sheets as HTML", () => {
  const html = sheetsToHtml([sheet("A4"), sheet("A3"), sheet("A4"), sheet("Letter")], plain);

  it("gives every size of paper one rule for its pages", () => {
    expect(
      [...html.matchAll(/@page (p\d) \{ size: ([^;]+); margin: 0; \}/g)].map(([, , size]) => size),
    ).toEqual(["297mm 210mm", "420mm 297mm", "279.4mm 215.9mm"]);
  });

  it("puts every sheet on a page of its size", () => {
    const sections = [...html.matchAll(/<section class="sheet (p\d)">/g)].map(([, page]) => page);
    expect(sections).toEqual(["p0", "p1", "p0", "p2"]);
  });

  it("names each title and description once, though two sheets share a name", () => {
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(ids).toHaveLength(8);
    expect(new Set(ids).size).toBe(8);
  });

  it("says its language", () => {
    expect(html).toContain('<html lang="es">');
  });

  it("names the typeface, and carries it where it is given", () => {
    expect(html).toContain("IBM Plex Sans Condensed");
    expect(html).not.toContain("@font-face");
    const fonts = { 400: "data:r", 600: "data:s", 700: "data:b" };
    const carried = sheetsToHtml([sheet("A4")], { ...plain, fonts });
    expect(
      [...carried.matchAll(/font-weight: (\d+); src: url\("([^"]+)"\)/g)].map((m) => m.slice(1)),
    ).toEqual([
      ["400", "data:r"],
      ["600", "data:s"],
      ["700", "data:b"],
    ]);
  });

  it.each(HOSTILE_NAMES)("keeps a name a text: %j", (name) => {
    const hostile = sheetsToHtml([sheet("A4", name)], { ...plain, title: name });
    const bare = sheetsToHtml([sheet("A4", "")], { ...plain, title: "" });
    const tags = (text: string) => [...text.matchAll(/<\/?[a-z]+/gi)].map(([tag]) => tag);
    expect(tags(hostile)).toEqual(tags(bare));
  });
});
