// What a delta list says, section by section, before it is drawn: pieces grouped by the room they come from or go to.

import type {
  CarriedLine,
  DayDelta,
  DeliverPlan,
  MovedLine,
  PourDelta,
  PourPlace,
  StoreLine,
} from "../../fill/deliver/deliverPlan.ts";
import { compareItems, type DeliverItem, type PourNeed } from "../../fill/deliver/pourNeeds.ts";
import type { Language, Project } from "../../plan/project.ts";
import type { ListWords } from "../lists/listWords.ts";
import { LIST_WORDS } from "../lists/words.ts";
import { plainText } from "../plainText.ts";
import { DELTA_WORDS } from "./words.ts";

export interface DeltaRow {
  readonly item: DeliverItem;
  /** A number, or for what changes places "2 → 1". */
  readonly quantity: number | string;
}

export interface DeltaGroup {
  /** Where to and from; empty = nothing to tell. */
  readonly label: string;
  readonly rows: readonly DeltaRow[];
}

export interface DeltaSection {
  /** In the solid box before the title. */
  readonly sign: string;
  readonly title: string;
  /** Pieces of all rows; null where that says nothing. */
  readonly total: number | null;
  readonly groups: readonly DeltaGroup[];
  /** Whether somebody ticks its rows. */
  readonly isWork: boolean;
}

/** A room of the pour before, the room that takes over, and how many of its pieces go along. */
export interface RoomHandover {
  readonly label: string;
  readonly quantity: number;
}

export interface DeltaContent {
  readonly sections: readonly DeltaSection[];
  readonly handovers: readonly RoomHandover[];
  readonly figures: {
    readonly needed: number;
    readonly goAlong: number;
    readonly moved: number;
    readonly fetched: number;
    readonly returned: number;
    readonly idle: number;
  };
  /** Pours of the day before; empty on the first. */
  readonly after: readonly string[];
}

interface Told {
  readonly project: Project;
  readonly words: ListWords;
  readonly language: Language;
}

export function deltaContent(plan: DeliverPlan, delta: PourDelta, project: Project): DeltaContent {
  const { language } = project;
  const told: Told = { project, words: LIST_WORDS[language], language };
  const words = DELTA_WORDS[language];
  const { need, moves, fetched, returned, staying } = delta;
  const day = plan.days[need.day]!;
  const isFirst = need.day === 0;
  const away = moves.filter(({ kind }) => kind !== "own-room");
  const along = moves.filter(({ kind }) => kind === "own-room");
  const nameOf = (at: PourPlace) =>
    placeName(at, told, at.pour !== need && !isOnlyBefore(at.pour, plan, need));
  const section = (
    sign: string,
    title: string,
    groups: readonly DeltaGroup[],
    isWork = true,
  ): readonly DeltaSection[] =>
    groups.length === 0 ? [] : [{ sign, title, total: countOf(groups), groups, isWork }];
  const sections = [
    ...section(
      "→",
      words.move,
      grouped(inOrder(away), ({ from, to }) => `${nameOf(from)} → ${nameOf(to)}`),
    ),
    ...section(
      "−",
      words.toStore,
      grouped(inOrder(returned), ({ at }) => nameOf(at)),
    ),
    ...section(
      "+",
      words.fromStore,
      isFirst
        ? grouped(summed(fetched), () => words.allRooms)
        : grouped(inOrder(fetched), ({ at }) => nameOf(at)),
    ),
    ...swapSection(delta, told),
    ...section(
      "=",
      words.staying,
      grouped(staying, ({ freeOn }) => freeText(freeOn === null ? [] : plan.days[freeOn]!.pours, told)),
      false,
    ),
    ...section(
      "0",
      words.idleNow,
      grouped(day.idle, () => ""),
      false,
    ),
  ];
  return {
    sections,
    handovers: grouped(inOrder(along), ({ from, to }) => `${nameOf(from)} → ${nameOf(to)}`).map(
      ({ label, rows }) => ({
        label,
        quantity: countOf([{ label, rows }]),
      }),
    ),
    figures: {
      needed: need.lines.reduce((sum, { quantity }) => sum + quantity, 0),
      goAlong: sumOf(along),
      moved: sumOf(away),
      fetched: sumOf(fetched),
      returned: sumOf(returned),
      idle: sumOf(day.idle),
    },
    after: isFirst ? [] : beforeOf(plan.days[need.day - 1]!, told),
  };
}

