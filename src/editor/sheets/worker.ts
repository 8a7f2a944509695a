// The worker that makes sheets, with the typeface of the page's own files.

import type { FontFiles } from "../../sheet/pdf/write.ts";
import { servePlan } from "../workers/serve.ts";
import { createSheetMaker } from "./maker.ts";
import { sheetAnswers } from "./protocol.ts";
import { SHEET_FONTS } from "./typeface.ts";

servePlan((union) => sheetAnswers(createSheetMaker(union, fontFiles, nextTurn)));

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
