// The colleague's second half: lifting by hand, maturity, strength by the log, striking rules, shoring.

import type { Cell, ReadLine } from "../sheetReading.ts";
import { type Book, compare, figureIn, type Told } from "./book.ts";
import { shoringBook } from "./statics.ts";

/** Recommended weights of the three lifts, from what the sheet says of them: cm and degrees. */
const lift = (reach: number, height: number, travel: number, twist: number) =>
  23 *
  (25 / reach) *
  (1 - 0.003 * Math.abs(height - 75)) *
  (0.82 + 4.5 / travel) *
  (1 - 0.0032 * twist) *
  0.85 *
  0.95;
const LIMITS = [lift(35, 40, 50, 0), lift(35, 75, 25, 30), lift(30, 175, 95, 0)];

export function checkLifts(lines: readonly ReadLine[], { personLimit }: Told, book: Book): void {
  let heads: readonly Cell[] = [];
  for (const { cells } of lines) {
    if (cells.some(({ text }) => text === "LI stack")) {
      heads = ["LI stack", "wall", "overhead"].map((name) => cells.find(({ text }) => text === name)!);
      continue;
    }
    if (cells.length < 5 || heads.length === 0) continue;
    const [, , mass, people, share] = cells;
    const two = figureIn(mass!.text) > personLimit;
    const count = two ? 2 : 1;
    compare(book, `${cells[0]!.text}, people`, people!, count);
    const limit = two ? (4 * personLimit) / 3 : personLimit;
    compare(book, `${cells[0]!.text}, %`, share!, (100 * figureIn(mass!.text)) / limit);
    heads.forEach((head, k) => {
      const index = cells.find(({ x }) => Math.abs(x - head.x) < 0.1);
      if (index !== undefined)
        compare(book, `${cells[0]!.text}, LI`, index, figureIn(mass!.text) / count / LIMITS[k]!);
    });
  }
}

/** The log's stretches up to striking: hours and mean temperature. */
function stretches({ log, strikeAt }: Told) {
  const at = (hour: number) => {
    const k = Math.max(
      1,
      log.findIndex(([time]) => time >= hour),
    );
    const [[t0, a], [t1, b]] = [log[k - 1]!, log[k]!];
    return a + ((b - a) * (hour - t0)) / (t1 - t0);
  };
  const times = [...log.map(([time]) => time).filter((time) => time < strikeAt), strikeAt];
  return times.slice(1).map((end, k) => {
    const start = times[k]!;
    return { hours: end - start, warmth: (at(start) + at(end)) / 2 };
  });
}

function aged({ hours, warmth }: { readonly hours: number; readonly warmth: number }) {
  const energy = 33.5 + (warmth < 20 ? 1.47 * (20 - warmth) : 0);
  const factor = Math.exp(-(energy / 0.008314) * (1 / (273 + warmth) - 1 / 293));
  return { energy, factor, age: factor * hours, maturity: Math.max(warmth, 0) * hours };
}

export function checkMaturity(lines: readonly ReadLine[], told: Told, book: Book): void {
  const parts = stretches(told).map((part) => ({ ...part, ...aged(part) }));
  const rows = lines.filter(({ cells }) => cells.length === 6 && /^[\d.]+$/.test(cells[0]!.text));
  if (rows.length !== parts.length)
    book.faults.push(`${rows.length} stretches of the log, not ${parts.length}`);
  rows.forEach(({ cells }, k) => {
    const part = parts[k];
    if (part === undefined) return;
    [part.hours, part.warmth, part.maturity, part.energy, part.factor, part.age].forEach((value, column) => {
      compare(book, `maturity ${k}`, cells[column]!, value);
    });
  });
  const sum = lines.find(({ cells }) => cells.some(({ text }) => text === "∑"));
  const total = (of: (part: (typeof parts)[number]) => number) =>
    parts.reduce((all, part) => all + of(part), 0);
  if (sum === undefined) book.faults.push("no sum of the maturity");
  else {
    compare(
      book,
      "∑ M",
      sum.cells[2]!,
      total(({ maturity }) => maturity),
    );
    compare(
      book,
      "∑ t",
      sum.cells[3]!,
      total(({ age }) => age),
    );
  }
}

