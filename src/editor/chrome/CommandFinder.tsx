// The search for commands: type a part of a name, walk with the arrows, Enter carries it out. Every command shows its key.

import { type KeyboardEvent, useEffect, useRef, useState } from "react";
import { type Command, chordKeys, searchCommands } from "../keys.ts";
import { changeScreen, run } from "../live/actions.ts";
import { useBench, useEditorState, useScreen, useSpeech } from "../live/useWorkbench.tsx";
import { isAvailable } from "../state/commands.ts";
import { words } from "../words/say.ts";

export function CommandFinder() {
  const { isFinding } = useScreen();
  return isFinding ? <Finder /> : null;
}

interface Search {
  readonly text: string;
  readonly index: number;
  readonly found: readonly Command[];
  readonly can: (command: Command) => boolean;
  readonly search: (text: string) => void;
  readonly choose: (command: Command | undefined) => void;
  readonly close: () => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

function useSearch(): Search {
  const bench = useBench();
  const state = useEditorState();
  const { isPaneOpen } = useScreen();
  const { speech } = useSpeech();
  const [text, setText] = useState("");
  const [index, setIndex] = useState(0);
  const found = searchCommands(text, speech).filter(({ id }) => id !== "command.find");
  const can = (command: Command) => isAvailable(command, state, isPaneOpen);
  const close = () => changeScreen(bench, { isFinding: false });
  const choose = (command: Command | undefined) => {
    if (command === undefined || !can(command)) return;
    close();
    run(bench, command.id);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (step !== 0) setIndex((index + step + found.length) % Math.max(1, found.length));
    else if (event.key === "Enter") choose(found[index]);
    else if (event.key === "Escape") close();
    else return;
    event.preventDefault();
  };
  const search = (typed: string) => {
    setText(typed);
    setIndex(0);
  };
  return { text, index, found, can, search, choose, close, onKeyDown };
}

// Takes the focus while it is there, and gives it back to what had it.
function useFocus() {
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    field.current?.focus();
    return () => (before instanceof HTMLElement ? before.focus() : undefined);
  }, []);
  return field;
}

function Finder() {
  const { t } = useSpeech();
  const { text, index, found, can, search, choose, close, onKeyDown } = useSearch();
  const field = useFocus();
  const label = t(words("find.label"));
  return (
    <div
      className="finder-back"
      onPointerDown={(event) => (event.target === event.currentTarget ? close() : undefined)}
    >
      <div className="finder" role="dialog" aria-label={label} aria-modal="true">
        <input
          ref={field}
          role="combobox"
          aria-expanded="true"
          aria-controls="found-commands"
          aria-activedescendant={`found-${index}`}
          aria-label={label}
          placeholder={label}
          value={text}
          autoComplete="off"
          onChange={(event) => search(event.target.value)}
          onKeyDown={onKeyDown}
          onBlur={close}
        />
        <div id="found-commands" role="listbox" aria-label={label}>
          {found.map((command, k) => (
            <FoundCommand
              key={command.id}
              command={command}
              name={t({ key: command.words, values: {} })}
              place={{ index: k, isChosen: k === index, isOff: !can(command) }}
              onChoose={() => choose(command)}
            />
          ))}
        </div>
        {found.length === 0 ? <p className="nothing">{t(words("find.none"))}</p> : null}
      </div>
    </div>
  );
}

interface FoundProps {
  readonly command: Command;
  readonly name: string;
  readonly place: { readonly index: number; readonly isChosen: boolean; readonly isOff: boolean };
  readonly onChoose: () => void;
}

function FoundCommand({ command, name, place, onChoose }: FoundProps) {
  const row = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (place.isChosen) row.current?.scrollIntoView({ block: "nearest" });
  }, [place.isChosen]);
  return (
    <div
      ref={row}
      id={`found-${place.index}`}
      role="option"
      tabIndex={-1}
      aria-selected={place.isChosen}
      aria-disabled={place.isOff}
      className="found"
      // The field keeps the focus, or leaving it would close the list before the click.
      onPointerDown={(event) => {
        event.preventDefault();
        onChoose();
      }}
    >
      <span>{name}</span>
      <span>
        {command.chord === null ? null : chordKeys(command.chord).map((key) => <kbd key={key}>{key}</kbd>)}
      </span>
    </div>
  );
}
