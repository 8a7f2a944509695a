// What is done with the picture under the plan: laid there, changed, taken away. Each is one step.

import { changeScreen, viewportOf } from "../live/actions.ts";
import type { Workbench } from "../live/workbench.ts";
import { visibleBox } from "../scene/viewport.ts";
import { takeStep, takeTool, unitInHand, withSession } from "../state/editorState.ts";
import { type Words, words } from "../words/say.ts";
import { readPicture } from "./readPicture.ts";
import { laidUnder, type Underlay, underlayJson } from "./underlay.ts";

const SHARE = 0.8; // of the view that a picture just laid down takes

/** Lays a file under the unit in hand, over what is in view, and says what keeps it from being laid. */
export async function layFile(bench: Workbench, file: File): Promise<void> {
  const { unit } = bench.editor.get().session.selection;
  tell(bench, words("underlay.reading", { name: file.name }));
  const answer = await readPicture(file);
  if (answer.status === "refused") {
    tell(bench, answer.said);
    return;
  }
  // Another unit may have come into view while the file was read: the picture goes where it was dropped.
  const state = bench.editor.get();
  const box = visibleBox(viewportOf(state, bench.screen.get()));
  const { picture } = answer;
  const fits = Math.min(box.maxX - box.minX, ((box.maxY - box.minY) * picture.width) / picture.height);
  const middle = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2] as const;
  const underlay = laidUnder(picture, { middle, width: Math.max(1, fits * SHARE) });
  bench.editor.set((now) =>
    takeStep(
      withSession(now, { message: null }),
      words("step.underlay"),
      [{ kind: "set-underlay", unit, underlay: underlayJson(underlay) }],
      now.session.selection.items,
    ),
  );
  changeScreen(bench, { isUnderlayOpen: true });
}

/** Changes the underlay of the unit in hand; null takes it away. */
export function changeUnderlay(bench: Workbench, underlay: Underlay | null): void {
  bench.editor.set((state) =>
    takeStep(
      state,
      words(underlay === null ? "step.remove-underlay" : "step.change-underlay"),
      [
        {
          kind: "set-underlay",
          unit: unitInHand(state).id,
          underlay: underlay === null ? null : underlayJson(underlay),
        },
      ],
      state.session.selection.items,
    ),
  );
}

/** Takes the tool in hand that sets the scale. */
export function beginCalibrating(bench: Workbench): void {
  bench.editor.set((state) => takeTool(state, "calibrate"));
  document.querySelector<HTMLElement>(".plan-host")?.focus();
}

function tell(bench: Workbench, message: Words): void {
  bench.editor.set((state) => withSession(state, { message }));
}
