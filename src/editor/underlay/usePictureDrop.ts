// A picture dropped anywhere on the page goes under the plan.

import { useEffect } from "react";
import { useBench } from "../live/useWorkbench.tsx";
import { layFile } from "./underlayActions.ts";

// Project files and tables are left to those who read them; every other file is taken for a picture, and where it is
// none, that is said.
const OTHERS = /\.(json|csv|dxf|ifc)$/i;

/** Takes files dropped on the page, whether or not the settings of the picture are shown. */
export function usePictureDrop(): void {
  const bench = useBench();
  useEffect(() => {
    const over = (event: DragEvent) => {
      if (event.dataTransfer?.types.includes("Files") === true) event.preventDefault();
    };
    const drop = (event: DragEvent) => {
      const [file] = event.dataTransfer?.files ?? [];
      if (file === undefined || OTHERS.test(file.name) || event.defaultPrevented) return;
      event.preventDefault();
      void layFile(bench, file);
    };
    addEventListener("dragover", over);
    addEventListener("drop", drop);
    return () => {
      removeEventListener("dragover", over);
      removeEventListener("drop", drop);
    };
  }, [bench]);
}
