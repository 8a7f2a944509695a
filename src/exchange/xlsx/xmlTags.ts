// The tags and texts of an XML document one after the other: the little of XML that a workbook needs, strictly.
//
// No document type, no entities but the five of XML and numbered ones: nothing can grow while it is read.

export type XmlToken =
  | {
      readonly kind: "open";
      /** Without its prefix. */
      readonly name: string;
      /** By name, prefix and all. */
      readonly attributes: ReadonlyMap<string, string>;
    }
  | { readonly kind: "close"; readonly name: string }
  | { readonly kind: "text"; readonly text: string };

/** Says that the document is not well formed; the message is part of a sentence. */
export class XmlFault extends Error {}

const DEEPEST = 64;
const NAME = /^[\p{L}_][\p{L}\p{N}_.:-]*/u;
const ATTRIBUTE = /\s+([\p{L}_][\p{L}\p{N}_.:-]*)\s*=\s*(?:"([^"<]*)"|'([^'<]*)')/uy;

/**
 * An element without content is opened and closed.
 *
 * @throws {XmlFault} where the document breaks the rules or goes deeper than 64 elements
 */
export function* xmlTokens(document: string): Generator<XmlToken, void> {
  const open: string[] = [];
  let at = document.startsWith("\uFEFF") ? 1 : 0;
  while (at < document.length) {
    const next = document.indexOf("<", at);
    const end = next < 0 ? document.length : next;
    if (end > at) {
      const text = document.slice(at, end);
      if (open.length > 0) yield { kind: "text", text: decoded(text) };
      else if (text.trim() !== "") throw new XmlFault("text outside its elements");
    }
    if (next < 0) break;
    if (document.startsWith("<!--", next)) at = after(document, "-->", next + 4);
    else if (document.startsWith("<?", next)) at = after(document, "?>", next + 2);
    else if (document.startsWith("<![CDATA[", next)) {
      at = after(document, "]]>", next + 9);
      yield { kind: "text", text: document.slice(next + 9, at - 3) };
    } else if (document.startsWith("<!", next)) throw new XmlFault("a document type");
    else if (document.startsWith("</", next)) {
      at = after(document, ">", next + 2);
      const name = document.slice(next + 2, at - 1).trim();
      if (open.pop() !== name) throw new XmlFault(`an end of "${name}" that was not begun`);
      yield { kind: "close", name: local(name) };
    } else {
      const tag = tagAt(document, next);
      at = tag.end;
      yield { kind: "open", name: local(tag.name), attributes: tag.attributes };
      if (tag.isEmpty) yield { kind: "close", name: local(tag.name) };
      else if (open.push(tag.name) > DEEPEST) throw new XmlFault("elements inside one another without end");
    }
  }
  if (open.length > 0) throw new XmlFault(`no end of "${open.at(-1)!}"`);
}

interface Tag {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly isEmpty: boolean;
  readonly end: number;
}

function tagAt(document: string, from: number): Tag {
  // A name is short; looking at no more keeps a hostile document from costing time.
  const name = NAME.exec(document.slice(from + 1, from + 200))?.[0];
  if (name === undefined) throw new XmlFault("a sign < that begins nothing");
  const attributes = new Map<string, string>();
  let at = from + 1 + name.length;
  for (;;) {
    ATTRIBUTE.lastIndex = at;
    const found = ATTRIBUTE.exec(document);
    if (found === null) break;
    attributes.set(found[1]!, decoded(found[2] ?? found[3] ?? ""));
    at = ATTRIBUTE.lastIndex;
  }
  while (/\s/.test(document[at] ?? "")) at += 1;
  const isEmpty = document[at] === "/";
  if (isEmpty) at += 1;
  if (document[at] !== ">") throw new XmlFault(`no end of the tag "${name}"`);
  return { name, attributes, isEmpty, end: at + 1 };
}

function after(document: string, sign: string, from: number): number {
  const at = document.indexOf(sign, from);
  if (at < 0) throw new XmlFault(`no "${sign}"`);
  return at + sign.length;
}

const local = (name: string) => name.slice(name.indexOf(":") + 1);

const ENTITIES: ReadonlyMap<string, string> = new Map([
  ["amp", "&"],
  ["lt", "<"],
  ["gt", ">"],
  ["quot", '"'],
  ["apos", "'"],
]);

function decoded(text: string): string {
  return text.includes("&")
    ? text.replace(/&([^;&]{0,12});?/g, (whole, name: string) => entity(whole, name))
    : text;
}

function entity(whole: string, name: string): string {
  const known = ENTITIES.get(name);
  if (whole.endsWith(";") && known !== undefined) return known;
  const digits = /^#(?:x([0-9a-fA-F]{1,6})|([0-9]{1,7}))$/.exec(name);
  const code =
    digits === null ? -1 : Number.parseInt(digits[1] ?? digits[2]!, digits[1] === undefined ? 10 : 16);
  if (!whole.endsWith(";") || code < 0 || code > 0x10ffff) throw new XmlFault(`an unknown entity "${name}"`);
  return String.fromCodePoint(code);
}
