// What a piece in a kit file must say, family by family.

import { andThen, type Checker, fail, inside, number, oneOf, pair, text, truth } from "../json/checker.ts";
import { byMember, object, optional, required } from "../json/members.ts";
import { isReservedName, type Json } from "../json/value.ts";
import type { Kg, Mm } from "../units.ts";
import type { AccessoryFamily, Family, Piece } from "./kit.ts";

/** Longer than any form that is carried by hand, and short enough for every sum to stay exact. */
const LONGEST_PIECE: Mm = 20_000;
const HEAVIEST_PIECE: Kg = 100_000;
const DEAREST_PIECE = 1_000_000_000;
const LONGEST_STAY = 1000;

/** Characters that cannot be seen on a sheet, or that would break a line of a list. */
export const UNSEEN = {
  pattern: /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u,
  words: "without control characters",
} as const;

/** Lets null stand for a member that is left out. */
export function orNull<T>(checker: Checker<T>): Checker<T | null> {
  return {
    expected: checker.expected,
    read: (value, place) => (value === null ? null : checker.read(value, place)),
  };
}

const size = number({ least: 1, greatest: LONGEST_PIECE, whole: true, unit: "mm" });
const legs = pair("two legs [left, right]", size, size);
const turn = oneOf("inside", "outside");

const code = andThen(text({ what: "a code", least: 1, greatest: 64, not: UNSEEN }), (value, place) =>
  isReservedName(value) ? fail(place, "a code that is not a reserved word", value) : value,
);

function common<F extends Family>(family: F) {
  return {
    code: required(code),
    family: required(oneOf(family)),
    mass: required(number({ least: 0, greatest: HEAVIEST_PIECE, unit: "kg" })),
    price: optional(orNull(number({ least: 0, greatest: DEAREST_PIECE })), null),
    standard: optional(truth, false),
    hand: optional(orNull(oneOf("left", "right")), null),
    stays: optional(number({ least: 0, greatest: LONGEST_STAY, whole: true, unit: "pours" }), 0),
  };
}

function accessory<F extends AccessoryFamily>(family: F) {
  return object(`a ${family}`, { ...common(family), length: optional(orNull(size), null) });
}

function range<F extends "prop" | "closure-strip">(family: F) {
  return { ...common(family), least: required(size), greatest: required(size) };
}

function inOrder<P extends { readonly least: Mm; readonly greatest: Mm }>(checker: Checker<P>): Checker<P> {
  return andThen(checker, (piece, place) => {
    const { least, greatest } = piece;
    if (greatest >= least) return piece;
    return fail(inside(place, "greatest"), `a whole number not under least, which is ${least}`, greatest);
  });
}

const families = byMember("family", {
  "wall-panel": object("a wall panel", {
    ...common("wall-panel"),
    width: required(size),
    height: required(size),
  }),
  "inside-corner": object("an inside corner", {
    ...common("inside-corner"),
    legs: required(legs),
    height: required(size),
  }),
  "outside-corner": object("an outside corner", { ...common("outside-corner"), length: required(size) }),
  "stop-end": object("a stop-end", { ...common("stop-end"), width: required(size), height: required(size) }),
  "reveal-closure": object("a reveal closure", {
    ...common("reveal-closure"),
    width: required(size),
    length: required(size),
  }),
  "reveal-corner": object("a reveal corner", {
    ...common("reveal-corner"),
    width: required(size),
    legs: required(legs),
  }),
  "wall-slab-connector": object("a wall-to-slab connector", {
    ...common("wall-slab-connector"),
    height: required(size),
    depth: required(size),
    length: required(size),
  }),
  "connector-corner": object("a connector corner", {
    ...common("connector-corner"),
    turn: required(turn),
    height: required(size),
    depth: required(size),
    legs: required(legs),
  }),
  "slab-edge-cap": object("a slab-edge cap", {
    ...common("slab-edge-cap"),
    height: required(size),
    length: required(size),
  }),
  "cap-corner": object("a cap corner", {
    ...common("cap-corner"),
    turn: required(turn),
    height: required(size),
    legs: required(legs),
  }),
  "slab-panel": object("a slab panel", {
    ...common("slab-panel"),
    width: required(size),
    length: required(size),
  }),
  "shoring-strip": object("a shoring strip", {
    ...common("shoring-strip"),
    width: required(size),
    length: required(size),
  }),
  prop: inOrder(
    object("a prop", {
      ...range("prop"),
      class: optional(orNull(oneOf("A", "B", "C", "D", "E")), null),
    }),
  ),
  tie: object("a tie", { ...common("tie"), length: required(size) }),
  "tie-sleeve": object("a tie sleeve", { ...common("tie-sleeve"), length: required(size) }),
  "closure-strip": inOrder(object("a closure-strip", range("closure-strip"))),
  pin: accessory("pin"),
  wedge: accessory("wedge"),
  "wall-bracket": accessory("wall-bracket"),
  "alignment-ledger": accessory("alignment-ledger"),
  brace: accessory("brace"),
  "opening-brace": accessory("opening-brace"),
  "facade-aligner": accessory("facade-aligner"),
});

/** A piece of any family. Members this version does not know are reported and left out. */
export const piece: Checker<Piece> = andThen(families, ({ extra: _extra, ...known }) => known);

/** The code a piece gives itself, if it gives one that can be printed. */
export function codeOf(value: Json | undefined): string | null {
  const given = typeof value === "object" && value !== null && "code" in value ? value.code : null;
  return typeof given === "string" ? given : null;
}
