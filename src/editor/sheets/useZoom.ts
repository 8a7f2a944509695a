// How large the sheet is shown: as large as the window allows, or so many pixels to the millimetre of paper. What is under
// the pointer, the fingers or in the middle stays there while it grows.

import { type RefObject, useEffect, useLayoutEffect, useRef, useState } from "react";

/** Pixels of a style sheet in a millimetre: 96 to the inch of 25.4 mm. */
const FULL = 96 / 25.4;
const STEP = 1.25;
const LEAST = 0.2;
const GREATEST = 6;
const ROUND = 24; // px kept free round a sheet that fits

interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Zoom {
  /** Of the true size; 1 = as large as on paper. */
  readonly scale: number;
  readonly isFitted: boolean;
  readonly fit: () => void;
  readonly full: () => void;
  readonly zoomIn: () => void;
  readonly zoomOut: () => void;
}

/** What must not move: a point of the window and the point of the paper under it, as a share of its sides. */
interface Anchor {
  readonly x: number;
  readonly y: number;
  readonly across: number;
  readonly down: number;
}

/** @param stage - what scrolls; its first child is the paper */
export function useZoom(stage: RefObject<HTMLElement | null>, paper: Size): Zoom {
  const [chosen, setChosen] = useState<number | null>(null);
  const room = useRoom(stage);
  const fitting = Math.min(room.width / paper.width, room.height / paper.height) / FULL;
  const scale = chosen ?? clamped(fitting);
  const anchor = useRef<Anchor | null>(null);
  const latest = useRef(scale);
  latest.current = scale;

  const zoomTo = (wanted: number, at?: { readonly x: number; readonly y: number }) => {
    if (stage.current !== null) anchor.current = anchorAt(stage.current, at);
    setChosen(clamped(wanted));
  };
  const turn = useRef(zoomTo);
  turn.current = zoomTo;

  // biome-ignore lint/correctness/useExhaustiveDependencies: after every change of scale
  useLayoutEffect(() => {
    if (stage.current !== null && anchor.current !== null) hold(stage.current, anchor.current);
    anchor.current = null;
  }, [scale]);
  useEffect(() => {
    const host = stage.current;
    return host === null
      ? undefined
      : listen(host, (factor, at) => turn.current(latest.current * factor, at));
  }, [stage]);
  return {
    scale,
    isFitted: chosen === null,
    fit: () => setChosen(null),
    full: () => zoomTo(1),
    zoomIn: () => zoomTo(scale * STEP),
    zoomOut: () => zoomTo(scale / STEP),
  };
}

/** Width of the paper on the screen, px. */
export function shownWidth(millimetres: number, scale: number): number {
  return millimetres * FULL * scale;
}

function clamped(scale: number): number {
  return Math.min(GREATEST, Math.max(LEAST, scale));
}

function useRoom(stage: RefObject<HTMLElement | null>): Size {
  const [room, setRoom] = useState<Size>({ width: 600, height: 400 });
  useLayoutEffect(() => {
    const host = stage.current;
    if (host === null) return;
    const measure = () =>
      setRoom({ width: host.offsetWidth - 2 * ROUND, height: host.offsetHeight - 2 * ROUND });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(host);
    return () => observer.disconnect();
  }, [stage]);
  return room;
}

function anchorAt(host: HTMLElement, at?: { readonly x: number; readonly y: number }): Anchor {
  const frame = host.getBoundingClientRect();
  const paper = (host.firstElementChild ?? host).getBoundingClientRect();
  const { x, y } = at ?? { x: frame.left + frame.width / 2, y: frame.top + frame.height / 2 };
  return { x, y, across: (x - paper.left) / paper.width, down: (y - paper.top) / paper.height };
}

function hold(host: HTMLElement, { x, y, across, down }: Anchor): void {
  const paper = (host.firstElementChild ?? host).getBoundingClientRect();
  host.scrollLeft += paper.left + across * paper.width - x;
  host.scrollTop += paper.top + down * paper.height - y;
}

type Turn = (factor: number, at: { readonly x: number; readonly y: number }) => void;

// The wheel with Ctrl, which is also how a touch pad pinches; two fingers on a screen.
function listen(host: HTMLElement, turn: Turn): () => void {
  let apart = 0;
  const wheel = (event: WheelEvent) => {
    if (!event.ctrlKey) return;
    event.preventDefault();
    turn(Math.exp(-event.deltaY / 300), { x: event.clientX, y: event.clientY });
  };
  const touch = (event: TouchEvent) => {
    const [a, b] = event.touches;
    if (a === undefined || b === undefined) return;
    event.preventDefault();
    const distance = Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY);
    if (event.type === "touchmove" && apart > 0) {
      turn(distance / apart, { x: (a.clientX + b.clientX) / 2, y: (a.clientY + b.clientY) / 2 });
    }
    apart = distance;
  };
  const options = { passive: false };
  host.addEventListener("wheel", wheel, options);
  host.addEventListener("touchstart", touch, options);
  host.addEventListener("touchmove", touch, options);
  return () => {
    host.removeEventListener("wheel", wheel);
    host.removeEventListener("touchstart", touch);
    host.removeEventListener("touchmove", touch);
  };
}
