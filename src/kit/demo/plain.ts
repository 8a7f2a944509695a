// What every piece of the demo kit has besides its sizes: a code, a mass and a price.
//
// Masses follow two rates, both common practice, no source: plated pieces weigh 22 kg for each m² that touches the
// concrete, angles 1.8 kg a metre. Prices are invented for the demo: 45 a plated piece and 70 for each m² of it.

import { type Kg, type Mm, roundTo, type SquareMetre } from "../../units.ts";
import type { AccessoryFamily, Piece } from "../kit.ts";

const PLATE_MASS = 22;
const ANGLE_MASS = 1.8;
const PRICE_EACH = 45;
const PRICE_AREA = 70;
const PRICE_ANGLE = 18;

/** A piece without hand that leaves with the forms and is no part of the regular set: what most pieces are. */
const PLAIN = { standard: false, hand: null, stays: 0 } as const;

interface Plain {
  readonly code: string;
  readonly mass: Kg;
  readonly price: number;
  readonly standard: boolean;
  readonly hand: null;
  readonly stays: number;
}

/** A piece of which `area` m² touches the concrete. */
export function plated(code: string, area: SquareMetre): Plain {
  return {
    code,
    mass: roundTo(PLATE_MASS * area, 1),
    price: roundTo(PRICE_EACH + PRICE_AREA * area, 1),
    ...PLAIN,
  };
}

/** An angle of `length` mm that joins two forms and touches no concrete. */
export function angle(code: string, length: Mm): Plain {
  const metres = length / 1000;
  return { code, mass: roundTo(ANGLE_MASS * metres, 1), price: roundTo(PRICE_ANGLE * metres, 1), ...PLAIN };
}

/** A bought piece with a mass and a price of its own. */
export function bought(code: string, mass: Kg, price: number): Plain {
  return { code, mass, price, ...PLAIN };
}

/** A bought accessory; `length` null where it has none or can be set to any. */
export function accessory(family: AccessoryFamily, length: Mm | null, item: Plain): Piece {
  return { family, length, ...item };
}
