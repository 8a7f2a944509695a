// What a JSON text holds once it is read.
//
// Objects read from a file have no prototype: a member called "toString" is then only a member, and looking up a
// piece code that is not there finds nothing instead of something inherited.

/** Any JSON value. */
export type Json = null | boolean | number | string | readonly Json[] | JsonObject;

/** A JSON object, its members in the order of the file. */
export interface JsonObject {
  readonly [key: string]: Json;
}

/** An empty object without a prototype, to be filled by a reader. */
export function bareObject<T>(): { [key: string]: T } {
  return Object.create(null) as { [key: string]: T };
}

/** Whether a value is an object with members, neither null nor a list. */
export function isObject(value: Json | undefined): value is JsonObject {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Member names that reach the machinery of the language instead of a member. No file may use them. */
export function isReservedName(name: string): boolean {
  return name === "__proto__" || name === "constructor" || name === "prototype";
}
