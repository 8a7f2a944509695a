// Does an object have the members it should have, and which does it have beside them?
//
// Members this version does not know are kept under `extra` and reported as warnings, so that reading and writing a
// file made by a later program, or by somebody's script, loses nothing.

import { type Checked, type Checker, fail, inside, type Place, warn } from "./checker.ts";
import { bareObject, isObject, type Json, type JsonObject } from "./value.ts";

/** A member of an object: its checker, and what stands for it where it is absent. */
export type Member<T> =
  | { readonly kind: "required"; readonly checker: Checker<T> }
  | { readonly kind: "optional"; readonly checker: Checker<T>; readonly fallback: T };

/** What an object checker yields: the members by name, and unknown ones in `extra` if there are any. */
export type Members<S> = { readonly [K in keyof S]: S[K] extends Member<infer T> ? T : never } & {
  readonly extra?: JsonObject;
};

/** A member that must be there. */
export function required<T>(checker: Checker<T>): Member<T> {
  return { kind: "required", checker };
}

/** A member that may be left out; `fallback` then stands for it. A member given as null is not left out. */
export function optional<T, const F = T>(checker: Checker<T>, fallback: F): Member<T | F> {
  return { kind: "optional", checker, fallback };
}

/** Finds out what an object should hold. Only own members are read, in the order of `shape`. */
export function object<S extends { readonly [name: string]: Member<unknown> }>(
  what: string,
  shape: S,
): Checker<Members<S>> {
  const expected = `${what} (an object)`;
  const members = Object.entries(shape);
  const known = new Set(Object.keys(shape));
  return {
    expected,
    read: (value, place) => {
      if (!isObject(value)) return fail(place, expected, value);
      const result: { [name: string]: unknown } = {};
      let isSound = true;
      for (const [name, member] of members) {
        const read = readMember(value, name, member, place);
        if (read === undefined) isSound = false;
        else result[name] = read;
      }
      const extra = unknownMembers(value, known, place);
      if (extra !== undefined) result.extra = extra;
      return isSound ? (result as Members<S>) : undefined;
    },
  };
}

/**
 * Chooses the checker by the word in one member: `byMember("family", { tie: …, pin: … })`. The chosen checker sees the
 * whole object, so its shape must list that member too.
 */
export function byMember<C extends { readonly [word: string]: Checker<unknown> }>(
  name: string,
  cases: C,
): Checker<Checked<C[keyof C]>> {
  const words = Object.keys(cases).map((word) => JSON.stringify(word));
  const expected = `an object with the member ${name}`;
  return {
    expected,
    read: (value, place) => {
      if (!isObject(value)) return fail(place, expected, value);
      const word = Object.hasOwn(value, name) ? value[name] : undefined;
      if (typeof word !== "string" || !Object.hasOwn(cases, word)) {
        return fail(inside(place, name), `one of ${words.join(", ")}`, word);
      }
      return cases[word]!.read(value, place) as Checked<C[keyof C]> | undefined;
    },
  };
}

function readMember<T>(value: JsonObject, name: string, member: Member<T>, place: Place): T | undefined {
  const at = inside(place, name);
  const given: Json | undefined = Object.hasOwn(value, name) ? value[name] : undefined;
  if (given !== undefined) return member.checker.read(given, at);
  return member.kind === "optional" ? member.fallback : fail(at, member.checker.expected, undefined);
}

function unknownMembers(value: JsonObject, known: ReadonlySet<string>, place: Place): JsonObject | undefined {
  let extra: { [name: string]: Json } | undefined;
  for (const [name, each] of Object.entries(value)) {
    if (known.has(name)) continue;
    warn(inside(place, name), "a member this version knows", each);
    extra ??= bareObject<Json>();
    extra[name] = each;
  }
  return extra;
}
