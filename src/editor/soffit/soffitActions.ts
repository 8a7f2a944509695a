// What the hand does on the soffit: take a piece or a prop in view, walk to the next, look at a room's, let go.

import type { Soffit } from "../../fill/result.ts";
import type { Position } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import { changeScreen, goTo, viewportOf } from "../live/actions.ts";
import type { LiveFill } from "../live/liveFill.ts";
import { inViewOf, type Workbench } from "../live/workbench.ts";
import { focusOf, type SoffitThing, soffitAt, soffitId } from "../scene/soffitHit.ts";
import { sceneSoffit } from "../scene/soffitPieces.ts";
import { toScreen } from "../scene/viewport.ts";
import { soffitOver } from "./roomEdits.ts";

/** Puts the hand on what lies at a place of the soffit; lets go where there is nothing, or no soffit to be seen. */
export function takeSoffit(bench: Workbench, at: Position, reach: Mm): void {
  const { live, unit, isStale } = inViewOf(bench, bench.editor.get());
  const isSeen = bench.screen.get().showsSoffit && !isStale;
  const thing = isSeen ? soffitAt(live, at, reach) : null;
  bench.soffit.set(() => (thing === null ? null : focusOf(unit.id, thing)));
}

export function letGoOfSoffit(bench: Workbench): void {
  bench.soffit.set(() => null);
}

/** Shows the soffit with the hand on its first piece in the room at a place. */
export function showSoffitAt(bench: Workbench, at: Position): void {
  changeScreen(bench, { showsSoffit: true });
  const { live, unit } = inViewOf(bench, bench.editor.get());
  const soffit = live === null ? null : soffitOver(live, at);
  const [first] = live === null || soffit === null ? [] : thingsOf(live, soffit);
  if (first !== undefined) bench.soffit.set(() => focusOf(unit.id, first));
}

/** Puts the hand on the next thing of the same soffit, round and round, and brings it into view. */
export function walkSoffit(bench: Workbench, from: SoffitThing, way: 1 | -1): void {
  const { live, unit } = inViewOf(bench, bench.editor.get());
  if (live === null) return;
  const all = thingsOf(live, from.kind === "prop" ? from.place.soffit : from.shape.soffit);
  const own = all.findIndex((thing) => soffitId(thing) === soffitId(from));
  const next = all[(own + way + all.length) % all.length];
  if (next !== undefined) showThing(bench, unit.id, next);
}

/** Puts the hand on the prop of a number. */
export function showProp(bench: Workbench, id: string): void {
  const { live, unit } = inViewOf(bench, bench.editor.get());
  const place = live === null ? undefined : sceneSoffit(live).props.find(({ prop }) => prop.piece === id);
  if (place !== undefined) showThing(bench, unit.id, { kind: "prop", place });
}

function showThing(bench: Workbench, unit: string, thing: SoffitThing): void {
  const focus = focusOf(unit, thing);
  bench.soffit.set(() => focus);
  const viewport = viewportOf(bench.editor.get(), bench.screen.get());
  const [x, y] = toScreen(viewport, focus.at);
  if (x < 0 || y < 0 || x > viewport.width || y > viewport.height) goTo(bench, focus.at, 0);
}

// Panels and strips in the order of the fill, then the props; connectors are passed over, for they are many and alike.
function thingsOf(live: LiveFill, own: Soffit): readonly SoffitThing[] {
  const { shapes, props } = sceneSoffit(live);
  return [
    ...shapes
      .filter(({ soffit, kind }) => soffit === own && kind !== "connector")
      .map((shape): SoffitThing => ({ kind: "shape", shape })),
    ...props.filter(({ soffit }) => soffit === own).map((place): SoffitThing => ({ kind: "prop", place })),
  ];
}
