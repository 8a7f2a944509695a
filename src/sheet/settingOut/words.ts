// The words of setting-out sheets in the languages of a project, written by meaning.

import type { Language } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";
import type { PointKind } from "./stakePoints.ts";

export interface SettingOutWords {
  readonly title: (unit: string, isMirrored: boolean) => string;
  readonly heading: string;
  readonly unit: (name: string, isMirrored: boolean) => string;
  readonly millimetres: string;
  readonly hold: (readings: string) => string;
  /** What to measure from where no control line is given. */
  readonly noControl: string;
  readonly cornerReads: (x: string, y: string) => string;
  readonly datum: string;
  readonly checks: string;
  readonly control: string;
  readonly outer: string;
  readonly eachRoom: string;
  readonly asPrinted: string;
  readonly allowed: string;
  readonly offset: (line: string, below: string, above: string) => string;
  /** A control line so near a face that it will not be seen once the forms stand. */
  readonly covered: (least: Mm) => string;
  readonly marks: string;
  readonly pin: (count: number, gap: Mm) => string;
  readonly movedPin: (count: number, services: string) => string;
  readonly noDrill: string;
  readonly controlLine: string;
  readonly diagonal: string;
  readonly gap: string;
  readonly first: string;
  readonly second: string;
  readonly thickness: (list: string) => string;
  readonly thicknessAt: (thickness: Mm, walls: string) => string;
  readonly wallCount: (count: number) => string;
  readonly tolerances: string;
  readonly classes: readonly [a: string, b: string, c: string];
  readonly practice: string;
  readonly finished: string;
  readonly aciWall: string;
  readonly aciPlumb: (limit: string) => string;
  readonly enSection: string;
  readonly enPlumb: (limit: string) => string;
  readonly edition: string;
  readonly cautions: string;
  readonly cautionList: readonly string[];
  readonly leftOut: string;
  readonly leftOutRow: (from: string, to: string, length: string, services: string) => string;
  readonly points: string;
  readonly point: string;
  readonly x: string;
  readonly y: string;
  readonly found: (axis: string) => string;
  readonly kinds: Readonly<Record<PointKind, string>>;
  readonly openings: string;
  readonly opening: string;
  readonly width: string;
  readonly sill: string;
  readonly head: string;
  readonly jambs: string;
  readonly boxed: string;
  readonly oblique: string;
  readonly obliqueRow: (from: string, to: string, length: string) => string;
  readonly drop: (by: Mm) => string;
  readonly open: string;
  readonly continued: string;
  readonly unnamed: string;
  readonly description: (unit: string, points: number, pins: number) => string;
}

