// What the kinds and verdicts of checks are called.

import type { CheckStatus } from "../../assess/checkDocument.ts";
import type { Language } from "../../plan/project.ts";

type InLanguages = Readonly<Record<Language, string>>;

/** By kind. A kind that is not here is called by its own name, in English. */
export const KIND_WORDS: Readonly<Record<string, InLanguages>> = {
  "panel-pressure": {
    en: "Pressure on the panels",
    es: "Presión sobre los paneles",
    pt: "Pressão sobre os painéis",
  },
  "placing-rate": { en: "Rate of placing", es: "Velocidad de vaciado", pt: "Velocidade de concretagem" },
  "tie-rows": { en: "Tie rows of the kit", es: "Filas de corbatas del kit", pt: "Linhas de gravatas do kit" },
  "tie-load": { en: "Load of each tie", es: "Carga de cada corbata", pt: "Carga de cada gravata" },
  "tie-left-out": {
    en: "One tie left out",
    es: "Una corbata olvidada",
    pt: "Uma gravata esquecida",
  },
  "jamb-thrust": { en: "Thrust on jambs", es: "Empuje sobre las jambas", pt: "Empuxo sobre as ombreiras" },
  "sill-uplift": { en: "Uplift of sills", es: "Levantamiento de antepechos", pt: "Levantamento de peitoris" },
  "box-uplift": {
    en: "Uplift of boxes",
    es: "Levantamiento de cajas de vano",
    pt: "Levantamento de caixas de vão",
  },
  "base-uplift": {
    en: "Uplift under the panels",
    es: "Levantamiento bajo los paneles",
    pt: "Levantamento sob os painéis",
  },
  "tie-spacing": { en: "Tie spacing", es: "Distancia entre corbatas", pt: "Distância entre gravatas" },
  "wall-bracket-spacing": {
    en: "Spacing of wall brackets",
    es: "Distancia entre ménsulas",
    pt: "Distância entre suportes",
  },
  "ledger-cover": {
    en: "Brackets without a ledger",
    es: "Ménsulas sin alineador",
    pt: "Suportes sem alinhador",
  },
  "brace-spacing": {
    en: "Spacing of braces",
    es: "Distancia entre tornapuntas",
    pt: "Distância entre aprumadores",
  },
  "facade-aligner-spacing": {
    en: "Spacing of facade aligners",
    es: "Distancia entre alineadores de fachada",
    pt: "Distância entre alinhadores de fachada",
  },
  "prop-load": { en: "Load of props", es: "Carga de los puntales", pt: "Carga das escoras" },
  lift: { en: "Lifting by hand", es: "Carga a mano", pt: "Carga manual" },
  "striking-strength": {
    en: "Strength at striking",
    es: "Resistencia al desencofrar",
    pt: "Resistência ao desformar",
  },
  "shoring-slab": {
    en: "Shoring: the most a slab carries",
    es: "Apuntalamiento: lo más que soporta una losa",
    pt: "Escoramento: o máximo que uma laje suporta",
  },
  "shoring-prop": {
    en: "Shoring: the most a prop carries",
    es: "Apuntalamiento: lo más que soporta un puntal",
    pt: "Escoramento: o máximo que uma escora suporta",
  },
  "faces-tiled": {
    en: "Faces tiled exactly",
    es: "Caras cubiertas con exactitud",
    pt: "Faces cobertas com exatidão",
  },
  "nothing-open": { en: "Nothing left open", es: "Nada queda abierto", pt: "Nada fica aberto" },
  "ties-in-joints": { en: "Ties in joints", es: "Corbatas en juntas", pt: "Gravatas em juntas" },
  "lowest-ties": { en: "Lowest ties", es: "Corbatas más bajas", pt: "Gravatas mais baixas" },
  "ties-clear": {
    en: "Ties clear of openings",
    es: "Corbatas lejos de los vanos",
    pt: "Gravatas afastadas dos vãos",
  },
  "ties-single": { en: "No tie twice", es: "Ninguna corbata repetida", pt: "Nenhuma gravata repetida" },
  "opening-kits": { en: "Openings complete", es: "Vanos completos", pt: "Vãos completos" },
  "closures-explained": { en: "Closures explained", es: "Cierres explicados", pt: "Fechamentos explicados" },
  "first-out": { en: "First panel out", es: "Primer panel que sale", pt: "Primeiro painel a sair" },
  "bill-counts": { en: "Bill counts the plan", es: "La lista cuenta el plano", pt: "A lista conta o plano" },
  "base-seal": { en: "Seal of the feet", es: "Sello de los pies", pt: "Vedação dos pés" },
  "slab-horizontal": {
    en: "Horizontal load of the slab",
    es: "Carga horizontal de la losa",
    pt: "Carga horizontal da laje",
  },
  "brace-load": { en: "Load of braces", es: "Carga de las tornapuntas", pt: "Carga dos aprumadores" },
  "joint-levels": { en: "Level joints alike", es: "Juntas a nivel iguales", pt: "Juntas de nível iguais" },
  "joints-opposite": {
    en: "Joints face joints",
    es: "Juntas frente a juntas",
    pt: "Juntas diante de juntas",
  },
  "outer-runs": {
    en: "Outer runs answer corners",
    es: "Cara exterior según esquineros",
    pt: "Face externa segundo os cantos",
  },
  "joining-pieces": {
    en: "One piece at joining walls",
    es: "Una pieza en muros que llegan",
    pt: "Uma peça em paredes que chegam",
  },
  "ties-complete": { en: "Ties complete", es: "Corbatas completas", pt: "Gravatas completas" },
  "ties-on-faces": { en: "Ties on their faces", es: "Corbatas en sus caras", pt: "Gravatas nas suas faces" },
  "ties-on-holes": { en: "Ties on holes", es: "Corbatas en agujeros", pt: "Gravatas em furos" },
  "ties-one-owner": {
    en: "Ties hung from one face",
    es: "Corbatas desde una sola cara",
    pt: "Gravatas de uma só face",
  },
  "ties-off-services": {
    en: "Ties clear of services",
    es: "Corbatas lejos de instalaciones",
    pt: "Gravatas afastadas de instalações",
  },
  "ties-off-movement-joints": {
    en: "Ties clear of movement joints",
    es: "Corbatas fuera de juntas de movimiento",
    pt: "Gravatas fora de juntas de movimentação",
  },
  "fittings-placed": { en: "Fittings in place", es: "Accesorios en su lugar", pt: "Acessórios no lugar" },
  "openings-braced": { en: "Openings braced", es: "Vanos con tensor", pt: "Vãos com trava" },
  "soffits-tiled": {
    en: "Soffits tiled exactly",
    es: "Fondos de losa cubiertos con exactitud",
    pt: "Fundos de laje cobertos com exatidão",
  },
  "slab-panels-held": {
    en: "Slab panels held",
    es: "Paneles de losa apoyados",
    pt: "Painéis de laje apoiados",
  },
  "near-widths": { en: "Widths near one another", es: "Anchos parecidos", pt: "Larguras parecidas" },
  "joint-growth": { en: "Growth of joints", es: "Crecimiento de juntas", pt: "Crescimento de juntas" },
  "joint-drift": {
    en: "Joints alike on both faces",
    es: "Juntas iguales en ambas caras",
    pt: "Juntas iguais nas duas faces",
  },
  "pins-off-services": {
    en: "Layout pins clear of services",
    es: "Pasadores de replanteo lejos de instalaciones",
    pt: "Pinos de locação afastados de instalações",
  },
  datum: { en: "Datum of setting out", es: "Origen del replanteo", pt: "Origem da locação" },
  "crew-balance": { en: "Work shared out", es: "Reparto del trabajo", pt: "Divisão do trabalho" },
  "set-covers-pours": {
    en: "Set covers all pours",
    es: "El conjunto alcanza para todo vaciado",
    pt: "O conjunto basta para toda concretagem",
  },
  "prop-retention": {
    en: "Days that props stay",
    es: "Días que quedan los puntales",
    pt: "Dias que ficam as escoras",
  },
  "handed-pieces": {
    en: "Handed pieces of mirrored pours",
    es: "Piezas con mano en vaciados en espejo",
    pt: "Peças com mão em concretagens espelhadas",
  },
  "props-aligned": { en: "Props over props", es: "Puntales sobre puntales", pt: "Escoras sobre escoras" },
};

