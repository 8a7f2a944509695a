// What the store hands out beside the panels: how much a pour needs, how much is added for loss, what comes back.

import { isConsumed } from "../../fill/dayNeeds.ts";
import { SPARE_PERCENT, SPARES, sparesOf } from "../../fill/deliver/spares.ts";
import type { Family } from "../../kit/kit.ts";
import type { SquareMetre } from "../../units.ts";
import type { ListItem } from "./listItems.ts";

/** In the order of the schedule. */
const ACCESSORIES: readonly Family[] = [
  "pin",
  "wedge",
  "tie",
  "tie-sleeve",
  "wall-bracket",
  "alignment-ledger",
  "brace",
  "opening-brace",
  "facade-aligner",
  "prop",
  "shoring-strip",
];

const PANELS: readonly Family[] = ["wall-panel", "slab-panel"];

export interface AccessoryRow {
  readonly item: ListItem;
  readonly needed: number;
  /** null = none is added. */
  readonly sparePercent: number | null;
  readonly spare: number;
  /** Needed and spare together; of panels, which have gone out with their bundles, the spare alone. */
  readonly issue: number;
  /** Stays in the concrete: nothing comes back. */
  readonly isConsumed: boolean;
}

export interface AccessorySchedule {
  readonly rows: readonly AccessoryRow[];
  readonly sparePanels: readonly AccessoryRow[];
}

export function accessorySchedule(items: readonly ListItem[]): AccessorySchedule {
  const ofFamily = (family: Family) => items.filter((item) => item.family === family);
  return {
    rows: ACCESSORIES.flatMap(ofFamily).map((item) => rowOf(item, "with-need")),
    sparePanels: PANELS.flatMap(ofFamily)
      .filter(({ quantity }) => quantity >= SPARES.leastPanels)
      .map((item) => rowOf(item, "spare-alone")),
  };
}

function rowOf(item: ListItem, issued: "with-need" | "spare-alone"): AccessoryRow {
  const sparePercent = SPARE_PERCENT[item.family] ?? null;
  const spare = sparesOf(item.family, item.quantity);
  return {
    item,
    needed: item.quantity,
    sparePercent,
    spare,
    issue: spare + (issued === "with-need" ? item.quantity : 0),
    isConsumed: isConsumed(item.family),
  };
}

/** Forms that one litre of release agent covers, wiped thin. Common practice, no source. */
export const AGENT_AREA: SquareMetre = 35;

export interface Consumables {
  /** All concrete the forms touch, m². */
  readonly area: SquareMetre;
  /** Release agent for one pour, whole litres. */
  readonly agent: number;
  /** Sleeves for one pour, spares included. */
  readonly sleeves: number;
}

export function consumablesOf(items: readonly ListItem[], schedule: AccessorySchedule): Consumables {
  const area = items.reduce((sum, item) => sum + item.area, 0);
  const sleeves = schedule.rows.filter(({ isConsumed }) => isConsumed);
  return {
    area,
    agent: Math.ceil(area / AGENT_AREA),
    sleeves: sleeves.reduce((sum, { issue }) => sum + issue, 0),
  };
}
