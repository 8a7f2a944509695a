// What every label of the plan has to know to find its place.

import type { Mm } from "../../units.ts";
import type { Box } from "../box.ts";
import type { PlanPlace } from "./planPlace.ts";
import type { SettingOut } from "./settingOut.ts";
import type { SettingOutWords } from "./words.ts";

export interface Labelling {
  readonly layout: SettingOut;
  readonly place: PlanPlace;
  readonly area: Box;
  /** Floor to soffit of the storey. */
  readonly clearHeight: Mm;
  readonly words: SettingOutWords;
  /** Paper that is taken; grows with every label. */
  readonly taken: Box[];
}
