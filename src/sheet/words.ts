// The words of the room sheets in the languages of a project, written by meaning; docs/words.md lists the trade's own.

import type { Language } from "../plan/project.ts";
import type { Mm } from "../units.ts";

interface RoomWords {
  readonly outside: string;
  readonly unnamed: string;
  readonly outsideBehind: string;
  /** Over the head of the corner where the work starts, and of the one where it closes. */
  readonly start: string;
  readonly close: string;
  readonly out: (order: number) => string;
  readonly sill: (height: Mm) => string;
  readonly keyPlan: string;
  readonly before: string;
  readonly after: string;
  readonly tieThere: string;
  readonly roomSheet: (room: string, isMirrored: boolean) => string;
  readonly header: HeaderWords;
  readonly notes: NoteWords;
  readonly description: DescriptionWords;
}

/** Parts of the header. The sentence reads: Start AB, turn right B C, turn left A D, close CD. */
export interface HeaderWords {
  readonly unit: (name: string) => string;
  readonly pieces: (count: number) => string;
  readonly area: (squareMetres: number) => string;
  readonly mirrored: string;
  readonly start: string;
  readonly right: string;
  readonly left: string;
  /** Outside a building the next face lies round the corner, not ahead. */
  readonly outsideRight: string;
  readonly outsideLeft: string;
  readonly close: string;
  readonly continued: (page: number, pages: number) => string;
}

interface NoteWords {
  readonly errors: string;
  readonly warnings: string;
  readonly cautions: string;
  readonly diagonals: (length: Mm) => string;
  readonly order: string;
  readonly tieRows: (rows: readonly Mm[]) => string;
  /** `lengths`: "100 mm walls: one hundred". */
  readonly tieLengths: (lengths: string) => string;
  readonly tieLength: (millimetres: Mm, inWords: string) => string;
  /** Who puts ties in; 0 = none on that side. */
  readonly ownTies: (count: number) => string;
  readonly otherTies: (count: number) => string;
  readonly bottomRows: (rows: string, count: number) => string;
  /** `list`: "A 52, B 60". */
  readonly pins: (list: string) => string;
  readonly pinsAtEdges: (count: number) => string;
  readonly pinsOverhead: (count: number) => string;
  readonly spreaders: (list: string) => string;
  readonly spreader: (letter: string, width: Mm, height: Mm) => string;
  readonly twoLift: (limit: number) => string;
  readonly noLimit: string;
  readonly zone: string;
  readonly firstOut: string;
  readonly hold: string;
  readonly edges: string;
  readonly strike: string;
}

/** What is said of a sheet to those who hear it. */
interface DescriptionWords {
  readonly room: (room: string, unit: string, pieces: number, faces: number) => string;
  readonly faces: (list: string) => string;
  readonly corners: (start: string, close: string) => string;
  readonly problems: (count: number) => string;
}

