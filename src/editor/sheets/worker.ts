// The worker that makes sheets: loads the union, then answers jobs as they come, by the typeface of the page's own files.

import wasmUrl from "clipper2-wasm/dist/es/clipper2z.wasm?url";
import { loadUnion } from "../../geom/union.ts";
import type { FontFiles } from "../../sheet/pdf/write.ts";
import { createSheetMaker } from "./maker.ts";
import { createAnswerer, type ToMaker } from "./protocol.ts";
import { SHEET_FONTS } from "./typeface.ts";

// Messages that come before the union is there wait for the same promise, and so keep their order.
const answerer = loadUnion(wasmUrl).then((union) =>
  createAnswerer(createSheetMaker(union, fontFiles, nextTurn), (answer) => self.postMessage(answer)),
);

self.onmessage = async ({ data }: MessageEvent<ToMaker>) => {
  await (await answerer)(data);
};

// Without a union there is nothing to answer with; the page hears of it as of any other failure of the worker.
answerer.catch((reason: unknown) => {
  setTimeout(() => {
    throw reason;
  });
});

const TURN_MS = 60; // as long as the page takes to show a list and to ask for the sheet in hand

function nextTurn(): Promise<unknown> {
  return new Promise((resolve) => setTimeout(resolve, TURN_MS));
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
