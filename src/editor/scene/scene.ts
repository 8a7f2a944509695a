// Everything the drawing of the plan is made from, gathered by the canvas and handed to the painting functions.

import type { UnitDocument } from "../../plan/document.ts";
import type { LiveFill } from "../live/liveFill.ts";
import type { Palette, Theme } from "../theme/palette.ts";
import type { Detail } from "./detail.ts";
import type { PlacedProblem } from "./problemPlaces.ts";
import type { Viewport } from "./viewport.ts";

/** How figures are written, by the language of the project. */
export interface Lettering {
  readonly mm: (value: number) => string;
  readonly area: (squareMetres: number) => string;
  readonly wall: (id: string, thickness: number) => string;
  readonly jamb: (width: number) => string;
}

export interface Scene {
  readonly viewport: Viewport;
  readonly detail: Detail;
  readonly palette: Palette;
  readonly theme: Theme;
  readonly lettering: Lettering;
  /** The unit in view, with what the gesture in hand would make of it. */
  readonly unit: UnitDocument;
  readonly live: LiveFill | null;
  /** The fill is that of an earlier state: only the walls are drawn as they are. */
  readonly isStale: boolean;
  readonly selectedWalls: ReadonlySet<string>;
  readonly problems: readonly PlacedProblem[];
  /** Number of the problem that is chosen in the list: its ring is heavier. */
  readonly chosenProblem: number | null;
  /** Widths of all pieces, at every zoom at which pieces show. */
  readonly allWidths: boolean;
  /** Whether the soffit lies over the plan. */
  readonly showsSoffit: boolean;
}
