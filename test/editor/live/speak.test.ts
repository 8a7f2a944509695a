// The language of the page follows the project: by choice, by undo, by another project.

import { describe, expect, it } from "vitest";
import { run } from "../../../src/editor/live/actions.ts";
import { createLiveFill } from "../../../src/editor/live/liveFill.ts";
import { chooseLanguage, keepSpeaking } from "../../../src/editor/live/speak.ts";
import { createWorkbench, type Workbench } from "../../../src/editor/live/workbench.ts";
import { runCommand } from "../../../src/editor/state/commands.ts";
import { startEditor, walk } from "../../../src/editor/state/editorState.ts";
import { say, speechOf, words } from "../../../src/editor/words/say.ts";
import { documentToProject, projectToDocument } from "../../../src/plan/documentProject.ts";
import type { Language } from "../../../src/plan/project.ts";
import { readProject } from "../../../src/plan/read.ts";
import { writeProject } from "../../../src/plan/write.ts";
import { sampleProject } from "../../support/samples.ts";
import { openSample } from "../scene/sampleScene.ts";

const { live } = openSample("one-room");

async function speaking(language: Language) {
  const bench = createWorkbench(
    projectToDocument({ ...sampleProject("one-room"), language }),
    createLiveFill({
      fillNow: () => ({ outline: live.outline, drafts: [], stretches: [], fill: live.fill }),
      fillBeside: null,
      clock: () => 0,
      quick: 8,
    }),
  );
  const page = { lang: "" };
  await keepSpeaking(bench, page);
  return { bench, page };
}

function spoken({ editor, catalogues }: Workbench): string {
  return say(speechOf(editor.get().history.doc.language, catalogues.get()), words("tool.wall"));
}

describe("the page speaks", () => {
  it.each([
    { language: "en", wall: "Wall", lang: "en" },
    { language: "es", wall: "Muro", lang: "es-419" },
    { language: "pt", wall: "Parede", lang: "pt-BR" },
  ] as const)("$language from the start in a project of that language", async ({ language, wall, lang }) => {
    const { bench, page } = await speaking(language);
    expect([spoken(bench), page.lang]).toEqual([wall, lang]);
  });

  it("another language once it is chosen, and its own again once that is undone", async () => {
    const { bench, page } = await speaking("en");
    chooseLanguage(bench, "pt");
    await expect.poll(() => spoken(bench)).toBe("Parede");
    await expect.poll(() => page.lang).toBe("pt-BR");
    bench.editor.set((state) => walk(state, "undo"));
    expect(spoken(bench)).toBe("Wall");
    await expect.poll(() => page.lang).toBe("en");
    bench.editor.set((state) => walk(state, "redo"));
    expect(spoken(bench)).toBe("Parede");
  });

  it("the language of another project that is opened", async () => {
    const { bench, page } = await speaking("es");
    const other = projectToDocument({ ...sampleProject("one-room"), language: "pt" });
    bench.editor.set(() => startEditor(other));
    await expect.poll(() => [spoken(bench), page.lang]).toEqual(["Parede", "pt-BR"]);
  });

  it("no other language without a step where the chosen one is spoken already", async () => {
    const { bench } = await speaking("es");
    chooseLanguage(bench, "es");
    expect(bench.editor.get().history.past).toEqual([]);
  });

  it("by a command as well, which is the page's own", async () => {
    const { bench } = await speaking("en");
    expect(runCommand(bench.editor.get(), "command.speak-es")).toBeNull();
    run(bench, "command.speak-es");
    expect(bench.editor.get().history.doc.language).toBe("es");
    expect(bench.editor.get().history.past.map(({ label }) => label.key)).toEqual(["step.language"]);
  });
});

describe("a file", () => {
  it("keeps the language that was chosen", async () => {
    const { bench } = await speaking("en");
    chooseLanguage(bench, "es");
    const text = writeProject(documentToProject(bench.editor.get().history.doc));
    expect(text).toContain('"language": "es"');
    expect(readProject(text)).toMatchObject({ status: "ok", project: { language: "es" } });
  });
});
