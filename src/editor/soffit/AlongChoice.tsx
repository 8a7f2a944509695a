// The choice which way the slab panels of a room lie: the better way, or one that the person wants.

import type { Position } from "../../plan/project.ts";
import { useBench, useInView, useSpeech } from "../live/useWorkbench.tsx";
import { takeStep } from "../state/editorState.ts";
import { words } from "../words/say.ts";
import { alongEdit, roomAt, soffitOver } from "./roomEdits.ts";

const WAYS = ["better", "x", "y"] as const;

/** `at`: a place in the room. */
export function AlongChoice({ at }: { at: Position }) {
  const bench = useBench();
  const { t } = useSpeech();
  const { live, unit } = useInView();
  const room = live === null ? null : roomAt(live, at);
  if (live === null || room === null || room.kind === "open") return null;
  const forced = room.soffitAlong;
  const now = soffitOver(live, at)?.along ?? null;
  const better =
    forced === null && now !== null ? (`room.along-better-${now}` as const) : "room.along-better";
  const choose = (way: (typeof WAYS)[number]) => {
    const edit = alongEdit(unit, live, { at, along: way === "better" ? null : way });
    if (edit === null) return;
    bench.editor.set((state) =>
      takeStep(state, words("step.soffit-along"), [edit], state.session.selection.items),
    );
  };
  return (
    <label className="option">
      {t(words("room.along"))}
      <select
        value={forced ?? "better"}
        onChange={(event) => {
          const way = WAYS.find((each) => each === event.target.value);
          if (way !== undefined) choose(way);
        }}
      >
        {WAYS.map((way) => (
          <option key={way} value={way}>
            {t(words(way === "better" ? better : `room.along-${way}`))}
          </option>
        ))}
      </select>
    </label>
  );
}
