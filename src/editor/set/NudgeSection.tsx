// Small moves of walls that make the set cheaper, over the whole scheme, each solved again. Applying one is a step of the plan.

import type { NudgeList, SchemeNudge } from "../../fill/nudge/nudgeList.ts";
import { useEditorState, useSpeech } from "../live/useWorkbench.tsx";
import { AsideSection } from "./AsideSection.tsx";
import { inputsOf } from "./inputs.ts";
import { nudgeEdit } from "./nudgeEdit.ts";
import { unitTitle } from "./pourRows.ts";
import type { Needs } from "./useNeeds.ts";
import { useNudger } from "./useOptimiser.ts";
import { useAmounts, useSetWords } from "./useSetWords.ts";
import { useStep } from "./useStep.ts";

export function NudgeSection({ needs: { plan, counted } }: { needs: Needs }) {
  const w = useSetWords();
  const { doc } = useEditorState().history;
  const { nudger, nudging } = useNudger();
  if (plan === null || counted === null || counted.pieces.length === 0) return null;
  const { found, told } = nudging;
  const isOld = found !== null && found.inputs !== inputsOf(doc);
  return (
    <AsideSection
      className="set-nudges"
      title={w("nudges")}
      ask={[w("seek"), w("seek-again")]}
      why={w("nudges-why")}
      told={
        told === null ? w("stage.bound") : w(`seeking.${told.stage}`, { number: told.done, all: told.of })
      }
      aside={nudging}
      isOld={isOld}
      onBegin={() => nudger.begin(plan, inputsOf(doc))}
      onCancel={nudger.cancel}
    >
      {found === null ? null : <Found list={found.value} isOld={isOld} currency={plan.kit.currency} />}
    </AsideSection>
  );
}

/** What an empty list says. */
const NOTHING = {
  done: "nudges-none",
  limit: "nudges-none-yet",
  stopped: "nudges-none-yet",
  "no-plan": "status.infeasible",
} as const;

interface FoundProps {
  readonly list: NudgeList;
  readonly isOld: boolean;
  readonly currency: string | null;
}

function Found({ list: { nudges, countedBy, status }, isOld, currency }: FoundProps) {
  const w = useSetWords();
  if (nudges.length === 0) return <p className="set-why">{w(NOTHING[status])}</p>;
  return (
    <ul className="nudges">
      {nudges.map((nudge) => (
        <NudgeRow
          key={`${nudge.unit} ${nudge.walls.join()} ${nudge.end} ${nudge.way} ${nudge.by}`}
          nudge={nudge}
          countedBy={countedBy}
          isOld={isOld}
          currency={currency}
        />
      ))}
    </ul>
  );
}

interface NudgeRowProps extends Pick<FoundProps, "isOld" | "currency"> {
  readonly nudge: SchemeNudge;
  readonly countedBy: NudgeList["countedBy"];
}

function NudgeRow({ nudge, countedBy, isOld, currency }: NudgeRowProps) {
  const w = useSetWords();
  const { speech } = useSpeech();
  const { doc } = useEditorState().history;
  const step = useStep();
  const amount = useAmounts(countedBy, currency);
  const { unit, walls, kind, way, by, saving, closures, fillers, rooms } = nudge;
  const wall = w("wall-of", { unit: unitTitle(doc, unit), wall: walls.join(", ") });
  const edit = nudgeEdit(doc, nudge);
  const counts = [
    [w("part.closures"), closures],
    [w("part.fillers"), fillers],
  ] as const;
  return (
    <li>
      <span className="nudge-move">
        <b>{wall}</b> {w(kind === "wall" ? `move-${way}` : `draw-${way}`, { mm: by })}
        <small>
          {counts
            .filter(([, { before, after }]) => before !== after)
            .map(([name, { before, after }]) => `${name} ${before} → ${after}`)
            .join(" · ")}
          {rooms.map(({ room, sizes }) => ` · ${room ?? ""} ${sizesText(sizes, speech.write)}`).join("")}
        </small>
      </span>
      <span className="chip better">{w("saves", { amount: amount(saving, 2) })}</span>
      <button
        type="button"
        className="act"
        aria-disabled={isOld || edit === null}
        aria-label={`${w("apply")}: ${wall}`}
        onClick={() => (isOld || edit === null ? undefined : step("step.set-nudge", [edit]))}
      >
        {w("apply")}
      </button>
    </li>
  );
}

function sizesText(
  sizes: readonly { readonly before: number; readonly after: number }[],
  write: (value: number) => string,
): string {
  return sizes
    .filter(({ before, after }) => before !== after)
    .map(({ before, after }) => `${write(before)} → ${write(after)}`)
    .join(", ");
}
