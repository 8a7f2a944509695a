// The words of the lists in English.

import type { ListWords } from "./listWords.ts";

export const LIST_WORDS_EN: ListWords = {
  bill: "Bill of panels",
  packing: "Packing list",
  accessories: "Accessories",
  unit: (name) => `Unit ${name}`,
  mirrored: "mirrored",
  continued: "continued",
  page: (page, pages) => `page ${page} of ${pages}`,
  families: {
    "wall-panel": "Wall panels",
    "inside-corner": "Inside corners",
    "outside-corner": "Outside corners",
    "stop-end": "Stop-ends",
    "reveal-closure": "Reveal closures",
    "reveal-corner": "Reveal corners",
    "wall-slab-connector": "Connectors",
    "connector-corner": "Connector corners",
    "slab-edge-cap": "Edge caps",
    "cap-corner": "Cap corners",
    "slab-panel": "Slab panels",
    "shoring-strip": "Shoring strips",
    prop: "Props",
    tie: "Ties",
    "tie-sleeve": "Tie sleeves",
    "closure-strip": "Closure strips",
    pin: "Pins",
    wedge: "Wedges",
    "wall-bracket": "Wall brackets",
    "alignment-ledger": "Ledgers",
    brace: "Braces",
    "opening-brace": "Opening braces",
    "facade-aligner": "Facade aligners",
  },

  pieces: "pieces",
  smallParts: "small parts in boxes",
  squareMetres: "m² of forms",
  kilograms: "kg",
  closures: "closures",
  fillers: "fillers, full height",
  twoPerson: "lifts for two",
  noLimit: "lifts not checked",
  bundles: "bundles",
  heaviest: "kg, the heaviest",

  standard: "standard",
  filler: "filler",
  zone: "at corners",
  made: "made to measure",

  quantity: "number",
  each: "kg each",
  total: "Total",
  onePour:
    "What one pour needs. Pours in turn use the same pieces, mirrored ones too: do not add their bills.",

  various: "various",
  out: "out",
  back: "in",
  outside: "outside",
  shared: "all rooms",
  unnamed: "unnamed room",
  boxes: (full, each, rest) =>
    [
      ...(full > 0 ? [`${full} ${full === 1 ? "box" : "boxes"} of ${each}`] : []),
      ...(rest > 0 ? [full > 0 ? `one of ${rest}` : `1 box of ${rest}`] : []),
    ].join(", "),
  overLimit: (limit) => `one piece over ${limit} kg: lift it alone`,
  loadOrder: (last) =>
    last === 1
      ? "One bundle."
      : `Load ${last} first and 1 last: bundle 1 is needed first and comes off first.`,
  bundleRule: (mass, layers, height) =>
    `A bundle: ${mass} kg and ${layers} layers${height === "" ? "" : ` (${height} mm)`} at most, common practice, no source; straps and timber not weighed.`,
  lifting:
    "Nobody under a lifted bundle. Slings and lifting points by the appointed person; site rules come first.",

  pour: "Pour",
  date: "Day",
  store: "Store",
  needed: "needed",
  spare: "spare",
  issue: "to issue",
  issued: "issued",
  returned: "returned",
  lost: "lost",
  stays: "stays in",
  accessory: "For one pour",
  sparePanels: "Spare panels, beside those in the bundles",
  spareRule: ({ pin, wedge, tie, panel, leastPanels }) =>
    `Spares: pins ${pin} %, wedges ${wedge} %, ties and sleeves ${tie} %, panels ${panel} % of sizes with ${leastPanels} or more. Common practice, no source.`,

  agent: "Release agent",
  agentText: (area, rate, litres) =>
    `${litres} litres for one pour: ${area} m² of forms at ${rate} m² a litre. Wipe it on thin after each cleaning; no puddles, none on the steel. Rate: common practice, no source; the maker’s sheet comes first.`,
  lime: "New forms only, before the first pour",
  limeText:
    "Stir 20 kg of hydrated lime into 100 litres of water. Brush it on every face that touches concrete. Leave it on at least 8 hours, wash it off, then oil. Lime burns: gloves and goggles. Common practice, no source; try it on one panel.",
  sleeves: "Tie sleeves",
  sleevesText: (each, pours, all) =>
    pours > 1
      ? `They stay in the concrete: ${each} for each pour, spares included, ${all} for the ${pours} pours of this sheet.`
      : `They stay in the concrete: ${each} for the pour, spares included. Order them anew for each.`,
  noSleeves: "None needed.",

  billDescription: (unit, pieces, area, mass) =>
    `Bill of unit ${unit}: ${pieces} pieces that form ${area} m², ${mass} kg with all accessories.`,
  packingDescription: (unit, bundles, pieces, mass) =>
    `Packing list of unit ${unit}: ${bundles} bundles in the order of need, ${pieces} pieces, ${mass} kg, with boxes to tick out and in.`,
  accessoriesDescription: (unit, rows, litres) =>
    `Accessories of unit ${unit} for one pour: ${rows} lines with spares, columns to fill in by hand, and ${litres} litres of release agent.`,
};
