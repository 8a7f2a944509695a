// Names are data: what people typed is made fit to stand in a line of text, in XML and in the name of a file.

/**
 * The text as one line: control characters, marks that turn the direction of writing, invisible characters and
 * halves of surrogate pairs are taken out, runs of white space become one space.
 */
export function plainText(text: string): string {
  return text
    .replace(/[\p{White_Space}\p{Zl}\p{Zp}]+/gu, " ")
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Co}\uFFFE\uFFFF]/gu, "") // the last two are no characters in XML
    .trim();
}

const ENTITIES: { readonly [character: string]: string } = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** The text as it may stand between tags or in a quoted attribute of XML. */
export function xmlText(text: string): string {
  return plainText(text).replace(/[&<>"']/g, (character) => ENTITIES[character] ?? "");
}

const LONGEST_FILE_PART = 40;

/** The text as part of a file's name: small letters a to z, digits and single hyphens; may be empty. */
export function filePart(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, LONGEST_FILE_PART)
    .replace(/^-+|-+$/g, "");
}
