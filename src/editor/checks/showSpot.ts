// Goes from a check to its place: sends the checks away, shows the unit, selects what the check is about and puts the hand
// on it in plan, soffit and elevation.

import { find, type ItemRef, listed } from "../../plan/document.ts";
import type { Mm } from "../../units.ts";
import { changeScreen, fitPlan, goTo } from "../live/actions.ts";
import type { Workbench } from "../live/workbench.ts";
import { showUnit, takeTool, unitInHand, withSession } from "../state/editorState.ts";
import type { Spot } from "./checkList.ts";

const NEAR = 0.16; // px per mm: near enough to see the pieces round a place
const PROP_FOUND: Mm = 60; // a prop that moved less since is still the same to the eye

export function showSpot(bench: Workbench, spot: Spot): void {
  const { editor } = bench;
  editor.set((state) => {
    const shown = state.session.selection.unit === spot.unit ? state : showUnit(state, spot.unit);
    return takeTool(shown, "select");
  });
  const item = itemOf(bench, spot);
  editor.set((state) => {
    const { selection } = state.session;
    return withSession(state, { selection: { ...selection, items: item === null ? [] : [item] } });
  });
  changeScreen(bench, {
    over: null,
    ...(spot.overhead === "no" ? {} : { showsSoffit: true }),
    ...(spot.face === null ? {} : { isPaneOpen: true }),
  });
  const { face, at, unit } = spot;
  bench.focus.set(() =>
    face === null ? null : { unit, face: face.id, level: face.level, x: face.x, z: face.z },
  );
  bench.soffit.set(() =>
    spot.overhead === "no" || at === null
      ? null
      : { unit, at, reach: spot.overhead === "prop" ? PROP_FOUND : 0 },
  );
  if (at !== null) goTo(bench, at, NEAR);
  else if (item === null) fitPlan(bench);
}

function itemOf(bench: Workbench, { opening, face, room, overhead }: Spot): ItemRef | null {
  const unit = unitInHand(bench.editor.get());
  if (overhead !== "no") return null;
  if (opening !== "" && find(unit.openings, opening) !== undefined)
    return { bucket: "openings", id: opening };
  const wall = face?.walls.find((id) => find(unit.walls, id) !== undefined);
  if (wall !== undefined) return { bucket: "walls", id: wall };
  const label = listed(unit.rooms).find(({ name }) => name === room);
  if (label !== undefined) return { bucket: "rooms", id: label.id };
  return room !== "" && find(unit.slabs, room) !== undefined ? { bucket: "slabs", id: room } : null;
}
