// How figures and names stand on the drawing, in the language of the project.

import type { Lettering } from "../scene/scene.ts";
import { formatArea, formatMm } from "../words/numbers.ts";
import { type Speech, say, words } from "../words/say.ts";

export function letteringOf(speech: Speech): Lettering {
  return {
    mm: (value) => formatMm(value, speech.language),
    area: (value) => formatArea(value, speech.language),
    wall: (wall, thickness) => say(speech, words("place.wall-thick", { wall, thickness })),
    jamb: (width) => say(speech, words("place.jamb", { width })),
  };
}
