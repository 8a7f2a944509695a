// Goes through a calculation sheet by hand: reads what is printed, works every figure out again in its own way from the
// inputs that are printed beside it and the project file, and notes what comes out otherwise. It knows nothing of the
// program but the words of its headings in English.

import { workOut } from "../arithmetic.ts";
import type { Cell, ReadLine } from "../sheetReading.ts";
import {
  type Book,
  compare,
  figureIn,
  formulasOf,
  isAsPrinted,
  sectionsOf,
  type Told,
  wordsOf,
} from "./book.ts";
import {
  checkLifts,
  checkMaturity,
  checkPrediction,
  checkReadings,
  checkShoring,
  checkStriking,
  checkTolerances,
} from "./laterAge.ts";
import { beamOver, cutIntegral, type Line, type Pressure, stripLoads, type Width } from "./statics.ts";

export interface Pressed {
  readonly pressure: Pressure;
  readonly greatest: number;
  readonly knee: number;
}

/** CIRIA 108 for a wall of plain Portland cement without retarder. */
export function ciria({ height, density, rate, temperature }: Told): Pressed {
  const warmth = (36 / (temperature + 16)) ** 2;
  const rise = Math.sqrt(rate);
  const formula = density * (rise + 0.3 * warmth * Math.sqrt(height - rise));
  const greatest = Math.min(formula, density * height);
  return {
    greatest,
    knee: height - greatest / density,
    pressure: (z) => Math.min(density * (height - z), greatest),
  };
}

export function goThrough(lines: readonly ReadLine[], told: Told, book: Book): void {
  const sections = sectionsOf(lines, "continued");
  const at = (title: string) => sections.get(title) ?? [];
  const pressed = ciria(told);
  for (const [title, own] of sections) checkArithmetic(title, own, book);
  checkInputs(["Storey", "Concrete", "Rules of the kit, with their origin"].flatMap(at), told, book);
  checkPressure(at("Pressure of the fresh concrete"), pressed, book);
  for (const title of ["The tie that carries most", "One tie left out"])
    checkTie(title, at(title), pressed, book);
  const strips = checkStrips(at("What every row of ties carries"), pressed, book);
  checkRegister(at("Lines of ties with their strips"), strips, told, book);
  checkThrusts(sections, pressed, book);
  checkProps(at("Load of props"), told, book);
  checkSite(sections, told, book);
  checkGlance(at("At a glance"), book);
  checkLifts(at("Every piece to lift"), told, book);
  checkMaturity(at("Maturity from the log of temperatures"), told, book);
  checkPrediction(at("When the slab is strong enough"), told, book);
  checkReadings(at("Strength at each reading of the log"), told, book);
  checkTolerances(at("How far the concrete may be off"), told, book);
  checkStriking(at("When forms may come down: rules side by side"), told, book);
  checkShoring(at("Shoring step by step"), book);
}

// What the sheet goes by is what the project and the kit say.
function checkInputs(lines: readonly ReadLine[], told: Told, book: Book): void {
  const stated: Readonly<Record<string, number>> = {
    "Clear height, floor to soffit": (told.height - told.slab) * 1000,
    "Slab over it": told.slab * 1000,
    "Density of the concrete": told.density,
    "Highest rate of placing": told.rate,
    "Temperature of the concrete": told.temperature,
    "Strength at 28 days, cylinders": told.strength,
    "Slab panels come down after": told.strikeAt,
    "Service load in all": told.service,
    "Load a tie may carry (invented for the test)": told.tieLimit,
    "Limit of one person (common practice, no source)": told.personLimit,
    "Distance from prop to prop (common practice, no source)": told.propPitch,
  };
  for (const [name, value] of Object.entries(stated)) {
    const line = lines.find(({ cells }) => cells[0]?.text === name);
    if (line === undefined) book.faults.push(`${name} is not printed`);
    else compare(book, name, line.cells.at(-1)!, value);
  }
}

/** Figures and signs alone, a unit behind them at most. */
function isFigures(side: string): boolean {
  const rest = side
    .replace(/ (?:kPa|kN|kN\/m|MPa|psf|m|h|kg|d)$/, "")
    .replaceAll(/\b(?:min|max|exp|at least|at most|and)\b|(?<=\d) kPa/g, "");
  return /^[^\p{L}]*\d[^\p{L}]*$/u.test(rest);
}

