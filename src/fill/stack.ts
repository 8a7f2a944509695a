// How panels, connector and cap stand on each other, floor to slab: one stack for the storey, the same joint
// levels on both faces.
//
//   room face          outside face
//                      ┌─────────┐ clear height + slab
//   ┌─────────┐ slab   │   cap   │ height = connector + slab
//   │connector│        │         │
//   ├─────────┤ ─ ─ ─  ├─────────┤ top
//   │ closure │        │ closure │ at most one
//   ├─────────┤ ─ ─ ─  ├─────────┤
//   │  panel  │        │  panel  │ tallest at the bottom
//   └─────────┘        └─────────┘ floor
//
// A kit without connectors or caps still fills its panels; what is missing is told, not guessed.

import type { Mm } from "../units.ts";
import type { ClosureRange } from "./coverTable.ts";
import { bestRows, highestRows, isBetter, type Rows, rowTables } from "./stackRows.ts";

/** One row of panels, or the horizontal closure above them, as high all along the wall. */
export interface StackRow {
  readonly z: Mm;
  readonly height: Mm;
  readonly kind: "panel" | "closure";
}

/** What the storey asks for and what the kit has. Heights in any order, whole mm. */
export interface StackInput {
  readonly clearHeight: Mm;
  /** Thickness of the slab poured with the walls; 0 = none: no connector and no cap. */
  readonly slab: Mm;
  readonly panelHeights: readonly Mm[];
  readonly connectorHeights: readonly Mm[];
  readonly capHeights: readonly Mm[];
  readonly closure: ClosureRange;
  /**
   * For each width of panel the heights it is on offer at: rows that share no width could not be filled and
   * are not taken. Not given: every width at every height.
   */
  readonly heightsByWidth?: readonly (readonly Mm[])[];
}

/** What the kit lacks to close the stack above its rows. */
export type MissingFamily = "connector" | "cap" | "both" | null;

/**
 * The rows from the floor up and what stands on them. "no-stack": no rows end where a connector could begin;
 * these reach as high below it as panels do, and the rest cannot be built.
 */
export interface Stack {
  readonly status: "stacked" | "no-stack";
  readonly rows: readonly StackRow[];
  /** Where the rows end and the connector or the cap begins. */
  readonly top: Mm;
  /** Height of the connector; null where none is needed or the kit has none of that height. */
  readonly connector: Mm | null;
  /** Height of the cap; null where none is needed or the kit has none of that height. */
  readonly cap: Mm | null;
  readonly missing: MissingFamily;
}

/**
 * The stack of a storey: least closures, then panels, then the tallest lowest panel, the tallest next one,
 * and so on, then the narrowest closure. Before all that, a connector that has its matching cap is taken
 * where the kit has one.
 *
 * Without connectors or caps the panels end where the known heights of the other family say, else at the
 * clear height exactly. With neither family, and the clear height out of reach, they end as high below it as
 * panels reach.
 */
export function chooseStack(input: StackInput): Stack {
  return stackOver(input, [], true);
}

/**
 * The stack of a room whose soffit lies `drop` lower. It keeps the rows of the storey's stack as far as it
 * reaches: the most panel rows above which a stack of its own ends at the lower connector. It needs no cap:
 * the facade keeps its own.
 *
 * @param drop - whole mm
 * @param common - the rows of the storey's stack, from {@link chooseStack}
 */
export function droppedStack(input: StackInput, drop: Mm, common: readonly StackRow[]): Stack {
  const dropped = { ...input, clearHeight: input.clearHeight - drop };
  const kept = common.filter(({ kind }) => kind === "panel").map(({ height }) => height);
  for (let count = kept.length; count > 0; count--) {
    const stack = stackOver(dropped, kept.slice(0, count), false);
    if (stack.status === "stacked" && stack.rows.length >= count) return stack;
  }
  return stackOver(dropped, [], false);
}

/** A height at which rows may end, and what stands on it. */
type Ending = Omit<Stack, "status" | "rows">;

