// The words of frame and title block in the languages of a project.

import type { Language } from "../plan/project.ts";

interface FrameWords {
  readonly scheme: string;
  readonly title: string;
  readonly document: string;
  readonly revision: string;
  readonly date: string;
  readonly scale: string;
  readonly sheet: string;
  readonly sheetOf: (sheet: number, sheets: number) => string;
  readonly madeBy: string;
  readonly checkedBy: string;
  readonly releasedBy: string;
  readonly pours: string;
  /** Of how many pours some have no paper for their names; 2 at least. */
  readonly countedPours: (count: number) => string;
  /** The hand of the pours: as the plan is drawn, or its reflection. */
  readonly asDrawn: string;
  readonly mirrored: string;
  /** Level of the upper face of the slab over the floor. */
  readonly slabTop: string;
  readonly onPaper: (scale: string, paper: string) => string;
}

export const FRAME_WORDS: Readonly<Record<Language, FrameWords>> = {
  en: {
    scheme: "Scheme",
    title: "Title",
    document: "Document",
    revision: "Rev.",
    date: "Issued",
    scale: "Scale",
    sheet: "Sheet",
    sheetOf: (sheet, sheets) => `${sheet} of ${sheets}`,
    madeBy: "Made by",
    checkedBy: "Checked by",
    releasedBy: "Released by",
    pours: "Pours",
    countedPours: (count) => `${count} pours`,
    asDrawn: "as drawn",
    mirrored: "mirrored",
    slabTop: "Slab top",
    onPaper: (scale, paper) => `m, ${scale} on ${paper}`,
  },
  es: {
    scheme: "Obra",
    title: "Título",
    document: "Docum.",
    revision: "Rev.",
    date: "Emitido",
    scale: "Escala",
    sheet: "Hoja",
    sheetOf: (sheet, sheets) => `${sheet} de ${sheets}`,
    madeBy: "Elaboró",
    checkedBy: "Revisó",
    releasedBy: "Liberó",
    pours: "Vaciados",
    countedPours: (count) => `${count} vaciados`,
    asDrawn: "sin espejo",
    mirrored: "en espejo",
    slabTop: "Nivel de losa",
    onPaper: (scale, paper) => `m, ${scale} en ${paper}`,
  },
  pt: {
    scheme: "Obra",
    title: "Título",
    document: "Docum.",
    revision: "Rev.",
    date: "Emissão",
    scale: "Escala",
    sheet: "Folha",
    sheetOf: (sheet, sheets) => `${sheet} de ${sheets}`,
    madeBy: "Elaborou",
    checkedBy: "Verificou",
    releasedBy: "Liberou",
    pours: "Concret.",
    countedPours: (count) => `${count} concretagens`,
    asDrawn: "sem espelho",
    mirrored: "espelhado",
    slabTop: "Nível da laje",
    onPaper: (scale, paper) => `m, ${scale} em ${paper}`,
  },
};