// Every line of figures: what stands between the signs of equality comes to the same.
function checkArithmetic(title: string, lines: readonly ReadLine[], book: Book): void {
  for (const { text, cells } of formulasOf(lines)) {
    const sides = text.split(" = ").filter(isFigures);
    const result = sides[sides.length - 1];
    if (result === undefined || sides.length < 2) continue;
    for (const side of sides.slice(0, -1)) {
      const value = workOut(side);
      book.seen.add(cells[cells.length - 1]!);
      if (!isAsPrinted(result, value)) book.faults.push(`${title}: ${text}, comes to ${value}`);
    }
  }
}

function resultOf(
  lines: readonly ReadLine[],
  left: string,
): { readonly cell: Cell; readonly text: string } | null {
  const found = formulasOf(lines).find(({ text }) => text.startsWith(`${left} =`));
  if (found === undefined) return null;
  return { cell: found.cells[found.cells.length - 1]!, text: found.text.split(" = ").at(-1)! };
}

function checkPressure(lines: readonly ReadLine[], { greatest, knee, pressure }: Pressed, book: Book): void {
  const most = resultOf(lines, "P_max");
  if (most === null) book.faults.push("no equation for the pressure");
  else compare(book, "P_max", most.cell, greatest, most.text);
  for (const { cells } of lines) {
    const figures = cells.filter(({ isEnd, text }) => isEnd && /^[\d.]+$/.test(text));
    const [z, p] = figures.slice(-2);
    if (figures.length >= 2 && p !== undefined) compare(book, "p", p, pressure(figureIn(z!.text) / 1000));
  }
  const lowest = lines
    .flatMap(({ cells }) => cells)
    .find(({ text, isEnd }) => isEnd && /^[\d.]+ kPa$/.test(text));
  if (lowest !== undefined) compare(book, "p at the floor", lowest, pressure(0));
  if (knee < 0) book.faults.push("the knee is under the floor");
}

/** "600 from 0 to 2100; 2000 from 2100 to 2500" */
function widthsIn(text: string): readonly Width[] {
  return [...text.matchAll(/([\d.]+) from ([\d.]+) to ([\d.]+)/g)].map(([, width, from, to]) => ({
    width: Number(width) / 1000,
    from: Number(from) / 1000,
    to: Number(to) / 1000,
  }));
}

function memo<T>(book: Book, key: string, make: () => T): T {
  if (!book.known.has(key)) book.known.set(key, make());
  return book.known.get(key) as T;
}

function workedLine(
  book: Book,
  rows: readonly number[],
  widths: readonly Width[],
  { pressure, knee }: Pressed,
) {
  const line: Line = { rows, widths, pressure, knee };
  return memo(book, JSON.stringify([rows, widths]), () => ({
    strips: stripLoads(line),
    beam: beamOver(line),
  }));
}

function checkTie(title: string, lines: readonly ReadLine[], pressed: Pressed, book: Book): void {
  const widths = widthsIn(/Width b, mm: ([^:]*?\d)\.(?: |$)/.exec(wordsOf(lines))?.[1] ?? "");
  const table = lines.filter(
    ({ cells }) => cells.length === 4 && cells.every(({ isEnd, text }) => isEnd && /^−?[\d.]+$/.test(text)),
  );
  const rows = table.map(({ cells }) => figureIn(cells[0]!.text) / 1000);
  if (widths.length === 0 || rows.length === 0) {
    book.faults.push(`${title}: no strip or no rows`);
    return;
  }
  const { strips, beam } = workedLine(book, rows, widths, pressed);
  table.forEach(({ cells }, k) => {
    const [, simple, moment, reaction] = cells;
    const side = (j: number) =>
      rows[j] === undefined ? 0 : (beam.moments[j]! - beam.moments[k]!) / Math.abs(rows[j]! - rows[k]!);
    compare(book, `${title} V`, simple!, beam.reactions[k]! - side(k - 1) - side(k + 1));
    compare(book, `${title} M`, moment!, beam.moments[k]!);
    compare(book, `${title} R`, reaction!, beam.reactions[k]!);
  });
  for (const { cells } of lines) {
    const own = cells.findIndex(({ text }) => /^[\d.]+–[\d.]+$/.test(text));
    if (own < 0) continue;
    const k = strips.findIndex(
      ({ to }) => Math.abs(to * 1000 - Number(cells[own]!.text.split("–")[1])) < 1e-6,
    );
    const strip = strips[k];
    const [area, force, asBeam] = cells.slice(own + 1);
    if (strip === undefined) {
      book.faults.push(`${title}: no row has the strip ${cells[own]!.text}`);
      continue;
    }
    compare(book, `${title} A`, area!, strip.area);
    compare(book, `${title} F`, force!, strip.force);
    compare(book, `${title} beam`, asBeam!, beam.reactions[k]!);
  }
}

