// Edits on a document that must stay as it is: the result is a new document that shares with the old one everything
// the edits have not touched, down to single entries. Fast enough to be done anew at every movement of the hand.
//
// It rests on one habit of all edits: they replace entries and never write into them, so a copy of the buckets of the
// units concerned is all that is needed.

import {
  BUCKETS,
  find,
  type PlanDocument,
  type PlanDraft,
  put,
  recordKey,
  type UnitDocument,
  type UnitDraft,
} from "./document.ts";
import { applyEdits, type Edit } from "./edit.ts";
import { beyondLimits } from "./editLimits.ts";
import { type EditOutcome, refused } from "./editOutcome.ts";

export interface Edited {
  /** The document after the edits; the very one that was given where they are refused or change nothing. */
  readonly document: PlanDocument;
  readonly outcome: EditOutcome;
}

/**
 * Carries out edits, each on what the one before has left; all of them or none. Refused, too, where the result could
 * not be written to a file that can be read again.
 */
export function withEdits(document: PlanDocument, edits: readonly Edit[]): Edited {
  const units: { [key: string]: UnitDraft } = { ...document.units };
  for (const edit of edits) {
    const unit = "unit" in edit ? find(document.units, edit.unit) : undefined;
    if (unit !== undefined) units[recordKey(unit.id)] = openUnit(unit);
  }
  const draft: PlanDraft = { ...document, units, pours: { ...document.pours } };
  const outcome = applyEdits(draft, edits);
  if (outcome.status === "refused") return { document, outcome };
  for (const [key, unit] of Object.entries(draft.units)) {
    const old = Object.hasOwn(document.units, key) ? document.units[key] : undefined;
    if (old !== undefined) draft.units[key] = sharedUnit(old, unit);
  }
  draft.units = sharedRecords(document.units, draft.units);
  draft.pours = sharedRecords(document.pours, draft.pours);
  if (hasSameMembers(document, draft)) return { document, outcome };
  const beyond = beyondLimits(document, draft);
  return beyond === null
    ? { document: draft, outcome }
    : { document, outcome: refused("out-of-limits", beyond.id) };
}

/**
 * Writes into `draft`, which stands as `before`, what makes it `after`: entries that are another object in the two,
 * and nothing else. For a draft that records what is written to it.
 */
export function writeDifference(draft: PlanDraft, before: PlanDocument, after: PlanDocument): void {
  const { units, pours } = after;
  writeMembers(draft, before, after, ["units", "pours"]);
  writeRecords(draft.pours, before.pours, pours);
  for (const [key, unit] of Object.entries(units)) {
    const old = Object.hasOwn(before.units, key) ? before.units[key] : undefined;
    const target = draft.units[key];
    if (old === unit) continue;
    if (old === undefined || target === undefined) put(draft.units, openUnit(unit));
    else writeUnit(target, old, unit);
  }
  for (const key of Object.keys(before.units)) if (!Object.hasOwn(units, key)) delete draft.units[key];
}

function openUnit(unit: UnitDocument): UnitDraft {
  return {
    ...unit,
    walls: { ...unit.walls },
    openings: { ...unit.openings },
    rooms: { ...unit.rooms },
    slabs: { ...unit.slabs },
    slabOpenings: { ...unit.slabOpenings },
    services: { ...unit.services },
    controlLines: { ...unit.controlLines },
    pinned: { ...unit.pinned },
  };
}

function sharedUnit(old: UnitDocument, unit: UnitDraft): UnitDraft {
  if (old === unit) return unit;
  const shared = { ...unit };
  for (const bucket of BUCKETS) {
    Object.assign(shared, { [bucket]: sharedRecords<unknown>(old[bucket], unit[bucket]) });
  }
  return hasSameMembers(old, shared) ? old : shared;
}

function writeUnit(target: UnitDraft, before: UnitDocument, after: UnitDocument): void {
  for (const bucket of BUCKETS) {
    if (before[bucket] !== after[bucket])
      writeRecords<unknown>(target[bucket], before[bucket], after[bucket]);
  }
  writeMembers(target, before, after, BUCKETS);
}

// Members of a record by name, but for the records within it.
function writeMembers(target: object, before: object, after: object, except: readonly string[]): void {
  for (const [name, value] of Object.entries(after)) {
    if (except.includes(name) || Object.is(value, memberOf(before, name))) continue;
    Object.assign(target, { [name]: value });
  }
  for (const name of Object.keys(before))
    if (!Object.hasOwn(after, name)) Reflect.deleteProperty(target, name);
}

function writeRecords<T>(
  target: { [key: string]: T },
  before: { readonly [key: string]: T },
  after: { readonly [key: string]: T },
): void {
  for (const [key, entry] of Object.entries(after)) {
    if (!Object.hasOwn(before, key) || before[key] !== entry) target[key] = entry;
  }
  for (const key of Object.keys(before)) if (!Object.hasOwn(after, key)) delete target[key];
}

// The old records where the new ones hold the same entries.
function sharedRecords<T>(
  old: { readonly [key: string]: T },
  records: { [key: string]: T },
): { [key: string]: T } {
  return hasSameMembers(old, records) ? old : records;
}

function hasSameMembers(a: object, b: object): boolean {
  const names = Object.keys(a);
  return (
    names.length === Object.keys(b).length &&
    names.every((name) => Object.hasOwn(b, name) && Object.is(memberOf(a, name), memberOf(b, name)))
  );
}

function memberOf(object: object, name: string): unknown {
  return Object.hasOwn(object, name) ? Reflect.get(object, name) : undefined;
}