/** Age at 20 °C, h, and maturity that the log has come to at an hour. */
function agedAt(told: Told, strikeAt: number) {
  const parts = strikeAt === 0 ? [] : stretches({ ...told, strikeAt }).map(aged);
  return {
    age: parts.reduce((all, part) => all + part.age, 0),
    maturity: parts.reduce((all, part) => all + part.maturity, 0),
  };
}

/** Eurocode 2, cement of class R, less 500 psi; from three days at 20 °C. */
function strengthAt(told: Told, age: number): number | null {
  if (age < 72) return null;
  return (told.strength + 8) * Math.exp(0.2 * (1 - Math.sqrt((28 * 24) / age))) - 3.45;
}

export function checkReadings(lines: readonly ReadLine[], told: Told, book: Book): void {
  const rows = lines.filter(({ cells }) => cells.length === 5 && /^[\d.]+$/.test(cells[0]!.text));
  if (rows.length !== told.log.length) book.faults.push(`${rows.length} readings, not ${told.log.length}`);
  rows.forEach(({ cells }, k) => {
    const [hour, temperature] = told.log[k] ?? [Number.NaN, Number.NaN];
    const { age, maturity } = agedAt(told, hour);
    const strength = strengthAt(told, age);
    [hour, temperature, maturity, age].forEach((value, column) => {
      compare(book, `reading ${k}`, cells[column]!, value);
    });
    if (strength !== null) compare(book, `reading ${k}`, cells[4]!, strength);
    else if (cells[4]!.text !== "–") book.faults.push(`reading ${k} has a strength`);
  });
}

/** The hour at which the slab is as strong as CIRIA 136 and 10 MPa ask; by halving, where the curve holds. */
export function checkPrediction(lines: readonly ReadLine[], told: Told, book: Book): void {
  const ratio = (25 * told.slab + 0.75) / told.service;
  const needed = Math.max(told.strength * ratio ** (1 / 0.6), 10);
  let [low, high] = [0, told.log.at(-1)![0]];
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2;
    const strength = strengthAt(told, agedAt(told, middle).age);
    if (strength === null || strength < needed) low = middle;
    else high = middle;
  }
  const wanted: Readonly<Record<string, number>> = {
    "Strength needed for striking": needed,
    "Strength at striking: measured, or estimated less its margin":
      strengthAt(told, agedAt(told, told.strikeAt).age) ?? Number.NaN,
    "Expected strong enough, by the log": high,
    "From then to the hour of striking": told.strikeAt - high,
  };
  for (const [name, value] of Object.entries(wanted)) {
    const line = lines.find(({ cells }) => cells[0]?.text === name);
    if (line === undefined) book.faults.push(`${name} is not printed`);
    else compare(book, name, line.cells.at(-1)!, value);
  }
}

/** Plumb, thickness and flatness by their published rows; straight from row to row. */
export function checkTolerances(lines: readonly ReadLine[], { height, slab }: Told, book: Book): void {
  const clear = (height - slab) * 1000;
  const between = (size: number, least: number) =>
    size <= 150 ? least : least + ((15 - least) * (size - 150)) / 250;
  let what = "";
  let count = 0;
  for (const { cells } of lines) {
    const rule = cells.findIndex(({ text }) => /^(?:ACI|EN|Eurocode|DIN|kit)/.test(text));
    const limit = cells.at(-1)!;
    if (rule < 0 || !/^[±−]/.test(limit.text)) continue;
    if (rule > 0) what = cells[0]!.text;
    const size = figureIn(/of (\d+) mm/.exec(what)?.[1] ?? "");
    const key = `${what.split(" of ")[0]}, ${cells[rule]!.text}`;
    const wanted: Readonly<Record<string, number>> = {
      "plumb, ACI 117": Math.min(0.003 * clear, 25),
      "plumb, EN 13670": Math.max(clear / 400, 15),
      "thickness, ACI 117": 10,
      "thickness, EN 13670": between(size, 10),
      "thickness, Eurocode 2": between(size, 5),
      "flatness, DIN 18202, line 5": 12,
      "flatness, DIN 18202, line 6, finished": 7,
      "width and height, ACI 117": 25,
      "joints that face one another at a tie, kit": 2,
    };
    compare(book, key, limit, wanted[key] ?? Number.NaN, limit.text.replace(/^[±−].*?([\d.]+)$/, "$1"));
    count++;
  }
  if (count < 8) book.faults.push(`${count} tolerances only`);
}

