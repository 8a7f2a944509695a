// Are ties, brackets, ledgers, braces and aligners as near to one another as the kit says? The greatest distance of each
// sort in an entry, at its place.

import type { FilledFace, Fitting } from "../fill/result.ts";
import { alongLine, lineThrough } from "../geom/line.ts";
import { type Family, ruleValue } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import type { Check } from "./checkDocument.ts";
import type { CheckedEntry } from "./entry.ts";
import { type FaceRun, faceRuns } from "./faceRuns.ts";
import {
  faultless,
  input,
  judgedBy,
  notApplicable,
  notChecked,
  placeIn,
  type Unjudged,
  unjudged,
} from "./judging.ts";
import { pointOn } from "./openingPlaces.ts";

/** What the checks of spacing take for granted. */
export const SPACING_ASSUMPTIONS: readonly string[] = [
  "Along a row the form is held by ties, jambs, ends of the face and legs of inside corners; the width of a closure counts as part of its joint.",
  "Where part of a wall's face is set second, its fittings stand on the other face; distances are then measured between fittings only, and elsewhere twice the distance to the end counts, too.",
];

/** One check a sort. */
export function spacingChecks(entry: CheckedEntry): readonly Check[] {
  if (entry.fill.faces.length === 0) return [];
  return [
    tieSpacingCheck(entry),
    fittingCheck(entry, "wall-bracket", "bracketSpacing"),
    ledgerCheck(entry),
    fittingCheck(entry, "brace", "braceSpacing"),
    fittingCheck(entry, "facade-aligner", "alignerSpacing"),
  ];
}

/** A distance and where it begins. */
interface Gap {
  readonly length: Mm;
  readonly face: FilledFace;
  readonly x: Mm;
  readonly z: Mm;
}

function tieSpacingCheck(entry: CheckedEntry): Check {
  const greatest = ruleValue(entry.kit, "tieSpacing");
  const rows = ruleValue(entry.kit, "tieRows") ?? [];
  const runs = faceRuns(entry.fill).filter(({ ties }) => ties.length > 0);
  const gaps = runs.flatMap((run) => rows.flatMap((z) => tieGaps(run, z)));
  return judgedGap(entry, "tie-spacing", greatest, { gaps, rule: "tieSpacing", what: "ties" });
}

function tieGaps(run: FaceRun, z: Mm): readonly Gap[] {
  const holds = new Set<Mm>([0, run.length]);
  for (const { place, heights } of run.ties) if (heights.includes(z)) holds.add(Math.round(place));
  const open = run.openings.filter(({ sill, head }) => sill < z && z < head);
  for (const { low, high } of open) holds.add(low).add(high);
  const closures: { low: Mm; width: Mm }[] = [];
  const formed: { low: Mm; high: Mm }[] = [];
  for (const { face, start } of run.faces) {
    for (const piece of face.pieces) {
      if (piece.z >= z || piece.z + piece.height <= z) continue;
      const low = start + piece.x;
      formed.push({ low, high: low + piece.width });
      if (piece.family === "inside-corner") holds.add(low).add(low + piece.width);
      if (piece.family === "closure-strip") closures.push({ low, width: piece.width });
    }
  }
  const places = [...holds].sort((a, b) => a - b);
  return places.slice(1).flatMap((high, k): readonly Gap[] => {
    const low = places[k]!;
    const middle = (low + high) / 2;
    const isForm = formed.some((each) => each.low < middle && middle < each.high);
    if (!isForm || open.some((each) => each.low < middle && middle < each.high)) return [];
    const closed = closures
      .filter((each) => each.low >= low && each.low < high)
      .reduce((sum, { width }) => sum + width, 0);
    const at = [...run.faces].reverse().find(({ start }) => start <= low) ?? run.faces[0]!;
    return [{ length: high - low - closed, face: at.face, x: low - at.start, z }];
  });
}

type SpacingRule = "bracketSpacing" | "braceSpacing" | "alignerSpacing";

function fittingCheck(entry: CheckedEntry, family: Family, rule: SpacingRule): Check {
  const greatest = ruleValue(entry.kit, rule);
  const gaps = rowsOf(entry, family).flatMap(({ face, z, fittings }) =>
    stretchesOf(face, family === "wall-bracket" ? z : null).flatMap((stretch) =>
      gapsIn(entry, { family, face, z, stretch, places: placesIn(fittings, stretch) }),
    ),
  );
  const kind = `${family}-spacing`;
  return judgedGap(entry, kind, greatest, { gaps, rule, what: `pieces of ${family}` });
}

interface Stretch {
  readonly from: Mm;
  readonly to: Mm;
}

