// The sentences of problems as the fill writes them, in English, and what they say in the other languages.
//
// A fill is written in English whatever the project speaks, so that its bytes do not depend on it; these sentences are
// told again where people read them. Values stand in braces. A value that is itself a phrase is listed in PHRASES.

import type { Language } from "../plan/project.ts";
import { BECAUSE_PHRASES, REASON_SENTENCES } from "./reasonSentences.ts";
import { SOFFIT_SENTENCES } from "./soffitSentences.ts";

/** One sentence in all languages, with the same values in each. */
export type Sentence = Readonly<Record<Language, string>>;

export const SENTENCES: readonly Sentence[] = [
  ...SOFFIT_SENTENCES,
  ...REASON_SENTENCES,
  {
    en: "{code} weighs {mass} kg, more than one person's limit of {limit} kg: two people lift each of the {count}.",
    es: "{code} pesa {mass} kg, más que el límite de {limit} kg para una persona: dos levantan cada una de las {count}.",
    pt: "{code} pesa {mass} kg, mais que o limite de {limit} kg para uma pessoa: dois levantam cada uma das {count}.",
  },
  {
    en: "On wall {wall} the {count} tie rows at {rows} mm have {length} mm between restraints; the greatest spacing is {greatest} mm: the engineer decides on ties or supports there.",
    es: "En el muro {wall} las {count} filas de corbatas a {rows} mm tienen {length} mm entre sujeciones; la separación máxima es {greatest} mm: el ingeniero decide allí corbatas o apoyos.",
    pt: "Na parede {wall} as {count} linhas de gravatas a {rows} mm têm {length} mm entre apoios; o espaçamento máximo é {greatest} mm: o engenheiro decide ali gravatas ou apoios.",
  },
  {
    en: "On wall {wall} the 1 tie row at {rows} mm has {length} mm between restraints; the greatest spacing is {greatest} mm: the engineer decides on ties or supports there.",
    es: "En el muro {wall} 1 fila de corbatas a {rows} mm tiene {length} mm entre sujeciones; la separación máxima es {greatest} mm: el ingeniero decide allí corbatas o apoyos.",
    pt: "Na parede {wall} 1 linha de gravatas a {rows} mm tem {length} mm entre apoios; o espaçamento máximo é {greatest} mm: o engenheiro decide ali gravatas ou apoios.",
  },
  {
    en: "The walls that join wall {wall} from its two sides leave {length} mm without a joint that faces a joint; the greatest spacing of ties is {greatest} mm: move one of them, or the engineer decides on ties or supports there.",
    es: "Los muros que llegan al muro {wall} por sus dos lados dejan {length} mm sin una junta frente a otra; la separación máxima de corbatas es {greatest} mm: mueva uno, o el ingeniero decide allí corbatas o apoyos.",
    pt: "As paredes que chegam à parede {wall} pelos dois lados deixam {length} mm sem uma junta em frente a outra; o espaçamento máximo de gravatas é {greatest} mm: mova uma, ou o engenheiro decide ali gravatas ou apoios.",
  },
  {
    en: "The pier between opening {opening} and the corner {place} is {length} mm; an inside corner needs {leg}: move the opening by {by} mm, or choose a special.",
    es: "El machón entre el vano {opening} y la esquina {place} mide {length} mm; un esquinero interior necesita {leg}: mueva el vano {by} mm, o elija una pieza especial.",
    pt: "O trecho entre o vão {opening} e o canto {place} mede {length} mm; um canto interno precisa de {leg}: mova o vão {by} mm, ou escolha uma peça especial.",
  },
  {
    en: "The run between the two inside corners {place} on wall {wall} is {length} mm; two {leg} mm corner legs need {need}: move {mover} by {by} mm, or use a special or a lost form.",
    es: "El tramo entre los dos esquineros interiores {place} en el muro {wall} mide {length} mm; dos alas de {leg} mm necesitan {need}: mueva {mover} {by} mm, o use una pieza especial o encofrado perdido.",
    pt: "O trecho entre os dois cantos internos {place} na parede {wall} mede {length} mm; duas abas de {leg} mm precisam de {need}: mova {mover} {by} mm, ou use uma peça especial ou fôrma perdida.",
  },
  {
    en: "Wall {wall} stands {length} mm out of the corner {place}; an inside corner leg needs {leg}: make it {by} mm longer, or use a special.",
    es: "El muro {wall} sale {length} mm de la esquina {place}; el ala de un esquinero interior necesita {leg}: alárguelo {by} mm, o use una pieza especial.",
    pt: "A parede {wall} sai {length} mm do canto {place}; a aba de um canto interno precisa de {leg}: alongue-a {by} mm, ou use uma peça especial.",
  },
  {
    en: "The step {place} at wall {wall} is {length} mm; a step under {least} mm cannot be formed: move {mover} by {by} mm so that this side is flush, or give the walls one thickness and one line.",
    es: "El escalón {place} en el muro {wall} mide {length} mm; un escalón de menos de {least} mm no se puede encofrar: mueva {mover} {by} mm para que este lado quede a ras, o dé a los muros un solo espesor y una sola línea.",
    pt: "O degrau {place} na parede {wall} mede {length} mm; um degrau de menos de {least} mm não pode ser formado: mova {mover} {by} mm para que este lado fique rente, ou dê às paredes uma só espessura e uma só linha.",
  },
  {
    en: "The jog {place} at wall {wall} is {length} mm; the leg of an inside corner needs {leg}: make the jog {by} mm deeper, take it away, or use a special.",
    es: "El quiebre {place} en el muro {wall} mide {length} mm; el ala de un esquinero interior necesita {leg}: haga el quiebre {by} mm más hondo, quítelo, o use una pieza especial.",
    pt: "O ressalto {place} na parede {wall} mede {length} mm; a aba de um canto interno precisa de {leg}: faça o ressalto {by} mm mais fundo, tire-o, ou use uma peça especial.",
  },
  {
    en: "The jog {place} at wall {wall} is {length} mm; the leg of an inside corner needs {leg}: make the jog {by} mm deeper, take it away, or use a special (up to {most} mm a build-out strip).",
    es: "El quiebre {place} en el muro {wall} mide {length} mm; el ala de un esquinero interior necesita {leg}: haga el quiebre {by} mm más hondo, quítelo, o use una pieza especial (hasta {most} mm una tira de relieve).",
    pt: "O ressalto {place} na parede {wall} mede {length} mm; a aba de um canto interno precisa de {leg}: faça o ressalto {by} mm mais fundo, tire-o, ou use uma peça especial (até {most} mm uma tira de ressalto).",
  },
  {
    en: "The inside corner of {one} and {other} opens {angle}°: the kit's corners are square; order a special or hinged corner of that angle.",
    es: "La esquina interior de {one} y {other} abre {angle}°: los esquineros del kit son a escuadra; pida uno especial o articulado de ese ángulo.",
    pt: "O canto interno de {one} e {other} abre {angle}°: os cantos do kit são no esquadro; peça um especial ou articulado desse ângulo.",
  },
  {
    en: "The outside corner of {one} and {other} is {angle}°: the kit's angles are square; order a special or hinged angle.",
    es: "La esquina exterior de {one} y {other} es de {angle}°: los esquineros del kit son a escuadra; pida uno especial o articulado.",
    pt: "O canto externo de {one} e {other} é de {angle}°: os cantos do kit são no esquadro; peça um especial ou articulado.",
  },
  {
    en: "No panels of the kit fill the {length} mm on wall {wall} between {left} and {right} exactly: {mend}.",
    es: "Ningún panel del kit llena exactamente los {length} mm del muro {wall} entre {left} y {right}: {mend}.",
    pt: "Nenhum painel do kit preenche exatamente os {length} mm da parede {wall} entre {left} e {right}: {mend}.",
  },
  {
    en: "The corner legs on the two faces of wall {wall} end {length} mm apart and no panel is so narrow: the walls it joins there are not flush with each other; move one of them by {by} mm.",
    es: "Las alas de los esquineros en las dos caras del muro {wall} terminan a {length} mm una de otra y ningún panel es tan angosto: los muros a los que llega no están a ras; mueva uno {by} mm.",
    pt: "As abas dos cantos nas duas faces da parede {wall} terminam a {length} mm uma da outra e nenhum painel é tão estreito: as paredes a que ela chega não estão rentes; mova uma {by} mm.",
  },
  {
    en: "The forms of {room} lock themselves: {pair} have neither an opening nor a piece of at most {greatest} mm to take out first; the cheapest swap: {mend}.",
    es: "El encofrado de {room} se traba: {pair} no tienen vano ni pieza de hasta {greatest} mm que salga primero; el cambio más barato: {mend}.",
    pt: "A fôrma de {room} se trava: {pair} não têm vão nem peça de até {greatest} mm que saia primeiro; a troca mais barata: {mend}.",
  },
  {
    en: "Opening {opening} reaches {over} mm beyond the end of wall {wall}, which is {length} mm long: move it along the wall or make it narrower. It is left out of the fill.",
    es: "El vano {opening} pasa {over} mm del final del muro {wall}, que mide {length} mm: muévalo por el muro o hágalo más angosto. No se llena.",
    pt: "O vão {opening} passa {over} mm do fim da parede {wall}, que mede {length} mm: mova-o pela parede ou deixe-o mais estreito. Não é preenchido.",
  },
  {
    en: "Opening {opening} reaches {over} mm beyond the start of wall {wall}, which is {length} mm long: move it along the wall or make it narrower. It is left out of the fill.",
    es: "El vano {opening} empieza {over} mm antes del comienzo del muro {wall}, que mide {length} mm: muévalo por el muro o hágalo más angosto. No se llena.",
    pt: "O vão {opening} começa {over} mm antes do início da parede {wall}, que mede {length} mm: mova-o pela parede ou deixe-o mais estreito. Não é preenchido.",
  },
  {
    en: "Opening {opening} in wall {wall} runs into a corner or a joining wall on the wall's left side: move it along the wall. It is left out of the fill.",
    es: "El vano {opening} del muro {wall} choca con una esquina o un muro que llega por el lado izquierdo: muévalo por el muro. No se llena.",
    pt: "O vão {opening} da parede {wall} bate em um canto ou em uma parede que chega pelo lado esquerdo: mova-o pela parede. Não é preenchido.",
  },
  {
    en: "Opening {opening} in wall {wall} runs into a corner or a joining wall on the wall's right side: move it along the wall. It is left out of the fill.",
    es: "El vano {opening} del muro {wall} choca con una esquina o un muro que llega por el lado derecho: muévalo por el muro. No se llena.",
    pt: "O vão {opening} da parede {wall} bate em um canto ou em uma parede que chega pelo lado direito: mova-o pela parede. Não é preenchido.",
  },
  {
    en: "Opening {opening} in wall {wall} reaches {head} mm above the floor; the soffit there is at {soffit} mm: lower its head. It is left out of the fill.",
    es: "El vano {opening} del muro {wall} llega a {head} mm sobre el piso; el fondo de losa está allí a {soffit} mm: baje el dintel. No se llena.",
    pt: "O vão {opening} da parede {wall} chega a {head} mm acima do piso; o fundo de laje está ali a {soffit} mm: abaixe a verga. Não é preenchido.",
  },
  {
    en: "Openings {one} and {other} overlap by {by} mm in wall {wall}: move one of them. {gone} is left out of the fill.",
    es: "Los vanos {one} y {other} se traslapan {by} mm en el muro {wall}: mueva uno. {gone} no se llena.",
    pt: "Os vãos {one} e {other} se sobrepõem {by} mm na parede {wall}: mova um. {gone} não é preenchido.",
  },
  {
    en: '{room} ({area} m²) is enclosed, has no door and no name: slab or void? Name it and give its kind, "room" or "open"; it is filled as a room.',
    es: "{room} ({area} m²) está cerrado, sin puerta ni nombre: ¿losa o vacío? Póngale nombre y tipo, “room” u “open”; se llena como recinto.",
    pt: "{room} ({area} m²) está fechado, sem porta nem nome: laje ou vazio? Dê-lhe nome e tipo, “room” ou “open”; é preenchido como cômodo.",
  },
  {
    en: 'The point of room "{room}" at {at} lies in the concrete. Move it into the room.',
    es: "El punto del recinto “{room}” en {at} cae en el concreto. Llévelo dentro del recinto.",
    pt: "O ponto do cômodo “{room}” em {at} cai no concreto. Leve-o para dentro do cômodo.",
  },
  {
    en: 'The point of room "{room}" at {at} is not enclosed by walls. Close the walls round it, or move it into the room.',
    es: "El punto del recinto “{room}” en {at} no está encerrado por muros. Cierre los muros a su alrededor, o llévelo dentro del recinto.",
    pt: "O ponto do cômodo “{room}” em {at} não está cercado por paredes. Feche as paredes em volta, ou leve-o para dentro do cômodo.",
  },
  {
    en: "A face of wall {wall} at {at} is moved {by} mm sideways, flush with the face beside it. Draw the two on one line if that is meant.",
    es: "Una cara del muro {wall} en {at} se mueve {by} mm de lado, a ras con la cara vecina. Trace las dos en una línea si eso se quiere.",
    pt: "Uma face da parede {wall} em {at} é movida {by} mm para o lado, rente à face vizinha. Trace as duas em uma linha se for essa a intenção.",
  },
  {
    en: "On the line of wall {wall}, {what} is drawn {by} mm from its settled place: the fill counts with the settled one; correct the drawing if that is not meant.",
    es: "En la línea del muro {wall}, {what} está a {by} mm de su lugar ajustado: se cuenta con el ajustado; corrija el dibujo si no se quiere así.",
    pt: "Na linha da parede {wall}, {what} está a {by} mm do seu lugar ajustado: conta-se com o ajustado; corrija o desenho se não for essa a intenção.",
  },
  {
    en: "{room} is {clear} mm clear between {one} and {other}; two frames of {frame} mm and room for a hammer need {least}: it cannot be pinned from inside; use a lost form or a box, or widen it.",
    es: "{room} tiene {clear} mm libres entre {one} y {other}; dos marcos de {frame} mm y sitio para el martillo piden {least}: no se pueden poner pasadores por dentro; use encofrado perdido o un cajón, o ensánchelo.",
    pt: "{room} tem {clear} mm livres entre {one} e {other}; dois quadros de {frame} mm e lugar para o martelo pedem {least}: não dá para pôr pinos por dentro; use fôrma perdida ou uma caixa, ou alargue-o.",
  },
  {
    en: "Opening {opening} is {width} mm wide; two jamb frames of {frame} mm and room for a hammer need {least}: form it as a box between unbroken panels, or make it wider.",
    es: "El vano {opening} mide {width} mm de ancho; dos marcos de jamba de {frame} mm y sitio para el martillo piden {least}: fórmelo con un cajón entre paneles enteros, o ensánchelo.",
    pt: "O vão {opening} tem {width} mm de largura; dois quadros de ombreira de {frame} mm e lugar para o martelo pedem {least}: forme-o com uma caixa entre painéis inteiros, ou alargue-o.",
  },
  {
    en: "The end of wall {wall} is {length} mm from wall {other}; its stop-end needs {least} to be set and struck: shorten the wall or join the two.",
    es: "El extremo del muro {wall} está a {length} mm del muro {other}; su tapa necesita {least} para ponerla y quitarla: acorte el muro o una los dos.",
    pt: "A ponta da parede {wall} está a {length} mm da parede {other}; a sua tampa precisa de {least} para ser posta e tirada: encurte a parede ou junte as duas.",
  },
  {
    en: "Service {service} passes within {clearance} mm of ties at {joints}: the service moves, not the tie.",
    es: "La instalación {service} pasa a menos de {clearance} mm de corbatas en {joints}: se mueve la instalación, no la corbata.",
    pt: "A instalação {service} passa a menos de {clearance} mm de gravatas em {joints}: move-se a instalação, não a gravata.",
  },
  {
    en: "Walls {one} and {other} have the same ends and thickness: one wall is drawn twice. Delete one.",
    es: "Los muros {one} y {other} tienen los mismos extremos y espesor: un muro está trazado dos veces. Elimine uno.",
    pt: "As paredes {one} e {other} têm as mesmas pontas e espessura: uma parede está traçada duas vezes. Exclua uma.",
  },
  {
    en: "Wall {one} and wall {other} cross at {at} without a joint. Split one of them there.",
    es: "El muro {one} y el muro {other} se cruzan en {at} sin encuentro. Divida uno de ellos allí.",
    pt: "A parede {one} e a parede {other} se cruzam em {at} sem encontro. Divida uma delas ali.",
  },
  {
    en: "The kit has no stop-end {width} mm wide to close the end of wall {wall}: add it to the kit.",
    es: "El kit no tiene tapa de {width} mm de ancho para el extremo del muro {wall}: agréguela al kit.",
    pt: "O kit não tem tampa de {width} mm de largura para a ponta da parede {wall}: acrescente-a ao kit.",
  },
  {
    en: "The kit gives no tie rows (rule tieRows): no ties are placed.",
    es: "El kit no da filas de corbatas (regla tieRows): no se coloca ninguna corbata.",
    pt: "O kit não dá linhas de gravatas (regra tieRows): nenhuma gravata é colocada.",
  },
  {
    en: "The tie row at {row} mm is at the level where pieces of the stack stand on each other: no tie passes there; give the kit another row (rule tieRows).",
    es: "La fila de corbatas a {row} mm está al nivel en que unas piezas de la pila se apoyan sobre otras: allí no pasa ninguna corbata; dé al kit otra fila (regla tieRows).",
    pt: "A linha de gravatas a {row} mm está no nível em que umas peças da pilha se apoiam sobre outras: ali não passa nenhuma gravata; dê ao kit outra linha (regra tieRows).",
  },
  {
    en: "The sequence {widths} mm pinned on wall {wall} from {from} mm does not fit between the joints and other pinned pieces there: pin it anew or take the pin away. The wall is filled without it.",
    es: "La secuencia {widths} mm fijada en el muro {wall} desde {from} mm no cabe entre las juntas y otras piezas fijadas: fíjela de nuevo o suéltela. El muro se llena sin ella.",
    pt: "A sequência {widths} mm fixada na parede {wall} a partir de {from} mm não cabe entre as juntas e outras peças fixadas: fixe-a de novo ou solte-a. A parede é preenchida sem ela.",
  },
  {
    en: "The limits forbid {code}, which is no wall panel of the kit: that rules nothing out.",
    es: "Los límites prohíben {code}, que no es un panel de muro del kit: eso no excluye nada.",
    pt: "Os limites proíbem {code}, que não é um painel de parede do kit: isso não exclui nada.",
  },
  {
    en: "Nothing that the limits allow fills the {length} mm on wall {wall} between {left} and {right} exactly: it is filled as if there were no limits; allow another panel there, or pin a sequence.",
    es: "Nada de lo que permiten los límites llena con exactitud los {length} mm del muro {wall} entre {left} y {right}: se llena como si no hubiera límites; permita otro panel allí, o fije una secuencia.",
    pt: "Nada do que os limites permitem preenche exatamente os {length} mm da parede {wall} entre {left} e {right}: é preenchido como se não houvesse limites; permita outro painel ali, ou fixe uma sequência.",
  },
  {
    en: "The limits rule {code} out, yet {count} of it stand where the common choice has no say: in zones, in bands, in pinned sequences or where nothing else fits.",
    es: "Los límites excluyen {code}, pero {count} están donde la elección común no decide: en zonas, en bandas, en secuencias fijadas o donde nada más cabe.",
    pt: "Os limites excluem {code}, mas {count} estão onde a escolha comum não decide: em zonas, em faixas, em sequências fixadas ou onde nada mais cabe.",
  },
  {
    en: "{count} of the covers chosen for all pours no longer fit their walls, the first on wall {wall} from {from} mm: these are filled by themselves; choose the set anew.",
    es: "{count} de las secuencias elegidas para todos los vaciados ya no caben en sus muros, la primera en el muro {wall} desde {from} mm: se llenan por separado; elija el conjunto de nuevo.",
    pt: "{count} das sequências escolhidas para todas as concretagens já não cabem nas suas paredes, a primeira na parede {wall} a partir de {from} mm: são preenchidas à parte; escolha o conjunto de novo.",
  },
];

