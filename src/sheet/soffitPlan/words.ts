// The words of the soffit and shoring plan in the languages of a project; the cautions are those of every check.

import { SHORING_CAUTIONS } from "../../check/cautions.ts";
import type { Language } from "../../plan/project.ts";

export interface SoffitPlanWords {
  readonly title: string;
  readonly marks: string;
  readonly legend: string;
  readonly props: string;
  readonly continued: string;
  readonly prop: string;
  readonly room: string;
  readonly x: string;
  readonly y: string;
  readonly area: string;
  readonly load: string;
  readonly used: string;
  readonly verdict: string;
  readonly within: string;
  readonly over: string;
  readonly notChecked: string;
  readonly noSlab: string;
  readonly datum: string;
  readonly taken: string;
  readonly assumptions: readonly string[];
  readonly stays: string;
  readonly staysAll: (strips: number, props: number) => string;
  /** Clear heights under the soffits: "2400; Bath 2350". */
  readonly reach: (heights: string) => string;
  readonly ends: (props: string) => string;
  readonly made: string;
  readonly notWritten: string;
  readonly inBrackets: string;
  readonly open: string;
  readonly cautions: string;
  readonly cautionList: readonly string[];
  readonly describes: (unit: string, soffits: number, props: number) => string;
}

const EN: SoffitPlanWords = {
  title: "Soffit and shoring plan",
  marks: "Marks",
  legend:
    "Circle with cross: prop and its number. Grey with two lines along it: strip, stays. Toned: filler, deeper the narrower. Heavy line: strip end held by its prop. Arrow: way of laying. Notch: closes the band, out first. Double outline: two lift. Grey edge: connectors. Hatched: closure, made to measure. Dashed: not built, with the number of its problem. Crossed: slab opening. Full grey: concrete.",
  props: "Props",
  continued: "Props, continued",
  prop: "prop",
  room: "room",
  x: "x, m",
  y: "y, m",
  area: "m²",
  load: "load, kN",
  used: "used",
  verdict: "check",
  within: "within the stated limit",
  over: "over the stated limit",
  notChecked: "not checked",
  noSlab: "no slab",
  datum: "x and y from the datum of the setting-out sheet.",
  taken: "Taken for granted",
  assumptions: [
    "A prop counts as extended over the whole clear height of its room, without strip and head: longer than it is.",
    "The slab is as thick as the storey says everywhere; thicker parts are not in these figures.",
    "A prop carries the one slab cast on its own forms, nothing from storeys above.",
    "Props stand plumb; horizontal load and bracing are not checked here.",
  ],
  stays: "Stays until the engineer’s word",
  reach: (heights) => `Floor to soffit, mm: ${heights}.`,
  staysAll: (strips, props) => `${strips} strips on ${props} props: tight, not touched.`,
  ends: (props) => `Strip ends are pinned to the heads of props ${props}, never left resting.`,
  made: "Made to measure",
  notWritten: "Sizes not on the plan for want of paper",
  inBrackets: "In brackets: where a piece lies whose name is not on the plan either.",
  open: "Not built",
  cautions: "Before anybody works from this",
  cautionList: SHORING_CAUTIONS,
  describes: (unit, soffits, props) =>
    `Plan of the soffits of unit ${unit} with slab panels, strips and props: ${soffits} soffits, ${props} props.`,
};

