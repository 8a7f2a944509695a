// The words of the calculation sheets in Portuguese.

import { kindText, SHORT_STATUS_WORDS, STATUS_WORDS } from "../checkWords/kinds.ts";
import type { CalcWords } from "./calcWords.ts";

export const CALC_WORDS_PT: CalcWords = {
  title: "Cálculos",
  description: (unit) =>
    `Cálculos da unidade ${unit}: dados, cada verificação com a sua fórmula, números, limite e fonte, e o que as verificações supõem.`,
  kindOf: (kind) => kindText(kind, "pt"),
  status: STATUS_WORDS.pt,
  shortStatus: SHORT_STATUS_WORDS.pt,

  given: "Com",
  source: "Fonte",
  ofLimit: (value, limit) => `${value} de ${limit}`,
  place: "lugar (x; y), mm",
  value: "valor",
  limit: "limite",
  number: "número",
  wholeUnit: "Toda a unidade",
  allPours: "Todas as concretagens juntas",
  outside: "Exterior",
  opening: (id) => `vão ${id}`,
  prop: (number) => `escora ${number}`,
  up: (height) => `altura ${height}`,
  room: "cômodo",
  piece: "peça",
  placesAsDrawn: "Os lugares são os da unidade como desenhada, sem espelho.",

  atAGlance: "Em resumo",
  mostUsed: "de um limite no máximo",
  completeness: "Integridade",
  assumptions: "O que as verificações supõem",
  cautions: "Com todo resultado",
  notMade: "Sem cálculos",
  unread:
    "O que o projeto diz das suas cargas e do seu concreto não pode ser lido. Corrija estes lugares do arquivo do projeto:",

  storey: "Piso",
  clearHeight: "Altura livre, do piso ao fundo de laje",
  slab: "Laje acima",
  concreteHead: "Concreto",
  loadsHead: "Cargas sobre a laje",
  kitRules: "Regras do kit, com a sua origem",
  byDefault: "(padrão)",
  notStated: "não declarado",
  yes: "sim",
  no: "não",
  loads: {
    slabModel: "Modelo de carga da laje",
    concreteDensity: "Peso específico do concreto da laje",
    formworkLoad: "Peso da fôrma",
    motorisedCarts: "Carrinhos motorizados",
    continuity: "Coeficiente por vigas contínuas",
    propStrength: "Como se declara a resistência das escoras",
    shoring: "Escoramento por pisos",
  },
  concrete: {
    pressureModel: "Método para a pressão",
    density: "Peso específico do concreto",
    rate: "Maior velocidade de concretagem",
    temperature: "Temperatura do concreto",
    cement: "Cimento",
    retarder: "Retardador",
    slump: "Abatimento",
    vibrationDepth: "Profundidade de vibração",
    consistence: "Consistência",
    settingEnd: "Fim da pega",
    formStrength: "Como o kit declara a resistência de painéis e gravatas",
    bottomTie: "Parte do espaço sob ela que a gravata mais baixa toma",
    cylinderStrength: "Resistência aos 28 dias, cilindros",
    cubeStrength: "Resistência aos 28 dias, cubos",
    cementClass: "Classe do cimento",
    strikeAt: "Os painéis de laje são retirados às",
    measuredStrength: "Resistência medida então",
    log: "Registro de temperatura da laje",
    strengthTests: "Ensaios da mistura, resistência por maturidade",
    datum: "Temperatura base",
    strikingLoad: "Carga ao desformar, além do peso próprio",
    serviceLoad: "Carga de serviço total",
    propRetention: "As escoras ficam sob a laje",
    cycle: "De um dia de concretagem ao seguinte",
  },
  rules: {
    panelPressure: "Pressão que os painéis suportam",
    tieLoad: "Carga que uma gravata admite",
    tieRows: "Linhas de gravatas",
    tieSpacing: "Maior distância entre gravatas",
    tieEdge: "Menor distância de uma gravata a um vão",
    frameDepth: "Profundidade dos quadros",
    propPitch: "Distância de escora a escora",
    personLimit: "Limite de uma pessoa",
  },
  oneStorey: "um piso, ou não se diz",
  scheme: (shores, reshores, storeys, first) =>
    `${shores} pisos sobre escoras, ${reshores} reescorados, ${storeys} concretados, sai primeiro: ${first}`,
  readings: (count) => `${count} leituras`,

  heightMm: "z, mm",
  pressure: "Pressão do concreto fresco",
  worstTie: "A gravata que mais carrega",
  leftOut: "Uma gravata esquecida",
  leftOutAt: (row, carrier) => `Esquece-se a gravata a ${row} mm; então a de ${carrier} mm carrega mais.`,
  stripMm: "faixa, mm",
  byStrip: "faixa, kN",
  asBeam: "viga, kN",
  rowMm: "linha, mm",
  widthFromTo: (width, from, to) => `${width} de ${from} a ${to}`,
  stripOf: (name, lines, widths) => `Faixa ${name}, de ${lines} filas de gravatas. Largura b, mm: ${widths}.`,
  byStripRow: (row, from, to) =>
    `Segundo a sua faixa, de ${from} a ${to} mm: até meio caminho à linha seguinte de cada lado. Linha a ${row} mm:`,
  beamText:
    "Como apoio de uma viga rígida sobre todas as linhas da fila, livre nas duas pontas, com a equação dos três momentos. V: dos trechos simples dos dois lados e do balanço; M: momento sobre a linha; R: reação.",
  stripTable: "O que carrega cada linha de gravatas",
  stripTableText: (limit, factor) =>
    [
      "Para cada altura z, mm: carga em kN segundo a faixa, depois como apoio de uma viga rígida; conta a maior, em letra forte.",
      factor === "" ? "" : `Diante do limite conta ${factor} vezes.`,
      limit === ""
        ? "O kit não declara limite para uma gravata: não verificado."
        : `Limite de uma gravata: ${limit}.`,
      "Uma esquecida: a linha que falta → a linha que então mais carrega, mm, e a sua carga, kN.",
    ]
      .filter((sentence) => sentence !== "")
      .join(" "),
  strip: "faixa",
  lines: "filas",
  widthMm: "largura por alturas, mm",
  oneLeftOut: "uma esquecida",
  noOther: (row) => `${row}: não há outra gravata`,
  register: "Filas de gravatas com as suas faixas",
  line: "fila",

  everyPiece: "Cada peça a levantar",
  twoPersons: "Carregada por duas pessoas",
  people: "pess.",
  lift: { stack: "pilha", wall: "parede", overhead: "alto" },
  liftSigns:
    "H alcance das mãos, V a sua altura, D quanto se sobe ou desce, tudo em cm; A giro em graus; FM e CM por ritmo e pega.",
  mostOfLimit: (code) => `A peça mais perto do seu limite: ${code}`,

  span: "vão, mm",
  rulesSideBySide: "Quando se pode desformar: regras lado a lado",
  member: "parte",
  maturity: "Maturidade segundo o registro de temperaturas",
  maturityText: (datum, intervals) =>
    `${intervals} lapsos com a média das suas duas leituras, fator exp(−(E/R)·(1/(273 + T) − 1/293)); o mais frio que a base T_0 de ${datum} °C não conta para M. O registro está no arquivo do projeto.`,

  prediction: "Quando a laje tem resistência suficiente",
  strengthNeeded: "Resistência necessária para desformar",
  strengthThen: "Resistência ao desformar: medida, ou estimada menos a sua margem",
  strongAfter: "Resistência suficiente esperada",
  fromThen: "Desde então à hora de desformar",
  atReadings: "Resistência em cada leitura do registro",
  atReadingsText:
    "Horas desde a concretagem; M maturidade, t idade a 20 °C, f resistência estimada, menos a sua margem; nenhuma onde a estimativa ainda não vale. Uma estimativa não é um ensaio.",
  hour: "hora",
  tolerances: "Quanto o concreto pode desviar",
  tolerancesText:
    "Que regra vale é o contrato que diz. O que uma fôrma se deforma consome parte de cada uma.",
  toleranceOf: "de quê",
  rule: "regra",
  deviation: "desvio, mm",

  shoring: "Escoramento por pisos",
  shoringPicture:
    "Os passos até aquele em que uma laje mais suporta. Junto a cada laje o que ela mesma suporta, junto às escoras sob ela o que desce por elas, em pesos próprios de laje.",
  shoringSteps: "Escoramento passo a passo",
  step: "passo",
  levelSlabShore:
    "nível: laje | escoras sob ela, em pesos próprios de laje; os níveis de baixo suportam-se sozinhos",
};
