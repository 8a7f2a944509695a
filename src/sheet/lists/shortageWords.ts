// The words of the shortage list in the languages of a project.

import type { Language } from "../../plan/project.ts";

/** Figures come as texts, written for the language already. */
interface ShortageWords {
  readonly title: string;
  readonly heading: string;
  readonly subtitle: string;
  readonly codes: string;
  readonly pieces: string;
  readonly cost: (currency: string | null) => string;
  readonly unpriced: string;
  readonly needed: string;
  readonly owned: string;
  readonly short: string;
  readonly spare: string;
  readonly price: string;
  readonly sum: string;
  readonly where: string;
  readonly nothing: string;
  readonly rule: (covered: string) => string;
  readonly noBuying: string;
  readonly description: (codes: string, pieces: string) => string;
}

export const SHORTAGE_WORDS: Readonly<Record<Language, ShortageWords>> = {
  en: {
    title: "Shortage list",
    heading: "All units and pours",
    subtitle: "needed beyond what is owned",
    codes: "codes short",
    pieces: "pieces short",
    cost: (currency) => (currency === null ? "to buy them" : `${currency} to buy them`),
    unpriced: "codes without a price",
    needed: "needed",
    owned: "owned",
    short: "short",
    spare: "spare",
    price: "each",
    sum: "cost",
    where: "short for",
    nothing: "Nothing is short: what is owned is enough for every pour.",
    rule: (covered) =>
      `Needed: the most that stands at once on any day; tie sleeves: of all pours. Spares are not counted as short. Codes that are covered: ${covered}.`,
    noBuying: "Nothing may be bought: make the shortage good or change the plan.",
    description: (codes, pieces) =>
      `Shortage list of the project: ${codes} codes and ${pieces} pieces beyond what is owned.`,
  },
  es: {
    title: "Lista de faltantes",
    heading: "Todas las unidades y vaciados",
    subtitle: "lo que falta además de lo propio",
    codes: "códigos que faltan",
    pieces: "piezas que faltan",
    cost: (currency) => (currency === null ? "para comprarlas" : `${currency} para comprarlas`),
    unpriced: "códigos sin precio",
    needed: "pide",
    owned: "propio",
    short: "falta",
    spare: "repuesto",
    price: "c/u",
    sum: "costo",
    where: "falta para",
    nothing: "No falta nada: lo propio alcanza para todos los vaciados.",
    rule: (covered) =>
      `Pide: lo más que está puesto a la vez en un día; fundas de corbata: de todos los vaciados. Los repuestos no cuentan como faltante. Códigos cubiertos: ${covered}.`,
    noBuying: "No se puede comprar: hay que conseguir lo que falta o cambiar el plan.",
    description: (codes, pieces) =>
      `Lista de faltantes del proyecto: ${codes} códigos y ${pieces} piezas además de lo propio.`,
  },
  pt: {
    title: "Lista de faltas",
    heading: "Todas as unidades e concretagens",
    subtitle: "o que falta além do que é próprio",
    codes: "códigos em falta",
    pieces: "peças em falta",
    cost: (currency) => (currency === null ? "para comprá-las" : `${currency} para comprá-las`),
    unpriced: "códigos sem preço",
    needed: "pede",
    owned: "próprio",
    short: "falta",
    spare: "reserva",
    price: "cada",
    sum: "custo",
    where: "falta para",
    nothing: "Nada falta: o que é próprio basta para todas as concretagens.",
    rule: (covered) =>
      `Pede: o máximo que está posto ao mesmo tempo em um dia; capas de gravata: de todas as concretagens. Reservas não contam como falta. Códigos cobertos: ${covered}.`,
    noBuying: "Não se pode comprar: é preciso conseguir o que falta ou mudar o plano.",
    description: (codes, pieces) =>
      `Lista de faltas do projeto: ${codes} códigos e ${pieces} peças além do que é próprio.`,
  },
};
