// The check of one prop of the fill in view, and why there is no verdict where there is none, in words of the page.

import type { Check } from "../../assess/checkDocument.ts";
import { propChecks } from "../../assess/propChecks.ts";
import { piecesOf } from "../../kit/kit.ts";
import type { PlanDocument } from "../../plan/document.ts";
import { readLoads } from "../../plan/loads.ts";
import type { LiveFill } from "../live/liveFill.ts";
import { type Words, words } from "../words/say.ts";

export interface PropCheck {
  /** null where the loads of the project cannot be read. */
  readonly check: Check | null;
  /** Why there is no verdict; null where there is one. */
  readonly reason: Words | null;
}

export function propCheckOf(document: PlanDocument, live: LiveFill, prop: string): PropCheck {
  const read = readLoads(document.loads);
  if (read.status === "invalid") return { check: null, reason: words("check.bad-loads") };
  const { storey } = document;
  const { kit } = live;
  const fill = { ...live.fill, pours: [] };
  const checks = propChecks({ name: fill.unit, fill, storey, kit, loads: read.value });
  const check = checks.find(({ where }) => where.piece === prop) ?? null;
  return { check, reason: check === null ? null : reasonOf(check, { slab: storey.slab, kit }) };
}

function reasonOf(
  { status, where }: Check,
  { slab, kit }: { readonly slab: number; readonly kit: LiveFill["kit"] },
): Words | null {
  if (status === "within" || status === "over") return null;
  if (slab === 0) return words("check.no-slab");
  const { code } = where;
  const piece = piecesOf(kit, "prop").find((each) => each.code === code);
  if (piece === undefined) return words("check.no-piece", { code });
  return piece.class === null ? words("check.no-class", { code }) : words("check.out-of-range");
}
