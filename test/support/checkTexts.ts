// Every text that the checks can say: what the samples make them say, and the words written down in the files of the
// formulas and the checks. Citations are left out: they stay as they are in every language.

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { CheckDocument } from "../../src/assess/checkDocument.ts";
import { formulaParts } from "../../src/sheet/calculations/numbersIn.ts";

/** Names of inputs, words for values, reasons, rules, steps: what a sheet tells again. Names of places are none. */
export function spokenBy(document: CheckDocument): ReadonlySet<string> {
  const texts = new Set<string>();
  const add = (text: string) => {
    if (/\p{Ll}{3}/u.test(text)) texts.add(text);
  };
  for (const { inputs, reason, formula } of document.checks) {
    for (const { name, value } of inputs) {
      add(name);
      if (typeof value === "string") add(value);
    }
    if (reason !== undefined) add(reason);
    for (const part of formulaParts(formula))
      if ((part.match(/(?<![\p{L}_])\p{Ll}{4,}/gu) ?? []).length > 1) add(part);
  }
  for (const { rule, part, note } of document.striking) for (const text of [rule, part, note]) add(text);
  for (const { what, rule, note } of document.tolerances) for (const text of [what, rule, note]) add(text);
  for (const { note } of document.predictions) add(note);
  for (const { step } of document.shoring) add(step);
  for (const text of [...document.assumptions, ...document.cautions]) add(text);
  return texts;
}

const FOLDERS = ["check", "assess"].map((folder) => join(import.meta.dirname, "../../src", folder));

/** Stands for what a file puts into a text: a figure, or in the last place one of the words that can stand there. */
const VALUE = "7";
const WORDS = [VALUE, "stack", "wall-bracket", "left", "span 7 mm"];

/** Texts in the files: literals of two words or more that are no citation, no import and no identifier. */
export function writtenDown(): readonly { readonly file: string; readonly texts: readonly string[] }[] {
  return FOLDERS.flatMap((folder) =>
    readdirSync(folder)
      .filter((file) => file.endsWith(".ts"))
      .flatMap((file) => {
        const code = withoutCitations(readFileSync(join(folder, file), "utf8"));
        return literalsIn(code).map((texts) => ({ file, texts }));
      }),
  );
}

function withoutCitations(code: string): string {
  return code
    .replaceAll(/\/\*[\s\S]*?\*\//g, "")
    .replaceAll(/^\s*\/\/.*$/gm, "")
    .replaceAll(/^import [\s\S]*?;$/gm, "")
    .replaceAll(/throw new \w+\([\s\S]*?\);/g, "")
    .replaceAll(/(?:const|readonly) \w*(?:SOURCE|STATICS|BS8110_STRIKING_FORMULA)\w*\b[\s\S]*?;\n/g, "")
    .replaceAll(/\bsource: [^\n]*(?:\n\s+[`"'][^\n]*)*/g, "")
    .replaceAll(/\b(?:id|key|kind)\b(?: =|:) [^\n]*/g, "");
}

const PLACE = /\$\{[^{}]*\}/g;

// Each as it reads with one or another value in it.
function literalsIn(code: string): readonly (readonly string[])[] {
  const quoted = [...code.matchAll(/"((?:[^"\\\n]|\\.)*)"|`((?:[^`\\]|\\.)*)`/g)];
  return quoted
    .map(([, plain, template]) => plain ?? template ?? "")
    .filter((text) => text.includes(" "))
    .filter((text) => (text.replaceAll(PLACE, "").match(/(?<![\p{L}_])\p{Ll}{3,}/gu) ?? []).length > 1)
    .map((text) => {
      const last = text.lastIndexOf("${");
      const filled = (part: string) => part.replaceAll(PLACE, VALUE);
      if (last < 0) return [text];
      return WORDS.map((word) => filled(text.slice(0, last)) + text.slice(last).replace(PLACE, word));
    })
    .filter(([first]) => !first!.includes("${"));
}
