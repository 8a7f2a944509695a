// The words of the lists in Spanish, as the trade speaks in Latin America.

import type { ListWords } from "./listWords.ts";

export const LIST_WORDS_ES: ListWords = {
  bill: "Lista de paneles",
  packing: "Lista de despacho",
  accessories: "Accesorios",
  unit: (name) => `Unidad ${name}`,
  mirrored: "en espejo",
  continued: "continúa",
  page: (page, pages) => `hoja ${page} de ${pages}`,
  families: {
    "wall-panel": "Paneles de muro",
    "inside-corner": "Esquineros interiores",
    "outside-corner": "Esquineros exteriores",
    "stop-end": "Tapas",
    "reveal-closure": "Tapas de vano",
    "reveal-corner": "Esquineros de vano",
    "wall-slab-connector": "Uniones muro-losa",
    "connector-corner": "Esquineros muro-losa",
    "slab-edge-cap": "Bordes de losa",
    "cap-corner": "Esquineros de borde",
    "slab-panel": "Paneles de losa",
    "shoring-strip": "Franjas de puntales",
    prop: "Puntales",
    tie: "Corbatas",
    "tie-sleeve": "Fundas de corbata",
    "closure-strip": "Cierres",
    pin: "Pasadores",
    wedge: "Cuñas",
    "wall-bracket": "Ménsulas de muro",
    "alignment-ledger": "Alineadores",
    brace: "Tornapuntas",
    "opening-brace": "Tensores de vano",
    "facade-aligner": "Alineadores de fachada",
  },

  pieces: "piezas",
  smallParts: "piezas menudas en cajas",
  squareMetres: "m² de encofrado",
  kilograms: "kg",
  closures: "cierres",
  fillers: "suplementos, altura total",
  twoPerson: "entre dos personas",
  noLimit: "peso sin revisar",
  bundles: "atados",
  heaviest: "kg, el más pesado",

  standard: "estándar",
  filler: "suplemento",
  zone: "en esquinas",
  made: "a medida",

  quantity: "cant.",
  each: "kg c/u",
  total: "Total",
  onePour:
    "Lo que pide un vaciado. Los vaciados que se siguen usan las mismas piezas, también en espejo: no se suman.",

  various: "varios",
  out: "sale",
  back: "entra",
  outside: "exterior",
  shared: "todos los recintos",
  unnamed: "recinto sin nombre",
  boxes: (full, each, rest) =>
    [
      ...(full > 0 ? [`${full} ${full === 1 ? "caja" : "cajas"} de ${each}`] : []),
      ...(rest > 0 ? [full > 0 ? `una de ${rest}` : `1 caja de ${rest}`] : []),
    ].join(", "),
  overLimit: (limit) => `una pieza de más de ${limit} kg: se iza sola`,
  loadOrder: (last) =>
    last === 1
      ? "Un atado."
      : `Cargar primero el ${last} y al final el 1: el atado 1 se usa primero y se baja primero.`,
  bundleRule: (mass, layers, height) =>
    `Un atado: hasta ${mass} kg y ${layers} capas${height === "" ? "" : ` (${height} mm)`}, práctica común, sin fuente; sin contar zunchos ni madera.`,
  lifting:
    "Nadie bajo un atado izado. Eslingas y puntos de izaje los decide la persona designada; mandan las reglas de la obra.",

  pour: "Vaciado",
  date: "Fecha",
  store: "Almacén",
  needed: "pide",
  spare: "repuesto",
  issue: "entregar",
  issued: "entregado",
  returned: "devuelto",
  lost: "perdido",
  stays: "se queda",
  accessory: "Para un vaciado",
  sparePanels: "Paneles de repuesto, aparte de los atados",
  spareRule: ({ pin, wedge, tie, panel, leastPanels }) =>
    `Repuestos: pasadores ${pin} %, cuñas ${wedge} %, corbatas y fundas ${tie} %, paneles ${panel} % de medidas con ${leastPanels} o más. Práctica común, sin fuente.`,

  agent: "Desmoldante",
  agentText: (area, rate, litres) =>
    `${litres} litros para un vaciado: ${area} m² de encofrado a ${rate} m² por litro. Se pasa en capa fina después de cada limpieza; sin charcos ni acero manchado. Rendimiento: práctica común, sin fuente; manda la ficha del fabricante.`,
  lime: "Solo encofrado nuevo, antes del primer vaciado",
  limeText:
    "Disolver 20 kg de cal hidratada en 100 litros de agua. Aplicar con brocha en toda cara que toca concreto. Dejar al menos 8 horas, lavar y luego aceitar. La cal quema: guantes y lentes. Práctica común, sin fuente; probar en un panel.",
  sleeves: "Fundas de corbata",
  sleevesText: (each, pours, all) =>
    pours > 1
      ? `Se quedan en el concreto: ${each} en cada vaciado con repuestos, ${all} en los ${pours} vaciados de esta hoja.`
      : `Se quedan en el concreto: ${each} para el vaciado con repuestos. Pedirlas de nuevo cada vez.`,
  noSleeves: "No hacen falta.",

  billDescription: (unit, pieces, area, mass) =>
    `Lista de la unidad ${unit}: ${pieces} piezas que forman ${area} m², ${mass} kg con todos los accesorios.`,
  packingDescription: (unit, bundles, pieces, mass) =>
    `Lista de despacho de la unidad ${unit}: ${bundles} atados en orden de uso, ${pieces} piezas, ${mass} kg, con casillas de salida y entrada.`,
  accessoriesDescription: (unit, rows, litres) =>
    `Accesorios de la unidad ${unit} para un vaciado: ${rows} renglones con repuestos, columnas para llenar a mano y ${litres} litros de desmoldante.`,
};
