// The first page of a PDF as a picture.

import { GlobalWorkerOptions, getDocument } from "pdfjs-dist";
import workerUrl from "pdfjs-dist/build/pdf.worker.min.mjs?url";

/**
 * Draws the first page so that its longer side is `side` px, or less where the page is small.
 *
 * @throws where the bytes are no PDF that can be read without a password
 */
export async function drawFirstPage(data: Uint8Array, side: number): Promise<HTMLCanvasElement> {
  GlobalWorkerOptions.workerSrc = workerUrl;
  const task = getDocument({ data, isEvalSupported: false, enableXfa: false, useSystemFonts: true });
  try {
    const pages = await task.promise;
    const page = await pages.getPage(1);
    const plain = page.getViewport({ scale: 1 });
    const scale = Math.min(GREATEST_SCALE, side / Math.max(plain.width, plain.height));
    const viewport = page.getViewport({ scale });
    const canvas = document.createElement("canvas");
    canvas.width = Math.max(1, Math.floor(viewport.width));
    canvas.height = Math.max(1, Math.floor(viewport.height));
    await page.render({ canvas, viewport, background: "#fff" }).promise;
    return canvas;
  } finally {
    await task.destroy();
  }
}

const GREATEST_SCALE = 4; // 288 px to the inch: finer than plans are drawn