const EN: SettingOutWords = {
  title: (unit, isMirrored) => `Setting-out sheet, ${unit}${isMirrored ? ", mirrored" : ""}`,
  heading: "Setting out",
  unit: (name, isMirrored) => `Unit ${name}, ${isMirrored ? "mirrored" : "as drawn, not mirrored"}.`,
  millimetres: "Concrete faces only, no finishes. Millimetres.",
  hold: (readings) => `Hold the tape at ${readings}: then every number here reads direct.`,
  noControl:
    "No control line is given. The forms will cover the corner 0,0: carry it out on two offset lines before the first panel stands.",
  cornerReads: (x, y) => `The outer corner reads ${x}, ${y}, so that no number is below nought.`,
  datum: "datum",
  checks: "Check before drilling",
  control: "control points",
  outer: "outer corners",
  eachRoom: "each room, both ways",
  asPrinted: "as printed in it",
  allowed: "allowed difference",
  offset: (line, below, above) => `${line}: nearest faces ${below} and ${above} away`,
  covered: (least) => `Nearer than ${least}: the forms may cover it.`,
  marks: "Marks",
  pin: (count, gap) => `layout pin: ${count} in all, at most ${gap} apart`,
  movedPin: (count, services) => `pin moved off a service: ${count} (${services})`,
  noDrill: "no drilling: service with its clearance",
  controlLine: "control line",
  diagonal: "room diagonal, corner to corner",
  gap: "no pin can stand here: see Left out",
  first: "face set first: measure to it",
  second: "face that follows by the length of the ties",
  thickness: (list) => `Walls: ${list}.`,
  thicknessAt: (thickness, walls) => `${thickness} thick (${walls})`,
  wallCount: (count) => `${count} walls`,
  tolerances: "How near",
  classes: [
    "A control points, corners, free ends: 2 both ways",
    "B opening edges: 3 along the wall, 2 across; both jambs by one measured batten",
    "C pins: 2 across the wall, 20 along it",
  ],
  practice: "A to C and the allowed difference: common practice, no source.",
  finished: "What the finished concrete may differ",
  aciWall: "ACI 117: wall to 300 thick +10/−6, location ±25, opening +25/−6",
  aciPlumb: (limit) => `ACI 117: plumb over the storey ${limit}`,
  enSection: "EN 13670 class 1: section to 150 thick ±10",
  enPlumb: (limit) => `EN 13670 class 1: inclination over the storey ${limit}`,
  edition: "Check against the edition in force; the contract and the engineer decide.",
  cautions: "Cautions",
  cautionList: [
    "Scan before drilling; services lie where they were laid, not where they were drawn.",
    "Drill no pin within 50 of a slab edge: outside panels there stand on the kicker.",
    "Guard open edges before working near them.",
    "Two people measure, one from each end; a difference is settled before anything is drilled.",
    "A service that is not on this sheet is unknown to it. Ask the engineer.",
  ],
  leftOut: "Left out",
  leftOutRow: (from, to, length, services) =>
    `${from} to ${to}: ${length} without a pin, ${services} in the way`,
  points: "Points in walking order",
  point: "point",
  x: "x",
  y: "y",
  found: (axis) => `${axis} found`,
  kinds: { control: "control", corner: "corner", end: "free end", jamb: "jamb", pin: "pin" },
  openings: "Openings",
  opening: "opening",
  width: "width",
  sill: "sill",
  head: "head",
  jambs: "jambs",
  boxed: "boxed",
  oblique: "Walls aslant, point to point",
  obliqueRow: (from, to, length) => `${from} to ${to}: ${length}`,
  drop: (by) => `soffit ${by} lower`,
  open: "open, no slab",
  continued: "Continued",
  unnamed: "Room",
  description: (unit, points, pins) =>
    `Setting-out plan of ${unit}: running dimensions of all wall faces from one datum, ${points} points, ${pins} layout pins.`,
};