const ES: SoffitPlanWords = {
  title: "Planta de fondo de losa y puntales",
  marks: "Signos",
  legend:
    "Círculo con cruz: puntal y su número. Gris con dos líneas a lo largo: franja de puntales, queda. Con tono: suplemento, más oscuro cuanto más angosto. Línea gruesa: extremo de franja que sostiene su puntal. Flecha: sentido de colocación. Muesca: cierra la banda, sale primero. Doble contorno: levantan dos. Borde gris: uniones muro-losa. Rayado: cierre, hecho a medida. Punteado: sin armar, con el número de su problema. Con cruz: vano de losa. Gris lleno: concreto.",
  props: "Puntales",
  continued: "Puntales, continuación",
  prop: "puntal",
  room: "recinto",
  x: "x, m",
  y: "y, m",
  area: "m²",
  load: "carga, kN",
  used: "uso",
  verdict: "revisión",
  within: "dentro del límite indicado",
  over: "sobre el límite indicado",
  notChecked: "sin revisar",
  noSlab: "sin losa",
  datum: "x e y desde el origen de la hoja de trazado.",
  taken: "Se da por supuesto",
  assumptions: [
    "Un puntal se cuenta extendido a toda la altura libre de su recinto, sin franja ni cabeza: más largo de lo que es.",
    "La losa tiene en todas partes el espesor del piso; las partes más gruesas no están en estas cifras.",
    "Un puntal lleva la única losa vaciada sobre su propio encofrado, nada de los pisos de arriba.",
    "Los puntales están a plomo; carga horizontal y arriostramiento no se revisan aquí.",
  ],
  stays: "Queda hasta la orden del ingeniero",
  reach: (heights) => `Del piso al fondo de losa, mm: ${heights}.`,
  staysAll: (strips, props) => `${strips} franjas sobre ${props} puntales: apretados, sin tocar.`,
  ends: (props) =>
    `Los extremos de franja van fijos a las cabezas de los puntales ${props}, nunca solo apoyados.`,
  made: "Hecho a medida",
  notWritten: "Medidas sin lugar en la planta",
  inBrackets: "Entre paréntesis: dónde está la pieza cuyo nombre tampoco tuvo lugar.",
  open: "Sin armar",
  cautions: "Antes de trabajar con esta hoja",
  cautionList: [
    "Esto ayuda a planear y no es un diseño: el ingeniero de obras provisionales designado diseña, revisa y aprueba puntales, apoyos, arriostramiento y cada paso del desencofrado, y rige la norma local.",
    "El ingeniero de la estructura confirma lo que la losa puede llevar a cada edad.",
    "Ningún panel, franja ni puntal se afloja sin un permiso firmado con la resistencia medida y la exigida; las horas solas no prueban nada: el frío, el retardante, la escoria o una entrega tardía atrasan el reloj.",
    "Los puntales que quedan siguen apretados y sin tocar mientras bajan los paneles; ninguno se saca para reponerlo si el plano no muestra ese paso.",
    "Desencofrar poco a poco: primero aflojar todos los apoyos, luego del centro del claro hacia muros y columnas, los voladizos desde la punta; nadie bajo un paño desencofrado a medias.",
    "Nada se acopia sobre un piso ni se vacía otro sobre él antes de su día en la tabla de cargas.",
    "Cada puntal está recto y sano, de la clase y el largo indicados, con su propio pasador, a plomo dentro de 1,5 grados, cargado a menos de 25 mm de su eje, con placas enteras sobre una base firme y sobre el puntal de abajo.",
    "Los puntales repuestos se ajustan sin forzar: la fuerza levanta la losa y la carga donde no debe.",
    "Mirar los puntales antes, durante y después del vaciado, y parar si uno se asienta, se curva o se levanta en la cabeza.",
    "Balcones, bordes libres, vanos, descansos de escalera y franjas más gruesas necesitan puntales propios, dibujados para eso.",
    "Repartir el concreto parejo, sin montones sobre lo previsto.",
    "Otro espesor de losa, altura de piso, mezcla, ciclo u orden de trabajo anula estas cifras hasta revisarlas de nuevo.",
  ],
  describes: (unit, soffits, props) =>
    `Planta de los fondos de losa de la unidad ${unit} con paneles de losa, franjas y puntales: ${soffits} fondos de losa, ${props} puntales.`,
};

