// What the lists have to say, whatever the language: the shape of their words.

import type { SPARES } from "../../fill/deliver/spares.ts";
import type { Family } from "../../kit/kit.ts";

/** Figures come as texts, written for the language already. */
export interface ListWords {
  readonly bill: string;
  readonly packing: string;
  readonly accessories: string;
  readonly unit: (name: string) => string;
  readonly mirrored: string;
  readonly continued: string;
  readonly page: (page: number, pages: number) => string;
  readonly families: { readonly [F in Family]: string };

  readonly pieces: string;
  readonly smallParts: string;
  readonly squareMetres: string;
  readonly kilograms: string;
  readonly closures: string;
  readonly fillers: string;
  readonly twoPerson: string;
  readonly noLimit: string;
  readonly bundles: string;
  readonly heaviest: string;

  readonly standard: string;
  readonly filler: string;
  readonly zone: string;
  readonly made: string;

  readonly quantity: string;
  readonly each: string;
  readonly total: string;
  readonly onePour: string;

  readonly various: string;
  readonly out: string;
  readonly back: string;
  readonly outside: string;
  readonly shared: string;
  readonly unnamed: string;
  readonly boxes: (full: number, each: string, rest: number) => string;
  readonly overLimit: (limit: string) => string;
  readonly loadOrder: (last: number) => string;
  readonly bundleRule: (mass: string, layers: number, height: string) => string;
  readonly lifting: string;

  readonly pour: string;
  readonly date: string;
  readonly store: string;
  readonly needed: string;
  readonly spare: string;
  readonly issue: string;
  readonly issued: string;
  readonly returned: string;
  readonly lost: string;
  readonly stays: string;
  readonly accessory: string;
  readonly sparePanels: string;
  readonly spareRule: (spares: typeof SPARES) => string;

  readonly agent: string;
  readonly agentText: (area: string, rate: string, litres: string) => string;
  readonly lime: string;
  readonly limeText: string;
  readonly sleeves: string;
  readonly sleevesText: (each: string, pours: number, all: string) => string;
  readonly noSleeves: string;

  readonly billDescription: (unit: string, pieces: string, area: string, mass: string) => string;
  readonly packingDescription: (unit: string, bundles: number, pieces: string, mass: string) => string;
  readonly accessoriesDescription: (unit: string, rows: number, litres: string) => string;
}
