// What the fingers and buttons that are down on the drawing are doing, and what each movement of them makes.
//
//   nothing ──left button──▶ tool            ──up──▶ nothing
//           ──middle, or left with space──▶ pan
//           ──finger──▶ finger ──moved──▶ pan, or tool where it is on what is selected
//                          └──second finger──▶ pinch

import type { PointerEvent as ReactPointerEvent } from "react";
import type { Position } from "../../plan/project.ts";
import { changeScreen, send, setView, viewportOf } from "../live/actions.ts";
import { inViewOf, type Workbench } from "../live/workbench.ts";
import { detailAt } from "../scene/detail.ts";
import { placeRings, RING_RADIUS } from "../scene/rings.ts";
import { soffitAt, soffitId } from "../scene/soffitHit.ts";
import { type Pixel, panned, toPlan } from "../scene/viewport.ts";
import { isAmong } from "../selection.ts";
import { type Hit, hitAt } from "../snap/hit.ts";
import { planIndexOf } from "../snap/planIndex.ts";
import { letGoOfSoffit, takeSoffit } from "../soffit/soffitActions.ts";
import { contextOf, type REACH_PX, takeTool, unitInHand, withSession } from "../state/editorState.ts";
import { type Modifiers, NO_MODIFIERS, type PointerEvent } from "../tools/protocol.ts";
import { isBusy } from "../tools/tool.ts";
import { pieceAt } from "./hover.ts";
import { gap, pinched } from "./pinch.ts";

type Kind = keyof typeof REACH_PX;
export type Plain = Pick<
  globalThis.PointerEvent,
  "clientX" | "clientY" | "shiftKey" | "altKey" | "ctrlKey" | "metaKey"
>;

type Doing =
  | { readonly kind: "nothing" }
  | { readonly kind: "tool" }
  | { readonly kind: "pan"; readonly last: Pixel }
  | { readonly kind: "finger"; readonly id: number; readonly start: Pixel; readonly event: Plain }
  | { readonly kind: "pinch"; readonly places: ReadonlyMap<number, Pixel> };

export interface Hand {
  readonly bench: Workbench;
  /** The element of the drawing; null while it is not on the page. */
  readonly element: () => HTMLElement | null;
  doing: Doing;
}

const TAP = 8; // px a finger may move and still tap
const NOTHING: Doing = { kind: "nothing" };

export function pixelOf(
  element: HTMLElement,
  { clientX, clientY }: Pick<Plain, "clientX" | "clientY">,
): Pixel {
  const { left, top } = element.getBoundingClientRect();
  return [clientX - left, clientY - top];
}

function modifiersOf({ shiftKey, altKey, ctrlKey, metaKey }: Plain): Modifiers {
  return { shift: shiftKey, alt: altKey, ctrl: ctrlKey || metaKey };
}

function placeOf({ bench, element }: Hand, event: Plain): Position {
  const host = element();
  const pixel = host === null ? ([0, 0] as const) : pixelOf(host, event);
  return toPlan(viewportOf(bench.editor.get(), bench.screen.get()), pixel);
}

/** The thing under a place of the unit in hand. */
export function hitFor({ editor }: Workbench, at: Position, kind: Kind): Hit | null {
  const state = editor.get();
  const { reach } = contextOf(state, kind);
  return hitAt(planIndexOf(unitInHand(state)), at, reach / 2, state.session.selection.items);
}

function tell(hand: Hand, kind: PointerEvent["kind"], event: Plain, pointer: Kind): void {
  const { bench } = hand;
  const at = placeOf(hand, event);
  const isQuiet = kind === "move" && bench.editor.get().session.tool.name !== "select";
  const hit = isQuiet ? null : hitFor(bench, at, pointer);
  send(bench, { kind, at, hit, modifiers: modifiersOf(event) }, pointer);
}