const ES: SettingOutWords = {
  title: (unit, isMirrored) => `Hoja de replanteo, ${unit}${isMirrored ? ", en espejo" : ""}`,
  heading: "Replanteo",
  unit: (name, isMirrored) =>
    `Unidad ${name}, ${isMirrored ? "en espejo" : "como está dibujada, sin espejo"}.`,
  millimetres: "Solo caras de concreto, sin acabados. Milímetros.",
  hold: (readings) => `Sostenga la cinta en ${readings}: así todo número se lee directo.`,
  noControl:
    "No hay ejes de control. El encofrado tapará la esquina 0,0: trasládela a dos líneas auxiliares antes del primer panel.",
  cornerReads: (x, y) => `La esquina exterior marca ${x}, ${y}, para que ningún número sea negativo.`,
  datum: "origen",
  checks: "Verificar antes de perforar",
  control: "puntos de control",
  outer: "esquinas exteriores",
  eachRoom: "cada recinto, en cruz",
  asPrinted: "según plano",
  allowed: "diferencia admitida",
  offset: (line, below, above) => `${line}: caras más cercanas a ${below} y ${above}`,
  covered: (least) => `A menos de ${least}: el encofrado puede taparlo.`,
  marks: "Signos",
  pin: (count, gap) => `pasador de replanteo: ${count} en total, cada ${gap} como máximo`,
  movedPin: (count, services) => `pasador corrido por una instalación: ${count} (${services})`,
  noDrill: "no perforar: instalación con su resguardo",
  controlLine: "eje de control",
  diagonal: "diagonal del recinto, de esquina a esquina",
  gap: "aquí no cabe pasador: ver Omitidos",
  first: "cara que se arma primero: medir a ella",
  second: "cara que sigue por el largo de las corbatas",
  thickness: (list) => `Muros: ${list}.`,
  thicknessAt: (thickness, walls) => `espesor ${thickness} (${walls})`,
  wallCount: (count) => `${count} muros`,
  tolerances: "Precisión",
  classes: [
    "A puntos de control, esquinas, extremos libres: 2 en ambos sentidos",
    "B bordes de vanos: 3 a lo largo, 2 a través; ambas jambas con una misma regla medida",
    "C pasadores: 2 a través del muro, 20 a lo largo",
  ],
  practice: "A a C y la diferencia admitida: práctica común, sin fuente.",
  finished: "Lo que puede variar el concreto terminado",
  aciWall: "ACI 117: muro hasta 300 +10/−6, ubicación ±25, vano +25/−6",
  aciPlumb: (limit) => `ACI 117: plomo en el piso ${limit}`,
  enSection: "EN 13670 clase 1: sección hasta 150 ±10",
  enPlumb: (limit) => `EN 13670 clase 1: inclinación en el piso ${limit}`,
  edition: "Confirmar con la edición vigente; deciden el contrato y el ingeniero.",
  cautions: "Precauciones",
  cautionList: [
    "Detecte antes de perforar; las instalaciones están donde se pusieron, no donde se dibujaron.",
    "No perfore a menos de 50 del borde de losa: allí los paneles exteriores van sobre el arranque.",
    "Proteja los bordes abiertos antes de trabajar cerca.",
    "Miden dos personas, una desde cada extremo; toda diferencia se resuelve antes de perforar.",
    "Esta hoja no conoce la instalación que no muestra. Pregunte al ingeniero.",
  ],
  leftOut: "Omitidos",
  leftOutRow: (from, to, length, services) => `${from} a ${to}: ${length} sin pasador, lo impide ${services}`,
  points: "Puntos en orden de recorrido",
  point: "punto",
  x: "x",
  y: "y",
  found: (axis) => `${axis} leída`,
  kinds: { control: "control", corner: "esquina", end: "extremo", jamb: "jamba", pin: "pasador" },
  openings: "Vanos",
  opening: "vano",
  width: "ancho",
  sill: "antepecho",
  head: "dintel",
  jambs: "jambas",
  boxed: "cajón",
  oblique: "Muros oblicuos, de punto a punto",
  obliqueRow: (from, to, length) => `${from} a ${to}: ${length}`,
  drop: (by) => `fondo de losa ${by} más bajo`,
  open: "abierto, sin losa",
  continued: "Continuación",
  unnamed: "Recinto",
  description: (unit, points, pins) =>
    `Plano de replanteo de ${unit}: cotas corridas de todas las caras de muro desde un origen, ${points} puntos, ${pins} pasadores de replanteo.`,
};

