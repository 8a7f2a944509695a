// The card of the soffit while the hand is on something in it. It is loaded when it is first wanted.

import { lazy, Suspense, useEffect, useSyncExternalStore } from "react";
import { useBench, useEditorState, useScreen } from "../live/useWorkbench.tsx";
import { toScreen } from "../scene/viewport.ts";

const loadCard = () => import("./SoffitCard.tsx");
const SoffitCard = lazy(async () => ({ default: (await loadCard()).SoffitCard }));

const TAKEN = 400; // px of the plan that the card takes, with its margin

export function SoffitLayer() {
  const { soffit } = useBench();
  const { showsSoffit, size } = useScreen();
  const focus = useSyncExternalStore(soffit.subscribe, soffit.get);
  const { view } = useEditorState().session;
  // Fetched as soon as the soffit is looked at, so that the first click finds it there.
  useEffect(() => {
    if (showsSoffit) loadCard().catch(() => {});
  }, [showsSoffit]);
  if (!showsSoffit || focus === null) return null;
  // On the side where what it tells of is not under it.
  const [x] = toScreen({ ...view, ...size }, focus.at);
  return (
    <Suspense>
      <SoffitCard focus={focus} side={x > size.width - TAKEN ? "left" : "right"} />
    </Suspense>
  );
}
