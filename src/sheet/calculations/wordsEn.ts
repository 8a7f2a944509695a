// The words of the calculation sheets in English.

import { kindText, SHORT_STATUS_WORDS, STATUS_WORDS } from "../checkWords/kinds.ts";
import type { CalcWords } from "./calcWords.ts";

export const CALC_WORDS_EN: CalcWords = {
  title: "Calculations",
  description: (unit) =>
    `Calculations for unit ${unit}: inputs, every check with its formula, numbers, limit and source, and what the checks take for granted.`,
  kindOf: (kind) => kindText(kind, "en"),
  status: STATUS_WORDS.en,
  shortStatus: SHORT_STATUS_WORDS.en,

  given: "With",
  source: "Source",
  ofLimit: (value, limit) => `${value} of ${limit}`,
  place: "place (x; y), mm",
  value: "value",
  limit: "limit",
  number: "number",
  wholeUnit: "Whole unit",
  outside: "Outside",
  opening: (id) => `opening ${id}`,
  prop: (number) => `prop ${number}`,
  up: (height) => `${height} up`,
  room: "room",
  piece: "piece",
  placesAsDrawn: "Places are those of the unit as drawn, not mirrored.",

  atAGlance: "At a glance",
  mostUsed: "of a limit at most",
  completeness: "Completeness",
  assumptions: "What the checks take for granted",
  cautions: "With every result",
  notMade: "No calculations",
  unread:
    "What the project says of its loads and its concrete cannot be read. Mend these places of the project file:",

  storey: "Storey",
  clearHeight: "Clear height, floor to soffit",
  slab: "Slab over it",
  concreteHead: "Concrete",
  loadsHead: "Loads on the slab",
  kitRules: "Rules of the kit, with their origin",
  byDefault: "(default)",
  notStated: "not stated",
  yes: "yes",
  no: "no",
  loads: {
    slabModel: "Load model of the slab",
    concreteDensity: "Density of the concrete in the slab",
    formworkLoad: "Weight of the formwork",
    motorisedCarts: "Motorised carts",
    continuity: "Factor for continuous bearers",
    propStrength: "How the strength of props is stated",
    shoring: "Shoring through the storeys",
  },
  concrete: {
    pressureModel: "Method for the pressure",
    density: "Density of the concrete",
    rate: "Highest rate of placing",
    temperature: "Temperature of the concrete",
    cement: "Cement",
    retarder: "Retarder",
    slump: "Slump",
    vibrationDepth: "Depth of vibration",
    consistence: "Consistence",
    settingEnd: "End of setting",
    formStrength: "How the kit states the strength of panels and ties",
    bottomTie: "Part of the gap under it that the lowest tie takes",
    cylinderStrength: "Strength at 28 days, cylinders",
    cubeStrength: "Strength at 28 days, cubes",
    cementClass: "Class of the cement",
    strikeAt: "Slab panels come down after",
    measuredStrength: "Strength measured then",
    log: "Log of the slab's temperature",
    strengthTests: "Tests of the mix, strength by maturity",
    datum: "Datum temperature",
    strikingLoad: "Load while striking, beside the slab's own",
    serviceLoad: "Service load in all",
    propRetention: "Props stay under a slab for",
    cycle: "From one day of pouring to the next",
  },
  rules: {
    panelPressure: "Pressure the panels bear",
    tieLoad: "Load a tie may carry",
    tieRows: "Tie rows",
    tieSpacing: "Greatest tie spacing",
    tieEdge: "Least distance of a tie from an opening",
    frameDepth: "Depth of the frames",
    propPitch: "Distance from prop to prop",
    personLimit: "Limit of one person",
  },
  oneStorey: "one storey, or not said",
  scheme: (shores, reshores, storeys, first) =>
    `${shores} storeys on shores, ${reshores} on reshores, ${storeys} cast, ${first} out first`,
  readings: (count) => `${count} readings`,

  heightMm: "z, mm",
  pressure: "Pressure of the fresh concrete",
  worstTie: "The tie that carries most",
  leftOut: "One tie left out",
  leftOutAt: (row, carrier) =>
    `The tie at ${row} mm is forgotten; the one at ${carrier} mm then carries most.`,
  stripMm: "strip, mm",
  byStrip: "strip, kN",
  asBeam: "beam, kN",
  rowMm: "row, mm",
  widthFromTo: (width, from, to) => `${width} from ${from} to ${to}`,
  stripOf: (name, lines, widths) => `Strip ${name}, of ${lines} lines of ties. Width b, mm: ${widths}.`,
  byStripRow: (row, from, to) =>
    `By its strip, from ${from} to ${to} mm: halfway to the next row on either side. Row at ${row} mm:`,
  beamText:
    "As a support of a stiff beam over all rows of the line, free at both ends, by the three-moment equation. V: from the simple spans on both sides and the overhang; M: moment over the row; R: reaction.",
  stripTable: "What every row of ties carries",
  stripTableText: (limit, factor) =>
    [
      "For each height z, mm: load in kN by the strip, then as a support of a stiff beam; the greater, in strong letters, counts.",
      factor === "" ? "" : `Beside the limit it counts ${factor} times.`,
      limit === "" ? "The kit states no limit for a tie: not checked." : `Limit of a tie: ${limit}.`,
      "One left out: the row that is forgotten → the row that then carries most, mm, and its load, kN.",
    ]
      .filter((sentence) => sentence !== "")
      .join(" "),
  strip: "strip",
  lines: "lines",
  widthMm: "width at heights, mm",
  oneLeftOut: "one left out",
  noOther: (row) => `${row}: no other tie`,
  register: "Lines of ties with their strips",
  line: "line",

  everyPiece: "Every piece to lift",
  twoPersons: "Carried by two",
  people: "people",
  lift: { stack: "stack", wall: "wall", overhead: "overhead" },
  liftSigns:
    "H reach of the hands, V their height, D how far up or down, all in cm; A twist in degrees; FM and CM for pace and grip.",
  mostOfLimit: (code) => `The piece nearest to its limit: ${code}`,

  span: "span, mm",
  rulesSideBySide: "When forms may come down: rules side by side",
  member: "member",
  maturity: "Maturity from the log of temperatures",
  maturityText: (datum, intervals) =>
    `${intervals} stretches of time at the mean of their two readings, factor exp(−(E/R)·(1/(273 + T) − 1/293)); colder than the datum T_0 of ${datum} °C counts nothing for M. The log stands in the project file.`,

  shoring: "Shoring through the storeys",
  shoringPicture:
    "The steps up to the one at which a slab carries most. Beside each slab what it carries itself, beside the shores under it what comes down through them, in slabs' own weights.",
  shoringSteps: "Shoring step by step",
  step: "step",
  levelSlabShore: "level: slab | shores under it, in slabs' own weights; levels below carry themselves",
};
