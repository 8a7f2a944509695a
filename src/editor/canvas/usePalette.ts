// The colours of the drawing as the style sheet has them now, and the theme that is in force.

import { useEffect, useMemo, useState } from "react";
import { changeScreen } from "../live/actions.ts";
import { useBench, useScreen } from "../live/useWorkbench.tsx";
import { type Palette, readPalette } from "../theme/palette.ts";

export function usePalette(): Palette {
  const { shownTheme } = useScreen();
  return useMemo(() => {
    const style = getComputedStyle(document.documentElement);
    return readPalette((property) => style.getPropertyValue(property), shownTheme);
  }, [shownTheme]);
}

/** Puts the chosen theme on the page, and follows the system where none is chosen. */
export function useTheme(): void {
  const bench = useBench();
  const { theme } = useScreen();
  useEffect(() => {
    const system = matchMedia("(prefers-color-scheme: dark)");
    const apply = () => {
      const shownTheme = theme ?? (system.matches ? "dark" : "light");
      if (theme === null) delete document.documentElement.dataset.theme;
      else document.documentElement.dataset.theme = theme;
      changeScreen(bench, { shownTheme });
    };
    apply();
    system.addEventListener("change", apply);
    return () => system.removeEventListener("change", apply);
  }, [bench, theme]);
}

/** Whether the typeface is there: figures measured and drawn before would be in another. */
export function useTypeface(): boolean {
  const [isThere, setThere] = useState(false);
  useEffect(() => {
    let isWanted = true;
    const faces = ["400", "600"].map((weight) => document.fonts.load(`${weight} 12px "Plex Sans"`));
    Promise.allSettled(faces).then(() => {
      if (isWanted) setThere(true);
    });
    return () => {
      isWanted = false;
    };
  }, []);
  return isThere;
}
