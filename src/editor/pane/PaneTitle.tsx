// What the header of the pane says: the wall and which face of it, its length, its height and what makes that up; and
// the keys that work here.

import { chordOfCommand } from "../chrome/commandTip.ts";
import { placeWords } from "../chrome/placeWords.ts";
import type { CommandId } from "../keys.ts";
import { run } from "../live/actions.ts";
import { useBench, useEditorState, useSpeech } from "../live/useWorkbench.tsx";
import type { WordKey } from "../words/en.ts";
import { words } from "../words/say.ts";
import type { DrawnFace } from "./elevation.ts";
import { isPinned } from "./paneActions.ts";
import { faceWords } from "./paneWords.ts";
import type { PaneView } from "./usePane.ts";

export function PaneTitle({ view }: { view: PaneView | null }) {
  const { t } = useSpeech();
  if (view === null) return <b>{t(words("region.pane"))}</b>;
  const { drawn, seen } = view.now;
  const { face } = drawn;
  return (
    <>
      <Selected view={view} />
      <b>{t(faceWords(drawn))}</b>
      <span>{t(words("pane.length", { length: face.length }))}</span>
      <Height drawn={drawn} />
      <span className="pane-note">
        {t(words(face.room === null ? "pane.unfolded-outside" : "pane.unfolded"))}
      </span>
      <span className="pane-keys">
        <Key id="command.other-face" said="pane.key-other-face" />
        {seen === null ? null : (
          <>
            <Key id="command.pin" said={isPinned(view) ? "pane.key-unpin" : "pane.key-pin"} />
            <Key id="command.swap" said="pane.key-swap" />
            <Key id="command.covers" said="pane.key-covers" />
            <Key id="command.nudge" said="pane.key-nudge" />
          </>
        )}
      </span>
    </>
  );
}

// What is selected beside a wall: the header tells of it first, then of the face in view.
function Selected({ view }: { view: PaneView }) {
  const { items } = useEditorState().session.selection;
  const { t } = useSpeech();
  const [only] = items;
  if (only === undefined || (items.length === 1 && only.bucket === "walls")) return null;
  const said =
    items.length > 1 ? words("place.things", { count: items.length }) : placeWords(view.inView.unit, only);
  return <b className="pane-selected">{t(said)}</b>;
}

function Height({ drawn }: { drawn: DrawnFace }) {
  const { t } = useSpeech();
  const { stack, face } = drawn;
  const sum = stack.reduce((total, { height }) => total + height, 0);
  if (stack.length < 2 || sum !== face.height)
    return <span>{t(words("pane.height", { height: face.height }))}</span>;
  const parts = stack.map(({ height, kind }) => t(words(`pane.${kind}`, { height }))).join(" + ");
  return <span>{t(words("pane.stack", { height: face.height, parts }))}</span>;
}

function Key({ id, said }: { id: CommandId; said: WordKey & `pane.key-${string}` }) {
  const bench = useBench();
  const { t } = useSpeech();
  return (
    <button type="button" className="pane-key" onClick={() => run(bench, id)}>
      <kbd>{chordOfCommand(id)}</kbd> {t({ key: said, values: {} })}
    </button>
  );
}
