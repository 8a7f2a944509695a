// The words of the calculation sheets in Spanish.

import { kindText, SHORT_STATUS_WORDS, STATUS_WORDS } from "../checkWords/kinds.ts";
import type { CalcWords } from "./calcWords.ts";

export const CALC_WORDS_ES: CalcWords = {
  title: "Cálculos",
  description: (unit) =>
    `Cálculos de la unidad ${unit}: datos, cada verificación con su fórmula, números, límite y fuente, y lo que las verificaciones dan por supuesto.`,
  kindOf: (kind) => kindText(kind, "es"),
  status: STATUS_WORDS.es,
  shortStatus: SHORT_STATUS_WORDS.es,

  given: "Con",
  source: "Fuente",
  ofLimit: (value, limit) => `${value} de ${limit}`,
  place: "lugar (x; y), mm",
  value: "valor",
  limit: "límite",
  number: "número",
  wholeUnit: "Toda la unidad",
  allPours: "Todos los vaciados juntos",
  outside: "Exterior",
  opening: (id) => `vano ${id}`,
  prop: (number) => `puntal ${number}`,
  up: (height) => `altura ${height}`,
  room: "recinto",
  piece: "pieza",
  placesAsDrawn: "Los lugares son los de la unidad tal como está dibujada, sin espejo.",

  atAGlance: "De un vistazo",
  mostUsed: "de un límite a lo más",
  completeness: "Integridad",
  assumptions: "Lo que las verificaciones dan por supuesto",
  cautions: "Con todo resultado",
  notMade: "Sin cálculos",
  unread:
    "Lo que el proyecto dice de sus cargas y su concreto no se puede leer. Corrija estos lugares del archivo del proyecto:",

  storey: "Piso",
  clearHeight: "Altura libre, del piso al fondo de losa",
  slab: "Losa encima",
  concreteHead: "Concreto",
  loadsHead: "Cargas sobre la losa",
  kitRules: "Reglas del kit, con su origen",
  byDefault: "(por defecto)",
  notStated: "sin declarar",
  yes: "sí",
  no: "no",
  loads: {
    slabModel: "Modelo de carga de la losa",
    concreteDensity: "Peso específico del concreto de la losa",
    formworkLoad: "Peso del encofrado",
    motorisedCarts: "Carretillas motorizadas",
    continuity: "Factor por vigas continuas",
    propStrength: "Cómo se declara la resistencia de los puntales",
    shoring: "Apuntalamiento por pisos",
  },
  concrete: {
    pressureModel: "Método para la presión",
    density: "Peso específico del concreto",
    rate: "Mayor velocidad de vaciado",
    temperature: "Temperatura del concreto",
    cement: "Cemento",
    retarder: "Retardador",
    slump: "Asentamiento",
    vibrationDepth: "Profundidad de vibrado",
    consistence: "Consistencia",
    settingEnd: "Fin del fraguado",
    formStrength: "Cómo declara el kit la resistencia de paneles y corbatas",
    bottomTie: "Parte del espacio bajo ella que toma la corbata más baja",
    cylinderStrength: "Resistencia a 28 días, cilindros",
    cubeStrength: "Resistencia a 28 días, cubos",
    cementClass: "Clase del cemento",
    strikeAt: "Los paneles de losa se retiran a las",
    measuredStrength: "Resistencia medida entonces",
    log: "Registro de temperatura de la losa",
    strengthTests: "Ensayos de la mezcla, resistencia según madurez",
    datum: "Temperatura base",
    strikingLoad: "Carga al desencofrar, además del peso propio",
    serviceLoad: "Carga de servicio total",
    propRetention: "Los puntales quedan bajo la losa",
    cycle: "De un día de vaciado al siguiente",
  },
  rules: {
    panelPressure: "Presión que soportan los paneles",
    tieLoad: "Carga que admite una corbata",
    tieRows: "Filas de corbatas",
    tieSpacing: "Mayor distancia entre corbatas",
    tieEdge: "Menor distancia de una corbata a un vano",
    frameDepth: "Profundidad de los marcos",
    propPitch: "Distancia de puntal a puntal",
    personLimit: "Límite de una persona",
  },
  oneStorey: "un piso, o no se dice",
  scheme: (shores, reshores, storeys, first) =>
    `${shores} pisos sobre puntales, ${reshores} reapuntalados, ${storeys} vaciados, sale primero: ${first}`,
  readings: (count) => `${count} lecturas`,

  heightMm: "z, mm",
  pressure: "Presión del concreto fresco",
  worstTie: "La corbata que más carga",
  leftOut: "Una corbata olvidada",
  leftOutAt: (row, carrier) => `Se olvida la corbata a ${row} mm; entonces la de ${carrier} mm carga más.`,
  stripMm: "franja, mm",
  byStrip: "franja, kN",
  asBeam: "viga, kN",
  rowMm: "fila, mm",
  widthFromTo: (width, from, to) => `${width} de ${from} a ${to}`,
  stripOf: (name, lines, widths) => `Franja ${name}, de ${lines} líneas de corbatas. Ancho b, mm: ${widths}.`,
  byStripRow: (row, from, to) =>
    `Según su franja, de ${from} a ${to} mm: hasta medio camino a la fila siguiente a cada lado. Fila a ${row} mm:`,
  beamText:
    "Como apoyo de una viga rígida sobre todas las filas de la línea, libre en ambos extremos, con la ecuación de tres momentos. V: de las luces simples a ambos lados y el voladizo; M: momento sobre la fila; R: reacción.",
  stripTable: "Lo que carga cada fila de corbatas",
  stripTableText: (limit, factor) =>
    [
      "Para cada altura z, mm: carga en kN según la franja, luego como apoyo de una viga rígida; cuenta la mayor, en letra gruesa.",
      factor === "" ? "" : `Ante el límite cuenta ${factor} veces.`,
      limit === ""
        ? "El kit no declara límite para una corbata: sin verificar."
        : `Límite de una corbata: ${limit}.`,
      "Una olvidada: la fila que falta → la fila que entonces más carga, mm, y su carga, kN.",
    ]
      .filter((sentence) => sentence !== "")
      .join(" "),
  strip: "franja",
  lines: "líneas",
  widthMm: "ancho por alturas, mm",
  oneLeftOut: "una olvidada",
  noOther: (row) => `${row}: no hay otra corbata`,
  register: "Líneas de corbatas con sus franjas",
  line: "línea",

  everyPiece: "Cada pieza por levantar",
  twoPersons: "La cargan dos",
  people: "pers.",
  lift: { stack: "pila", wall: "muro", overhead: "alto" },
  liftSigns:
    "H alcance de las manos, V su altura, D cuánto se sube o baja, todo en cm; A giro en grados; FM y CM por ritmo y agarre.",
  mostOfLimit: (code) => `La pieza más cerca de su límite: ${code}`,

  span: "luz, mm",
  rulesSideBySide: "Cuándo se puede desencofrar: reglas lado a lado",
  member: "parte",
  maturity: "Madurez según el registro de temperaturas",
  maturityText: (datum, intervals) =>
    `${intervals} lapsos con la media de sus dos lecturas, factor exp(−(E/R)·(1/(273 + T) − 1/293)); lo más frío que la base T_0 de ${datum} °C no cuenta para M. El registro está en el archivo del proyecto.`,

  prediction: "Cuándo la losa tiene resistencia suficiente",
  strengthNeeded: "Resistencia necesaria para desencofrar",
  strengthThen: "Resistencia al desencofrar: medida, o estimada menos su margen",
  strongAfter: "Resistencia suficiente esperada",
  fromThen: "Desde entonces a la hora de desencofrar",
  atReadings: "Resistencia en cada lectura del registro",
  atReadingsText:
    "Horas desde el vaciado; M madurez, t edad a 20 °C, f resistencia estimada, menos su margen; ninguna donde la estimación aún no vale. Una estimación no es un ensayo.",
  hour: "hora",
  tolerances: "Cuánto puede desviarse el concreto",
  tolerancesText:
    "Qué regla vale lo dice el contrato. Lo que se flecta un encofrado consume parte de cada una.",
  toleranceOf: "de qué",
  rule: "regla",
  deviation: "desviación, mm",

  shoring: "Apuntalamiento por pisos",
  shoringPicture:
    "Los pasos hasta aquel en que una losa más soporta. Junto a cada losa lo que ella misma soporta, junto a los puntales bajo ella lo que baja por ellos, en pesos propios de losa.",
  shoringSteps: "Apuntalamiento paso a paso",
  step: "paso",
  levelSlabShore:
    "nivel: losa | puntales bajo ella, en pesos propios de losa; los niveles de abajo se soportan solos",
};