/** Hours and strengths by rule; strengths cylinders or cubes as told. */
export function checkStriking(lines: readonly ReadLine[], told: Told, book: Book): void {
  const parts = stretches(told);
  const hours = parts.reduce((all, part) => all + part.hours, 0);
  const warmth = parts.reduce((all, part) => all + part.hours * part.warmth, 0) / hours;
  const load = 25 * told.slab + 0.75;
  const pitch = told.propPitch / 1000;
  const tension = (1.5 * 6 * ((load * pitch ** 2) / 10)) / told.slab ** 2 / 1000;
  const panels = (span: number): Record<string, number> => ({
    "BS 8110": (100 / (warmth + 10)) * 24,
    "ACI 347": Math.max((span < 3000 ? 4 : span <= 6000 ? 7 : 10) / 2, 3) * 24,
    "IS 456": 72,
    "CIRIA 136": told.strength * (load / told.service) ** (1 / 0.6),
    "BS 8110 6.2.6.3": 10,
    "uncracked between props": tension,
  });
  const props = (span: number): Record<string, number> => ({
    "BS 8110": (250 / (warmth + 10)) * 24,
    "ACI 347": (span < 3000 ? 4 : span <= 6000 ? 7 : 10) * 24,
    "IS 456": (span <= 4500 ? 7 : 14) * 24,
  });
  const walls: Record<string, number> = { "BS 8110": 300 / (warmth + 10), "ACI 347": 12, "IS 456": 24 };
  let heads: readonly Cell[] = [];
  for (const { cells } of lines) {
    if (cells.some(({ text }) => text === "member")) heads = cells;
    const span = figureIn(cells.find(({ isEnd, text }) => isEnd && /^\d+$/.test(text))?.text ?? "");
    const by = { walls: () => walls, props, "slab panels, props left": panels }[cells[0]?.text ?? ""];
    if (by === undefined) continue;
    for (const cell of cells.filter(({ text }) => / (?:h|MPa)(?: \(|$)/.test(text))) {
      const rule = heads.find(({ x, isEnd }) => isEnd && Math.abs(x - cell.x) < 0.1)?.text ?? "";
      compare(
        book,
        `${cells[0]!.text}, ${rule}`,
        cell,
        by(span)[rule] ?? Number.NaN,
        cell.text.split(" ")[0],
      );
    }
  }
}

/** Slab and shores of the newest levels, step by step: "3: 0.8333 | 1.167". */
export function checkShoring(lines: readonly ReadLine[], book: Book): void {
  const rows = lines.filter(({ cells }) => /^(?:pour|remove|reshore) \d+$/.test(cells[0]?.text ?? ""));
  const steps = shoringBook(rows.map(({ cells }) => cells[0]!.text));
  if (rows.length === 0) book.faults.push("no steps of shoring");
  rows.forEach(({ cells }, k) => {
    for (const cell of cells.slice(1)) {
      const [level = "", rest = ""] = cell.text.split(": ");
      const [slab = "", shore = ""] = rest.split(" | ");
      compare(book, `${cells[0]!.text}, slab ${level}`, cell, steps[k]!.slabs[Number(level) - 1]!, slab);
      compare(book, `${cells[0]!.text}, shores ${level}`, cell, steps[k]!.shores[Number(level) - 1]!, shore);
    }
  });
}
