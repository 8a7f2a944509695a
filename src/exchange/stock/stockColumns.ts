// Which column of a list names the pieces and which counts them: by the names over them, else by what they hold.

import type { SheetRow } from "../xlsx/readXlsx.ts";
import { wholeCount } from "./wholeCount.ts";

export interface StockColumns {
  /** From 0. */
  readonly code: number;
  readonly quantity: number;
  /** Rows from here on are read; what stands before are titles. */
  readonly first: number;
}

export type ColumnsAnswer =
  | { readonly status: "ok"; readonly columns: StockColumns }
  | { readonly status: "no-code" }
  /** No column, or more than one, is that of the numbers. */
  | { readonly status: "no-quantity" }
  | { readonly status: "many-quantities"; readonly columns: readonly number[]; readonly isNamed: boolean };

/** English, Spanish and Portuguese, without accents and signs. */
const CODE_NAMES: ReadonlySet<string> = new Set([
  ...[
    "code",
    "codes",
    "piececode",
    "itemcode",
    "piece",
    "item",
    "partno",
    "part",
    "partnumber",
    "reference",
    "ref",
  ],
  ...["codigo", "codigos", "codigodepieza", "pieza", "articulo", "referencia"],
  ...["codigodapeca", "peca", "artigo"],
]);
const QUANTITY_NAMES: ReadonlySet<string> = new Set([
  ...[
    "quantity",
    "quantities",
    "qty",
    "count",
    "counted",
    "pieces",
    "pcs",
    "owned",
    "stock",
    "onhand",
    "instock",
  ],
  ...["cantidad", "cantidades", "cant", "existencia", "existencias", "piezas", "unidades", "enalmacen"],
  ...["quantidade", "quantidades", "qtd", "qtde", "quant", "pecas", "estoque", "saldo", "emestoque"],
]);

/** Lines at the top that may be titles. */
const TITLES = 30;

export function stockColumns(rows: readonly SheetRow[], isCode: (text: string) => boolean): ColumnsAnswer {
  const head = rows.slice(0, TITLES).findIndex((row) => isHead(row) && !namesPiece(row, isCode));
  const hasHead = head >= 0;
  const first = hasHead ? head + 1 : 0;
  const body = rows.slice(first);
  const byName = hasHead ? named(rows[head]!, CODE_NAMES)[0] : undefined;
  const code = byName ?? codeColumn(body, isCode);
  if (code === undefined) return { status: "no-code" };
  const names = hasHead ? named(rows[head]!, QUANTITY_NAMES).filter((column) => column !== code) : [];
  if (names.length > 1) return { status: "many-quantities", columns: names, isNamed: true };
  const quantities = names.length === 1 ? names : numberColumns(body, code, isCode);
  if (quantities.length > 1) return { status: "many-quantities", columns: quantities, isNamed: false };
  const [quantity] = quantities;
  if (quantity === undefined) return { status: "no-quantity" };
  if (hasHead) return { status: "ok", columns: { code, quantity, first } };
  // Without a head the list begins where something is counted, be it in the kit or not.
  const start = body.findIndex(({ cells }) => {
    const name = cells[code]?.text ?? "";
    const counted = cells[quantity];
    return isCode(name) || (name !== "" && counted !== undefined && wholeCount(counted).status === "count");
  });
  return { status: "ok", columns: { code, quantity, first: Math.max(0, start) } };
}

/** A title of one cell is no head of columns. */
function isHead(row: SheetRow): boolean {
  const isFilled = row.cells.filter((cell) => cell !== undefined).length > 1;
  return isFilled && (named(row, CODE_NAMES).length > 0 || named(row, QUANTITY_NAMES).length > 0);
}

function named({ cells }: SheetRow, names: ReadonlySet<string>): readonly number[] {
  return cells.flatMap((cell, column) =>
    cell !== undefined && names.has(plainName(cell.text)) ? [column] : [],
  );
}

function plainName(text: string): string {
  return text
    .normalize("NFD")
    .toLowerCase()
    .replaceAll(/[^a-z]/g, "");
}

const namesPiece = ({ cells }: SheetRow, isCode: (text: string) => boolean) =>
  cells.some((cell) => cell !== undefined && isCode(cell.text));

/** The column in which most cells name a piece; the first of equals. */
function codeColumn(rows: readonly SheetRow[], isCode: (text: string) => boolean): number | undefined {
  const hits: number[] = [];
  for (const { cells } of rows) {
    cells.forEach((cell, column) => {
      if (cell !== undefined && isCode(cell.text)) hits[column] = (hits[column] ?? 0) + 1;
    });
  }
  let best: number | undefined;
  hits.forEach((count, column) => {
    if (best === undefined || count > hits[best]!) best = column;
  });
  return best;
}

/** Columns that hold a number beside most pieces. */
function numberColumns(
  rows: readonly SheetRow[],
  code: number,
  isCode: (text: string) => boolean,
): readonly number[] {
  const named = rows.filter(({ cells }) => isCode(cells[code]?.text ?? ""));
  const widest = named.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  return Array.from({ length: widest }, (_, column) => column).filter((column) => {
    if (column === code) return false;
    const numbers = named.filter(({ cells }) => {
      const cell = cells[column];
      return cell !== undefined && wholeCount(cell).status !== "not-a-number";
    });
    return numbers.length * 2 > named.length;
  });
}

/** "A", "B" … "AA", as a spreadsheet names its columns. */
export function columnName(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnName(Math.floor(column / 26) - 1) + letter;
}
