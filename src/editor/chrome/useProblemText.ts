// The sentences of problems in the language of the page. Their table is loaded when a problem is first shown in another
// language than English; until it is there the English sentence stands.

import { useEffect, useState } from "react";
import { useSpeech } from "../live/useWorkbench.tsx";

type ProblemText = typeof import("../../sheet/problemText.ts").problemText;

let table: Promise<ProblemText> | null = null;

export function useProblemText(): (message: string) => string {
  const { language } = useSpeech().speech;
  const [told, setTold] = useState<ProblemText | null>(null);
  const isNeeded = language !== "en" && told === null;
  useEffect(() => {
    if (!isNeeded) return;
    let isWanted = true;
    table ??= import("../../sheet/problemText.ts").then(({ problemText }) => problemText);
    table.then(
      (problemText) => {
        if (isWanted) setTold(() => problemText);
      },
      () => {
        table = null;
      },
    );
    return () => {
      isWanted = false;
    };
  }, [isNeeded]);
  return (message) => (told === null ? message : told(message, language));
}
