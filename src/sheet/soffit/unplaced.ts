// Pieces of a soffit of which the drawing does not say all, told in words: their size, and where they lie if not even
// their name found paper.
//
//   H1–H4 50 × 600 (between G3 and H5); K1 50 × 450 (beside J1–J7)

import type { SoffitPiece } from "../../fill/result.ts";
import { distance } from "../../geom/point.ts";
import type { Language } from "../../plan/project.ts";
import { rangesText } from "../ranges.ts";
import type { Band } from "./bands.ts";
import { sidesOf } from "./overheadPiece.ts";
import { middleOf } from "./soffitMarks.ts";

/** A piece to be named in words beside the drawing. */
export interface Unplaced {
  readonly letter: string;
  readonly number: number;
  /** As "300 × 600", mm. */
  readonly size: string;
  /** Beside which pieces it lies whose names are drawn; null where its own is, or none of the soffit. */
  readonly place: Place | null;
}

/** `before`, `after`: next to it in its band. `beside`: of other bands, nearest to the ends of its own. */
type Place =
  | { readonly kind: "band"; readonly before: string | null; readonly after: string | null }
  | { readonly kind: "beside"; readonly names: string };

interface PlaceWords {
  readonly between: (one: string, other: string) => string;
  /** In the order of laying. */
  readonly before: (name: string) => string;
  readonly after: (name: string) => string;
  readonly beside: (names: string) => string;
}

export const PLACE_WORDS: Readonly<Record<Language, PlaceWords>> = {
  en: {
    between: (one, other) => `between ${one} and ${other}`,
    before: (name) => `before ${name}`,
    after: (name) => `after ${name}`,
    beside: (names) => `beside ${names}`,
  },
  es: {
    between: (one, other) => `entre ${one} y ${other}`,
    before: (name) => `antes de ${name}`,
    after: (name) => `después de ${name}`,
    beside: (names) => `junto a ${names}`,
  },
  pt: {
    between: (one, other) => `entre ${one} e ${other}`,
    before: (name) => `antes de ${name}`,
    after: (name) => `depois de ${name}`,
    beside: (names) => `junto a ${names}`,
  },
};

/** What is to be said in words: `sizeless` have their name drawn, `nameless` not even that; both among the bands. */
export function unplacedOf(
  bands: readonly Band[],
  sizeless: ReadonlySet<SoffitPiece>,
  nameless: ReadonlySet<SoffitPiece>,
): readonly Unplaced[] {
  return bands.flatMap((band) => {
    const { letter, pieces } = band;
    const isHidden = pieces.every((piece) => nameless.has(piece));
    const beside = isHidden ? besideBand(band, bands, nameless) : null;
    return pieces.flatMap((piece, index): readonly Unplaced[] => {
      if (!nameless.has(piece) && !sizeless.has(piece)) return [];
      const { short, long } = sidesOf(piece.outline);
      const place = isHidden ? beside : nameless.has(piece) ? placeInBand(index, band, nameless) : null;
      return [{ letter, number: index + 1, size: `${short} × ${long}`, place }];
    });
  });
}

function placeInBand(index: number, { letter, pieces }: Band, nameless: ReadonlySet<SoffitPiece>): Place {
  const isDrawn = (piece: SoffitPiece) => !nameless.has(piece);
  const before = pieces.slice(0, index).findLastIndex(isDrawn);
  const after = pieces.findIndex((piece, at) => at > index && isDrawn(piece));
  const name = (at: number) => (at < 0 ? null : `${letter}${at + 1}`);
  return { kind: "band", before: name(before), after: name(after) };
}

/** From the drawn piece nearest to the first of the band to the one nearest to its last; null where none is drawn. */
function besideBand(
  { pieces }: Band,
  bands: readonly Band[],
  nameless: ReadonlySet<SoffitPiece>,
): Place | null {
  const drawn = bands.flatMap(({ letter, pieces: others }) =>
    others.flatMap((other, index) =>
      nameless.has(other) ? [] : [{ letter, name: `${letter}${index + 1}`, at: middleOf(other.outline) }],
    ),
  );
  const nearestTo = ({ outline }: SoffitPiece) => {
    const from = middleOf(outline);
    return drawn.reduce((a, b) => (distance(b.at, from) < distance(a.at, from) ? b : a));
  };
  if (drawn.length === 0) return null;
  const [one, other] = [nearestTo(pieces[0]!), nearestTo(pieces.at(-1)!)];
  if (one === other) return { kind: "beside", names: one.name };
  return { kind: "beside", names: `${one.name}${one.letter === other.letter ? "–" : ", "}${other.name}` };
}

/** Pieces of one band, size and place together: "J1–J7 100 × 600 (beside H1–H7); K1 50 × 450". */
export function unplacedText(pieces: readonly Unplaced[], language: Language): string {
  const groups = new Map<
    string,
    { readonly letter: string; readonly after: string; readonly numbers: number[] }
  >();
  for (const { letter, number, size, place } of pieces) {
    const after = place === null ? size : `${size} (${placeText(place, PLACE_WORDS[language])})`;
    const key = `${letter} ${after}`;
    const group = groups.get(key) ?? { letter, after, numbers: [] };
    group.numbers.push(number);
    groups.set(key, group);
  }
  return [...groups.values()]
    .map(({ letter, after, numbers }) => {
      const named = rangesText(numbers).replaceAll("–", `–${letter}`).replaceAll(", ", `, ${letter}`);
      return `${letter}${named} ${after}`;
    })
    .join("; ");
}

function placeText(place: Place, words: PlaceWords): string {
  if (place.kind === "beside") return words.beside(place.names);
  const { before, after } = place;
  if (before !== null && after !== null) return words.between(before, after);
  return before !== null ? words.after(before) : words.before(after ?? "");
}