function hover(hand: Hand, event: Plain): void {
  const { bench } = hand;
  const at = placeOf(hand, event);
  bench.pointer.set(() => ({ at, byKeys: false }));
  const state = bench.editor.get();
  const { tool, view } = state.session;
  const isFree = tool.name === "select" && !isBusy(tool);
  const hovered = isFree ? hitFor(bench, at, "mouse") : null;
  const hoveredPiece = isFree ? litAt(bench, at, view.scale) : null;
  light(bench, hovered, hoveredPiece);
}

// Pieces of walls lie over those of the soffit.
function litAt(bench: Workbench, at: Position, scale: number): string | null {
  const { live, isStale } = inViewOf(bench, bench.editor.get());
  const piece = pieceAt(live, at, scale);
  if (piece !== null || isStale || !showsSoffitAt(bench, scale)) return piece;
  const thing = soffitAt(live, at, PROP_REACH.mouse / scale);
  return thing === null ? null : soffitId(thing);
}

const PROP_REACH = { mouse: 7, touch: 16 } as const; // px

function showsSoffitAt({ screen }: Workbench, scale: number): boolean {
  return screen.get().showsSoffit && detailAt(scale).pieces;
}

// A press on the soffit takes what lies there; on anything drawn over it, lets go. Slabs and their holes lie under it.
function pressSoffit(hand: Hand, event: Plain, pointer: Kind): void {
  const { bench } = hand;
  const { tool, view } = bench.editor.get().session;
  if (tool.name !== "select" || isBusy(tool) || !showsSoffitAt(bench, view.scale)) return;
  const at = placeOf(hand, event);
  const hit = hitFor(bench, at, pointer);
  const isUnder = hit?.kind === "item" && ["slabs", "slabOpenings"].includes(hit.item.bucket);
  const isOnWall = pieceAt(inViewOf(bench, bench.editor.get()).live, at, view.scale) !== null;
  if ((hit !== null && !isUnder) || isOnWall) letGoOfSoffit(bench);
  else takeSoffit(bench, at, PROP_REACH[pointer] / view.scale);
}

// Lights up what is under the pointer; a state that says so already is left alone.
function light({ editor }: Workbench, hovered: Hit | null, hoveredPiece: string | null): void {
  editor.set((state) => {
    const { session } = state;
    const isSame = JSON.stringify(hovered) === JSON.stringify(session.hovered);
    return isSame && hoveredPiece === session.hoveredPiece
      ? state
      : withSession(state, { hovered, hoveredPiece });
  });
}

function panBy({ bench }: Hand, from: Pixel, to: Pixel): void {
  setView(bench, panned(bench.editor.get().session.view, to[0] - from[0], to[1] - from[1]));
}

// A press on the ring of a problem opens the list at it. Returns whether there was one.
function openRing(bench: Workbench, at: Pixel): boolean {
  const state = bench.editor.get();
  if (state.session.tool.name !== "select" || isBusy(state.session.tool)) return false;
  const viewport = viewportOf(state, bench.screen.get());
  const rings = placeRings({ ...inViewOf(bench, state), viewport });
  const ring = rings.find(({ centre }) => gap(centre, at) <= RING_RADIUS + 3);
  if (ring === undefined) return false;
  changeScreen(bench, { panel: "problems", problem: ring.placed.number });
  return true;
}

export function pressed(hand: Hand, event: ReactPointerEvent): void {
  const { bench } = hand;
  const host = hand.element();
  if (host === null) return;
  host.setPointerCapture(event.pointerId);
  const pixel: Pixel = [event.clientX, event.clientY];
  if (event.pointerType === "touch") {
    hand.doing = fingerDown(hand.doing, event, pixel);
    return;
  }
  if (event.button === 1 || (event.button === 0 && bench.screen.get().isPanning)) {
    event.preventDefault();
    hand.doing = { kind: "pan", last: pixel };
    return;
  }
  if (event.button !== 0 || openRing(bench, pixelOf(host, event))) return;
  hand.doing = { kind: "tool" };
  pressSoffit(hand, event.nativeEvent, "mouse");
  tell(hand, "press", event.nativeEvent, "mouse");
}

