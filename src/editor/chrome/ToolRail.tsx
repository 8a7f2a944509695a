// The tools, each with the letter that takes it in hand.

import { REGION, run } from "../live/actions.ts";
import { useBench, useEditorState, useSpeech } from "../live/useWorkbench.tsx";
import type { ToolName } from "../tools/tool.ts";
import { words } from "../words/say.ts";
import { chordOfCommand, commandTip } from "./commandTip.ts";
import { ToolIcon } from "./icons.tsx";

const GROUPS: readonly (readonly ToolName[])[] = [
  ["select", "wall", "door", "window", "column"],
  ["room", "service", "control-line", "measure"],
];

export function ToolRail() {
  const { session } = useEditorState();
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
        <UnderlayButton />
      </div>
    </div>
  );
}

function ToolButton({ name, isInHand }: { name: ToolName; isInHand: boolean }) {
  const bench = useBench();
  const { t } = useSpeech();
  const id = `tool.${name}` as const;
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
      <kbd>{chordOfCommand(id)}</kbd>
    </button>
  );
}

function UnderlayButton() {
  const bench = useBench();
  const { t } = useSpeech();
  const tip = commandTip("command.underlay", t);
  return (
    <button
      type="button"
      className="rail-button"
      aria-label={tip}
      title={tip}
      onClick={() => run(bench, "command.underlay")}
    >
      <ToolIcon name="underlay" />
      <kbd>{chordOfCommand("command.underlay")}</kbd>
    </button>
  );
}
