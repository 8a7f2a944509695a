// The tools, each with the letter that takes it in hand.

import { COMMANDS } from "../keys.ts";
import { REGION, run } from "../live/actions.ts";
import { useBench, useEditorState, useScreen, useSpeech } from "../live/useWorkbench.tsx";
import { isAvailable } from "../state/commands.ts";
import type { ToolName } from "../tools/tool.ts";
import { words } from "../words/say.ts";
import { chordOfCommand, commandTip } from "./commandTip.ts";
import { ToolIcon } from "./icons.tsx";

const GROUPS: readonly (readonly ToolName[])[] = [
  ["select", "wall", "door", "window", "column"],
  ["room", "service", "slab", "slab-opening", "control-line", "measure"],
];

export function ToolRail() {
  const { session } = useEditorState();
  const { showsSoffit } = useScreen();
  const { t } = useSpeech();
  return (
    <div
      className="rail"
      role="toolbar"
      aria-orientation="vertical"
      aria-label={t(words("region.tools"))}
      {...{ [REGION]: "tools" }}
    >
      {GROUPS.map((group) => (
        <div className="rail-group" key={group[0]}>
          {group.map((name) => (
            <ToolButton key={name} name={name} isInHand={session.tool.name === name} />
          ))}
        </div>
      ))}
      <div className="rail-group">
        <CommandButton id="command.soffit" icon="soffit" isOn={showsSoffit} />
        <CommandButton id="command.underlay" icon="underlay" />
        <CommandButton id="command.undo" icon="undo" />
        <CommandButton id="command.redo" icon="redo" />
      </div>
    </div>
  );
}

function ToolButton({ name, isInHand }: { name: ToolName; isInHand: boolean }) {
  const bench = useBench();
  const { t } = useSpeech();
  const id = `tool.${name}` as const;
  const chord = chordOfCommand(id);
  return (
    <button
      type="button"
      className="rail-button"
      aria-pressed={isInHand}
      aria-label={commandTip(id, t)}
      title={commandTip(id, t)}
      data-tool={name}
      onClick={(event) => {
        run(bench, id);
        // By mouse the hand goes on to the plan; by keyboard the focus stays where it is.
        if (event.detail > 0) document.querySelector<HTMLElement>(".plan-host")?.focus();
      }}
    >
      <ToolIcon name={name} />
      {chord?.length === 1 ? <kbd>{chord}</kbd> : null}
    </button>
  );
}

type PlainCommand = "command.soffit" | "command.underlay" | "command.undo" | "command.redo";

interface CommandButtonProps {
  readonly id: PlainCommand;
  readonly icon: "soffit" | "underlay" | "undo" | "redo";
  /** Of a command that turns something on and off. */
  readonly isOn?: boolean;
}

function CommandButton({ id, icon, isOn }: CommandButtonProps) {
  const bench = useBench();
  const state = useEditorState();
  const { t } = useSpeech();
  const tip = commandTip(id, t);
  const chord = chordOfCommand(id);
  const command = COMMANDS.find((entry) => entry.id === id);
  return (
    <button
      type="button"
      className="rail-button"
      aria-label={tip}
      title={tip}
      aria-pressed={isOn}
      aria-disabled={command === undefined || !isAvailable(command, state, false)}
      onClick={() => run(bench, id)}
    >
      <ToolIcon name={icon} />
      {chord?.length === 1 ? <kbd>{chord}</kbd> : null}
    </button>
  );
}
