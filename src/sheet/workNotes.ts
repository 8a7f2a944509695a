// What a room's notes say of its ties, pins and spreaders: whose they are, how long, how many, how high.

import { type PinRule, pinsAtEdges, pinsOnFace, pinsOverhead } from "../fill/accessories.ts";
import type { RoomParts } from "../fill/roomParts.ts";
import type { Language } from "../plan/project.ts";
import type { SheetRing } from "./faceOrder.ts";
import { numberWords } from "./numberWords.ts";
import type { RibbonContext } from "./stretch.ts";
import { WORDS } from "./words.ts";

/** Rows, lengths in words, who carries them, and the count of the bottom two rows, which a second person signs. */
export function tieNotes(parts: RoomParts, language: Language): readonly string[] {
  const words = WORDS[language].notes;
  const ties = [...parts.ownTies, ...parts.otherTies];
  if (ties.length === 0) return [];
  const rows = sorted(ties.flatMap(({ heights }) => heights));
  const lengths = sorted(ties.map(({ length }) => length));
  const count = (list: RoomParts["ownTies"]) => list.reduce((sum, { heights }) => sum + heights.length, 0);
  const [own, other] = [count(parts.ownTies), count(parts.otherTies)];
  const bottom = rows.slice(0, 2);
  const low = ties.flatMap(({ heights }) => heights.filter((height) => bottom.includes(height))).length;
  return [
    words.tieRows(rows),
    words.bottomRows(bottom.join(", "), low),
    words.tieLengths(
      lengths.map((length) => words.tieLength(length, numberWords(length, language))).join(", "),
    ),
    ...(own > 0 ? [words.ownTies(own)] : []),
    ...(other > 0 ? [words.otherTies(other)] : []),
  ];
}

function sorted(values: readonly number[]): readonly number[] {
  return [...new Set(values)].sort((a, b) => a - b);
}

/** Pins by face, as the kit's rule counts them, and the spreaders of openings. */
export function pinNotes(rings: readonly SheetRing[], { parts, info }: RibbonContext): readonly string[] {
  const words = WORDS[info.language].notes;
  const faces = rings.flatMap((ring) => ring.faces);
  const spreaders = faces.flatMap(({ letter, face }) =>
    parts.fittings
      .filter((fitting) => fitting.face === face.id && fitting.family === "opening-brace")
      .map(({ length, z }) => words.spreader(letter, length ?? 0, z)),
  );
  const pins = info.pins === null ? null : pinCounts(rings, parts, info.pins);
  const listed =
    pins === null
      ? []
      : [
          ...pins.faces.map(({ letter, count }) => `${letter} ${count}`),
          ...(pins.edges > 0 ? [words.pinsAtEdges(pins.edges)] : []),
          ...(pins.overhead > 0 ? [words.pinsOverhead(pins.overhead)] : []),
        ];
  return [
    ...(listed.length > 0 ? [words.pins(listed.join(", "))] : []),
    ...(spreaders.length > 0 ? [words.spreaders(spreaders.join(", "))] : []),
  ];
}

export interface PinCounts {
  readonly faces: readonly { readonly letter: string; readonly count: number }[];
  readonly edges: number;
  readonly overhead: number;
}

/** Summed over all rooms and the outside of a unit they are the pins of its bill. */
export function pinCounts(rings: readonly SheetRing[], parts: RoomParts, rule: PinRule): PinCounts {
  return {
    faces: rings
      .flatMap((ring) => ring.faces)
      .map(({ letter, face }) => ({ letter, count: pinsOnFace(face.pieces, rule) }))
      .sort((a, b) => (a.letter < b.letter ? -1 : 1)),
    edges: pinsAtEdges(parts.edges, parts.reveals, rule),
    overhead: parts.soffits.reduce((sum, soffit) => sum + pinsOverhead(soffit, rule), 0),
  };
}
