// Whole numbers said in words, as a length is called out on site: "one hundred and twenty", "ciento veinte".

import type { Language } from "../plan/project.ts";

/** In words from 1 to 999, else in digits. */
export function numberWords(value: number, language: Language): string {
  if (!Number.isInteger(value) || value < 1 || value > 999) return `${value}`;
  return SAYING[language](Math.floor(value / 100), value % 100);
}

type Saying = (hundreds: number, rest: number) => string;

const EN_ONES = (
  "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen " +
  "seventeen eighteen nineteen"
).split(" ");
const EN_TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");

const ES_ONES = (
  "uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho " +
  "diecinueve veinte veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve"
).split(" ");
const ES_TENS = "treinta cuarenta cincuenta sesenta setenta ochenta noventa".split(" ");
const ES_HUNDREDS =
  "ciento doscientos trescientos cuatrocientos quinientos seiscientos setecientos ochocientos novecientos".split(
    " ",
  );

const PT_ONES =
  "um dois três quatro cinco seis sete oito nove dez onze doze treze quatorze quinze dezesseis dezessete dezoito dezenove".split(
    " ",
  );
const PT_TENS = "vinte trinta quarenta cinquenta sessenta setenta oitenta noventa".split(" ");
const PT_HUNDREDS =
  "cento duzentos trezentos quatrocentos quinhentos seiscentos setecentos oitocentos novecentos".split(" ");

function under100(rest: number, ones: readonly string[], tens: readonly string[], joint: string): string {
  if (rest <= ones.length) return ones[rest - 1] ?? "";
  const first = Math.floor((ones.length + 1) / 10);
  const ten = tens[Math.floor(rest / 10) - first]!;
  return rest % 10 === 0 ? ten : `${ten}${joint}${ones[(rest % 10) - 1]}`;
}

const SAYING: Readonly<Record<Language, Saying>> = {
  en: (hundreds, rest) =>
    [
      ...(hundreds > 0 ? [`${EN_ONES[hundreds - 1]} hundred`] : []),
      ...(rest > 0 ? [under100(rest, EN_ONES, EN_TENS, "-")] : []),
    ].join(" and "),
  es: (hundreds, rest) => {
    if (hundreds === 1 && rest === 0) return "cien";
    return [
      ...(hundreds > 0 ? [ES_HUNDREDS[hundreds - 1]!] : []),
      ...(rest > 0 ? [under100(rest, ES_ONES, ES_TENS, " y ")] : []),
    ].join(" ");
  },
  pt: (hundreds, rest) => {
    if (hundreds === 1 && rest === 0) return "cem";
    return [
      ...(hundreds > 0 ? [PT_HUNDREDS[hundreds - 1]!] : []),
      ...(rest > 0 ? [under100(rest, PT_ONES, PT_TENS, " e ")] : []),
    ].join(" e ");
  },
};