const EN: RoomWords = {
  outside: "Outside",
  unnamed: "Unnamed room",
  outsideBehind: "outside",
  start: "start",
  close: "close",
  out: (order) => `out ${order}`,
  sill: (height) => `sill ${height}`,
  keyPlan: "Key plan",
  before: "before",
  after: "after",
  tieThere: "by neighbour",
  roomSheet: (room, isMirrored) => `Room sheet, ${room}${isMirrored ? ", mirrored" : ""}`,
  header: {
    unit: (name) => `Unit ${name}`,
    pieces: (count) => (count === 1 ? "1 piece" : `${count} pieces`),
    area: (squareMetres) => `${squareMetres.toFixed(2)} m²`,
    mirrored: "mirrored",
    start: "Start",
    right: "turn right",
    left: "turn left",
    outsideRight: "go right",
    outsideLeft: "go left",
    close: "close",
    continued: (page, pages) => `page ${page} of ${pages}`,
  },
  notes: {
    errors: "To be settled before building",
    warnings: "To know",
    cautions: "On the wall",
    diagonals: (length) => `Before the first panel, both diagonals ${length}.`,
    order: "Corner, one panel each side, plumb, brace.",
    tieRows: (rows) => `Tie rows ${rows.join(", ")}: bottom row first, none left out.`,
    tieLengths: (lengths) => `Ties by the wall: ${lengths}.`,
    tieLength: (millimetres, inWords) => `${millimetres} mm is “${inWords}”`,
    ownTies: (count) => `Solid ties (${count}): this side stands first and carries them.`,
    otherTies: (count) => `Open ties (${count}): the neighbour’s side stands first and carries them.`,
    bottomRows: (rows, count) => `Rows ${rows}: count ${count} ties; a second person signs: ________`,
    pins: (list) => `Pins with wedges: ${list}.`,
    pinsAtEdges: (count) => `edges and openings ${count}`,
    pinsOverhead: (count) => `overhead ${count}`,
    spreaders: (list) => `Spreaders: ${list}.`,
    spreader: (letter, width, height) => `${letter} ${width} at height ${height}`,
    twoLift: (limit) => `Double outline: two lift. Single: within the stated limit of ${limit} kg.`,
    noLimit: "No mass for one person is stated: lifts not checked.",
    zone: "Dots: no tie inside.",
    firstOut: "Notch: out first, as tagged.",
    hold: "Close no face before the inspector has signed.",
    edges: "Guard open edges. Nobody under a lifted piece.",
    strike: "Strike only on the engineer’s word.",
  },
  description: {
    room: (room, unit, pieces, faces) => `${room}, unit ${unit}: ${pieces} pieces on ${faces} faces.`,
    faces: (list) => `Faces and their lengths in millimetres, left to right: ${list}.`,
    corners: (start, close) => `The work starts at corner ${start} and closes at corner ${close}.`,
    problems: (count) => `Problems listed: ${count}.`,
  },
};

const ES: RoomWords = {
  outside: "Exterior",
  unnamed: "Recinto sin nombre",
  outsideBehind: "exterior",
  start: "inicio",
  close: "fin",
  out: (order) => `sale ${order}`,
  sill: (height) => `antepecho ${height}`,
  keyPlan: "Planta guía",
  before: "antes",
  after: "después",
  tieThere: "del vecino",
  roomSheet: (room, isMirrored) => `Hoja de recinto, ${room}${isMirrored ? ", en espejo" : ""}`,
  header: {
    unit: (name) => `Unidad ${name}`,
    pieces: (count) => (count === 1 ? "1 pieza" : `${count} piezas`),
    area: (squareMetres) => `${squareMetres.toFixed(2).replace(".", ",")} m²`,
    mirrored: "en espejo",
    start: "Inicie",
    right: "derecha",
    left: "izquierda",
    outsideRight: "siga derecha",
    outsideLeft: "siga izquierda",
    close: "termine",
    continued: (page, pages) => `hoja ${page} de ${pages}`,
  },
  notes: {
    errors: "Por resolver antes de armar",
    warnings: "Para saber",
    cautions: "En el muro",
    diagonals: (length) => `Antes del primer panel, ambas diagonales ${length}.`,
    order: "Esquinero, un panel por lado, aplomar, apuntalar.",
    tieRows: (rows) => `Filas de corbatas ${rows.join(", ")}: primero la de abajo, sin omitir ninguna.`,
    tieLengths: (lengths) => `Corbatas según el muro: ${lengths}.`,
    tieLength: (millimetres, inWords) => `${millimetres} mm es “${inWords}”`,
    ownTies: (count) => `Corbatas llenas (${count}): este lado se arma primero y las lleva.`,
    otherTies: (count) => `Corbatas vacías (${count}): el lado del vecino se arma primero y las lleva.`,
    bottomRows: (rows, count) => `Filas ${rows}: contar ${count} corbatas; firma otra persona: ________`,
    pins: (list) => `Pasadores con cuñas: ${list}.`,
    pinsAtEdges: (count) => `bordes y vanos ${count}`,
    pinsOverhead: (count) => `arriba ${count}`,
    spreaders: (list) => `Tensores de vano: ${list}.`,
    spreader: (letter, width, height) => `${letter} ${width} a ${height} de alto`,
    twoLift: (limit) => `Doble contorno: levantan dos. Simple: dentro del límite indicado de ${limit} kg.`,
    noLimit: "No se indica el peso para una persona: carga sin revisar.",
    zone: "Puntos: sin corbata dentro.",
    firstOut: "Muesca: sale primero, según rótulo.",
    hold: "No cerrar cara sin la firma del inspector.",
    edges: "Proteger bordes abiertos. Nadie bajo la carga.",
    strike: "Desencofrar solo por orden del ingeniero.",
  },
  description: {
    room: (room, unit, pieces, faces) => `${room}, unidad ${unit}: ${pieces} piezas en ${faces} caras.`,
    faces: (list) => `Caras y sus longitudes en milímetros, de izquierda a derecha: ${list}.`,
    corners: (start, close) => `El trabajo inicia en la esquina ${start} y termina en la esquina ${close}.`,
    problems: (count) => `Problemas anotados: ${count}.`,
  },
};