/** The best stack whose lowest rows are `base`. */
function stackOver(input: StackInput, base: readonly Mm[], needsCap: boolean): Stack {
  const { panelHeights, closure, heightsByWidth } = input;
  const tables = rowTables(panelHeights, heightsByWidth, base);
  const baseHeight = base.reduce((sum, height) => sum + height, 0);
  const groups = needsCap ? endingsWithCap(input) : endingsWithoutCap(input);
  for (const endings of groups) {
    let best: { readonly rows: Rows; readonly ending: Ending } | null = null;
    for (const ending of endings) {
      const above = bestRows(ending.top - baseHeight, tables, closure);
      const rows = above === null ? null : { ...above, panels: [...base, ...above.panels] };
      if (rows === null || rows.panels.length === 0) continue;
      if (best === null || isBetter(rows, best.rows)) best = { rows, ending };
    }
    if (best !== null) return { status: "stacked", rows: standOn(best.rows), ...best.ending };
  }
  return bestEffort(input, groups, needsCap);
}

/** Panels as high as they go, where no stack ends as it should. */
function bestEffort(input: StackInput, groups: readonly (readonly Ending[])[], needsCap: boolean): Stack {
  const { clearHeight, slab, connectorHeights, capHeights, panelHeights, heightsByWidth } = input;
  const known = groups.flat().filter(({ top }) => top < clearHeight);
  const limit = known.reduce((highest, { top }) => Math.max(highest, top), 0) || clearHeight;
  const rows = standOn(highestRows(limit, rowTables(panelHeights, heightsByWidth, [])));
  const top = rows.reduce((sum, { height }) => sum + height, 0);
  const hasNeither = slab > 0 && connectorHeights.length === 0 && capHeights.length === 0;
  const lacksConnector = slab > 0 && connectorHeights.length === 0;
  const lacksCap = slab > 0 && needsCap && capHeights.length === 0;
  return {
    status: hasNeither && rows.length > 0 ? "stacked" : "no-stack",
    rows,
    top,
    connector: null,
    cap: null,
    missing: lacksConnector && lacksCap ? "both" : lacksConnector ? "connector" : lacksCap ? "cap" : null,
  };
}

/** Endings in groups: a group is looked at only where no stack ends at those before it. */
function endingsWithCap(input: StackInput): readonly (readonly Ending[])[] {
  const { clearHeight, slab, connectorHeights, capHeights } = input;
  if (slab === 0) return [[{ top: clearHeight, connector: null, cap: null, missing: null }]];
  const caps = new Set(capHeights);
  const connectors = new Set(connectorHeights);
  const matched: Ending[] = [];
  const withoutCap: Ending[] = [];
  for (const connector of connectors) {
    const top = clearHeight - connector;
    const cap = connector + slab;
    if (caps.has(cap)) matched.push({ top, connector, cap, missing: null });
    else withoutCap.push({ top, connector, cap: null, missing: "cap" });
  }
  const withoutConnector = [...caps]
    .filter((cap) => cap > slab && !connectors.has(cap - slab))
    .map((cap): Ending => ({ top: clearHeight + slab - cap, connector: null, cap, missing: "connector" }));
  const groups = [matched, withoutCap, withoutConnector];
  // With both families in the kit, panels up to the soffit would only hide that no stack fits.
  if (connectors.size > 0 && caps.size > 0) return groups;
  return [...groups, [{ top: clearHeight, connector: null, cap: null, missing: "both" }]];
}

/** The same for a room where no cap is wanted. A cap still tells where a connector would begin. */
function endingsWithoutCap(input: StackInput): readonly (readonly Ending[])[] {
  const { clearHeight, slab, connectorHeights, capHeights } = input;
  const ends = (height: Mm, connector: Mm | null): Ending => ({
    top: clearHeight - height,
    connector,
    cap: null,
    missing: connector === null && slab > 0 ? "connector" : null,
  });
  if (slab === 0) return [[ends(0, null)]];
  if (connectorHeights.length > 0) return [connectorHeights.map((height) => ends(height, height))];
  const implied = capHeights.filter((cap) => cap > slab).map((cap) => ends(cap - slab, null));
  return [implied, [ends(0, null)]];
}

function standOn({ panels, closure }: Rows): readonly StackRow[] {
  let z = 0;
  const stand = (height: Mm, kind: StackRow["kind"]): StackRow => {
    const row: StackRow = { z, height, kind };
    z += height;
    return row;
  };
  const rows = panels.map((height) => stand(height, "panel"));
  return closure === null ? rows : [...rows, stand(closure, "closure")];
}
