// What can be said of the room that is selected: whether a slab is over it, how much lower its soffit is, which way its
// slab panels lie, and the way to the pieces of its soffit.

import type { ReactNode } from "react";
import { find } from "../../plan/document.ts";
import type { ChangeRoom } from "../../plan/editLoose.ts";
import { NumberField } from "../chrome/NumberField.tsx";
import { useBench, useInView, useSpeech } from "../live/useWorkbench.tsx";
import { takeStep } from "../state/editorState.ts";
import { words } from "../words/say.ts";
import { AlongChoice } from "./AlongChoice.tsx";
import { soffitOver } from "./roomEdits.ts";
import { showSoffitAt } from "./soffitActions.ts";

const KINDS = ["unsaid", "room", "open"] as const;

export function RoomFields({ id }: { id: string }): ReactNode {
  const bench = useBench();
  const { t } = useSpeech();
  const { unit, live } = useInView();
  const room = find(unit.rooms, id);
  if (room === undefined) return null;
  const change = (set: ChangeRoom["set"]) =>
    bench.editor.set((state) =>
      takeStep(
        state,
        words("step.change-room"),
        [{ kind: "change-room", unit: unit.id, room: id, set }],
        state.session.selection.items,
      ),
    );
  const hasSoffit = live !== null && soffitOver(live, room.at) !== null;
  return (
    <>
      <label className="option">
        {t(words("room.kind"))}
        <select
          value={room.kind ?? "unsaid"}
          onChange={(event) => {
            const kind = KINDS.find((each) => each === event.target.value);
            if (kind !== undefined) change({ kind: kind === "unsaid" ? null : kind });
          }}
        >
          {KINDS.map((kind) => (
            <option key={kind} value={kind}>
              {t(words(`room.kind-${kind}`))}
            </option>
          ))}
        </select>
      </label>
      {room.kind === "open" ? null : (
        <NumberField
          label={t(words("room.drop"))}
          value={room.soffitDrop}
          onKeep={(soffitDrop) => change({ soffitDrop })}
        />
      )}
      <AlongChoice at={room.at} />
      {hasSoffit ? (
        <button type="button" className="toggle" onClick={() => showSoffitAt(bench, room.at)}>
          {t(words("soffit.pieces"))}
        </button>
      ) : null}
    </>
  );
}
