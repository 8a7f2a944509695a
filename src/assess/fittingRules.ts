// Has each face that is set first the brackets, ledgers and braces of the kit's rules, each facade its aligners, each
// opening its brace?

import type { FilledFace } from "../fill/result.ts";
import { accessoryOf } from "../kit/fittings.ts";
import { type AccessoryFamily, ruleValue } from "../kit/kit.ts";
import type { Mm } from "../units.ts";
import type { CheckedEntry } from "./entry.ts";
import { type Finding, nothingToCheck, type WholeRule } from "./wholeRule.ts";

export const FITTING_RULES: readonly WholeRule[] = [
  {
    kind: "fittings-placed",
    rule: "brackets, ledgers and a brace on each face that is set first, in the second and the highest row of ties; aligners on each facade",
    find: bareFaces,
  },
  {
    kind: "openings-braced",
    rule: "a brace as wide as the opening holds each pair of jambs apart",
    find: unbraced,
  },
];

type RuledFamily = Exclude<AccessoryFamily, "pin" | "wedge" | "opening-brace">;
const RULE_OF = {
  "wall-bracket": "bracketSpacing",
  "alignment-ledger": "bracketSpacing",
  brace: "braceSpacing",
  "facade-aligner": "alignerSpacing",
} as const satisfies Readonly<Record<RuledFamily, string>>;

function bareFaces(entry: CheckedEntry): Finding {
  const { fill, kit } = entry;
  const asked = (family: RuledFamily) =>
    accessoryOf(kit, family) !== null && ruleValue(kit, RULE_OF[family]) !== undefined;
  const families = (["wall-bracket", "alignment-ledger", "brace", "facade-aligner"] as const).filter(asked);
  if (families.length === 0) return nothingToCheck("the kit has none of these, or no rule for their spacing");
  const rows = ruleValue(kit, "tieRows") ?? [];
  const [lower, upper] = [rows[1] ?? rows[0], rows[rows.length - 1]];
  const has = (family: AccessoryFamily, face: string, z: Mm | null) =>
    fill.fittings.some(
      (each) => each.family === family && each.face === face && (z === null || each.z === z),
    );
  return fill.faces.flatMap((face) => {
    const lacking = families.filter((family) => {
      if (family === "facade-aligner") return isFacade(entry, face) && !has(family, face.id, null);
      const first = rowsSetFirst(entry, face);
      const wanted = (family === "brace" ? [upper] : [lower, upper]).filter(
        (z): z is Mm => z !== undefined && first.has(z),
      );
      return wanted.some((z) => !has(family, face.id, z));
    });
    return lacking.map((family) => `no ${family} on face ${face.id}`);
  });
}

/** Rows at which the face holds ties as the one that is set first. */
function rowsSetFirst({ fill }: CheckedEntry, { id }: FilledFace): ReadonlySet<Mm> {
  return new Set(fill.ties.flatMap(({ faces, heights }) => (faces[0] === id ? heights : [])));
}

// A face under a balcony ends at its soffit; the facade goes up to the top of the slab.
function isFacade({ storey }: CheckedEntry, { room, height, length, pieces }: FilledFace): boolean {
  // Free ends have a stop-end and no panel; on a face without panels there is nothing to keep in line.
  const hasPanels = pieces.some(({ family }) => family === "wall-panel");
  return room === null && length > 0 && hasPanels && height === storey.clearHeight + storey.slab;
}

function unbraced({ fill, kit }: CheckedEntry): Finding {
  if (accessoryOf(kit, "opening-brace") === null) return nothingToCheck("the kit has no opening braces");
  const openings = new Map<string, Mm>();
  for (const face of fill.faces)
    for (const { id, formed, width } of face.openings) if (formed === "band") openings.set(id, width);
  if (openings.size === 0) return nothingToCheck("no opening stands between jambs");
  const braced = new Set(
    fill.fittings
      .filter(({ family }) => family === "opening-brace")
      .flatMap(({ face, x, length }) => {
        const of = fill.faces.find(({ id }) => id === face);
        const opening = of?.openings.find((each) => Math.abs(each.x - x) < 1 && each.width === length);
        return opening === undefined ? [] : [opening.id];
      }),
  );
  return [...openings.keys()].filter((id) => !braced.has(id)).map((id) => `opening ${id}`);
}
