// Every text the program speaks in a language: the page's catalogues, and all words of the sheets, found by their form
// (an export with the members en, es and pt), so that a new kind of sheet is held to the same claims without being listed.

import { readdirSync } from "node:fs";
import { join } from "node:path";
import { loadCatalogue } from "../../src/editor/words/catalogues.ts";
import { type Catalogue, english, type Phrase } from "../../src/editor/words/en.ts";
import type { Language } from "../../src/plan/project.ts";
import { CHECK_SENTENCES } from "../../src/sheet/checkWords/checkText.ts";
import { KIND_WORDS } from "../../src/sheet/checkWords/kinds.ts";
import { PHRASES, SENTENCES } from "../../src/sheet/problemSentences.ts";

export const CATALOGUES: Readonly<Record<Language, Catalogue>> = {
  en: english,
  es: await loadCatalogue("es"),
  pt: await loadCatalogue("pt"),
};

/** The texts of a phrase: one, or that for one and that for others. */
export function textsOf(phrase: Phrase): readonly string[] {
  return typeof phrase === "string" ? [phrase] : [phrase.one, phrase.other];
}

/** Words of one kind of sheet, or of the view that shows them, by language. */
export interface SheetWords {
  readonly name: string;
  readonly words: Readonly<Record<Language, unknown>>;
}

const PLACES = ["sheet", "editor/sheets", "editor/set", "editor/checks"].map((folder) =>
  join(import.meta.dirname, "../../src", folder),
);

export const SHEET_WORDS: readonly SheetWords[] = await findSheetWords();

async function findSheetWords(): Promise<readonly SheetWords[]> {
  const files = PLACES.flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: "utf8" })
      .filter((file) => /words\w*\.ts$/i.test(file) && !file.startsWith("use"))
      .sort()
      .map((file) => ({ file, path: join(folder, file) })),
  );
  const found: SheetWords[] = [];
  for (const { file, path } of files) {
    const exported: Record<string, unknown> = await import(path);
    for (const [name, value] of Object.entries(exported)) {
      if (isByLanguage(value)) found.push({ name: `${file} ${name}`, words: value });
    }
  }
  return found;
}

function isByLanguage(value: unknown): value is Readonly<Record<Language, unknown>> {
  return typeof value === "object" && value !== null && Object.keys(value).sort().join() === "en,es,pt";
}

/** A text of the sheets with the path to it; what is made from values is made from marks that can be found in it. */
export interface SheetText {
  readonly path: string;
  readonly text: string;
}

/** Stands for any value in any text: ⟦0⟧, ⟦1⟧, whatever is asked of it. */
function mark(index: number): object {
  const text = `⟦${index}⟧`;
  return { toString: () => text, toFixed: () => text, join: () => text, map: () => [text], length: 2 };
}

/** All texts below a value, in the order of their paths. */
export function sheetTexts(value: unknown, path = ""): readonly SheetText[] {
  if (typeof value === "string") return [{ path, text: value }];
  if (typeof value === "function") {
    const made: unknown = Reflect.apply(value, undefined, [0, 1, 2, 3, 4, 5].map(mark));
    return sheetTexts(made, `${path}()`);
  }
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([key, each]) => sheetTexts(each, `${path}.${key}`));
}

/** Everything spoken in a language, page and sheets. */
export function spokenTexts(language: Language): readonly string[] {
  return [
    ...Object.values(CATALOGUES[language]).flatMap(textsOf),
    ...[...SENTENCES, ...PHRASES, ...CHECK_SENTENCES, ...Object.values(KIND_WORDS)].map(
      (sentence) => sentence[language],
    ),
    ...SHEET_WORDS.flatMap(({ words }) => sheetTexts(words[language]).map(({ text }) => text)),
  ];
}
