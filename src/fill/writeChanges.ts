// What does the comparison with filling wall by wall look like in the file of a fill?

import type {
  BeforeAfter,
  ChangedSequence,
  CodeChange,
  IntervalChange,
  SetChanges,
  SetParts,
} from "./setChanges.ts";
import { amount, count, length } from "./writeFigures.ts";

export function changesEntry(changes: SetChanges) {
  return {
    before: partsEntry(changes.before),
    codes: changes.codes.map(codeEntry),
    intervals: changes.intervals.map(intervalEntry),
    causes: changes.causes.map((cause) => ({
      message: cause.message,
      intervals: count(cause.intervals),
      fillers: count(cause.fillers),
      closures: count(cause.closures),
    })),
  };
}

export function partsEntry(parts: SetParts) {
  return {
    set: amount(parts.set),
    handling: amount(parts.handling),
    closures: amount(parts.closures),
    distinctSizes: amount(parts.distinctSizes),
    fixed: amount(parts.fixed),
  };
}

function codeEntry(change: CodeChange) {
  return {
    code: change.code,
    family: change.family,
    placed: pairEntry(change.placed, count),
    needed: pairEntry(change.needed, count),
    cost: change.cost === null ? null : pairEntry(change.cost, amount),
    pours: change.pours.map((each) => ({ pour: each.pour, ...pairEntry(each, count) })),
  };
}

function intervalEntry(change: IntervalChange) {
  return {
    unit: change.unit,
    wall: change.wall,
    faces: change.faces,
    from: length(change.from),
    to: length(change.to),
    before: sequenceEntry(change.before),
    after: sequenceEntry(change.after),
    alone: change.alone === null ? null : amount(change.alone),
    undone: change.undone === null ? null : amount(change.undone),
    because: change.because,
  };
}

function sequenceEntry({ widths, closure }: ChangedSequence) {
  return { widths: widths.map(length), closure: closure === null ? null : count(closure) };
}

function pairEntry({ before, after }: BeforeAfter, figure: (value: number) => number) {
  return { before: figure(before), after: figure(after) };
}