/** By name of a strip: the greatest load of its rows. */
function checkStrips(lines: readonly ReadLine[], pressed: Pressed, book: Book): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  let heads: readonly Cell[] = [];
  for (const { cells } of lines) {
    if (cells.some(({ text }) => /^z \d/.test(text))) heads = cells.filter(({ text }) => /^z \d/.test(text));
    const [name] = cells;
    if (!/^S\d+$/.test(name?.text ?? "")) continue;
    const widths = widthsIn(cells.map(({ text }) => text).join(" "));
    const pairs = heads.flatMap((head) => {
      const beam = cells.find(({ x, isEnd }) => isEnd && Math.abs(x - head.x) < 0.1);
      const strip = cells.find(({ x, isEnd }) => isEnd && Math.abs(x - head.x + 11.5) < 0.1);
      return beam === undefined || strip === undefined
        ? []
        : [{ row: figureIn(head.text) / 1000, beam, strip }];
    });
    const rows = pairs.map(({ row }) => row);
    const worked = workedLine(book, rows, widths, pressed);
    let most = 0;
    pairs.forEach(({ row, beam, strip }, k) => {
      compare(book, `${name!.text} at ${row}`, strip, worked.strips[k]!.force);
      compare(book, `${name!.text} at ${row}, beam`, beam, worked.beam.reactions[k]!);
      most = Math.max(most, worked.strips[k]!.force, worked.beam.reactions[k]!);
    });
    found.set(name!.text, most);
    const left = cells.find(({ text }) => /^\d+ → \d+: /.test(text));
    if (left !== undefined) checkLeftOut(left, rows, widths, { pressed, book });
  }
  if (found.size === 0) book.faults.push("no strips");
  return found;
}

function checkLeftOut(
  cell: Cell,
  rows: readonly number[],
  widths: readonly Width[],
  { pressed, book }: { readonly pressed: Pressed; readonly book: Book },
): void {
  const cases = [0, 1]
    .filter((k) => k < rows.length && rows.length > 1)
    .map((k) => {
      const others = rows.filter((_, index) => index !== k);
      const { strips, beam } = workedLine(book, others, widths, pressed);
      return Math.max(...strips.map(({ force }, j) => Math.max(force, beam.reactions[j]!)));
    });
  compare(book, `left out ${cell.text}`, cell, Math.max(...cases), cell.text.split(": ")[1]);
}

function checkRegister(
  lines: readonly ReadLine[],
  strips: ReadonlyMap<string, number>,
  { tieLimit }: Told,
  book: Book,
): void {
  for (const { cells } of lines) {
    const names = cells.find(({ text }) => /^S\d+( S\d+)*$/.test(text));
    if (names === undefined) continue;
    const [force, share] = cells.slice(-2);
    const most = Math.max(...names.text.split(" ").map((name) => strips.get(name) ?? Number.NaN));
    compare(book, `line ${cells[0]!.text}`, force!, most);
    compare(book, `line ${cells[0]!.text}, %`, share!, (100 * most) / tieLimit);
  }
}

/** "sill 0.9; head 2.1; t 0.15": a figure of a row, else of the one that is written out. */
function toldIn(row: string, written: string, name: string): number {
  const word = new RegExp(`(?:^|[; ])${name}(?: =|:)? ([\\d.]+)`);
  return Number(word.exec(row)?.[1] ?? word.exec(written)?.[1] ?? Number.NaN);
}