const PT: SettingOutWords = {
  title: (unit, isMirrored) => `Folha de locação, ${unit}${isMirrored ? ", espelhada" : ""}`,
  heading: "Locação",
  unit: (name, isMirrored) => `Unidade ${name}, ${isMirrored ? "espelhada" : "como desenhada, sem espelho"}.`,
  millimetres: "Somente faces de concreto, sem acabamento. Milímetros.",
  hold: (readings) => `Segure a trena em ${readings}: assim todo número se lê direto.`,
  noControl:
    "Não há eixos de controle. A fôrma cobrirá o canto 0,0: transfira-o para duas linhas auxiliares antes do primeiro painel.",
  cornerReads: (x, y) => `O canto externo marca ${x}, ${y}, para que nenhum número seja negativo.`,
  datum: "origem",
  checks: "Conferir antes de furar",
  control: "pontos de controle",
  outer: "cantos externos",
  eachRoom: "cada cômodo, em cruz",
  asPrinted: "como na planta",
  allowed: "diferença admitida",
  offset: (line, below, above) => `${line}: faces mais próximas a ${below} e ${above}`,
  covered: (least) => `A menos de ${least}: a fôrma pode cobri-lo.`,
  marks: "Sinais",
  pin: (count, gap) => `pino de locação: ${count} no total, no máximo a cada ${gap}`,
  movedPin: (count, services) => `pino deslocado por uma instalação: ${count} (${services})`,
  noDrill: "não furar: instalação com seu afastamento",
  controlLine: "eixo de controle",
  diagonal: "diagonal do cômodo, de canto a canto",
  gap: "aqui não cabe pino: ver Omitidos",
  first: "face montada primeiro: medir até ela",
  second: "face que segue pelo comprimento das gravatas",
  thickness: (list) => `Paredes: ${list}.`,
  thicknessAt: (thickness, walls) => `espessura ${thickness} (${walls})`,
  wallCount: (count) => `${count} paredes`,
  tolerances: "Precisão",
  classes: [
    "A pontos de controle, cantos, pontas livres: 2 nos dois sentidos",
    "B bordas de vãos: 3 ao longo, 2 através; as duas ombreiras com uma só régua medida",
    "C pinos: 2 através da parede, 20 ao longo",
  ],
  practice: "A a C e a diferença admitida: prática comum, sem fonte.",
  finished: "O que o concreto pronto pode variar",
  aciWall: "ACI 117: parede até 300 +10/−6, posição ±25, vão +25/−6",
  aciPlumb: (limit) => `ACI 117: prumo no pavimento ${limit}`,
  enSection: "EN 13670 classe 1: seção até 150 ±10",
  enPlumb: (limit) => `EN 13670 classe 1: inclinação no pavimento ${limit}`,
  edition: "Conferir com a edição em vigor; decidem o contrato e o engenheiro.",
  cautions: "Cuidados",
  cautionList: [
    "Detecte antes de furar; as instalações estão onde foram postas, não onde foram desenhadas.",
    "Não fure a menos de 50 da borda da laje: ali os painéis externos ficam sobre o arranque.",
    "Proteja as bordas abertas antes de trabalhar perto delas.",
    "Duas pessoas medem, uma de cada ponta; toda diferença se resolve antes de furar.",
    "Esta folha não conhece a instalação que não mostra. Pergunte ao engenheiro.",
  ],
  leftOut: "Omitidos",
  leftOutRow: (from, to, length, services) => `${from} a ${to}: ${length} sem pino, ${services} no caminho`,
  points: "Pontos na ordem do percurso",
  point: "ponto",
  x: "x",
  y: "y",
  found: (axis) => `${axis} lido`,
  kinds: { control: "controle", corner: "canto", end: "ponta", jamb: "ombreira", pin: "pino" },
  openings: "Vãos",
  opening: "vão",
  width: "largura",
  sill: "peitoril",
  head: "verga",
  jambs: "ombreiras",
  boxed: "caixa",
  oblique: "Paredes oblíquas, de ponto a ponto",
  obliqueRow: (from, to, length) => `${from} a ${to}: ${length}`,
  drop: (by) => `fundo de laje ${by} mais baixo`,
  open: "aberto, sem laje",
  continued: "Continuação",
  unnamed: "Cômodo",
  description: (unit, points, pins) =>
    `Planta de locação de ${unit}: cotas acumuladas de todas as faces de parede a partir de uma origem, ${points} pontos, ${pins} pinos de locação.`,
};

export const SETTING_OUT_WORDS: Readonly<Record<Language, SettingOutWords>> = { en: EN, es: ES, pt: PT };
