// How the page is laid out at the moment: sizes, what is open, which theme. Nothing of it is saved with the project.

import type { Theme } from "../theme/palette.ts";

export interface Screen {
  /** Of the drawing, px. */
  readonly size: { readonly width: number; readonly height: number };
  /** What the person chose; null = as the system has it. */
  readonly theme: Theme | null;
  /** What is shown. */
  readonly shownTheme: Theme;
  readonly isPaneOpen: boolean;
  /** Height of the pane under its header, px. */
  readonly paneHeight: number;
  readonly panel: "problems" | "things" | "projects" | null;
  /** Number of the problem chosen in the list. */
  readonly problem: number | null;
  readonly isFinding: boolean;
  /** Whether the table of the kit lies over the plan. */
  readonly isKitOpen: boolean;
  /** What lies over all but the bar. */
  readonly over: "sheets" | "set" | "checks" | null;
  /** Whether the settings of the underlay are shown. */
  readonly isUnderlayOpen: boolean;
  readonly allWidths: boolean;
  /** Whether the soffit lies over the plan. */
  readonly showsSoffit: boolean;
  /** Whether the hint of the first minute has done its work. */
  readonly isHintDone: boolean;
  /** Whether space is held, so that a drag pans. */
  readonly isPanning: boolean;
}

/** Height of the pane's header, and the least and the greatest of what is under it, px. */
export const PANE = { header: 28, first: 156, least: 96, greatest: 420 } as const;

export function startScreen(): Screen {
  return {
    size: { width: 0, height: 0 },
    theme: null,
    shownTheme: "light",
    isPaneOpen: true,
    paneHeight: PANE.first,
    panel: null,
    problem: null,
    isFinding: false,
    isKitOpen: false,
    over: null,
    isUnderlayOpen: false,
    allWidths: false,
    showsSoffit: false,
    isHintDone: false,
    isPanning: false,
  };
}

/** The state with some of it replaced; itself where that changes nothing. */
export function withScreen(screen: Screen, change: Partial<Screen>): Screen {
  const next = { ...screen, ...change };
  const keys = Object.keys(change) as (keyof Screen)[];
  return keys.every((key) => Object.is(screen[key], next[key])) ? screen : next;
}

const SHARE = 0.175; // of the window: the plan keeps three quarters

/** The height of the pane to begin with: less in a low window. */
export function firstPaneHeight(windowHeight: number): number {
  return Math.max(PANE.least, Math.min(PANE.first, Math.round(windowHeight * SHARE)));
}

/** The pane's height kept within its limits. */
export function keptPaneHeight(wanted: number): number {
  return Math.round(Math.min(PANE.greatest, Math.max(PANE.least, wanted)));
}