function gapsIn(
  entry: CheckedEntry,
  given: {
    readonly family: Family;
    readonly face: FilledFace;
    readonly z: Mm;
    readonly stretch: Stretch;
    readonly places: readonly Mm[];
  },
): readonly Gap[] {
  const { family, face, z, stretch, places } = given;
  const [first] = places;
  const last = places[places.length - 1];
  if (first === undefined || last === undefined) return [];
  const gap = (from: Mm, length: Mm): Gap => ({ length, face, x: from, z });
  const between = places.slice(1).map((x, k) => gap(places[k]!, x - places[k]!));
  // Aligners stand outside, where faces are set second; the others stand on the face that is set first.
  const isPartly = family !== "facade-aligner" && entry.fill.ties.some(({ faces }) => faces[1] === face.id);
  if (isPartly) return between.filter(({ x, length }) => !isClosing(entry, face, x, x + length));
  return [gap(stretch.from, 2 * (first - stretch.from)), ...between, gap(last, 2 * (stretch.to - last))];
}

// Whether a stretch has ties of which this face is the one that is set second.
function isClosing({ fill }: CheckedEntry, face: FilledFace, from: Mm, to: Mm): boolean {
  const line = lineThrough(face.from, face.to);
  return fill.ties.some(({ faces, at }) => {
    if (faces[1] !== face.id) return false;
    const x = alongLine(line, at);
    return x > from && x < to;
  });
}

function ledgerCheck(entry: CheckedEntry): Check {
  const start = unjudged({
    id: `${entry.name}/ledger-cover`,
    kind: "ledger-cover",
    where: placeIn(entry.name),
    unit: "stretches",
    formula: "no stretch between the brackets of a row without a ledger",
    source: "common practice, no source",
  });
  const ledgers = rowsOf(entry, "alignment-ledger");
  const brackets = rowsOf(entry, "wall-bracket");
  if (brackets.length === 0) return notApplicable(start, "the fill has no wall brackets");
  if (ledgers.length === 0) return notChecked(start, "the kit has no alignment ledgers");
  const bare = brackets.flatMap(({ face, z, fittings }) => {
    const row = ledgers.find((each) => each.face === face && each.z === z)?.fittings ?? [];
    return stretchesOf(face, z).flatMap((stretch) =>
      placesIn(fittings, stretch)
        .filter((x) => !row.some((each) => each.x <= x && x <= each.x + (each.length ?? 0)))
        .map((x) => `face ${face.id} at ${x} mm, ${z} mm up`),
    );
  });
  const known = { ...start, inputs: [input("", "rows of brackets", brackets.length)] };
  return faultless(known, bare);
}

interface FittingRow {
  readonly face: FilledFace;
  readonly z: Mm;
  readonly fittings: readonly Fitting[];
}

function rowsOf({ fill }: CheckedEntry, family: Family): readonly FittingRow[] {
  const faces = new Map(fill.faces.map((face) => [face.id, face]));
  const rows = new Map<string, { face: FilledFace; z: Mm; fittings: Fitting[] }>();
  for (const fitting of fill.fittings) {
    const face = faces.get(fitting.face);
    if (fitting.family !== family || face === undefined) continue;
    const key = `${fitting.face} ${fitting.z}`;
    const row = rows.get(key) ?? { face, z: fitting.z, fittings: [] };
    row.fittings.push(fitting);
    rows.set(key, row);
  }
  return [...rows.values()];
}

/** The face less its openings at a height; null: openings are no gap, as for braces and aligners, which reach past them. */
function stretchesOf(face: FilledFace, z: Mm | null): readonly Stretch[] {
  const open = face.openings
    .filter(({ formed, sill, head }) => z !== null && formed === "band" && sill < z && z < head)
    .sort((a, b) => a.x - b.x);
  const found: Stretch[] = [];
  let from = 0;
  for (const { x, width } of open) {
    found.push({ from, to: x });
    from = x + width;
  }
  return [...found, { from, to: face.length }].filter((each) => each.to > each.from);
}

function placesIn(fittings: readonly Fitting[], { from, to }: Stretch): readonly Mm[] {
  return fittings
    .map(({ x }) => x)
    .filter((x) => x >= from && x <= to)
    .sort((a, b) => a - b);
}

function judgedGap(
  entry: CheckedEntry,
  kind: string,
  greatest: Mm | undefined,
  {
    gaps,
    rule,
    what,
  }: { readonly gaps: readonly Gap[]; readonly rule: SpacingRule | "tieSpacing"; readonly what: string },
): Check {
  const widest = gaps.reduce<Gap | null>(
    (most, gap) => (most === null || gap.length > most.length ? gap : most),
    null,
  );
  const place =
    widest === null
      ? {}
      : {
          room: widest.face.room ?? "",
          at: pointOn(widest.face, widest.x),
          face: widest.face.id,
          x: widest.x,
          z: widest.z,
        };
  const start: Unjudged = {
    ...unjudged({
      id: `${entry.name}/${kind}`,
      kind,
      where: placeIn(entry.name, place),
      unit: "mm",
      formula: `distance between ${what} along a row ≤ ${rule}`,
      source: `limit: the kit's rule ${rule} (${entry.kit.rules[rule]?.origin ?? "not given"})`,
    }),
    inputs: [input("", "distances measured", gaps.length)],
  };
  if (widest === null) return notApplicable(start, `there are no ${what}`);
  const known = { ...start, value: widest.length };
  if (greatest === undefined) return notChecked(known, `the kit does not say how far apart (rule ${rule})`);
  return judgedBy(known, widest.length, greatest);
}
