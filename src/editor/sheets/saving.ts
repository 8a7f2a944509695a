// Gives files to the person: saved by the browser where it saves downloads, or handed to its printer.

import type { FontAddresses } from "./maker.ts";

const KEEP_MS = 60_000; // as long as a slow browser may take to read what it saves

/** Saves a file under a name without anything that file systems refuse. */
export function saveFile(name: string, data: string | Uint8Array, type: string): void {
  const bytes = typeof data === "string" ? data : new Uint8Array(data);
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes], { type }));
  link.download = name.replaceAll(/[\\/:*?"<>|]/g, " ");
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), KEEP_MS);
}

/** Addresses that hold in a document without an address of its own. */
export function fullAddresses(fonts: FontAddresses): FontAddresses {
  const full = (url: string) => new URL(url, location.href).href;
  return { 400: full(fonts[400]), 600: full(fonts[600]), 700: full(fonts[700]) };
}

/** Prints a document of its own, out of sight. Done when the browser has taken it over. */
export async function printDocument(html: string, title: string): Promise<void> {
  const frame = document.createElement("iframe");
  frame.title = title;
  frame.tabIndex = -1;
  frame.setAttribute("aria-hidden", "true");
  frame.className = "print-frame";
  frame.srcdoc = html;
  const isLoaded = new Promise((resolve) => {
    frame.onload = resolve;
  });
  document.body.append(frame);
  await isLoaded;
  const { contentWindow, contentDocument } = frame;
  if (contentWindow === null || contentDocument === null) {
    frame.remove();
    throw new Error("the browser gave no frame to print from");
  }
  const weights = ["400", "600", "700"];
  await Promise.allSettled(
    weights.map((weight) => contentDocument.fonts.load(`${weight} 10px "IBM Plex Sans Condensed"`)),
  );
  // Some browsers come back from `print` at once and still need the frame.
  const remove = () => setTimeout(() => frame.remove());
  contentWindow.addEventListener("afterprint", remove);
  contentWindow.focus();
  contentWindow.print();
}
