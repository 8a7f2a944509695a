// Why fillers and closures are there, piece by piece and gathered by cause, in the other languages: see problemSentences.ts.

import type { Language } from "../plan/project.ts";

type Sentence = Readonly<Record<Language, string>>;

/** A form with "[one|many]" stands for two, in all languages alike. */
function bothNumbers(sentence: Sentence): readonly Sentence[] {
  const choose = (text: string, k: number) =>
    text.replace(/\[([^|\]]*)\|([^\]]*)\]/, (_, one: string, many: string) => (k === 0 ? one : many));
  if (!sentence.en.includes("[")) return [sentence];
  return [0, 1].flatMap((k) =>
    bothNumbers({ en: choose(sentence.en, k), es: choose(sentence.es, k), pt: choose(sentence.pt, k) }),
  );
}

/** Why an interval is not filled as it would be by itself: a sentence of its own, and the end of a reason. */
export const BECAUSE_PHRASES: readonly Sentence[] = [
  {
    en: "filled by itself, the set would need {more} more and {less} less",
    es: "combinado por sí solo, el conjunto pediría {more} más y {less} menos",
    pt: "combinado por si só, o conjunto pediria {more} a mais e {less} a menos",
  },
  {
    en: "filled by itself, the set would need {more} more",
    es: "combinado por sí solo, el conjunto pediría {more} más",
    pt: "combinado por si só, o conjunto pediria {more} a mais",
  },
  {
    en: "filled by itself, the set would need {less} less, but handling and closures would cost more",
    es: "combinado por sí solo, el conjunto pediría {less} menos, pero el manejo y los cierres costarían más",
    pt: "combinado por si só, o conjunto pediria {less} a menos, mas o manuseio e os fechamentos custariam mais",
  },
  {
    en: "filled by itself, the set would be no smaller, handling and closures dearer",
    es: "combinado por sí solo, el conjunto no sería menor y el manejo y los cierres costarían más",
    pt: "combinado por si só, o conjunto não seria menor e o manuseio e os fechamentos custariam mais",
  },
  {
    en: "filled by itself, the set would cost no more: it goes together with other changes",
    es: "combinado por sí solo, el conjunto no costaría más: va junto con otros cambios",
    pt: "combinado por si só, o conjunto não custaria mais: vai junto com outras mudanças",
  },
];

const STANDARDS: readonly Sentence[] = [
  {
    en: "no standard panel fits, {rest} left",
    es: "no cabe ningún panel estándar, quedan {rest}",
    pt: "não cabe nenhum painel padrão, restam {rest}",
  },
  {
    en: "{count} standard [panel takes|panels take] {covered}, {rest} left",
    es: "{count} [panel estándar toma|paneles estándar toman] {covered}, quedan {rest}",
    pt: "{count} [painel padrão toma|painéis padrão tomam] {covered}, restam {rest}",
  },
].flatMap(bothNumbers);

const REASONS: readonly Sentence[] = [
  ...STANDARDS.flatMap(({ en, es, pt }) => [
    {
      en: `{length} between {left} and {right}: ${en}; {because}`,
      es: `{length} entre {left} y {right}: ${es}; {because}`,
      pt: `{length} entre {left} e {right}: ${pt}; {because}`,
    },
    {
      en: `{length} between {left} and {right}: ${en}`,
      es: `{length} entre {left} y {right}: ${es}`,
      pt: `{length} entre {left} e {right}: ${pt}`,
    },
  ]),
  {
    en: "{length} opposite a corner or a joining wall",
    es: "{length} frente a una esquina o un muro que llega",
    pt: "{length} em frente a um canto ou uma parede que chega",
  },
  {
    en: "{length} opposite a corner: wall {rest} and leg {leg}",
    es: "{length} frente a una esquina: muro {rest} y ala {leg}",
    pt: "{length} em frente a um canto: parede {rest} e aba {leg}",
  },
  {
    en: "{length} opposite a joining wall: leg {leg}, wall {rest}, leg {leg}",
    es: "{length} frente a un muro que llega: ala {leg}, muro {rest}, ala {leg}",
    pt: "{length} em frente a uma parede que chega: aba {leg}, parede {rest}, aba {leg}",
  },
  {
    en: "{width} × {height} over opening {opening}",
    es: "{width} × {height} sobre el vano {opening}",
    pt: "{width} × {height} sobre o vão {opening}",
  },
  {
    en: "{width} × {height} under opening {opening}",
    es: "{width} × {height} bajo el vano {opening}",
    pt: "{width} × {height} sob o vão {opening}",
  },
];

