// The words of the panel plan in the languages of a project.

import type { Language } from "../../plan/project.ts";
import type { Mm } from "../../units.ts";

/** What the legend explains, in its order. */
export type LegendItem =
  | "panel"
  | "filler"
  | "closure"
  | "corner"
  | "firstOut"
  | "tie"
  | "door"
  | "window"
  | "section"
  | "problem";

interface PanelPlanWords {
  readonly title: string;
  readonly legend: string;
  readonly items: Readonly<Record<LegendItem, string>>;
  readonly cautions: string;
  readonly mind: readonly string[];
  readonly rows: (heights: readonly Mm[]) => string;
  readonly list: string;
  readonly listRule: string;
  readonly onSheet: (sheet: string) => string;
  readonly describes: (unit: string, ties: number, faces: number) => string;
}

export const PANEL_PLAN_WORDS: Readonly<Record<Language, PanelPlanWords>> = {
  en: {
    title: "Panel plan",
    legend: "Marks",
    items: {
      panel: "panel, width in mm",
      filler: "filler, deeper the narrower",
      closure: "closure, made to measure",
      corner: "inside corner",
      firstOut: "first out",
      tie: "ties; dot: side set first",
      door: "door with its jambs",
      window: "window over panels",
      section: "face A, elevation on sheet 2",
      problem: "problem, by its number",
    },
    cautions: "Before the first panel",
    mind: [
      "The side with the dots stands first and carries the ties; the other side closes when the inspector has signed.",
      "Set out the inside faces; the outside follows by the length of the ties.",
      "Strike only on the engineer’s word. Guard open edges. Local rules come first.",
    ],
    rows: (heights) => `Tie rows ${heights.join(", ")} above the floor: bottom row first, none left out.`,
    list: "Not on the plan for want of paper",
    listRule: "Widths left to right as seen by the person before the face, corners in brackets.",
    onSheet: (sheet) => `elevation on sheet ${sheet}`,
    describes: (unit, ties, faces) =>
      `Plan of unit ${unit} with the panels along both sides of every wall: ${faces} faces, ${ties} lines of ties.`,
  },
  es: {
    title: "Planta de paneles",
    legend: "Signos",
    items: {
      panel: "panel, ancho en mm",
      filler: "suplemento, oscuro = angosto",
      closure: "cierre hecho a medida",
      corner: "esquinero interior",
      firstOut: "sale primero",
      tie: "corbatas; punto: lado primero",
      door: "puerta con sus jambas",
      window: "ventana sobre paneles",
      section: "cara A, elevación en hoja 2",
      problem: "problema, por su número",
    },
    cautions: "Antes del primer panel",
    mind: [
      "El lado con los puntos se arma primero y lleva las corbatas; el otro cierra con la firma del inspector.",
      "Trazar las caras interiores; el exterior sigue por el largo de las corbatas.",
      "Desencofrar solo por orden del ingeniero. Proteger los bordes abiertos. Rigen las normas locales.",
    ],
    rows: (heights) =>
      `Filas de corbatas a ${heights.join(", ")} del piso: primero la baja, sin omitir ninguna.`,
    list: "Sin lugar en la planta",
    listRule: "Anchos de izquierda a derecha visto de frente a la cara; esquineros entre paréntesis.",
    onSheet: (sheet) => `elevación en hoja ${sheet}`,
    describes: (unit, ties, faces) =>
      `Planta de la unidad ${unit} con los paneles a ambos lados de cada muro: ${faces} caras, ${ties} líneas de corbatas.`,
  },
  pt: {
    title: "Planta de painéis",
    legend: "Sinais",
    items: {
      panel: "painel, largura em mm",
      filler: "complemento, escuro = estreito",
      closure: "fechamento feito sob medida",
      corner: "canto interno",
      firstOut: "sai primeiro",
      tie: "gravatas; ponto: lado primeiro",
      door: "porta com suas ombreiras",
      window: "janela sobre painéis",
      section: "face A, elevação na folha 2",
      problem: "problema, pelo número",
    },
    cautions: "Antes do primeiro painel",
    mind: [
      "O lado com os pontos é montado primeiro e leva as gravatas; o outro fecha com a assinatura do fiscal.",
      "Locar as faces internas; o exterior segue pelo comprimento das gravatas.",
      "Desformar só por ordem do engenheiro. Proteger as bordas abertas. Valem as normas locais.",
    ],
    rows: (heights) =>
      `Linhas de gravatas a ${heights.join(", ")} do piso: primeiro a baixa, sem faltar nenhuma.`,
    list: "Sem lugar na planta",
    listRule: "Larguras da esquerda para a direita, de frente para a face; cantos entre parênteses.",
    onSheet: (sheet) => `elevação na folha ${sheet}`,
    describes: (unit, ties, faces) =>
      `Planta da unidade ${unit} com os painéis dos dois lados de cada parede: ${faces} faces, ${ties} linhas de gravatas.`,
  },
};
