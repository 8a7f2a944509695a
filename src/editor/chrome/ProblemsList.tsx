// The problems of the unit in view: each a place, a sentence, and a click that goes there. Arrows walk the list.

import { type KeyboardEvent, useRef } from "react";
import type { Problem } from "../../fill/result.ts";
import { goToProblem } from "../live/actions.ts";
import type { LiveFill } from "../live/liveFill.ts";
import { useBench, useEditorState, useInView, useScreen, useSpeech } from "../live/useWorkbench.tsx";
import { kitOf } from "../live/workbench.ts";
import type { PlacedProblem } from "../scene/problemPlaces.ts";
import { type Words, words } from "../words/say.ts";
import { PanelFrame } from "./PanelFrame.tsx";
import { placeWords } from "./placeWords.ts";
import { useProblemText } from "./useProblemText.ts";

export function ProblemsList() {
  const { problems } = useInView();
  const { history } = useEditorState();
  const { t } = useSpeech();
  const list = useRef<HTMLOListElement>(null);
  const errors = problems.filter(({ problem }) => problem.severity === "error").length;
  const note =
    problems.length === 0
      ? ""
      : t(words("problems.stops", { count: errors, rest: problems.length - errors }));
  const isBroken = kitOf(history.doc) === null;
  return (
    <PanelFrame title={t(words("problems.title"))} note={note}>
      {isBroken ? <p className="nothing">{t(words("problems.kit-broken"))}</p> : null}
      {problems.length === 0 && !isBroken ? (
        <p className="nothing">{t(words("problems.nothing"))}</p>
      ) : (
        <ol className="problems" ref={list} onKeyDown={(event) => walk(event, list.current)}>
          {problems.map((placed) => (
            <ProblemItem key={`${placed.number} ${placed.problem.message}`} placed={placed} />
          ))}
        </ol>
      )}
    </PanelFrame>
  );
}

function walk(event: KeyboardEvent, list: HTMLElement | null): void {
  const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
  if (step === 0 || list === null) return;
  const buttons = [...list.querySelectorAll("button")];
  const { activeElement } = document;
  const index = activeElement instanceof HTMLButtonElement ? buttons.indexOf(activeElement) : -1;
  buttons[(index + step + buttons.length) % buttons.length]?.focus();
  event.preventDefault();
}

function ProblemItem({ placed }: { placed: PlacedProblem }) {
  const bench = useBench();
  const { live, unit } = useInView();
  const screen = useScreen();
  const { t } = useSpeech();
  const { number, problem } = placed;
  const textOf = useProblemText();
  const isChosen = screen.problem === number;
  return (
    <li className={isChosen ? "chosen" : ""}>
      <button
        type="button"
        aria-current={isChosen}
        data-problem={number}
        onClick={() => goToProblem(bench, placed)}
      >
        <span className={`ring ${problem.severity}`}>{number}</span>
        <span className="problem-text">
          <b>{t(titleOf(problem, live, unit))}</b>
          <span>{textOf(problem.message)}</span>
        </span>
      </button>
    </li>
  );
}

type InUnit = Parameters<typeof placeWords>[0];

function titleOf({ where }: Problem, live: LiveFill | null, unit: InUnit): Words {
  if (where.opening !== undefined) return placeWords(unit, { bucket: "openings", id: where.opening });
  const face = live?.fill.faces.find(({ id }) => id === where.face);
  const wall = where.wall ?? face?.walls[0];
  if (wall !== undefined && face !== undefined && where.x !== undefined) {
    return words("place.face", { wall: face.room === null ? wall : `${face.room}, ${wall}`, x: where.x });
  }
  if (wall !== undefined) return words("place.wall", { wall });
  if (where.room !== undefined) return words("place.room", { room: where.room });
  return words("place.kit");
}
