// Which kit does a project name or carry?

import { describeFound } from "../json/issue.ts";
import { demoKit } from "./demo.ts";
import type { Kit } from "./kit.ts";
import { type KitAnswer, parseKit } from "./parse.ts";

const SHIPPED: ReadonlyMap<string, Kit> = new Map([[demoKit.name, demoKit]]);

/** Names of the kits that come with the program. */
export const shippedKits: readonly string[] = [...SHIPPED.keys()];

/**
 * The kit of a project: a shipped one by name, or the object the project carries.
 *
 * @param kit - the project's member `kit`; the paths of issues begin with that word
 */
export function resolveKit(kit: string | object): KitAnswer {
  if (typeof kit !== "string") return parseKit(kit, "kit");
  const shipped = SHIPPED.get(kit);
  if (shipped !== undefined) return { status: "ok", kit: shipped, warnings: [] };
  const names = shippedKits.map((name) => JSON.stringify(name)).join(" or ");
  const expected = `the name of a shipped kit (${names}) or a kit object`;
  return { status: "invalid", issues: [{ path: "kit", expected, found: describeFound(kit) }] };
}
