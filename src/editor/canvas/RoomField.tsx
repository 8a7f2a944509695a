// The field in which a room's name is typed, where the name will stand.

import { type KeyboardEvent, useEffect, useRef } from "react";
import { send } from "../live/actions.ts";
import { useBench, useSpeech } from "../live/useWorkbench.tsx";
import { toScreen, type Viewport } from "../scene/viewport.ts";
import { type Mark, NO_MODIFIERS } from "../tools/protocol.ts";
import { words } from "../words/say.ts";

const KEYS = ["Escape", "Enter", "Tab"] as const;

export function RoomField({ marks, viewport }: { marks: readonly Mark[]; viewport: Viewport }) {
  const bench = useBench();
  const { t } = useSpeech();
  const field = useRef<HTMLInputElement>(null);
  const mark = marks.find(({ kind }) => kind === "name");
  const isNaming = mark !== undefined;
  useEffect(() => {
    if (isNaming) field.current?.focus();
  }, [isNaming]);
  if (mark?.kind !== "name") return null;
  const [left, top] = toScreen(viewport, mark.at);
  const onKeyDown = (event: KeyboardEvent) => {
    event.stopPropagation();
    const key = KEYS.find((name) => name === event.key);
    if (key === undefined) return;
    event.preventDefault();
    send(bench, { kind: "key", key, modifiers: NO_MODIFIERS });
    document.querySelector<HTMLElement>(".plan-host")?.focus();
  };
  return (
    <label className="room-field" style={{ left, top }}>
      <span className="hidden">{t(words("name.room"))}</span>
      <input
        ref={field}
        value={mark.text}
        placeholder={t(words("name.room"))}
        onChange={(event) => send(bench, { kind: "field", text: event.target.value })}
        onKeyDown={onKeyDown}
      />
    </label>
  );
}