const CAUSES: readonly Sentence[] = [
  {
    en: "Wall {thickness} with a {leg} leg asks for {asked} at {places} [corner or joining wall|corners and joining walls]: adding {asked} to the kit removes {closures} [closure|closures].",
    es: "El muro de {thickness} con ala de {leg} pide {asked} en {places} [esquina o muro que llega|esquinas y muros que llegan]: agregar {asked} al kit quita {closures} [cierre|cierres].",
    pt: "A parede de {thickness} com aba de {leg} pede {asked} em {places} [canto ou parede que chega|cantos e paredes que chegam]: acrescentar {asked} ao kit tira {closures} [fechamento|fechamentos].",
  },
  {
    en: "Corners that are not square or are left out ask for {asked} at {places} [place|places] opposite them: adding {asked} to the kit removes {closures} [closure|closures].",
    es: "Las esquinas que no son a escuadra o que se omiten piden {asked} en {places} [lugar|lugares] frente a ellas: agregar {asked} al kit quita {closures} [cierre|cierres].",
    pt: "Os cantos que não são no esquadro ou que ficam de fora pedem {asked} em {places} [lugar|lugares] em frente a eles: acrescentar {asked} ao kit tira {closures} [fechamento|fechamentos].",
  },
  {
    en: "Wall {thickness} with a {leg} leg leaves {asked} at {places} [corner or joining wall|corners and joining walls].",
    es: "El muro de {thickness} con ala de {leg} deja {asked} en {places} [esquina o muro que llega|esquinas y muros que llegan].",
    pt: "A parede de {thickness} com aba de {leg} deixa {asked} em {places} [canto ou parede que chega|cantos e paredes que chegam].",
  },
  {
    en: "Corners that are not square or are left out leave {asked} at {places} [place|places] opposite them.",
    es: "Las esquinas que no son a escuadra o que se omiten dejan {asked} en {places} [lugar|lugares] frente a ellas.",
    pt: "Os cantos que não são no esquadro ou que ficam de fora deixam {asked} em {places} [lugar|lugares] em frente a eles.",
  },
  {
    en: "{faces} [face misses|faces miss] every length that panels alone fill: more widths in the kit would remove {closures} [closure|closures].",
    es: "{faces} [cara no da|caras no dan] con ningún largo que llenen solo paneles: más anchos en el kit quitarían {closures} [cierre|cierres].",
    pt: "{faces} [face não acerta|faces não acertam] nenhum comprimento que só painéis preencham: mais larguras no kit tirariam {closures} [fechamento|fechamentos].",
  },
  {
    en: "{faces} [face misses|faces miss] a length that panels alone fill by {nudge} mm: moving a wall or a jamb there by {nudge} mm removes {closures} [closure|closures].",
    es: "A {faces} [cara le faltan o sobran|caras les faltan o sobran] {nudge} mm para un largo que llenen solo paneles: mover allí un muro o una jamba {nudge} mm quita {closures} [cierre|cierres].",
    pt: "A {faces} [face faltam ou sobram|faces faltam ou sobram] {nudge} mm para um comprimento que só painéis preencham: mover ali uma parede ou uma ombreira {nudge} mm tira {closures} [fechamento|fechamentos].",
  },
  {
    en: "{faces} [face misses|faces miss] a sum of standard widths by {nudge} mm: moving a wall or a jamb there by {nudge} mm removes {fillers} [filler|fillers].",
    es: "A {faces} [cara le faltan o sobran|caras les faltan o sobran] {nudge} mm para una suma de anchos estándar: mover allí un muro o una jamba {nudge} mm quita {fillers} [suplemento|suplementos].",
    pt: "A {faces} [face faltam ou sobram|faces faltam ou sobram] {nudge} mm para uma soma de larguras padrão: mover ali uma parede ou uma ombreira {nudge} mm tira {fillers} [complemento|complementos].",
  },
  {
    en: "{faces} [face is|faces are] more than {nudge} mm from every sum of standard widths: only other standard widths would remove {fillers} [filler|fillers].",
    es: "{faces} [cara está|caras están] a más de {nudge} mm de toda suma de anchos estándar: solo otros anchos estándar quitarían {fillers} [suplemento|suplementos].",
    pt: "{faces} [face está|faces estão] a mais de {nudge} mm de toda soma de larguras padrão: só outras larguras padrão tirariam {fillers} [complemento|complementos].",
  },
  {
    en: "{faces} [face has|faces have] {fillers} [filler|fillers] more than the length asks for: pinned, or chosen so that one set serves every pour.",
    es: "{faces} [cara tiene|caras tienen] {fillers} [suplemento|suplementos] más de lo que pide el largo: fijados, o elegidos para que un conjunto sirva a todos los vaciados.",
    pt: "{faces} [face tem|faces têm] {fillers} [complemento|complementos] a mais do que o comprimento pede: fixados, ou escolhidos para que um conjunto sirva a todas as concretagens.",
  },
  {
    en: "{fillers} fillers in {intervals} [interval|intervals] spare the set {codes}: filled by themselves, these would take more of them on the day that needs most.",
    es: "{fillers} suplementos en {intervals} [tramo libre|tramos libres] ahorran al conjunto {codes}: combinados por sí solos, tomarían más el día que más pide.",
    pt: "{fillers} complementos em {intervals} [trecho livre|trechos livres] poupam ao conjunto {codes}: combinados por si só, tomariam mais no dia que mais pede.",
  },
  {
    en: "{fillers} fillers in {intervals} [interval|intervals] spare handling and closures: filled by themselves, these would take no larger set.",
    es: "{fillers} suplementos en {intervals} [tramo libre|tramos libres] ahorran manejo y cierres: combinados por sí solos, no tomarían un conjunto mayor.",
    pt: "{fillers} complementos em {intervals} [trecho livre|trechos livres] poupam manuseio e fechamentos: combinados por si só, não tomariam um conjunto maior.",
  },
  {
    en: "{fillers} fillers in {intervals} [interval|intervals] go together with other changes: filled by themselves one at a time, these would cost no more.",
    es: "{fillers} suplementos en {intervals} [tramo libre|tramos libres] van junto con otros cambios: combinados por sí solos uno a uno, no costarían más.",
    pt: "{fillers} complementos em {intervals} [trecho livre|trechos livres] vão junto com outras mudanças: combinados por si só um a um, não custariam mais.",
  },
].flatMap(bothNumbers);

export const REASON_SENTENCES: readonly Sentence[] = [...REASONS, ...BECAUSE_PHRASES, ...CAUSES];
