// What a calculation sheet has to say, whatever the language: the shape of its words. Figures come as texts.

import type { CheckStatus } from "../../assess/checkDocument.ts";
import type { RuleName } from "../../kit/kit.ts";
import type { Concrete } from "../../plan/concrete.ts";
import type { Loads } from "../../plan/loads.ts";

/** Rules of the kit by which the checks go. */
export type CheckedRule = Extract<
  RuleName,
  | "panelPressure"
  | "tieLoad"
  | "tieRows"
  | "tieSpacing"
  | "tieEdge"
  | "frameDepth"
  | "propPitch"
  | "personLimit"
>;

export interface CalcWords {
  readonly title: string;
  readonly description: (unit: string) => string;
  readonly kindOf: (kind: string) => string;
  readonly status: { readonly [S in CheckStatus]: string };
  readonly shortStatus: { readonly [S in CheckStatus]: string };

  readonly given: string;
  readonly source: string;
  readonly ofLimit: (value: string, limit: string) => string;
  readonly place: string;
  readonly value: string;
  readonly limit: string;
  readonly number: string;
  readonly wholeUnit: string;
  /** Of a check that only all pours together tell. */
  readonly allPours: string;
  readonly outside: string;
  readonly opening: (id: string) => string;
  readonly prop: (number: number) => string;
  readonly up: (height: string) => string;
  readonly room: string;
  readonly piece: string;
  readonly placesAsDrawn: string;

  readonly atAGlance: string;
  readonly mostUsed: string;
  readonly completeness: string;
  readonly assumptions: string;
  readonly cautions: string;
  readonly notMade: string;
  readonly unread: string;

  readonly storey: string;
  readonly clearHeight: string;
  readonly slab: string;
  readonly concreteHead: string;
  readonly loadsHead: string;
  readonly kitRules: string;
  readonly byDefault: string;
  readonly notStated: string;
  readonly yes: string;
  readonly no: string;
  readonly loads: { readonly [Name in keyof Loads]: string };
  readonly concrete: { readonly [Name in keyof Concrete]: string };
  readonly rules: { readonly [Name in CheckedRule]: string };
  readonly oneStorey: string;
  readonly scheme: (shores: number, reshores: number, storeys: number, first: string) => string;
  readonly readings: (count: number) => string;

  readonly pressure: string;
  readonly heightMm: string;
  readonly worstTie: string;
  readonly leftOut: string;
  readonly leftOutAt: (row: string, carrier: string) => string;
  readonly stripMm: string;
  readonly byStrip: string;
  readonly asBeam: string;
  readonly rowMm: string;
  readonly widthFromTo: (width: string, from: string, to: string) => string;
  readonly stripOf: (name: string, lines: number, widths: string) => string;
  readonly byStripRow: (row: string, from: string, to: string) => string;
  readonly beamText: string;
  readonly stripTable: string;
  /** `limit` and `factor` are empty where there is none. */
  readonly stripTableText: (limit: string, factor: string) => string;
  readonly strip: string;
  readonly lines: string;
  readonly widthMm: string;
  readonly oneLeftOut: string;
  readonly noOther: (row: string) => string;
  readonly register: string;
  readonly line: string;

  readonly everyPiece: string;
  readonly twoPersons: string;
  readonly people: string;
  readonly lift: { readonly stack: string; readonly wall: string; readonly overhead: string };
  readonly liftSigns: string;
  readonly mostOfLimit: (code: string) => string;

  readonly span: string;
  readonly rulesSideBySide: string;
  readonly member: string;
  readonly prediction: string;
  readonly strengthNeeded: string;
  readonly strengthThen: string;
  readonly strongAfter: string;
  readonly fromThen: string;
  readonly atReadings: string;
  readonly atReadingsText: string;
  /** Head of a column of hours. */
  readonly hour: string;
  readonly maturity: string;
  readonly maturityText: (datum: string, intervals: number) => string;

  readonly tolerances: string;
  readonly tolerancesText: string;
  readonly toleranceOf: string;
  readonly rule: string;
  readonly deviation: string;

  readonly shoring: string;
  readonly shoringPicture: string;
  readonly shoringSteps: string;
  readonly step: string;
  readonly levelSlabShore: string;
}