function fingerDown(doing: Doing, event: ReactPointerEvent, pixel: Pixel): Doing {
  const id = event.pointerId;
  if (doing.kind === "pinch") return doing;
  if (doing.kind !== "finger") return { kind: "finger", id, start: pixel, event: event.nativeEvent };
  return {
    kind: "pinch",
    places: new Map([
      [doing.id, doing.start],
      [id, pixel],
    ]),
  };
}

export function moved(hand: Hand, event: ReactPointerEvent): void {
  const { bench, doing } = hand;
  const pixel: Pixel = [event.clientX, event.clientY];
  switch (doing.kind) {
    case "pan":
      panBy(hand, doing.last, pixel);
      hand.doing = { kind: "pan", last: pixel };
      return;
    case "finger":
      hand.doing = fingerMoved(hand, doing, pixel);
      return;
    case "pinch": {
      const host = hand.element();
      const places = new Map(doing.places).set(event.pointerId, pixel);
      const { left = 0, top = 0 } = host?.getBoundingClientRect() ?? {};
      const viewport = viewportOf(bench.editor.get(), bench.screen.get());
      setView(bench, pinched(viewport, { before: doing.places, after: places, corner: [left, top] }));
      hand.doing = { kind: "pinch", places };
      return;
    }
    case "nothing":
    case "tool":
      hover(hand, event.nativeEvent);
      tell(hand, "move", event.nativeEvent, event.pointerType === "touch" ? "touch" : "mouse");
      return;
    default:
      doing satisfies never;
  }
}

// A finger that drags moves what is selected, anywhere else the paper.
function fingerMoved(hand: Hand, finger: Extract<Doing, { readonly kind: "finger" }>, pixel: Pixel): Doing {
  if (gap(pixel, finger.start) < TAP) return finger;
  const { session } = hand.bench.editor.get();
  const hit = hitFor(hand.bench, placeOf(hand, finger.event), "touch");
  const isHeld = hit !== null && (hit.kind !== "item" || isAmong(session.selection.items, hit.item));
  if (session.tool.name === "select" && isHeld) {
    pressFinger(hand, finger.event);
    return { kind: "tool" };
  }
  panBy(hand, finger.start, pixel);
  return { kind: "pan", last: pixel };
}

// A finger comes down out of nowhere: the tool is told of the place before the press.
function pressFinger(hand: Hand, event: Plain): void {
  tell(hand, "move", event, "touch");
  tell(hand, "press", event, "touch");
}

export function lifted(hand: Hand, event: ReactPointerEvent): void {
  const { doing } = hand;
  hand.doing = NOTHING;
  if (doing.kind === "tool") {
    tell(hand, "release", event.nativeEvent, event.pointerType === "touch" ? "touch" : "mouse");
  } else if (doing.kind === "finger") {
    pressSoffit(hand, doing.event, "touch");
    pressFinger(hand, doing.event);
    tell(hand, "release", doing.event, "touch");
  }
}

/** A gesture the system takes away leaves nothing behind. */
export function takenAway(hand: Hand): void {
  const { doing } = hand;
  hand.doing = NOTHING;
  if (doing.kind === "tool") send(hand.bench, { kind: "key", key: "Escape", modifiers: NO_MODIFIERS });
}

export function left({ bench }: Hand): void {
  bench.pointer.set(() => ({ at: null, byKeys: false }));
  light(bench, null, null);
}

/** A double press ends what is being drawn; on the name of a room it opens that. */
export function doublePressed(hand: Hand, event: Plain): void {
  const { bench } = hand;
  const hit = hitFor(bench, placeOf(hand, event), "mouse");
  const isRoom = hit?.kind === "item" && hit.item.bucket === "rooms";
  const opensName = isRoom && bench.editor.get().session.tool.name === "select";
  if (opensName) bench.editor.set((state) => takeTool(state, "room"));
  tell(hand, opensName ? "press" : "double", event, "mouse");
}
