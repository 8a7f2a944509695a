// Projects as files of the person's own: saving the one in hand, opening another as a project of its own.

import { formatIssue } from "../../json/issue.ts";
import type { PlanDocument } from "../../plan/document.ts";
import { documentToProject, documentToUnit, emptyUnit } from "../../plan/documentProject.ts";
import type { Project } from "../../plan/project.ts";
import { readProject } from "../../plan/read.ts";
import { writeProject } from "../../plan/write.ts";
import type { Workbench } from "../live/workbench.ts";
import { withSession } from "../state/editorState.ts";
import type { Desk } from "../storage/desk.ts";
import { type FilePort, fileNameOf, type OpenedFile, PROJECT_FILE } from "../storage/files.ts";
import type { Words } from "../words/say.ts";
import { words } from "../words/say.ts";

/** What projects and files are done with. `beforeGivingUp`: asks whether unsaved changes may be given up, then goes on. */
export interface FileDesk {
  readonly bench: Workbench;
  readonly desk: Desk;
  readonly files: FilePort;
  readonly beforeGivingUp: (goOn: () => void) => void;
}

/** Saves the project on the screen as a file; what happened is said over the plan. */
export async function saveAsFile({ bench, files }: FileDesk): Promise<void> {
  const project = documentToProject(bench.editor.get().history.doc);
  await saveText({ bench, files }, project.name, writeProject(project));
}

/** Saves any text as a project file, a damaged record for instance. */
export async function saveText(
  { bench, files }: Pick<FileDesk, "bench" | "files">,
  project: string,
  text: string,
): Promise<void> {
  const name = fileNameOf(project, ".json");
  const saved = await files.save({ kind: PROJECT_FILE, name, text });
  if (saved.status === "saved") tell(bench, words("file.saved", { name: saved.name }));
  if (saved.status === "failed") tell(bench, words("file.not-saved", { name, reason: saved.reason }));
}

/** Lets the person choose a file and opens it. */
export async function openFile(on: FileDesk): Promise<void> {
  await takeFile(on, await on.files.open(PROJECT_FILE));
}

/** Opens a file that was chosen or dropped as a project of its own. */
export async function takeFile(on: FileDesk, file: OpenedFile): Promise<void> {
  if (file.status === "cancelled") return;
  if (file.status === "failed") {
    tell(on.bench, words("file.not-read", { reason: file.reason }));
    return;
  }
  const read = readProject(file.text);
  if (read.status === "ok") {
    await begin(on, read.project);
    return;
  }
  const [first] = read.issues;
  const fault = first === undefined ? "" : formatIssue(first);
  tell(on.bench, words("file.not-a-project", { name: file.name, fault, count: read.issues.length }));
}

/** Begins a project; asks first where the last changes of the one in hand are unsaved. */
export async function begin(on: FileDesk, project: Project): Promise<void> {
  const { desk } = on;
  if ((await desk.create(project)) === "open") return;
  on.beforeGivingUp(() => void desk.create(project, true));
}

/** Begins a copy of the project on the screen under another name; what it was made from stays as it is kept. */
export async function duplicate(on: FileDesk, name: string): Promise<void> {
  const project = documentToProject(on.bench.editor.get().history.doc);
  await begin(on, { ...project, name: [...name].slice(0, LONGEST_NAME).join("") });
}

const LONGEST_NAME = 100; // letters; a letter takes two of the 200 places of a name at most

/** Opens a project of the list; asks as {@link begin} does. One that does not open is said, by its name. */
export async function openStored(on: FileDesk, id: string, name: string): Promise<void> {
  const { bench, desk } = on;
  const status = await desk.open(id);
  if (status === "unsaved") on.beforeGivingUp(() => void desk.open(id, true));
  if (status === "missing") tell(bench, words("projects.missing", { name }));
  if (status === "failed") tell(bench, words("projects.not-opened", { name }));
}

/** Deletes a project of the list for good. */
export async function removeStored({ bench, desk }: FileDesk, id: string, name: string): Promise<void> {
  try {
    await desk.remove(id);
  } catch (reason) {
    tell(bench, words("projects.not-deleted", { name, reason: String(reason) }));
  }
}

/** A project with nothing drawn, with the settings of another: who begins one seldom changes the kit. */
export function emptyProject(like: PlanDocument, name: string): Project {
  const { language, storey, kit, fillers, objective, limits, buy } = like;

  return {
    name,
    revision: "",
    language,
    storey,
    kit,
    units: [documentToUnit(emptyUnit("A", "A", 0))],
    pours: [],
    stock: {},
    buy,
    fillers,
    objective,
    ...(limits !== undefined && { limits }),
    concrete: {},
    loads: {},
    extra: {},
  };
}

function tell({ editor }: Workbench, message: Words): void {
  editor.set((state) => withSession(state, { message }));
}
