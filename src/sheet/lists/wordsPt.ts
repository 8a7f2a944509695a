// The words of the lists in Portuguese, as the trade speaks in Brazil.

import type { ListWords } from "./listWords.ts";

export const LIST_WORDS_PT: ListWords = {
  bill: "Lista de painéis",
  packing: "Romaneio",
  accessories: "Acessórios",
  unit: (name) => `Unidade ${name}`,
  mirrored: "espelhado",
  continued: "continua",
  page: (page, pages) => `folha ${page} de ${pages}`,
  families: {
    "wall-panel": "Painéis de parede",
    "inside-corner": "Cantos internos",
    "outside-corner": "Cantos externos",
    "stop-end": "Tampas",
    "reveal-closure": "Tampas de vão",
    "reveal-corner": "Cantos de vão",
    "wall-slab-connector": "Junções parede-laje",
    "connector-corner": "Cantos parede-laje",
    "slab-edge-cap": "Bordas de laje",
    "cap-corner": "Cantos de borda",
    "slab-panel": "Painéis de laje",
    "shoring-strip": "Faixas de escoras",
    prop: "Escoras",
    tie: "Gravatas",
    "tie-sleeve": "Capas de gravata",
    "closure-strip": "Fechamentos",
    pin: "Pinos",
    wedge: "Cunhas",
    "wall-bracket": "Suportes de parede",
    "alignment-ledger": "Alinhadores",
    brace: "Aprumadores",
    "opening-brace": "Travas de vão",
    "facade-aligner": "Alinhadores de fachada",
  },

  pieces: "peças",
  smallParts: "peças miúdas em caixas",
  squareMetres: "m² de fôrma",
  kilograms: "kg",
  closures: "fechamentos",
  fillers: "complementos, altura total",
  twoPerson: "para duas pessoas",
  noLimit: "peso não verificado",
  bundles: "amarrados",
  heaviest: "kg, o mais pesado",

  standard: "padrão",
  filler: "complemento",
  zone: "nos cantos",
  made: "sob medida",

  quantity: "qtd.",
  each: "kg cada",
  total: "Total",
  onePour:
    "O que pede uma concretagem. Concretagens seguidas usam as mesmas peças, também espelhadas: não se somam.",

  various: "vários",
  out: "sai",
  back: "volta",
  outside: "externo",
  shared: "todos os cômodos",
  unnamed: "cômodo sem nome",
  boxes: (full, each, rest) =>
    [
      ...(full > 0 ? [`${full} ${full === 1 ? "caixa" : "caixas"} de ${each}`] : []),
      ...(rest > 0 ? [full > 0 ? `uma de ${rest}` : `1 caixa de ${rest}`] : []),
    ].join(", "),
  overLimit: (limit) => `uma peça acima de ${limit} kg: içar sozinha`,
  loadOrder: (last) =>
    last === 1
      ? "Um amarrado."
      : `Carregar primeiro o ${last} e por último o 1: o amarrado 1 é usado primeiro e desce primeiro.`,
  bundleRule: (mass, layers, height) =>
    `Um amarrado: até ${mass} kg e ${layers} camadas${height === "" ? "" : ` (${height} mm)`}, prática comum, sem fonte; sem contar cintas e madeira.`,
  lifting:
    "Ninguém sob amarrado içado. Lingas e pontos de içamento com a pessoa designada; valem primeiro as regras da obra.",

  pour: "Concretagem",
  date: "Data",
  store: "Almoxarifado",
  needed: "pede",
  spare: "reserva",
  issue: "entregar",
  issued: "entregue",
  returned: "devolvido",
  lost: "perdido",
  stays: "fica",
  accessory: "Para uma concretagem",
  sparePanels: "Painéis de reserva, além dos amarrados",
  spareRule: ({ pin, wedge, tie, panel, leastPanels }) =>
    `Reservas: pinos ${pin} %, cunhas ${wedge} %, gravatas e capas ${tie} %, painéis ${panel} % das medidas com ${leastPanels} ou mais. Prática comum, sem fonte.`,

  agent: "Desmoldante",
  agentText: (area, rate, litres) =>
    `${litres} litros para uma concretagem: ${area} m² de fôrma a ${rate} m² por litro. Passar camada fina após cada limpeza; sem poças e sem sujar o aço. Rendimento: prática comum, sem fonte; vale primeiro a ficha do fabricante.`,
  lime: "Só fôrma nova, antes da primeira concretagem",
  limeText:
    "Misturar 20 kg de cal hidratada em 100 litros de água. Aplicar com brocha em toda face que toca o concreto. Deixar pelo menos 8 horas, lavar e depois passar desmoldante. Cal queima: luvas e óculos. Prática comum, sem fonte; testar em um painel.",
  sleeves: "Capas de gravata",
  sleevesText: (each, pours, all) =>
    pours > 1
      ? `Ficam no concreto: ${each} em cada concretagem com reserva, ${all} nas ${pours} concretagens desta folha.`
      : `Ficam no concreto: ${each} para a concretagem com reserva. Pedir de novo a cada vez.`,
  noSleeves: "Não são necessárias.",

  billDescription: (unit, pieces, area, mass) =>
    `Lista da unidade ${unit}: ${pieces} peças que formam ${area} m², ${mass} kg com todos os acessórios.`,
  packingDescription: (unit, bundles, pieces, mass) =>
    `Romaneio da unidade ${unit}: ${bundles} amarrados em ordem de uso, ${pieces} peças, ${mass} kg, com caixas para conferir saída e volta.`,
  accessoriesDescription: (unit, rows, litres) =>
    `Acessórios da unidade ${unit} para uma concretagem: ${rows} linhas com reserva, campos para preencher à mão e ${litres} litros de desmoldante.`,
};