function checkThrusts(
  sections: ReadonlyMap<string, readonly ReadLine[]>,
  pressed: Pressed,
  book: Book,
): void {
  const { pressure, knee } = pressed;
  const kinds: readonly (readonly [string, (of: (name: string) => number) => number])[] = [
    ["Thrust on jambs", (of) => (of("t") + of("c")) * cutIntegral(pressure, of("sill"), of("head"), [knee])],
    ["Uplift of sills", (of) => pressure(of("sill")) * of("t") * of("W")],
    ["Uplift of boxes", (of) => (pressure(of("sill")) - pressure(of("head"))) * of("t") * of("W")],
    ["Uplift under the panels", (of) => pressure(0) * of("d")],
  ];
  for (const [title, force] of kinds) {
    const lines = sections.get(title) ?? [];
    const written = wordsOf(lines);
    for (const { row, value } of rowsWith(lines, "kN")) {
      compare(
        book,
        title,
        value,
        force((name) => toldIn(row, written, name)),
      );
    }
    const verdict = lines
      .flatMap(({ cells }) => cells)
      .find(({ text }) => /^[\d.]+ kN(?:\/m)?, not checked$/.test(text));
    if (verdict !== undefined)
      compare(
        book,
        title,
        verdict,
        force((name) => toldIn("", written, name)),
      );
  }
}

/** Rows of a table of checks, the lines under a row put to it. */
function rowsWith(lines: readonly ReadLine[], unit: string) {
  const found: { row: string; value: Cell; more: readonly Cell[] }[] = [];
  let isOpen = false;
  for (const { cells, isLarge } of lines) {
    if (isLarge) continue;
    const value = cells.find(({ text, isEnd }) => isEnd && new RegExp(`^[\\d.]+ ${unit}$`).test(text));
    if (value !== undefined) {
      found.push({ row: cells[0]!.text, value, more: cells.slice(cells.indexOf(value) + 1) });
      isOpen = true;
    } else if (isOpen && cells.length === 1 && !cells[0]!.isEnd)
      found[found.length - 1]!.row += ` ${cells[0]!.text}`;
    else isOpen = false;
  }
  return found;
}

/** EN 12812 and class B of EN 1065, permissible. */
function checkProps(lines: readonly ReadLine[], told: Told, book: Book): void {
  const written = wordsOf(lines);
  const load = slabLoad(told);
  for (const { row, value, more } of rowsWith(lines, "kN")) {
    const force = load * toldIn(row, written, "A");
    const [longest, length] = [toldIn(row, written, "l_max"), toldIn(row, written, "l")];
    const [most, own] = [longest, length].map((each) => (Number.isNaN(each) ? 1 : each));
    const limit = Math.min((68 * most!) / own! ** 2, 51) / 1.65;
    compare(book, row, value, force);
    compare(book, `${row} limit`, more[0]!, limit);
    compare(book, `${row} %`, more[1]!, (100 * force) / limit);
  }
}

/** What stands there without a limit: loads of braces and slab, growth of joints, days by IS 456. */
function checkSite(sections: ReadonlyMap<string, readonly ReadLine[]>, told: Told, book: Book): void {
  const kinds: readonly (readonly [string, (written: string) => number])[] = [
    ["Horizontal load of the slab", (written) => 0.025 * slabLoad(told) * toldIn("", written, "A")],
    ["Load of braces", (written) => 1.5 * toldIn("", written, "s")],
    ["Growth of joints", (written) => 0.4 * Number(/has (\d+) joints/.exec(written)?.[1])],
    ["Days that props stay", (written) => (toldIn("", written, "longest span") <= 4.5 ? 7 : 14)],
  ];
  for (const [title, value] of kinds) {
    const lines = sections.get(title) ?? [];
    const verdict = lines
      .flatMap(({ cells }) => cells)
      .find(({ text }) => /^[\d.]+ (?:kN|mm|d), not checked$/.test(text));
    if (verdict === undefined) book.faults.push(`${title} is not printed`);
    else compare(book, title, verdict, value(wordsOf(lines)));
  }
}

/** EN 12812, kPa on the form. */
function slabLoad({ slab }: Told): number {
  const weight = 25 * slab;
  return weight + 0.5 + 0.75 + Math.min(Math.max(0.1 * weight, 0.75), 1.75);
}

function checkGlance(lines: readonly ReadLine[], book: Book): void {
  for (const { cells } of lines) {
    const share = cells.at(-1);
    const [value, limit] = cells.slice(-3);
    if (share === undefined || !/^\d+\.\d$/.test(share.text) || cells.length < 5) continue;
    compare(book, cells[0]!.text, share, (100 * figureIn(value!.text)) / figureIn(limit!.text));
  }
}
