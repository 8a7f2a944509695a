// A project file dropped anywhere on the page opens as one chosen from the dialog does. Other files are left to those
// who read them.

import { PROJECT_FILE, readFile } from "../storage/files.ts";
import { type FileDesk, takeFile } from "./projectFiles.ts";

/** The first project file of those dropped, by its name; null where there is none. */
export function projectAmong(files: Iterable<File>): File | null {
  const isProject = ({ name }: File) =>
    PROJECT_FILE.extensions.some((extension) => name.toLowerCase().endsWith(extension));
  return [...files].find(isProject) ?? null;
}

/** Takes what is dropped on the page until the function returned is called. */
export function takeDropped(on: FileDesk): () => void {
  const over = (event: DragEvent) => {
    if (event.dataTransfer?.types.includes("Files") === true) event.preventDefault();
  };
  const drop = (event: DragEvent) => {
    const file = projectAmong(event.dataTransfer?.files ?? []);
    if (file === null || event.defaultPrevented) return;
    // Or the browser would leave the page to show the file.
    event.preventDefault();
    void readFile(file).then((read) => takeFile(on, read));
  };
  addEventListener("dragover", over);
  addEventListener("drop", drop);
  return () => {
    removeEventListener("dragover", over);
    removeEventListener("drop", drop);
  };
}
