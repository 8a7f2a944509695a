// In which language the page speaks: that of the project. Changing it is a step of the project like any other.

import type { Language } from "../../plan/project.ts";
import { takeStep, withSession } from "../state/editorState.ts";
import { LANGUAGE_TAGS, loadCatalogue } from "../words/catalogues.ts";
import { words } from "../words/say.ts";
import type { Workbench } from "./workbench.ts";

/** Changes the language of the project, to be undone as any step. */
export function chooseLanguage({ editor }: Workbench, language: Language): void {
  editor.set((state) => {
    if (state.history.doc.language === language) return state;
    const edit = { kind: "change-project", set: { language } } as const;
    return takeStep(state, words("step.language"), [edit], state.session.selection.items);
  });
}

/** Fetches the words of the project's language where they are not there yet; until then the page speaks English. */
async function fetchWords({ editor, catalogues }: Workbench): Promise<void> {
  const { language } = editor.get().history.doc;
  if (language === "en" || catalogues.get()[language] !== undefined) return;
  try {
    const catalogue = await loadCatalogue(language);
    catalogues.set((known) => ({ ...known, [language]: catalogue }));
  } catch {
    editor.set((state) => withSession(state, { message: words("message.no-words") }));
  }
}

/**
 * Keeps the words and the `lang` attribute of the page in step with the project, whatever changes it: the choice, an
 * undo, another project. Done when the first words are there.
 */
export async function keepSpeaking(bench: Workbench, page: { lang: string }): Promise<void> {
  const { editor, catalogues } = bench;
  let last: Language | null = null;
  const tag = () => {
    const { language } = editor.get().history.doc;
    page.lang = LANGUAGE_TAGS[catalogues.get()[language] === undefined ? "en" : language];
  };
  const follow = async () => {
    const { language } = editor.get().history.doc;
    if (language === last) return;
    last = language;
    await fetchWords(bench);
    tag();
  };
  editor.subscribe(() => void follow());
  await follow();
}
