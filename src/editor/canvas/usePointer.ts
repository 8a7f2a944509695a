// Mouse, pen and finger on the drawing: events for the tool in hand, panning and zooming.
//
//   mouse   left: the tool        middle, or left with space: pan     wheel: nearer and further at the pointer
//   finger  tap: the tool         drag: pan, or move what is selected  two: pan and pinch

import { type PointerEvent as ReactPointerEvent, type RefObject, useEffect, useMemo } from "react";
import type { Position } from "../../plan/project.ts";
import { changeScreen, send, setView, viewportOf } from "../live/actions.ts";
import { useBench } from "../live/useWorkbench.tsx";
import { inViewOf, type Workbench } from "../live/workbench.ts";
import { placeRings, RING_RADIUS } from "../scene/rings.ts";
import { type Pixel, panned, toPlan, zoomedAt } from "../scene/viewport.ts";
import { isAmong } from "../selection.ts";
import { type Hit, hitAt } from "../snap/hit.ts";
import { planIndexOf } from "../snap/planIndex.ts";
import { contextOf, type REACH_PX, takeTool, unitInHand, withSession } from "../state/editorState.ts";
import type { Modifiers, PointerEvent } from "../tools/protocol.ts";
import { isBusy } from "../tools/tool.ts";
import { pieceAt } from "./hover.ts";

type Kind = keyof typeof REACH_PX;
type Plain = Pick<
  globalThis.PointerEvent,
  "clientX" | "clientY" | "shiftKey" | "altKey" | "ctrlKey" | "metaKey"
>;

/** What the fingers and buttons that are down are doing. */
type Doing =
  | { readonly kind: "nothing" }
  | { readonly kind: "tool" }
  | { readonly kind: "pan"; readonly last: Pixel }
  | { readonly kind: "finger"; readonly id: number; readonly start: Pixel; readonly event: Plain }
  | { readonly kind: "pinch"; readonly places: ReadonlyMap<number, Pixel> };

const TAP = 8; // px a finger may move and still tap
const WHEEL = 0.0016; // of e, for each px of the wheel

export interface PlanHandlers {
  readonly onPointerDown: (event: ReactPointerEvent) => void;
  readonly onPointerMove: (event: ReactPointerEvent) => void;
  readonly onPointerUp: (event: ReactPointerEvent) => void;
  readonly onPointerCancel: (event: ReactPointerEvent) => void;
  readonly onPointerLeave: () => void;
  readonly onDoubleClick: (event: React.MouseEvent) => void;
}

export function usePointer(host: RefObject<HTMLElement | null>): PlanHandlers {
  const bench = useBench();
  const handlers = useMemo(() => createHandlers(bench, host), [bench, host]);
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    // Not through React, whose wheel listener may not keep the page from scrolling.
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const viewport = viewportOf(bench.editor.get(), bench.screen.get());
      const unit = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 30 : 1;
      if (event.shiftKey) return setView(bench, panned(viewport, -(event.deltaX + event.deltaY) * unit, 0));
      const step = Math.max(-300, Math.min(300, event.deltaY * unit * (event.ctrlKey ? 4 : 1)));
      setView(bench, zoomedAt(viewport, Math.exp(-step * WHEEL), pixelOf(element, event)));
    };
    element.addEventListener("wheel", onWheel, { passive: false });
    return () => element.removeEventListener("wheel", onWheel);
  }, [bench, host]);
  return handlers;
}

function pixelOf(element: HTMLElement, { clientX, clientY }: Pick<Plain, "clientX" | "clientY">): Pixel {
  const { left, top } = element.getBoundingClientRect();
  return [clientX - left, clientY - top];
}

function modifiersOf({ shiftKey, altKey, ctrlKey, metaKey }: Plain): Modifiers {
  return { shift: shiftKey, alt: altKey, ctrl: ctrlKey || metaKey };
}

/** The thing under a place of the unit in hand. */
export function hitFor({ editor }: Workbench, at: Position, kind: Kind): Hit | null {
  const state = editor.get();
  const { reach } = contextOf(state, kind);
  return hitAt(planIndexOf(unitInHand(state)), at, reach / 2, state.session.selection.items);
}