const PT: SoffitPlanWords = {
  title: "Planta de fundo de laje e escoras",
  marks: "Sinais",
  legend:
    "Círculo com cruz: escora e seu número. Cinza com duas linhas ao longo: faixa de escoras, fica. Com tom: complemento, mais escuro quanto mais estreito. Linha grossa: ponta de faixa presa à sua escora. Seta: sentido da colocação. Entalhe: fecha a banda, sai primeiro. Contorno duplo: levantam dois. Borda cinza: junções parede-laje. Hachurado: fechamento, feito sob medida. Tracejado: não montado, com o número do problema. Com cruz: vão na laje. Cinza cheio: concreto.",
  props: "Escoras",
  continued: "Escoras, continuação",
  prop: "escora",
  room: "cômodo",
  x: "x, m",
  y: "y, m",
  area: "m²",
  load: "carga, kN",
  used: "uso",
  verdict: "verificação",
  within: "dentro do limite indicado",
  over: "acima do limite indicado",
  notChecked: "não verificada",
  noSlab: "sem laje",
  datum: "x e y desde a origem da folha de locação.",
  taken: "Admite-se",
  assumptions: [
    "A escora conta como estendida em toda a altura livre do cômodo, sem faixa nem cabeça: mais longa do que é.",
    "A laje tem em toda parte a espessura do pavimento; partes mais grossas não estão nestes números.",
    "A escora leva a única laje concretada sobre sua própria fôrma, nada dos pavimentos de cima.",
    "As escoras estão no prumo; carga horizontal e contraventamento não se verificam aqui.",
  ],
  stays: "Fica até a ordem do engenheiro",
  reach: (heights) => `Do piso ao fundo de laje, mm: ${heights}.`,
  staysAll: (strips, props) => `${strips} faixas sobre ${props} escoras: apertadas, sem tocar.`,
  ends: (props) => `As pontas das faixas ficam fixas nas cabeças das escoras ${props}, nunca só apoiadas.`,
  made: "Feito sob medida",
  notWritten: "Medidas sem espaço na planta",
  inBrackets: "Entre parênteses: onde fica a peça cujo nome também não teve espaço.",
  open: "Não montado",
  cautions: "Antes de trabalhar com esta folha",
  cautionList: [
    "Isto ajuda a planejar e não é projeto: o engenheiro de obras provisórias designado projeta, verifica e aprova escoras, apoios, contraventamento e cada passo da desforma, e vale a norma local.",
    "O engenheiro da estrutura confirma o que a laje pode levar em cada idade.",
    "Nenhum painel, faixa ou escora se afrouxa sem licença assinada com a resistência medida e a exigida; as horas sozinhas nada provam: frio, retardador, escória ou uma entrega tardia atrasam o relógio.",
    "As escoras que ficam seguem apertadas e sem tocar enquanto os painéis descem; nenhuma se tira para repor se o desenho não mostra esse passo.",
    "Desformar aos poucos: primeiro afrouxar todos os apoios, depois do meio do vão para paredes e pilares, os balanços desde a ponta; ninguém sob um trecho desformado pela metade.",
    "Nada se estoca sobre um pavimento nem se concreta outro sobre ele antes do seu dia na tabela de cargas.",
    "Cada escora está reta e sã, da classe e do comprimento indicados, com seu próprio pino, no prumo até 1,5 grau, carregada a menos de 25 mm do seu eixo, com bases inteiras em apoio firme e sobre a escora de baixo.",
    "As escoras repostas se ajustam sem forçar: a força levanta a laje e a carrega onde não deve.",
    "Olhar as escoras antes, durante e depois da concretagem, e parar se uma recalca, se curva ou se levanta na cabeça.",
    "Varandas, bordas livres, vãos, patamares de escada e faixas mais grossas precisam de escoras próprias, desenhadas para isso.",
    "Distribuir o concreto por igual, sem montes além do previsto.",
    "Outra espessura de laje, altura de pavimento, traço, ciclo ou ordem de trabalho anula estes números até nova verificação.",
  ],
  describes: (unit, soffits, props) =>
    `Planta dos fundos de laje da unidade ${unit} com painéis de laje, faixas e escoras: ${soffits} fundos de laje, ${props} escoras.`,
};

export const SOFFIT_PLAN_WORDS: Readonly<Record<Language, SoffitPlanWords>> = { en: EN, es: ES, pt: PT };
