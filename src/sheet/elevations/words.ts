// The words of the wall elevations in the languages of a project.

import type { Language } from "../../plan/project.ts";

interface ElevationWords {
  readonly title: string;
  readonly legend: string;
  readonly marks: readonly string[];
  readonly cautions: string;
  readonly mind: readonly string[];
  readonly problems: string;
  readonly problemsGoOn: string;
  readonly describes: (faces: number, rooms: string) => string;
}

export const ELEVATION_WORDS: Readonly<Record<Language, ElevationWords>> = {
  en: {
    title: "Wall elevations",
    legend: "How to read it",
    marks: [
      "Each face as seen by the person before it; names as on the room sheets.",
      "Heights from the floor; in bold: tie rows. Widths under the floor line.",
      "Bar: tie put in from this side. Open bar: from the other. Dots: no tie inside.",
      "Long thin bar: ledger; circle: bracket; triangle: brace. Notch: out first, as tagged.",
      "m1: the face goes on at the same mark. Ring: problem, by its number.",
    ],
    cautions: "On the wall",
    mind: [
      "Corner, one panel each side, plumb, brace. Bottom tie row first, none left out.",
      "Close no face before the inspector has signed. Guard open edges.",
      "Nobody under a lifted piece. Strike only on the engineer’s word; local rules come first.",
    ],
    problems: "To be settled before building",
    problemsGoOn: "To be settled before building; more on the last sheet",
    describes: (faces, rooms) => `Wall elevations of ${faces} faces: ${rooms}.`,
  },
  es: {
    title: "Elevaciones de muros",
    legend: "Cómo se lee",
    marks: [
      "Cada cara como la ve quien está delante; nombres como en las hojas de recinto.",
      "Alturas desde el piso; en negrita: filas de corbatas. Anchos bajo la línea de piso.",
      "Barra: corbata puesta de este lado. Barra abierta: del otro. Puntos: sin corbata dentro.",
      "Barra larga: alineador; círculo: ménsula; triángulo: tornapunta. Muesca: sale primero, según rótulo.",
      "m1: la cara sigue en la misma marca. Anillo: problema, por su número.",
    ],
    cautions: "En el muro",
    mind: [
      "Esquinero, un panel a cada lado, aplomar, apuntalar. Primero la fila baja de corbatas, sin omitir ninguna.",
      "No cerrar ninguna cara sin la firma del inspector. Proteger los bordes abiertos.",
      "Nadie bajo una pieza izada. Desencofrar solo por orden del ingeniero; rigen las normas locales.",
    ],
    problems: "Por resolver antes de construir",
    problemsGoOn: "Por resolver antes de construir; siguen en la última hoja",
    describes: (faces, rooms) => `Elevaciones de ${faces} caras de muro: ${rooms}.`,
  },
  pt: {
    title: "Elevações das paredes",
    legend: "Como ler",
    marks: [
      "Cada face como a vê quem está diante dela; nomes como nas folhas de cômodo.",
      "Alturas a partir do piso; em negrito: linhas de gravatas. Larguras sob a linha do piso.",
      "Barra: gravata posta deste lado. Barra vazada: do outro. Pontos: sem gravata dentro.",
      "Barra longa: alinhador; círculo: suporte; triângulo: aprumador. Entalhe: sai primeiro, como indicado.",
      "m1: a face continua na mesma marca. Anel: problema, pelo número.",
    ],
    cautions: "Na parede",
    mind: [
      "Canto, um painel de cada lado, aprumar, escorar. Primeiro a linha baixa de gravatas, sem faltar nenhuma.",
      "Não fechar nenhuma face antes da assinatura do fiscal. Proteger as bordas abertas.",
      "Ninguém sob peça içada. Desformar só por ordem do engenheiro; valem as normas locais.",
    ],
    problems: "A resolver antes de construir",
    problemsGoOn: "A resolver antes de construir; continuam na última folha",
    describes: (faces, rooms) => `Elevações de ${faces} faces de parede: ${rooms}.`,
  },
};