const PT: RoomWords = {
  outside: "Exterior",
  unnamed: "Cômodo sem nome",
  outsideBehind: "exterior",
  start: "início",
  close: "fim",
  out: (order) => `sai ${order}`,
  sill: (height) => `peitoril ${height}`,
  keyPlan: "Planta-guia",
  before: "antes",
  after: "depois",
  tieThere: "do vizinho",
  roomSheet: (room, isMirrored) => `Folha de cômodo, ${room}${isMirrored ? ", espelhado" : ""}`,
  header: {
    unit: (name) => `Unidade ${name}`,
    pieces: (count) => (count === 1 ? "1 peça" : `${count} peças`),
    area: (squareMetres) => `${squareMetres.toFixed(2).replace(".", ",")} m²`,
    mirrored: "espelhado",
    start: "Comece",
    right: "direita",
    left: "esquerda",
    outsideRight: "siga direita",
    outsideLeft: "siga esquerda",
    close: "termine",
    continued: (page, pages) => `folha ${page} de ${pages}`,
  },
  notes: {
    errors: "A resolver antes de montar",
    warnings: "Para saber",
    cautions: "Na parede",
    diagonals: (length) => `Antes do 1º painel, as duas diagonais ${length}.`,
    order: "Canto, um painel por lado, aprumar, escorar.",
    tieRows: (rows) => `Linhas de gravatas ${rows.join(", ")}: primeiro a de baixo, sem faltar nenhuma.`,
    tieLengths: (lengths) => `Gravatas conforme a parede: ${lengths}.`,
    tieLength: (millimetres, inWords) => `${millimetres} mm é “${inWords}”`,
    ownTies: (count) => `Gravatas cheias (${count}): este lado é montado primeiro e as leva.`,
    otherTies: (count) => `Gravatas vazias (${count}): o lado do vizinho é montado primeiro e as leva.`,
    bottomRows: (rows, count) => `Linhas ${rows}: contar ${count} gravatas; outra pessoa assina: ________`,
    pins: (list) => `Pinos com cunhas: ${list}.`,
    pinsAtEdges: (count) => `bordas e vãos ${count}`,
    pinsOverhead: (count) => `no alto ${count}`,
    spreaders: (list) => `Travas de vão: ${list}.`,
    spreader: (letter, width, height) => `${letter} ${width} a ${height} de altura`,
    twoLift: (limit) => `Contorno duplo: levantam dois. Simples: dentro do limite indicado de ${limit} kg.`,
    noLimit: "Não há peso indicado para uma pessoa: carga não verificada.",
    zone: "Pontos: sem gravata dentro.",
    firstOut: "Entalhe: sai primeiro, como indicado.",
    hold: "Não fechar face antes da assinatura do fiscal.",
    edges: "Proteger bordas abertas. Ninguém sob a carga.",
    strike: "Desformar só por ordem do engenheiro.",
  },
  description: {
    room: (room, unit, pieces, faces) => `${room}, unidade ${unit}: ${pieces} peças em ${faces} faces.`,
    faces: (list) => `Faces e seus comprimentos em milímetros, da esquerda para a direita: ${list}.`,
    corners: (start, close) => `O trabalho começa no canto ${start} e termina no canto ${close}.`,
    problems: (count) => `Problemas anotados: ${count}.`,
  },
};

export const WORDS: Readonly<Record<Language, RoomWords>> = { en: EN, es: ES, pt: PT };
