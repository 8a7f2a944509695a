// The projects kept in this browser: the one in hand with its name, the others to open and delete, and the ways to
// begin one and to bring one in and out as a file.

import { useCallback, useEffect, useState } from "react";
import { PanelFrame } from "../chrome/PanelFrame.tsx";
import { sampleProject } from "../live/sample.ts";
import { useEditorState, useSpeech } from "../live/useWorkbench.tsx";
import { takeStep } from "../state/editorState.ts";
import type { StoredProject } from "../storage/projects.ts";
import { words } from "../words/say.ts";
import { formatWhen } from "../words/when.ts";
import {
  begin,
  duplicate,
  emptyProject,
  openFile,
  openStored,
  removeStored,
  saveAsFile,
} from "./projectFiles.ts";
import { useDesk, useDeskState } from "./useDesk.tsx";

export function ProjectsPanel() {
  const { desk } = useDesk();
  const { project, save, persistence } = useDeskState();
  const { t } = useSpeech();
  const [projects, setProjects] = useState<readonly StoredProject[]>([]);
  const load = useCallback(() => {
    desk.list().then(setProjects, () => setProjects([]));
  }, [desk]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was opened or saved changes the list
  useEffect(load, [load, project, save.status]);
  const others = projects.filter(({ id }) => id !== project);
  return (
    <PanelFrame
      title={t(words("projects.title"))}
      note={t(words("projects.note", { count: projects.length }))}
    >
      <InHand savedAt={projects.find(({ id }) => id === project)?.savedAt ?? null} />
      <Ways />
      <ul className="projects">
        {others.map((each) => (
          <Stored key={each.id} stored={each} onGone={load} />
        ))}
      </ul>
      {persistence === "unknown" ? null : (
        <p className="persistence">{t(words(`projects.${persistence}`))}</p>
      )}
    </PanelFrame>
  );
}

function InHand({ savedAt }: { savedAt: number | null }) {
  const { bench } = useDesk();
  const { history } = useEditorState();
  const { speech, t } = useSpeech();
  const { name } = history.doc;
  const rename = (typed: string) => {
    const next = typed.trim();
    if (next === "" || next === name) return;
    bench.editor.set((state) =>
      takeStep(
        state,
        words("step.rename-project"),
        [{ kind: "change-project", set: { name: next } }],
        state.session.selection.items,
      ),
    );
  };
  return (
    <div className="in-hand">
      <label>
        <span>{t(words("projects.name"))}</span>
        <input
          key={name}
          defaultValue={name}
          maxLength={200}
          onBlur={(event) => rename(event.target.value)}
          onKeyDown={(event) => {
            if (event.key === "Enter") event.currentTarget.blur();
          }}
        />
      </label>
      <small>
        {savedAt === null
          ? t(words("projects.not-kept"))
          : t(words("projects.saved-at", { when: formatWhen(savedAt, speech.language) }))}
      </small>
    </div>
  );
}

function Ways() {
  const inUse = useDesk();
  const { speech, t } = useSpeech();
  const beginEmpty = () => {
    const like = inUse.bench.editor.get().history.doc;
    void begin(inUse, emptyProject(like, t(words("project.new"))));
  };
  const beginCopy = () => {
    const { name } = inUse.bench.editor.get().history.doc;
    const whole = name === "" ? t(words("projects.nameless")) : name;
    void duplicate(inUse, t(words("project.copy", { name: whole })));
  };
  return (
    <div className="ways">
      <button type="button" onClick={beginEmpty}>
        {t(words("projects.new"))}
      </button>
      <button type="button" onClick={() => void begin(inUse, sampleProject(speech.language))}>
        {t(words("projects.sample"))}
      </button>
      <button type="button" onClick={beginCopy}>
        {t(words("projects.duplicate"))}
      </button>
      <button type="button" onClick={() => void openFile(inUse)}>
        {t(words("projects.open-file"))}
      </button>
      <button type="button" onClick={() => void saveAsFile(inUse)}>
        {t(words("projects.save-file"))}
      </button>
    </div>
  );
}

interface StoredProps {
  readonly stored: StoredProject;
  /** The list may have changed: the project was deleted, or turned out not to be there. */
  readonly onGone: () => void;
}

// Deleting takes two presses of a button that says what the second one does: there is no undo for it.
function Stored({ stored, onGone }: StoredProps) {
  const inUse = useDesk();
  const { speech, t } = useSpeech();
  const [isSure, setSure] = useState(false);
  const name = stored.name === "" ? t(words("projects.nameless")) : stored.name;
  const remove = () => {
    if (!isSure) setSure(true);
    else void removeStored(inUse, stored.id, name).then(onGone);
  };
  return (
    <li>
      <button
        type="button"
        className="stored"
        aria-label={t(words("projects.open", { name }))}
        onClick={() => void openStored(inUse, stored.id, name).then(onGone)}
      >
        <strong>{name}</strong>
        <small>{t(words("projects.saved-at", { when: formatWhen(stored.savedAt, speech.language) }))}</small>
      </button>
      <button
        type="button"
        className={isSure ? "delete sure" : "delete"}
        aria-label={t(words(isSure ? "projects.delete-this-sure" : "projects.delete-this", { name }))}
        onClick={remove}
        onBlur={() => setSure(false)}
      >
        {t(words(isSure ? "projects.delete-sure" : "projects.delete"))}
      </button>
    </li>
  );
}
