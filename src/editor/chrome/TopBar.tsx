// The bar over the plan: project and unit, the figures, problems, the search for commands, whether all is saved.

import { listed } from "../../plan/document.ts";
import { useDeskState } from "../desk/useDesk.tsx";
import { REGION, run } from "../live/actions.ts";
import { useSaved } from "../live/persist.ts";
import { chooseLanguage } from "../live/speak.ts";
import { useBench, useEditorState, useInView, useScreen, useSpeech } from "../live/useWorkbench.tsx";
import { showUnit } from "../state/editorState.ts";
import { LANGUAGE_LABEL, LANGUAGE_NAMES, LANGUAGE_TAGS, LANGUAGES } from "../words/catalogues.ts";
import { words } from "../words/say.ts";
import { commandTip } from "./commandTip.ts";
import { Check, RingSign, Sign } from "./icons.tsx";
import { Scoreboard } from "./Scoreboard.tsx";

export function TopBar() {
  return (
    <header className="bar" {...{ [REGION]: "bar" }}>
      <Sign />
      <ProjectName />
      <Scoreboard />
      <ProblemsButton />
      <ViewButtons />
      <FindButton />
      <LanguageChoice />
      <OtherTabs />
      <SavedState />
    </header>
  );
}

function ProjectName() {
  const bench = useBench();
  const { history, session } = useEditorState();
  const { panel } = useScreen();
  const { t } = useSpeech();
  const units = listed(history.doc.units);
  return (
    <div className="project">
      <h1>
        <button
          type="button"
          className="project-name"
          aria-expanded={panel === "projects"}
          title={commandTip("command.projects", t)}
          onClick={() => run(bench, "command.projects")}
        >
          {history.doc.name === "" ? t(words("projects.nameless")) : history.doc.name}
        </button>
      </h1>
      <span aria-hidden="true">/</span>
      {units.length < 2 ? (
        <span className="unit-name">{units[0]?.name ?? ""}</span>
      ) : (
        <select
          aria-label={t(words("bar.unit"))}
          value={session.selection.unit}
          onChange={(event) => {
            const unit = event.target.value;
            bench.editor.set((state) => showUnit(state, unit));
          }}
        >
          {units.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      )}
    </div>
  );
}

function ProblemsButton() {
  const bench = useBench();
  const { problems, live } = useInView();
  const { panel } = useScreen();
  const { t } = useSpeech();
  const count = problems.length;
  const hasErrors = problems.some(({ problem }) => problem.severity === "error");
  return (
    <button
      type="button"
      className="problems-button"
      aria-expanded={panel === "problems"}
      title={commandTip("command.problems", t)}
      data-problems={live === null ? "" : count}
      onClick={() => run(bench, "command.problems")}
    >
      {count === 0 ? <Check /> : <RingSign isDouble={hasErrors} />}
      {count === 0 ? t(words("problems.none")) : t(words("problems.count", { count }))}
    </button>
  );
}

// The views that lie over the plan.
function ViewButtons() {
  const { over } = useScreen();
  return (
    <>
      <ViewButton command="command.set" name="bar.set" isOpen={over === "set"} />
      <ViewButton command="command.checks" name="command.checks" isOpen={over === "checks"} />
      <ViewButton command="command.sheets" name="command.sheets" isOpen={over === "sheets"} />
    </>
  );
}

interface ViewButtonProps {
  readonly command: "command.set" | "command.checks" | "command.sheets";
  /** What stands on it: short. */
  readonly name: "bar.set" | "command.checks" | "command.sheets";
  readonly isOpen: boolean;
}

function ViewButton({ command, name, isOpen }: ViewButtonProps) {
  const bench = useBench();
  const { t } = useSpeech();
  return (
    <button
      type="button"
      className="view-button"
      aria-expanded={isOpen}
      title={commandTip(command, t)}
      onClick={() => run(bench, command)}
    >
      {t(words(name))}
    </button>
  );
}

function FindButton() {
  const bench = useBench();
  const { t } = useSpeech();
  return (
    <button
      type="button"
      className="find-button"
      aria-label={commandTip("command.find", t)}
      title={commandTip("command.find", t)}
      onClick={() => run(bench, "command.find")}
    >
      <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true" className="icon">
        <circle cx="6" cy="6" r="4" />
        <path d="M9 9l3.5 3.5" />
      </svg>
      <span>{t(words("command.find"))}</span>
      <kbd>Ctrl K</kbd>
    </button>
  );
}

function LanguageChoice() {
  const bench = useBench();
  const { language } = useEditorState().history.doc;
  return (
    <select
      className="language"
      aria-label={LANGUAGE_LABEL}
      title={LANGUAGE_LABEL}
      value={language}
      onChange={(event) => {
        const chosen = LANGUAGES.find((each) => each === event.target.value);
        if (chosen !== undefined) chooseLanguage(bench, chosen);
      }}
    >
      {LANGUAGES.map((each) => (
        <option key={each} value={each} lang={LANGUAGE_TAGS[each]}>
          {LANGUAGE_NAMES[each]}
        </option>
      ))}
    </select>
  );
}

function OtherTabs() {
  const { seat } = useDeskState();
  const { t } = useSpeech();
  // A tab that reads is told over the plan.
  if (seat.others === 0 || seat.role === "reading") return null;
  return (
    <span className="others" role="status">
      {t(words("notice.others", { count: seat.others }))}
    </span>
  );
}

function SavedState() {
  const saved = useSaved();
  const { t } = useSpeech();
  if (saved === null) return null;
  return (
    <span className={`saved ${saved}`} role="status">
      {saved === "saved" ? <Check /> : null}
      {t(words(`bar.${saved}`))}
    </span>
  );
}
