// What a person reads on the screen after the checks: the counts, what is over, what was not checked, and the cautions.

import type { Check, CheckDocument } from "../assess/checkDocument.ts";
import { counted } from "../fill/problems.ts";
import { roundSignificant, roundTo } from "../units.ts";

/** More lines of one sort than this say no more on a screen; the result has them all. */
const MOST_LINES = 20;

/** `fillErrors`: errors of the fill on which the checks stand. */
export function checkSummary(document: CheckDocument, fillErrors: number): string {
  const { checks, cautions, assumptions, project } = document;
  const over = checks.filter(({ status }) => status === "over");
  const open = checks.filter(({ status }) => status === "not-checked");
  return [
    `${project === "" ? "Checks" : project}: ${countText(document)}`,
    loadsText(document),
    concreteText(document),
    ...predictionLines(document),
    ...mostUsed(checks),
    ...shortened(over.map((check) => `Over the stated limit: ${placeText(check)}: ${overText(check)}.`)),
    ...shortened(openLines(open)),
    ...(fillErrors > 0 ? [`The fill has ${counted(fillErrors, "error")}; "fill" lists them.`] : []),
    "The checks take for granted:",
    ...assumptions.map((sentence) => `  - ${sentence}`),
    "With every result:",
    ...cautions.map((sentence) => `  - ${sentence}`),
    "",
  ].join("\n");
}

function countText({ checks, totals }: CheckDocument): string {
  if (checks.length === 0) return "nothing to check: the fill has no walls and no props.";
  const others = totals.notApplicable === 0 ? "" : `, ${totals.notApplicable} with nothing to check`;
  return (
    `${counted(checks.length, "check")}: ${totals.within} within the stated limit, ${totals.over} over, ` +
    `${totals.notChecked} not checked${others}.`
  );
}

function loadsText({ loads, defaults }: CheckDocument): string {
  const figure = (name: keyof typeof loads, text: string) =>
    defaults.includes(name) ? `${text} (default)` : text;
  return `Loads: ${[
    figure("slabModel", loads.slabModel),
    figure("concreteDensity", `concrete ${loads.concreteDensity} kN/m³`),
    figure("formworkLoad", `formwork ${loads.formworkLoad} kPa`),
    figure("motorisedCarts", loads.motorisedCarts ? "motorised carts" : "no motorised carts"),
    figure("continuity", `continuity ${loads.continuity}`),
    figure("propStrength", `${loads.propStrength} strength of props`),
  ].join(", ")}.`;
}

function concreteText({ concrete, concreteDefaults }: CheckDocument): string {
  const figure = (name: keyof typeof concrete, text: string) =>
    concreteDefaults.includes(name) ? `${text} (default)` : text;
  const placing = concrete.rate === null ? [] : [`placed at ${concrete.rate} m/h`];
  const warmth = concrete.temperature === null ? [] : [`${concrete.temperature} °C`];
  return `Concrete: ${[
    figure("pressureModel", concrete.pressureModel),
    figure("density", `${concrete.density} kN/m³`),
    ...placing,
    ...warmth,
    figure("formStrength", `${concrete.formStrength} strength of ties and panels`),
    figure("bottomTie", `lowest tie takes the ${concrete.bottomTie} gap under it`),
  ].join(", ")}.`;
}

function predictionLines({ predictions }: CheckDocument): readonly string[] {
  return predictions.flatMap(({ unit, needed, hour, isLogged, margin }) => {
    if (hour === null || needed === null) return [];
    const by = isLogged ? "by the log" : "after the log, as cold as it ever was";
    const side = (margin ?? 0) < 0 ? "after" : "before";
    const left = margin === null ? "" : `, ${roundTo(Math.abs(margin), 1)} h ${side} the hour of striking`;
    return [
      `Slab of unit ${unit}: ${roundTo(needed, 1)} MPa needed, expected after ${roundTo(hour, 1)} h ${by}${left}.`,
    ];
  });
}

// Where one of a kind is over without a share of a limit, no share is the most: it is told below, with what is over.
function mostUsed(checks: readonly Check[]): readonly string[] {
  const beyond = new Set(
    checks.flatMap(({ kind, status, utilisation }) =>
      status === "over" && utilisation === null ? [kind] : [],
    ),
  );
  const most = new Map<string, Check>();
  for (const check of checks) {
    if (check.utilisation === null || beyond.has(check.kind)) continue;
    const before = most.get(check.kind);
    if (before === undefined || check.utilisation > (before.utilisation ?? 0)) most.set(check.kind, check);
  }
  return [...most].map(([kind, check]) => `Most used, ${kind}: ${placeText(check)}: ${figuresText(check)}.`);
}

// Many checks that cannot be made for one reason are one line, with the greatest value among them.
function openLines(open: readonly Check[]): readonly string[] {
  const groups = new Map<string, Check[]>();
  for (const check of open) {
    const key = `${check.kind}: ${check.reason ?? ""}`;
    groups.set(key, [...(groups.get(key) ?? []), check]);
  }
  return [...groups.values()].map((group) => {
    const most = group.reduce((a, b) => ((b.value ?? 0) > (a.value ?? 0) ? b : a));
    const value = most.value === null ? "" : `, ${roundSignificant(most.value)} ${most.unit}`;
    if (group.length === 1) return `Not checked: ${placeText(most)}: ${most.reason ?? ""}.`;
    return `Not checked: ${group.length} of ${most.kind}, most at ${placeText(most)}${value}: ${most.reason ?? ""}.`;
  });
}

// What has no limit to be a part of is told by its reason: a count of faults, a rate that no method gives.
function overText(check: Check): string {
  if (check.utilisation !== null) return `${check.kind} ${figuresText(check)}`;
  const value = check.value === null ? "" : ` ${roundSignificant(check.value)} ${check.unit}`;
  return `${check.kind}${value}: ${check.reason ?? check.formula}`;
}

function figuresText({ value, limit, utilisation, unit }: Check): string {
  const figure = (number: number | null) => (number === null ? "–" : `${roundSignificant(number)} ${unit}`);
  return `${figure(value)} of ${figure(limit)} (${roundTo((utilisation ?? 0) * 100, 1)} %)`;
}

function placeText({ where }: Check): string {
  const at = where.at === null ? "" : ` at (${where.at.map((each) => roundTo(each, 1)).join(", ")}) mm`;
  const height = where.z === undefined ? "" : `, ${roundTo(where.z, 1)} mm up`;
  const words = [
    where.room === "" ? "" : `room ${where.room}`,
    where.opening === undefined ? "" : `opening ${where.opening}`,
    where.face === undefined ? "" : `face ${where.face}`,
    where.code,
  ].filter((word) => word !== "");
  return [where.unit === "" ? "all pours" : `unit ${where.unit}`, ...words].join(", ") + at + height;
}

function shortened(lines: readonly string[]): readonly string[] {
  const more = lines.length - MOST_LINES;
  return more > 0 ? [...lines.slice(0, MOST_LINES), `… and ${more} more, all of them in the result.`] : lines;
}
