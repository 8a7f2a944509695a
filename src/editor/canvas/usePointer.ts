// Mouse, pen and finger on the drawing: events for the tool in hand, panning and zooming.
//
//   mouse   left: the tool        middle, or left with space: pan     wheel: nearer and further at the pointer
//   finger  tap: the tool         drag: pan, or move what is selected  two: pan and pinch

import { type MouseEvent, type PointerEvent, type RefObject, useEffect, useMemo } from "react";
import { setView, viewportOf } from "../live/actions.ts";
import { useBench } from "../live/useWorkbench.tsx";
import { panned, type Viewport, zoomedAt } from "../scene/viewport.ts";
import type { View } from "../state/session.ts";
import { doublePressed, type Hand, left, lifted, moved, pixelOf, pressed, takenAway } from "./hand.ts";

const WHEEL = 0.0016; // of e, for each px of the wheel
const LINE = 30; // px of a wheel that counts lines
const MOST = 300; // px of one turn of the wheel
const FINE = 4; // a pinch on a touch pad comes as a wheel in small steps

export interface PlanHandlers {
  readonly onPointerDown: (event: PointerEvent) => void;
  readonly onPointerMove: (event: PointerEvent) => void;
  readonly onPointerUp: (event: PointerEvent) => void;
  readonly onPointerCancel: () => void;
  readonly onPointerLeave: () => void;
  readonly onDoubleClick: (event: MouseEvent) => void;
}

export function usePointer(host: RefObject<HTMLElement | null>): PlanHandlers {
  const bench = useBench();
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    // Not through React, whose wheel listener may not keep the page from scrolling.
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const viewport = viewportOf(bench.editor.get(), bench.screen.get());
      setView(bench, wheeled(viewport, event, pixelOf(element, event)));
    };
    element.addEventListener("wheel", onWheel, { passive: false });
    return () => element.removeEventListener("wheel", onWheel);
  }, [bench, host]);
  return useMemo(() => {
    const hand: Hand = { bench, element: () => host.current, doing: { kind: "nothing" } };
    return {
      onPointerDown: (event) => pressed(hand, event),
      onPointerMove: (event) => moved(hand, event),
      onPointerUp: (event) => lifted(hand, event),
      onPointerCancel: () => takenAway(hand),
      onPointerLeave: () => left(hand),
      onDoubleClick: (event) => doublePressed(hand, event.nativeEvent),
    };
  }, [bench, host]);
}

type Wheel = Pick<WheelEvent, "deltaX" | "deltaY" | "deltaMode" | "shiftKey" | "ctrlKey">;

/** The view after a turn of the wheel: nearer or further at the pointer, sideways with Shift. */
export function wheeled(viewport: Viewport, event: Wheel, at: readonly [number, number]): View {
  const unit = event.deltaMode === 1 ? LINE : 1;
  if (event.shiftKey) return panned(viewport, -(event.deltaX + event.deltaY) * unit, 0);
  const step = Math.max(-MOST, Math.min(MOST, event.deltaY * unit * (event.ctrlKey ? FINE : 1)));
  return zoomedAt(viewport, Math.exp(-step * WHEEL), at);
}
