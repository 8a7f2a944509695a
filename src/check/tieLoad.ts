// What does one tie carry of the pressure on the forms, and what does a bar bear?

import type { KiloNewton, KiloPascal, MegaPascal, Mm } from "../units.ts";
import { type Answer, computed, refusalOf } from "./range.ts";

const PRESSURE = { input: "pressure", least: 0, greatest: 500, unit: "kPa" } as const;
const SPACING = { input: "tie spacing", least: 1, greatest: 10_000, unit: "mm" } as const;
const STRESS = { input: "permissible stress", least: 1, greatest: 2000, unit: "MPa" } as const;
const AREA = { input: "section of the bar", least: 1, greatest: 10_000, unit: "mm²" } as const;

/** Load of an inner tie where the pressure is the same all over its area, kN: pressure × spacing × spacing. */
export function tieLoad(pressure: KiloPascal, along: Mm, up: Mm): Answer<KiloNewton> {
  const refusal = refusalOf([pressure, PRESSURE], [along, SPACING], [up, SPACING]);
  return refusal ?? computed((pressure * along * up) / 1e6);
}

/** What a bar bears in tension, kN: stress × least section. */
export function tieStrength(stress: MegaPascal, section: number): Answer<KiloNewton> {
  return refusalOf([stress, STRESS], [section, AREA]) ?? computed((stress * section) / 1000);
}
