// From a file somebody dropped to a picture that can be kept with the project: a PNG, a JPEG, or the first page of a
// PDF. What it is is told by its first bytes, never by its name. Large pictures are made smaller.

import { type Words, words } from "../words/say.ts";
import { LONGEST_IMAGE, type Underlay } from "./underlay.ts";

export type Picture = Pick<Underlay, "name" | "image" | "width" | "height">;
export type PictureAnswer =
  | { readonly status: "ok"; readonly picture: Picture }
  | { readonly status: "refused"; readonly said: Words };

/** Longest side of a picture as it is kept, px: an A1 plan at 1:100 to about 2 cm of building a pixel. */
const KEPT_SIDE = 4096;
/** A file up to this size is kept byte for byte, if it is not too wide. */
const KEPT_BYTES = 3_000_000;
const MOST_BYTES = 80_000_000;
const JPEG_QUALITY = 0.85;
const NAME_LENGTH = 120;

type Sort = "image/png" | "image/jpeg" | "pdf";

export async function readPicture(file: File): Promise<PictureAnswer> {
  const name = file.name.replaceAll(/\p{Cc}/gu, " ").slice(0, NAME_LENGTH);
  const head = new Uint8Array(await file.slice(0, 8).arrayBuffer());
  const sort = sortOf(head);
  if (sort === null) return refused(words("underlay.not-a-picture", { name }));
  if (file.size > MOST_BYTES) return tooLarge(name);
  try {
    const drawn = sort === "pdf" ? await drawPdf(file) : await drawImage(file, sort);
    const image = drawn.kept ?? smallest(drawn.canvas);
    if (image.length > LONGEST_IMAGE) return tooLarge(name);
    return { status: "ok", picture: { name, image, width: drawn.width, height: drawn.height } };
  } catch {
    return refused(words("underlay.unreadable", { name }));
  }
}

/** What a file is by its first bytes; null = nothing that can be shown. */
export function sortOf(head: Uint8Array): Sort | null {
  const begins = (...bytes: readonly number[]) => bytes.every((byte, k) => head[k] === byte);
  if (begins(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return "image/png";
  if (begins(0xff, 0xd8, 0xff)) return "image/jpeg";
  return begins(0x25, 0x50, 0x44, 0x46) ? "pdf" : null;
}

interface Drawn {
  readonly width: number;
  readonly height: number;
  /** The file as it came, where it can stay so. */
  readonly kept: string | null;
  readonly canvas: HTMLCanvasElement;
}

async function drawImage(file: File, sort: "image/png" | "image/jpeg"): Promise<Drawn> {
  const bitmap = await createImageBitmap(file);
  const factor = Math.min(1, KEPT_SIDE / Math.max(bitmap.width, bitmap.height));
  const width = Math.max(1, Math.round(bitmap.width * factor));
  const height = Math.max(1, Math.round(bitmap.height * factor));
  const canvas = paper(width, height);
  penOf(canvas).drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  const isKept = factor === 1 && file.size <= KEPT_BYTES;
  const kept = isKept ? await dataUrl(new Blob([await file.arrayBuffer()], { type: sort })) : null;
  return { width, height, kept, canvas };
}

// The reader of PDFs is large and loaded only here. It gets the bytes and fetches nothing.
async function drawPdf(file: File): Promise<Drawn> {
  const { drawFirstPage } = await import("./drawPdf.ts");
  const canvas = await drawFirstPage(new Uint8Array(await file.arrayBuffer()), KEPT_SIDE);
  return { width: canvas.width, height: canvas.height, kept: null, canvas };
}

function paper(width: number, height: number): HTMLCanvasElement {
  const canvas = document.createElement("canvas");
  canvas.width = width;
  canvas.height = height;
  const pen = penOf(canvas);
  pen.fillStyle = "#fff";
  pen.fillRect(0, 0, width, height);
  return canvas;
}

function penOf(canvas: HTMLCanvasElement): CanvasRenderingContext2D {
  const pen = canvas.getContext("2d");
  if (pen === null) throw new Error("no pen for a canvas");
  return pen;
}

// Line drawings are smaller as PNG, photographs as JPEG.
function smallest(canvas: HTMLCanvasElement): string {
  const png = canvas.toDataURL("image/png");
  if (png.length <= KEPT_BYTES) return png;
  const jpeg = canvas.toDataURL("image/jpeg", JPEG_QUALITY);
  return jpeg.length < png.length ? jpeg : png;
}

function dataUrl(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result));
    reader.onerror = () => reject(reader.error);
    reader.readAsDataURL(blob);
  });
}

function refused(said: Words): PictureAnswer {
  return { status: "refused", said };
}

function tooLarge(name: string): PictureAnswer {
  return refused(words("underlay.too-large", { name, most: Math.floor((LONGEST_IMAGE * 3) / 4 / 1e6) }));
}
