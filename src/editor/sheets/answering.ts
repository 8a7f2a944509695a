// What answers for the sheets, with the union and the typeface it needs: the same in the worker and in the page.

import wasmUrl from "clipper2-wasm/dist/es/clipper2z.wasm?url";
import { loadUnion } from "../../geom/union.ts";
import type { FontFiles } from "../../sheet/pdf/write.ts";
import { createSheetMaker } from "./maker.ts";
import { createAnswerer, type FromMaker, type ToMaker } from "./protocol.ts";
import { SHEET_FONTS } from "./typeface.ts";

export async function startAnswering(): Promise<(message: ToMaker) => Promise<FromMaker | null>> {
  return createAnswerer(createSheetMaker(await loadUnion(wasmUrl), fontFiles));
}

/** @throws {Error} where a file of the typeface does not come */
async function fontFiles(): Promise<FontFiles> {
  const [regular, semiBold, bold] = await Promise.all([
    bytesAt(SHEET_FONTS[400]),
    bytesAt(SHEET_FONTS[600]),
    bytesAt(SHEET_FONTS[700]),
  ]);
  return { 400: regular, 600: semiBold, 700: bold };
}

async function bytesAt(url: string): Promise<Uint8Array> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`${url}: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}
