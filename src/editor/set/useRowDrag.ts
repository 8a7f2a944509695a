// Drags a row of a table by its handle, with mouse, pen or finger. Nothing is changed before the row is let go; Escape and a
// lost pointer put it back.

import { type PointerEvent, type RefObject, useEffect, useRef, useState } from "react";
import { dropPlace } from "./dropPlace.ts";

/** A row in the hand. */
export interface Dragged {
  readonly id: string;
  /** How far it is from where it stood, px. */
  readonly by: number;
  /** Where it would come to stand among the other rows, from 0. */
  readonly place: number;
}

export interface RowDrag {
  readonly dragged: Dragged | null;
  readonly onPointerDown: (id: string, event: PointerEvent<HTMLElement>) => void;
  readonly onPointerMove: (event: PointerEvent<HTMLElement>) => void;
  readonly onPointerUp: () => void;
  readonly onPointerCancel: () => void;
}

/** How near the edge of what scrolls the hand scrolls it, and by how much at a movement, px. */
const EDGE = { reach: 44, step: 14 } as const;

/**
 * @param body - holds the rows, each with its id as `data-row`
 * @param onDrop - told where a row is let go
 */
export function useRowDrag(
  body: RefObject<HTMLElement | null>,
  onDrop: (id: string, place: number) => void,
): RowDrag {
  const [dragged, setDragged] = useState<Dragged | null>(null);
  const from = useRef(0);
  const isDragging = dragged !== null;
  useEffect(() => {
    if (!isDragging) return;
    const putBack = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
      setDragged(null);
      event.preventDefault();
      event.stopPropagation();
    };
    addEventListener("keydown", putBack, true);
    return () => removeEventListener("keydown", putBack, true);
  }, [isDragging]);
  return {
    dragged,
    onPointerDown: (id, event) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      from.current = event.clientY + scrolled(event.currentTarget);
      setDragged({ id, by: 0, place: placeOf(rowsOf(body), id) });
    },
    onPointerMove: ({ clientY, currentTarget }) => {
      if (dragged === null) return;
      scrollAtEdge(currentTarget, clientY);
      const others = rowsOf(body).filter(({ dataset }) => dataset.row !== dragged.id);
      const place = dropPlace(
        others.map((row) => row.getBoundingClientRect()),
        clientY,
      );
      setDragged({ id: dragged.id, place, by: clientY + scrolled(currentTarget) - from.current });
    },
    onPointerUp: () => {
      if (dragged !== null) onDrop(dragged.id, dragged.place);
      setDragged(null);
    },
    onPointerCancel: () => setDragged(null),
  };
}

function rowsOf({ current }: RefObject<HTMLElement | null>): readonly HTMLElement[] {
  return current === null ? [] : [...current.querySelectorAll<HTMLElement>("[data-row]")];
}

function placeOf(rows: readonly HTMLElement[], id: string): number {
  return rows.findIndex(({ dataset }) => dataset.row === id);
}

function scroller(element: HTMLElement): HTMLElement | null {
  return element.closest<HTMLElement>("[data-scrolls]");
}

function scrolled(element: HTMLElement): number {
  return scroller(element)?.scrollTop ?? 0;
}

function scrollAtEdge(element: HTMLElement, hand: number): void {
  const box = scroller(element);
  if (box === null) return;
  const { top, bottom } = box.getBoundingClientRect();
  if (hand < top + EDGE.reach) box.scrollBy(0, -EDGE.step);
  else if (hand > bottom - EDGE.reach) box.scrollBy(0, EDGE.step);
}
