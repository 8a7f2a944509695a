import { describe, expect, it } from "vitest";
import {
  freeCode,
  type KitFilter,
  shownColumns,
  shownRows,
  withCell,
  withNewRow,
  withoutRow,
} from "../../src/editor/kit/kitTable.ts";
import { demoKit } from "../../src/kit/demo.ts";
import { COLUMNS, columnsOf, kitToRows, rowOf } from "../../src/kit/kitRows.ts";

const rows = kitToRows(demoKit);
const none = new Set<number>();
const filter = (change: Partial<KitFilter>): KitFilter => ({ show: "all", text: "", ...change });

describe("the rows shown", () => {
  it("are all pieces, all rules, or those of one family", () => {
    expect(shownRows(rows, filter({}), none)).toHaveLength(demoKit.pieces.length);
    expect(shownRows(rows, filter({ show: "rules" }), none)).toHaveLength(Object.keys(demoKit.rules).length);
    const ties = demoKit.pieces.filter(({ family }) => family === "tie");
    expect(shownRows(rows, filter({ show: "tie" }), none).map((k) => rows[k]?.name)).toEqual(
      ties.map(({ code }) => code),
    );
  });

  it("are narrowed by a part of the code, whatever its case", () => {
    const wanted = demoKit.pieces[0]!.code;
    const found = shownRows(rows, filter({ text: wanted.toLowerCase() }), none);
    expect(found.map((k) => rows[k]?.name)).toContain(wanted);
    expect(found.length).toBeLessThan(demoKit.pieces.length);
  });

  it("keep what has to be mended in sight, whatever the filter", () => {
    const [place] = shownRows(rows, filter({ show: "tie" }), none);
    expect(shownRows(rows, filter({ show: "prop", text: "nothing" }), new Set([place!]))).toEqual([place]);
  });
});

describe("the columns shown", () => {
  it.each(["wall-panel", "tie", "inside-corner", "prop", "cap-corner"] as const)(
    "are all that a %s may fill in, and no other",
    (show) => {
      const own = columnsOf(rowOf({ record: "piece", family: show }));
      const shown = shownColumns(filter({ show }));
      expect([...shown].sort()).toEqual(own.filter((column) => column !== "record").sort());
    },
  );

  it("leave out no column over all rows", () => {
    const shown = new Set([...shownColumns(filter({})), ...shownColumns(filter({ show: "rules" }))]);
    expect(COLUMNS.filter((column) => column !== "record" && !shown.has(column))).toEqual([]);
  });
});

describe("changes", () => {
  it("of a cell touch that cell; the same text is no change", () => {
    expect(withCell(rows, 1, "width", "7")[1]).toEqual({ ...rows[1], width: "7" });
    expect(withCell(rows, 1, "width", rows[1]!.width)).toBe(rows);
    expect(withCell(rows, 9999, "width", "7")).toBe(rows);
  });

  it.each([
    { why: "a piece goes behind its family", row: rowOf({ record: "piece", family: "tie" }) },
    { why: "a rule goes behind the rules", row: rowOf({ record: "rule" }) },
  ])("$why", ({ row }) => {
    const added = withNewRow(rows, row);
    expect(added.rows[added.at]).toBe(row);
    expect(added.rows[added.at - 1]).toMatchObject({
      record: row.record,
      ...(row.family && { family: row.family }),
    });
    expect(withoutRow(added.rows, added.at)).toEqual(rows);
  });

  it("of a kit without that family put the piece behind the other pieces", () => {
    const few = rows.filter(({ family }) => family !== "brace");
    const added = withNewRow(few, rowOf({ record: "piece", family: "brace" }));
    expect(added.rows[added.at - 1]?.record).toBe("piece");
    expect(added.rows[added.at + 1]?.record).not.toBe("piece");
  });

  it("give a copy a code of its own", () => {
    const code = rows[1]!.name;
    const once = freeCode(rows, code);
    expect(rows.map(({ name }) => name)).not.toContain(once);
    expect(freeCode([...rows, rowOf({ name: once })], code)).not.toBe(once);
  });
});
