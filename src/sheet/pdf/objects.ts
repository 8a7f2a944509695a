// The skeleton of a PDF file: numbered objects, streams, the table of where they lie, and how data is spelled.
//
// @see ISO 32000-1, 7.3 (objects), 7.5 (file structure)

import { zlibSync } from "fflate";

export interface PdfFile {
  /** Keeps a number free for an object that is written later. */
  readonly reserve: () => number;
  /** Writes an object; gives its number. */
  readonly add: (body: string, number?: number) => number;
  /** Writes a stream, compressed; `entries` go into its dictionary. */
  readonly addStream: (data: Uint8Array | string, entries?: string) => number;
  /** The whole file. Nothing may be added after it. */
  readonly finish: (trailer: string) => Uint8Array;
}

export function pdfFile(): PdfFile {
  const chunks: Uint8Array[] = [];
  const offsets: number[] = [];
  let length = 0;
  const write = (data: Uint8Array | string) => {
    const bytes = typeof data === "string" ? ascii(data) : data;
    chunks.push(bytes);
    length += bytes.length;
  };
  const begin = (number: number) => {
    offsets[number] = length;
    write(`${number} 0 obj\n`);
  };
  const reserve = () => offsets.push(-1) - 1;
  reserve(); // object 0 is the head of the list of free ones
  write("%PDF-1.7\n");
  write(new Uint8Array([0x25, 0xe2, 0xe3, 0xcf, 0xd3, 0x0a])); // tells transports that the file is not text
  return {
    reserve,
    add(body, number = reserve()) {
      begin(number);
      write(`${body}\nendobj\n`);
      return number;
    },
    addStream(data, entries = "") {
      const packed = zlibSync(typeof data === "string" ? ascii(data) : data, { level: 6 });
      const number = reserve();
      begin(number);
      write(`<< ${entries} /Filter /FlateDecode /Length ${packed.length} >>\nstream\n`);
      write(packed);
      write("\nendstream\nendobj\n");
      return number;
    },
    finish(trailer) {
      const start = length;
      write(`xref\n0 ${offsets.length}\n0000000000 65535 f \n`);
      for (const offset of offsets.slice(1)) write(`${`${offset}`.padStart(10, "0")} 00000 n \n`);
      write(`trailer\n<< /Size ${offsets.length} ${trailer} >>\nstartxref\n${start}\n%%EOF\n`);
      return joined(chunks, length);
    },
  };
}

function joined(chunks: readonly Uint8Array[], length: number): Uint8Array {
  const bytes = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}

function ascii(text: string): Uint8Array {
  const bytes = new Uint8Array(text.length);
  for (let at = 0; at < text.length; at++) bytes[at] = text.charCodeAt(at);
  return bytes;
}

/** UTF-16 in hexadecimal digits, big end first. */
export function utf16Hex(text: string): string {
  let digits = "";
  for (let at = 0; at < text.length; at++) digits += hex4(text.charCodeAt(at));
  return digits;
}

export function hex4(value: number): string {
  return value.toString(16).toUpperCase().padStart(4, "0");
}

/** A text as PDF spells it where a person reads it: nothing in it can end the string. */
export function textString(text: string): string {
  return `<FEFF${utf16Hex(text)}>`;
}
