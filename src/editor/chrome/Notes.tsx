// What is said over the plan: the last message, else a hint to somebody who has not done anything yet.

import { isEmptyUnit } from "../../plan/documentProject.ts";
import { useEditorState, useInView, useSpeech } from "../live/useWorkbench.tsx";
import { type Words, words } from "../words/say.ts";

export function Notes() {
  const { session, history } = useEditorState();
  const { unit, isBroken } = useInView();
  const { t } = useSpeech();
  const { message, tool, preview } = session;
  const isAtRest = preview === null && session.selection.items.length === 0;
  const isDrawing = preview?.marks.some(({ kind }) => kind === "figure") === true && tool.name !== "measure";
  const isNew = history.past.length === 0 && history.future.length === 0;
  const hint: Words | null = isDrawing
    ? words("hint.take")
    : isEmptyUnit(unit)
      ? words("hint.empty")
      : isNew && isAtRest && tool.name === "select"
        ? words("hint.first")
        : null;
  return (
    <div className="notes" role="status" aria-live="polite">
      {message !== null || isBroken ? (
        <p className="message">{t(message ?? words("message.fill-broken"))}</p>
      ) : hint !== null ? (
        <p className="hint">{t(hint)}</p>
      ) : null}
    </div>
  );
}
