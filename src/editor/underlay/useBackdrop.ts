// Draws the picture of the unit in view under the plan.

import { useEffect, useMemo, useState } from "react";
import type { Position } from "../../plan/project.ts";
import { useBench, useInView } from "../live/useWorkbench.tsx";
import type { Backdrop } from "../live/workbench.ts";
import { toPixel } from "../scene/viewport.ts";
import {
  type PicturePlace,
  planPlaceOf,
  readUnderlay,
  type Underlay,
  type UnderlayAnswer,
} from "./underlay.ts";

/** The underlay of the unit in view, read again only when its record changes. */
export function useUnderlay(): UnderlayAnswer {
  const { unit } = useInView();
  return useMemo(() => readUnderlay(unit.underlay), [unit.underlay]);
}

export function useBackdrop(): void {
  const { backdrop } = useBench();
  const answer = useUnderlay();
  const underlay = answer.status === "ok" ? answer.underlay : null;
  const picture = useDecoded(underlay?.image ?? null);
  useEffect(() => {
    backdrop.set(() => (underlay === null || picture === null ? null : backdropOf(underlay, picture)));
  }, [backdrop, underlay, picture]);
  useEffect(() => () => backdrop.set(() => null), [backdrop]);
}

// A picture that cannot be decoded is not drawn; the panel of the underlay stays to take it away.
function useDecoded(image: string | null): HTMLImageElement | null {
  const [decoded, setDecoded] = useState<{ readonly of: string; readonly picture: HTMLImageElement } | null>(
    null,
  );
  useEffect(() => {
    if (image === null) return;
    let isWanted = true;
    const picture = new Image();
    picture.src = image;
    picture.decode().then(
      () => {
        if (isWanted) setDecoded({ of: image, picture });
      },
      () => undefined,
    );
    return () => {
      isWanted = false;
    };
  }, [image]);
  return decoded !== null && decoded.of === image ? decoded.picture : null;
}

function backdropOf(underlay: Underlay, picture: HTMLImageElement): Backdrop {
  const { width, height, opacity } = underlay;
  return (pen, viewport) => {
    const at = (place: PicturePlace): Position => toPixel(viewport, planPlaceOf(underlay, place));
    const [x, y] = at([0, height]);
    const [rightX, rightY] = at([width, height]);
    const [downX, downY] = at([0, 0]);
    pen.save();
    pen.globalAlpha = opacity;
    pen.transform(
      (rightX - x) / width,
      (rightY - y) / width,
      (downX - x) / height,
      (downY - y) / height,
      x,
      y,
    );
    pen.drawImage(picture, 0, 0, width, height);
    pen.restore();
  };
}
