// What a person reads on the screen about the set: what it costs, how sure that is the least, what it saves.

import type { Shortage } from "../fill/deliver/shortage.ts";
import type { FillDocument, MissingPiece, PanelSet } from "../fill/result.ts";
import { percentUp, roundTo } from "../units.ts";

const SHOWN_MISSING = 12;

/** Three to six lines; empty for a fill without a set. */
export function setSummary({ set }: Pick<FillDocument, "set">, currency: string | null): string {
  if (set === undefined) return "";
  const unit = unitOf(set.countedBy, currency);
  const { parts } = set;
  const amount = (value: number) => `${roundTo(value, 2).toFixed(2)}${unit}`;
  const fillers = parts.fillers === undefined ? "" : `, fillers ${amount(parts.fillers)}`;
  const lines = [
    ...unpricedText(set, currency),
    `Set for every pour: ${amount(set.cost)} (panels ${amount(parts.set)}, handling ${amount(parts.handling)}, ` +
      `closures ${amount(parts.closures)}, sizes ${amount(parts.distinctSizes)}${fillers}).`,
    ...widthsText(set),
    claimOf(set, amount),
  ];
  if (set.status !== "infeasible" || set.missing === undefined) lines.push(savedText(set, amount));
  if (set.missing !== undefined) lines.push(missingText(set));
  return `${lines.join("\n")}\n`;
}

// Amounts without a unit, and weights that count as another one, are not left to be guessed.
function unpricedText({ countedBy }: PanelSet, currency: string | null): readonly string[] {
  if (countedBy !== "price")
    return [
      `The kit does not price every panel: ${countedBy} is counted instead, and the weights of \`objective\` as${unitOf(countedBy, currency)}.`,
    ];
  return currency === null
    ? ["Amounts are in the money of the kit's prices; the kit names no currency."]
    : [];
}

function widthsText({ lacks, chosen, status }: PanelSet): readonly string[] {
  if (lacks === undefined) return [];
  const none =
    status === "infeasible"
      ? "No choice does with as few widths as the limits say"
      : "None was found with as few widths as the limits say";
  return [`${none}; this one takes ${chosen.widths} and keeps to the other limits.`];
}

function savedText({ wallByWall, cost }: PanelSet, amount: (value: number) => string): string {
  if (wallByWall === null)
    return "Filling every wall by itself takes more panels than there are, or more widths than the limits allow.";
  const saved = wallByWall - cost;
  return `Filling every wall by itself costs ${amount(wallByWall)}: saved ${amount(saved)}, ${percent(saved, wallByWall)}.`;
}

/** What stands behind an amount: the currency, or the measure that is counted instead. */
export function unitOf(countedBy: PanelSet["countedBy"], currency: string | null): string {
  if (countedBy === "mass") return " kg";
  if (countedBy === "area") return " m²";
  return currency === null ? "" : ` ${currency}`;
}

function claimOf(set: PanelSet, amount: (value: number) => string): string {
  const gap = set.cost - set.lowerBound;
  if (set.missing !== undefined && set.status !== "infeasible")
    return `${set.status === "stopped" ? "Stopped" : "The work allowed ran out"} before a plan was found that does with the panels there are, or none was proven to.`;
  const within = `within ${percentUp(gap, set.cost)} % (at most ${amount(gap)}) of the least possible`;
  switch (set.status) {
    case "optimal":
      return set.proof === "certificate"
        ? "Proven optimal: the bound checked in whole numbers meets it."
        : "Proven optimal: every choice that could be cheaper was gone through in whole numbers.";
    case "gap":
      return set.proof === "search"
        ? `Proven in whole numbers: ${within}, ${amount(set.lowerBound)}. The solver's own search came to its end and found nothing cheaper.`
        : `The work allowed ran out: ${within}, ${amount(set.lowerBound)}.`;
    case "stopped":
      return `Stopped: ${within}, ${amount(set.lowerBound)}.`;
    case "infeasible":
      if (set.missing === undefined)
        return `Nothing is claimed of its cost but that the least possible is ${amount(set.lowerBound)} or more.`;
      return `No plan exists with the panels there are${set.proof === "search" ? ", by the solver's own search" : ""}. This one buys what it lacks.`;
    default:
      return set.status satisfies never;
  }
}

function missingText({ missing = [] }: PanelSet): string {
  return `Missing: ${shortList(missing)}.`;
}

/** The first few with where they are lacking: "3 W600x2250 (pours p3, p4; unit T) and 2 more sizes". */
export function shortList(short: readonly MissingPiece[]): string {
  const shown = short
    .slice(0, SHOWN_MISSING)
    .map((each) => `${each.quantity} ${each.code}${placeText(each)}`);
  const more = short.length - shown.length;
  return `${shown.join(", ")}${more > 0 ? ` and ${more} more sizes` : ""}`;
}

function placeText({ pours, units }: MissingPiece): string {
  const parts = [...named(pours, "pour"), ...named(units, "unit")];
  return parts.length === 0 ? "" : ` (${parts.join("; ")})`;
}

const SHOWN_PLACES = 6;

function named(ids: readonly string[], one: string): readonly string[] {
  if (ids.length === 0) return [];
  const more = ids.length > SHOWN_PLACES ? ", …" : "";
  return [`${one}${ids.length === 1 ? "" : "s"} ${ids.slice(0, SHOWN_PLACES).join(", ")}${more}`];
}

/**
 * What else is short of what is owned, where nothing may be bought: the choice of covers holds wall panels alone to the
 * stock. Empty where nothing is.
 */
export function otherShortText({ lines }: Pick<Shortage, "lines">, buy: boolean): string {
  if (buy) return "";
  const others = lines.filter(({ short, family }) => short > 0 && family !== "wall-panel");
  if (others.length === 0) return "";
  const pieces = others.map(({ code, short, pours, units }) => ({ code, quantity: short, pours, units }));
  return `Short beside wall panels: ${shortList(pieces)}. The choice of covers is not held to these.\n`;
}

function percent(part: number, whole: number): string {
  return `${whole === 0 ? 0 : roundTo((100 * part) / whole, 3)} %`;
}