function createHandlers(bench: Workbench, host: RefObject<HTMLElement | null>): PlanHandlers {
  let doing: Doing = { kind: "nothing" };
  const placeOf = (event: Plain): Position => {
    const pixel = host.current === null ? ([0, 0] as const) : pixelOf(host.current, event);
    return toPlan(viewportOf(bench.editor.get(), bench.screen.get()), pixel);
  };
  const tell = (kind: PointerEvent["kind"], event: Plain, pointer: Kind) => {
    const at = placeOf(event);
    const isQuiet = kind === "move" && bench.editor.get().session.tool.name !== "select";
    const hit = isQuiet ? null : hitFor(bench, at, pointer);
    send(bench, { kind, at, hit, modifiers: modifiersOf(event) }, pointer);
  };
  const hover = (event: Plain) => {
    const at = placeOf(event);
    bench.pointer.set(() => ({ at, byKeys: false }));
    const state = bench.editor.get();
    const isFree = state.session.tool.name === "select" && !isBusy(state.session.tool);
    const hovered = isFree ? hitFor(bench, at, "mouse") : null;
    const { live } = inViewOf(bench, state);
    const hoveredPiece = isFree ? pieceAt(live, at, state.session.view.scale) : null;
    if (isSameHit(hovered, state.session.hovered) && hoveredPiece === state.session.hoveredPiece) return;
    bench.editor.set((now) => withSession(now, { hovered, hoveredPiece }));
  };
  const panBy = (from: Pixel, to: Pixel) => {
    const { view } = bench.editor.get().session;
    setView(bench, panned(view, to[0] - from[0], to[1] - from[1]));
  };
  const pressFinger = (event: Plain) => {
    tell("move", event, "touch");
    tell("press", event, "touch");
  };

  const onPointerDown = (event: ReactPointerEvent) => {
    const element = host.current;
    if (element === null) return;
    element.setPointerCapture(event.pointerId);
    const pixel: Pixel = [event.clientX, event.clientY];
    if (event.pointerType === "touch") {
      if (doing.kind === "finger") {
        doing = {
          kind: "pinch",
          places: new Map([
            [doing.id, doing.start],
            [event.pointerId, pixel],
          ]),
        };
      } else if (doing.kind !== "pinch") {
        doing = { kind: "finger", id: event.pointerId, start: pixel, event: event.nativeEvent };
      }
      return;
    }
    const isPan = event.button === 1 || (event.button === 0 && bench.screen.get().isPanning);
    if (isPan) {
      event.preventDefault();
      doing = { kind: "pan", last: pixel };
      element.dataset.panning = "yes";
    } else if (event.button === 0) {
      if (openRing(bench, pixelOf(element, event))) return;
      doing = { kind: "tool" };
      tell("press", event.nativeEvent, "mouse");
    }
  };

  const onPointerMove = (event: ReactPointerEvent) => {
    const pixel: Pixel = [event.clientX, event.clientY];
    switch (doing.kind) {
      case "pan":
        panBy(doing.last, pixel);
        doing = { kind: "pan", last: pixel };
        return;
      case "finger":
        doing = fingerMoved(doing, pixel);
        return;
      case "pinch":
        doing = pinched(doing, event.pointerId, pixel);
        return;
      case "nothing":
      case "tool":
        hover(event.nativeEvent);
        tell("move", event.nativeEvent, event.pointerType === "touch" ? "touch" : "mouse");
    }
  };

  // A finger that drags moves what is selected, anywhere else the paper.
  const fingerMoved = (finger: Extract<Doing, { readonly kind: "finger" }>, pixel: Pixel): Doing => {
    const [dx, dy] = [pixel[0] - finger.start[0], pixel[1] - finger.start[1]];
    if (dx * dx + dy * dy < TAP * TAP) return finger;
    const { session } = bench.editor.get();
    const hit = hitFor(bench, placeOf(finger.event), "touch");
    const isHeld = hit !== null && (hit.kind !== "item" || isAmong(session.selection.items, hit.item));
    if (session.tool.name === "select" && isHeld) {
      pressFinger(finger.event);
      return { kind: "tool" };
    }
    panBy(finger.start, pixel);
    return { kind: "pan", last: pixel };
  };

  const pinched = (pinch: Extract<Doing, { readonly kind: "pinch" }>, id: number, pixel: Pixel): Doing => {
    const before = [...pinch.places.values()];
    const places = new Map(pinch.places).set(id, pixel);
    const after = [...places.values()];
    const [a, b] = before;
    const [c, d] = after;
    const element = host.current;
    if (!a || !b || !c || !d || element === null) return { kind: "pinch", places };
    const viewport = viewportOf(bench.editor.get(), bench.screen.get());
    const middle: Pixel = [(c[0] + d[0]) / 2, (c[1] + d[1]) / 2];
    const old: Pixel = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
    const moved = { ...viewport, ...panned(viewport, middle[0] - old[0], middle[1] - old[1]) };
    const at = pixelOf(element, { clientX: middle[0], clientY: middle[1] });
    setView(bench, zoomedAt(moved, gap(c, d) / Math.max(gap(a, b), 1), at));
    return { kind: "pinch", places };
  };

  const onPointerUp = (event: ReactPointerEvent) => {
    const pointer = event.pointerType === "touch" ? "touch" : "mouse";
    if (doing.kind === "tool") tell("release", event.nativeEvent, pointer);
    if (doing.kind === "finger") {
      pressFinger(doing.event);
      tell("release", doing.event, "touch");
    }
    if (host.current !== null) delete host.current.dataset.panning;
    doing = { kind: "nothing" };
  };

  return {
    onPointerDown,
    onPointerMove,
    onPointerUp,
    onPointerCancel: () => {
      // A gesture the system takes away leaves nothing behind.
      if (doing.kind === "tool") {
        send(bench, { kind: "key", key: "Escape", modifiers: { shift: false, alt: false, ctrl: false } });
      }
      doing = { kind: "nothing" };
    },
    onPointerLeave: () => {
      bench.pointer.set(() => ({ at: null, byKeys: false }));
      bench.editor.set((now) =>
        now.session.hovered === null && now.session.hoveredPiece === null
          ? now
          : withSession(now, { hovered: null, hoveredPiece: null }),
      );
    },
    onDoubleClick: (event) => {
      const hit = hitFor(bench, placeOf(event.nativeEvent as Plain), "mouse");
      const isRoom = hit?.kind === "item" && hit.item.bucket === "rooms";
      if (isRoom && bench.editor.get().session.tool.name === "select") {
        bench.editor.set((state) => takeTool(state, "room"));
        tell("press", event.nativeEvent as Plain, "mouse");
        return;
      }
      tell("double", event.nativeEvent as Plain, "mouse");
    },
  };
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

function gap(a: Pixel, b: Pixel): number {
  return Math.sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2);
}

function isSameHit(a: Hit | null, b: Hit | null): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
