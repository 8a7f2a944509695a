// The words of the back of a room sheet: the soffit, and the order in which all forms come down.

import type { Language } from "../../plan/project.ts";

interface BackWords {
  /** Heading over the soffit; `scale` as "1:50". */
  readonly soffit: string;
  readonly overhead: string;
  /** How the soffit goes up. `bands` as "E, F, G". */
  readonly ring: string;
  readonly edge: string;
  readonly strips: (strips: number, props: number) => string;
  readonly bands: (bands: string) => string;
  readonly lay: string;
  readonly twoLift: string;
  readonly fromAbove: string;
  readonly noPaper: (pieces: string) => string;
  readonly strike: string;
  readonly permit: string;
  readonly fittings: string;
  readonly frames: string;
  readonly edges: (count: number) => string;
  readonly walls: string;
  readonly forced: string;
  readonly corners: string;
  readonly panels: string;
  readonly afterwards: string;
  readonly connectors: string;
  readonly stays: string;
  readonly staysStrips: (strips: number, props: string) => string;
  readonly staysEnds: (props: string) => string;
  readonly staysProps: (props: string) => string;
  readonly staysCaps: string;
  readonly platform: string;
}

const EN: BackWords = {
  soffit: "Soffit",
  overhead: "Overhead",
  ring: "First the connectors all round: ring closed and plumb.",
  edge: "First the connectors along the wall.",
  strips: (strips, props) => `Then the strips (${strips}) on their props (${props}).`,
  bands: (bands) => `Then the panels: bands ${bands}, each from its piece 1.`,
  lay: "Panels go up from below; the piece with the notch closes its band and comes out first.",
  twoLift: "Double outline: two lift (overhead, every piece over 0.5 m²).",
  fromAbove: "Drawn as seen from above, like the key plan.",
  noPaper: (pieces) => `Too narrow to be named: ${pieces}.`,
  strike: "Striking order",
  permit: "Only on the engineer’s word: strength measured, permit signed. Local rules come first.",
  fittings: "Braces, ledgers, brackets, spreaders off. Wedges and pins out, then the ties.",
  frames: "Frames of openings:",
  edges: (count) => `Outside corners: ${count}`,
  walls: "Walls: from the first out to its two sides, towards the corners.",
  forced: "Nothing lets go here by itself: ease the first piece out, no sledge.",
  corners: "Corners last, drawn off with a puller, no sledge:",
  panels: "Soffit: two people, nobody below. The closing piece first.",
  afterwards: "then connectors",
  connectors: "Last connectors:",
  stays: "Stays until the engineer’s word",
  staysStrips: (strips, props) => `Strips (${strips}) on props ${props}: tight, not touched.`,
  staysProps: (props) => `Props ${props}: tight, not touched.`,
  staysEnds: (props) =>
    `Strip ends (heavy line) are held by props ${props}: pinned to the head, never left resting.`,
  staysCaps: "Edge caps: the next storey stands on them.",
  platform: "The outside comes down from the platform only.",
};

const ES: BackWords = {
  soffit: "Fondo de losa",
  overhead: "Arriba",
  ring: "Primero las uniones muro-losa alrededor: anillo cerrado y a plomo.",
  edge: "Primero las uniones muro-losa a lo largo del muro.",
  strips: (strips, props) => `Luego las franjas de puntales (${strips}) sobre sus puntales (${props}).`,
  bands: (bands) => `Luego los paneles: bandas ${bands}, cada una desde su pieza 1.`,
  lay: "Los paneles suben desde abajo; la pieza con muesca cierra su banda y sale primero.",
  twoLift: "Doble contorno: levantan dos (arriba, toda pieza de más de 0,5 m²).",
  fromAbove: "Dibujado visto desde arriba, como la planta guía.",
  noPaper: (pieces) => `Sin lugar para su nombre: ${pieces}.`,
  strike: "Orden de desencofrado",
  permit: "Solo por orden del ingeniero: resistencia medida, permiso firmado. Rigen las normas locales.",
  fittings:
    "Fuera tornapuntas, alineadores, ménsulas y tensores de vano. Sacar cuñas y pasadores, luego las corbatas.",
  frames: "Marcos de vanos:",
  edges: (count) => `Esquineros exteriores: ${count}`,
  walls: "Muros: desde la que sale primero a sus dos lados, hacia las esquinas.",
  forced: "Aquí nada se suelta solo: aflojar la primera pieza, sin mazo.",
  corners: "Esquineros al final, con extractor, sin mazo:",
  panels: "Fondo de losa: dos personas, nadie debajo. Primero la pieza de cierre.",
  afterwards: "luego uniones muro-losa",
  connectors: "Últimas uniones muro-losa:",
  stays: "Queda hasta la orden del ingeniero",
  staysStrips: (strips, props) => `Franjas (${strips}) sobre puntales ${props}: apretados, sin tocar.`,
  staysProps: (props) => `Puntales ${props}: apretados, sin tocar.`,
  staysEnds: (props) =>
    `Los extremos de franja (línea gruesa) los sostienen los puntales ${props}: fijos a su cabeza, nunca solo apoyados.`,
  staysCaps: "Bordes de losa: sobre ellos va el piso siguiente.",
  platform: "El exterior se desencofra solo desde la plataforma.",
};

const PT: BackWords = {
  soffit: "Fundo de laje",
  overhead: "No alto",
  ring: "Primeiro as junções parede-laje em volta: anel fechado e no prumo.",
  edge: "Primeiro as junções parede-laje ao longo da parede.",
  strips: (strips, props) => `Depois as faixas de escoras (${strips}) sobre suas escoras (${props}).`,
  bands: (bands) => `Depois os painéis: bandas ${bands}, cada uma desde a peça 1.`,
  lay: "Os painéis sobem por baixo; a peça com entalhe fecha sua banda e sai primeiro.",
  twoLift: "Contorno duplo: levantam dois (no alto, toda peça acima de 0,5 m²).",
  fromAbove: "Desenhado visto de cima, como a planta-guia.",
  noPaper: (pieces) => `Sem espaço para o nome: ${pieces}.`,
  strike: "Ordem de desforma",
  permit: "Só por ordem do engenheiro: resistência medida, licença assinada. Valem as normas locais.",
  fittings:
    "Fora aprumadores, alinhadores, suportes e travas de vão. Tirar cunhas e pinos, depois as gravatas.",
  frames: "Quadros dos vãos:",
  edges: (count) => `Cantos externos: ${count}`,
  walls: "Paredes: da que sai primeiro para seus dois lados, até os cantos.",
  forced: "Aqui nada se solta sozinho: afrouxar a primeira peça, sem marreta.",
  corners: "Cantos por último, com extrator, sem marreta:",
  panels: "Fundo de laje: duas pessoas, ninguém embaixo. Primeiro a peça de fechamento.",
  afterwards: "depois junções parede-laje",
  connectors: "Últimas junções parede-laje:",
  stays: "Fica até a ordem do engenheiro",
  staysStrips: (strips, props) => `Faixas (${strips}) sobre escoras ${props}: apertadas, sem tocar.`,
  staysProps: (props) => `Escoras ${props}: apertadas, sem tocar.`,
  staysEnds: (props) =>
    `As pontas das faixas (linha grossa) ficam presas às escoras ${props}: fixas na cabeça, nunca só apoiadas.`,
  staysCaps: "Bordas de laje: o pavimento seguinte fica sobre elas.",
  platform: "O exterior se desforma só da plataforma.",
};

export const BACK_WORDS: Readonly<Record<Language, BackWords>> = { en: EN, es: ES, pt: PT };