/** The name of a kind of check. */
export function kindText(kind: string, language: Language): string {
  const known = Object.hasOwn(KIND_WORDS, kind) ? KIND_WORDS[kind] : undefined;
  const plain = `${kind}`.replaceAll("-", " ");
  return known?.[language] ?? plain.charAt(0).toUpperCase() + plain.slice(1);
}

/** Verdicts. Nothing is ever called by more than its stated limit. */
export const STATUS_WORDS: Readonly<Record<Language, Readonly<Record<CheckStatus, string>>>> = {
  en: {
    within: "within the stated limit",
    over: "over the stated limit",
    "not-checked": "not checked",
    "not-applicable": "nothing to check",
  },
  es: {
    within: "dentro del límite indicado",
    over: "sobre el límite indicado",
    "not-checked": "sin verificar",
    "not-applicable": "nada que verificar",
  },
  pt: {
    within: "dentro do limite indicado",
    over: "acima do limite indicado",
    "not-checked": "não verificado",
    "not-applicable": "nada a verificar",
  },
};

/** The same where there is little paper. */
export const SHORT_STATUS_WORDS: Readonly<Record<Language, Readonly<Record<CheckStatus, string>>>> = {
  en: { within: "within", over: "over", "not-checked": "not checked", "not-applicable": "nothing to check" },
  es: {
    within: "dentro",
    over: "sobre",
    "not-checked": "sin verificar",
    "not-applicable": "nada que verificar",
  },
  pt: {
    within: "dentro",
    over: "acima",
    "not-checked": "não verificado",
    "not-applicable": "nada a verificar",
  },
};