/** Whether it needs no name: the one pour of the day before. */
function isOnlyBefore(pour: PourNeed, { days }: DeliverPlan, { day }: PourNeed): boolean {
  return pour.day === day - 1 && days[pour.day]!.pours.length === 1;
}

/** By the room they go to, then by the one they come from, in the order of rooms. */
function inOrder<Line extends MovedLine | StoreLine>(lines: readonly Line[]): readonly Line[] {
  const ends = (line: MovedLine | StoreLine) => ("at" in line ? [line.at, line.at] : [line.to, line.from]);
  return [...lines].sort((a, b) => {
    const [p, q] = [ends(a), ends(b)];
    for (const k of [0, 1] as const) {
      const order = q[k]!.pour.day - p[k]!.pour.day || p[k]!.place - q[k]!.place;
      if (order !== 0) return order;
    }
    return 0;
  });
}

const sumOf = (lines: readonly CarriedLine[]) => lines.reduce((sum, { quantity }) => sum + quantity, 0);

function countOf(groups: readonly DeltaGroup[]): number {
  return groups
    .flatMap(({ rows }) => rows)
    .reduce((sum, { quantity }) => sum + (typeof quantity === "number" ? quantity : 0), 0);
}

/** By label in the order in which labels first come; rows in the order of bills, one for each kind. */
function grouped<Line extends CarriedLine>(
  lines: readonly Line[],
  labelOf: (line: Line) => string,
): readonly DeltaGroup[] {
  const groups = new Map<string, CarriedLine[]>();
  for (const line of lines) {
    const label = labelOf(line);
    const group = groups.get(label);
    if (group === undefined) groups.set(label, [line]);
    else group.push(line);
  }
  return [...groups].map(([label, own]) => ({ label, rows: summed(own) }));
}

function summed(lines: readonly CarriedLine[]): readonly CarriedLine[] {
  const sums = new Map<string, CarriedLine>();
  for (const { item, quantity } of lines) {
    sums.set(item.key, { item, quantity: quantity + (sums.get(item.key)?.quantity ?? 0) });
  }
  return [...sums.values()].sort((a, b) => compareItems(a.item, b.item));
}

function swapSection({ swaps, need }: PourDelta, told: Told): readonly DeltaSection[] {
  const changed = swaps.filter(({ before, after }) => before[0] !== after[0] || before[1] !== after[1]);
  const groups = new Map<string, DeltaRow[]>();
  for (const { place, left, right, before, after } of changed) {
    const label = placeName({ pour: need, place }, told, false);
    const rows = groups.get(label) ?? [];
    for (const [k, code] of [left, right].entries()) {
      const item = need.lines.find((line) => line.item.code === code)?.item;
      if (item !== undefined) rows.push({ item, quantity: `${before[k]!} → ${after[k]!}` });
    }
    groups.set(label, rows);
  }
  if (groups.size === 0) return [];
  const title = DELTA_WORDS[told.language].swap;
  const all = [...groups].map(([label, rows]) => ({ label, rows }));
  return [{ sign: "↔", title, total: null, groups: all, isWork: false }];
}

function placeName({ pour, place }: PourPlace, told: Told, isNamed: boolean): string {
  const { kind, name } = pour.places[place]!;
  const { words } = told;
  const own = kind === "outside" ? words.outside : kind === "shared" ? words.shared : plainText(name);
  const shown = own || words.unnamed;
  return isNamed ? `${pourName(pour, told.project)}, ${shown}` : shown;
}

/** As people call a pour: its name, else its id; without pours its unit. */
export function pourName({ pour, unit }: PourNeed, { pours, units }: Project): string {
  const known = pours.find(({ id }) => id === pour);
  const drawn = units.find(({ id }) => id === unit);
  return (
    plainText(known?.name ?? "") ||
    plainText(known?.id ?? "") ||
    plainText(drawn?.name ?? "") ||
    plainText(unit)
  );
}

function beforeOf({ pours }: DayDelta, { project }: Told): readonly string[] {
  return pours.map(({ need }) => pourName(need, project));
}

function freeText(pours: readonly PourDelta[], { project, language }: Told): string {
  const words = DELTA_WORDS[language];
  const names = pours.map(({ need }) => pourName(need, project));
  return names.length === 0 ? words.freeAfter : words.freeFor(names.join(", "));
}
