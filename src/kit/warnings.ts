// What the owner of a kit should know though the kit can be used: gaps, doubles and habits of the trade it goes against.

import { quoted } from "../json/issue.ts";
import { closureGaps, closureWidths } from "./closureWarnings.ts";
import { withoutPartner } from "./handed.ts";
import { type Kit, piecesOf, ruleValue, type WallPanel } from "./kit.ts";
import { comparePreference } from "./preference.ts";
import { RULE_NAMES } from "./ruleChecker.ts";
import { count, listed } from "./wording.ts";

/** What a pin and a hammer need behind a frame, less the little a frame gives: common practice, no source. */
const PIN_ROOM = 80;
const ORIGINS = ["common practice, no source", "invented for the demo"];
const MOST_SENTENCES = 5;
const PUBLISHED = /^published: ./u;

/** One sentence for each concern, in a fixed order; empty for a kit without any. */
export function kitWarnings(kit: Kit): readonly string[] {
  return [
    ...closureGaps(kit),
    ...closureWidths(kit),
    ...pinRoom(kit),
    ...ruleCorner(kit),
    ...rowsOffHoles(kit),
    ...missingPartners(kit),
    ...doubleSizes(kit),
    ...origins(kit),
  ];
}

function pinRoom(kit: Kit): readonly string[] {
  const depth = ruleValue(kit, "frameDepth");
  if (depth === undefined) return [];
  const least = depth + PIN_ROOM;
  const why = `behind a frame of ${depth} mm a pin and a hammer need a leg of ${least} mm`;
  const leg = ruleValue(kit, "cornerLeg");
  const byRule = leg !== undefined && leg < least ? [`The corner leg is ${leg} mm; ${why}.`] : [];
  const short = piecesOf(kit, "inside-corner").filter((corner) => Math.min(...corner.legs) < least);
  if (short.length === 0) return byRule;
  const codes = listed(short.map((corner) => quoted(corner.code)));
  return [
    ...byRule,
    `The shorter leg of ${count(short.length, "inside corner")} (${codes}) is too short: ${why}.`,
  ];
}

function ruleCorner(kit: Kit): readonly string[] {
  const leg = ruleValue(kit, "cornerLeg");
  if (leg === undefined) return [];
  const hasOne = piecesOf(kit, "inside-corner").some(({ legs }) => legs[0] === leg && legs[1] === leg);
  return hasOne
    ? []
    : [`The corner leg is ${leg} mm and the kit has no inside corner with two legs of ${leg} mm.`];
}

function rowsOffHoles(kit: Kit): readonly string[] {
  const holes = ruleValue(kit, "holes");
  const rows = ruleValue(kit, "tieRows");
  if (holes === undefined || rows === undefined) return [];
  const off = rows.filter((row) => row < holes.first || (row - holes.first) % holes.pitch !== 0);
  if (off.length === 0) return [];
  return [
    `${count(off.length, "tie row")} (${listed(off.map(String))}) ${off.length === 1 ? "is" : "are"} on no hole: ` +
      `the holes begin at ${holes.first} mm and are ${holes.pitch} mm apart.`,
  ];
}

function missingPartners(kit: Kit): readonly string[] {
  const alone = withoutPartner(kit);
  if (alone.length === 0) return [];
  const codes = listed(alone.map((piece) => quoted(piece.code)));
  return [
    `${count(alone.length, "handed piece")} (${codes}) without a partner of the other hand: no mirrored pour has them.`,
  ];
}

function doubleSizes(kit: Kit): readonly string[] {
  const sizes = new Map<string, WallPanel[]>();
  for (const panel of piecesOf(kit, "wall-panel")) {
    const size = `${panel.width} × ${panel.height}`;
    const group = sizes.get(size);
    if (group === undefined) sizes.set(size, [panel]);
    else group.push(panel);
  }
  const doubles = [...sizes].filter(([, group]) => group.length > 1);
  const sentences = doubles.slice(0, MOST_SENTENCES).map(([size, group]) => {
    const [first, ...others] = group.sort(comparePreference);
    const rest = listed(others.map((panel) => quoted(panel.code)));
    return `Of the wall panels of ${size} mm only ${quoted(first?.code ?? "")} is used, not ${rest}.`;
  });
  const more = doubles.length - sentences.length;
  return more > 0
    ? [
        ...sentences,
        `${count(more, "more size")} of wall panel ${more === 1 ? "is" : "are"} there more than once.`,
      ]
    : sentences;
}

function origins(kit: Kit): readonly string[] {
  return RULE_NAMES.flatMap((name) => {
    const origin = kit.rules[name]?.origin;
    if (origin === undefined || ORIGINS.includes(origin) || PUBLISHED.test(origin)) return [];
    const forms = '"published: …", "common practice, no source" or "invented for the demo"';
    return [`The rule ${name} gives its origin as ${quoted(origin)}; expected ${forms}.`];
  });
}
