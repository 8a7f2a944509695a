// The one tolerance of the plan: how far two things may stand apart in the drawing and still be meant as one.

import type { Mm } from "../units.ts";

/** Ends, faces and places within this distance are one (tie tolerance: what a tie in its joint still bridges). */
export const TIE_TOLERANCE: Mm = 2;

/** A move of the drawing up to this is not worth a word; beyond it a warning says what was moved. */
export const SILENT_MOVE: Mm = 0.5;

/** Rounding of the drawing itself: added to a tolerance so that exactly 2 mm, turned by an angle, is still 2 mm. */
export const ROUNDING: Mm = 1e-3;