/** Values that are phrases of their own, by the names they have above. */
export const PHRASE_NAMES: ReadonlySet<string> = new Set([
  "place",
  "mend",
  "pair",
  "left",
  "right",
  "joints",
  "what",
  "because",
  "asked",
]);

export const PHRASES: readonly Sentence[] = [
  { en: "on the outside", es: "en el exterior", pt: "no exterior" },
  { en: "of {room}", es: "de {room}", pt: "de {room}" },
  {
    en: "make it {one} or {other} mm, or add a width to the kit",
    es: "hágalo de {one} o {other} mm, o agregue un ancho al kit",
    pt: "faça-o de {one} ou {other} mm, ou acrescente uma largura ao kit",
  },
  {
    en: "make it {one} mm, or add a width to the kit",
    es: "hágalo de {one} mm, o agregue un ancho al kit",
    pt: "faça-o de {one} mm, ou acrescente uma largura ao kit",
  },
  { en: "add widths to the kit", es: "agregue anchos al kit", pt: "acrescente larguras ao kit" },
  {
    en: "the kit has no narrower pair of panels: plan a collapsible corner or a lost form",
    es: "el kit no tiene un par de paneles más angosto: prevea un esquinero plegable o encofrado perdido",
    pt: "o kit não tem um par de painéis mais estreito: preveja um canto retrátil ou fôrma perdida",
  },
  {
    en: "on wall {wall} take {widths} in place of one {width}, on both faces",
    es: "en el muro {wall} ponga {widths} en lugar de uno de {width}, en ambas caras",
    pt: "na parede {wall} use {widths} em lugar de um de {width}, em ambas as faces",
  },
  {
    en: "two adjacent faces of wall {wall}",
    es: "dos caras contiguas del muro {wall}",
    pt: "duas faces contíguas da parede {wall}",
  },
  {
    en: "two adjacent walls, {one} and {other},",
    es: "dos muros contiguos, {one} y {other},",
    pt: "duas paredes contíguas, {one} e {other},",
  },
  { en: "the corner leg", es: "el ala del esquinero", pt: "a aba do canto" },
  { en: "the jamb of {opening}", es: "la jamba de {opening}", pt: "a ombreira de {opening}" },
  { en: "the end of the wall opposite", es: "el extremo del muro opuesto", pt: "a ponta da parede oposta" },
  { en: "the corner with {wall}", es: "la esquina con {wall}", pt: "o canto com {wall}" },
  { en: "the free end of {wall}", es: "el extremo libre de {wall}", pt: "a ponta livre de {wall}" },
  {
    en: "the edge of the balcony slab",
    es: "el borde de la losa de balcón",
    pt: "a borda da laje de sacada",
  },
  { en: "1 joint", es: "1 junta", pt: "1 junta" },
  { en: "{count} joints", es: "{count} juntas", pt: "{count} juntas" },
  ...BECAUSE_PHRASES,
  { en: "{one} and {other}", es: "{one} y {other}", pt: "{one} e {other}" },
];
