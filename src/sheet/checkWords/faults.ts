// What the rules of completeness, of bracing and of all pours together find: why one cannot be asked, and where a fault is.
//
// A form that fits much stands behind those that fit less.

import type { Sentence } from "../retold.ts";

export const FAULT_SENTENCES: readonly Sentence[] = [
  {
    en: "nobody sees the gaps from here: look along every foot before the pour, seal on the side of the concrete, no paste under the frames",
    es: "desde aquí nadie ve las rendijas: mire a lo largo de cada pie antes del vaciado, selle del lado del concreto, sin lechada bajo los marcos",
    pt: "daqui ninguém vê as frestas: olhe ao longo de cada pé antes da concretagem, vede do lado do concreto, sem nata sob os quadros",
  },
  {
    en: "nothing states what takes it: close, pin and brace the walls before the slab is loaded, or brace the props",
    es: "nada declara qué la toma: cierre los muros, ponga pasadores y tornapuntas antes de cargar la losa, o arriostre los puntales",
    pt: "nada declara o que a toma: feche as paredes, ponha pinos e aprumadores antes de carregar a laje, ou contravente as escoras",
  },
  { en: "the fill has no braces", es: "el plano no tiene tornapuntas", pt: "o plano não tem aprumadores" },
  {
    en: "the kit does not say how far apart braces stand (rule braceSpacing)",
    es: "el kit no dice a qué distancia van las tornapuntas (regla braceSpacing)",
    pt: "o kit não diz a que distância ficam os aprumadores (regra braceSpacing)",
  },
  {
    en: "the kit states no load for braces; wind on walls that stand open is not in it",
    es: "el kit no declara carga para las tornapuntas; no incluye el viento sobre muros abiertos",
    pt: "o kit não declara carga para os aprumadores; não inclui o vento sobre paredes abertas",
  },
  {
    en: "the fill has no inside corners",
    es: "el plano no tiene esquineros interiores",
    pt: "o plano não tem cantos internos",
  },
  {
    en: "no wall joins another between its ends",
    es: "ningún muro llega a otro entre sus extremos",
    pt: "nenhuma parede chega a outra entre as suas pontas",
  },
  {
    en: "the project gives no tests of the mix (concrete.strengthTests), and no class of cement (concrete.cementClass) or no strength at 28 days (concrete.cubeStrength or cylinderStrength)",
    es: "el proyecto no da ensayos de la mezcla (concrete.strengthTests), ni clase de cemento (concrete.cementClass) o resistencia a 28 días (concrete.cubeStrength o cylinderStrength)",
    pt: "o projeto não dá ensaios da mistura (concrete.strengthTests), nem classe de cimento (concrete.cementClass) ou resistência aos 28 dias (concrete.cubeStrength ou cylinderStrength)",
  },
  {
    en: "the kit has none of these, or no rule for their spacing",
    es: "el kit no tiene ninguno de estos, o ninguna regla para su distancia",
    pt: "o kit não tem nenhum destes, ou nenhuma regra para a sua distância",
  },
  {
    en: "the kit has no opening braces",
    es: "el kit no tiene tensores de vano",
    pt: "o kit não tem travas de vão",
  },
  {
    en: "no opening stands between jambs",
    es: "ningún vano está entre jambas",
    pt: "nenhum vão fica entre ombreiras",
  },
  {
    en: "needs tests of the mix (concrete.strengthTests), or a class of cement (concrete.cementClass)",
    es: "necesita ensayos de la mezcla (concrete.strengthTests) o una clase de cemento (concrete.cementClass)",
    pt: "precisa de ensaios da mistura (concrete.strengthTests) ou de uma classe de cimento (concrete.cementClass)",
  },
  {
    en: "needs a log of the slab's temperature (concrete.log)",
    es: "necesita un registro de la temperatura de la losa (concrete.log)",
    pt: "precisa de um registro da temperatura da laje (concrete.log)",
  },
  {
    en: "the log is so cold that nothing more is gained",
    es: "el registro es tan frío que ya no se gana nada",
    pt: "o registro é tão frio que nada mais se ganha",
  },
  {
    en: "perhaps earlier: until then {what}",
    es: "quizás antes: hasta entonces {what}",
    pt: "talvez antes: até então {what}",
  },
  {
    en: "the slab is less mature than the first test of the mix (concrete.strengthTests): test it",
    es: "la losa es menos madura que el primer ensayo de la mezcla (concrete.strengthTests): ensáyela",
    pt: "a laje é menos madura que o primeiro ensaio da mistura (concrete.strengthTests): ensaie-a",
  },
  {
    en: "what is not owned is bought: no stock is a limit",
    es: "lo que falta se compra: ninguna existencia es límite",
    pt: "o que falta se compra: nenhum estoque é limite",
  },
  {
    en: "no slab stands on props",
    es: "ninguna losa se apoya en puntales",
    pt: "nenhuma laje se apoia em escoras",
  },
  {
    en: "the pours have no days (pours[].day)",
    es: "los vaciados no tienen días (pours[].day)",
    pt: "as concretagens não têm dias (pours[].day)",
  },
  {
    en: "no later pour needs these props",
    es: "ningún vaciado posterior necesita estos puntales",
    pt: "nenhuma concretagem posterior precisa destas escoras",
  },
  {
    en: "the set of props gives {least} days and the table asks for {needed}: shorter only on strength proven by tests",
    es: "el conjunto de puntales da {least} días y la tabla pide {needed}: menos, solo con resistencia probada por ensayos",
    pt: "o conjunto de escoras dá {least} dias e a tabela pede {needed}: menos, só com resistência provada por ensaios",
  },
  { en: "no pour is mirrored", es: "ningún vaciado es en espejo", pt: "nenhuma concretagem é espelhada" },
  {
    en: "each unit has one storey, whose props stand at the same points at each pour",
    es: "cada unidad tiene un solo piso, cuyos puntales van en los mismos puntos en cada vaciado",
    pt: "cada unidade tem um só piso, cujas escoras ficam nos mesmos pontos em cada concretagem",
  },
  {
    en: "{pairs}: mark them so that nobody takes one for the other",
    es: "{pairs}: márquelos para que nadie tome uno por otro",
    pt: "{pairs}: marque-as para que ninguém tome uma pela outra",
  },
  { en: "no face has a joint", es: "ninguna cara tiene juntas", pt: "nenhuma face tem juntas" },
  {
    en: "face {id} has {joints} joints: measure from the datum end and take what it has grown off the last filler",
    es: "la cara {id} tiene {joints} juntas: mida desde el lado del origen y descuente en el último suplemento lo que ha crecido",
    pt: "a face {id} tem {joints} juntas: meça desde o lado da origem e desconte no último complemento o que ela cresceu",
  },
  {
    en: "the kit does not say how far ties may lie beside a joint (rule tieTolerance)",
    es: "el kit no dice a qué distancia de una junta puede quedar una corbata (regla tieTolerance)",
    pt: "o kit não diz a que distância de uma junta pode ficar uma gravata (regra tieTolerance)",
  },
  {
    en: "no wall has two faces opposite one another",
    es: "ningún muro tiene dos caras enfrentadas",
    pt: "nenhuma parede tem duas faces frente a frente",
  },
  {
    en: "the unit has no services drawn",
    es: "la unidad no tiene instalaciones dibujadas",
    pt: "a unidade não tem instalações desenhadas",
  },
  {
    en: "the unit has no two control lines across one another: its setting-out sheet reads from the least corner, which somebody has to tie to the site",
    es: "la unidad no tiene dos ejes de control que se crucen: su hoja de replanteo mide desde la esquina menor, que alguien ha de ligar al terreno",
    pt: "a unidade não tem dois eixos de controle que se cruzem: a sua folha de locação mede desde o canto menor, que alguém tem de ligar ao terreno",
  },
  {
    en: "the unit has fewer than two rooms to share out",
    es: "la unidad tiene menos de dos recintos que repartir",
    pt: "a unidade tem menos de dois cômodos para dividir",
  },
  {
    en: "a project does not say who works in which room; the value takes one person a room",
    es: "un proyecto no dice quién trabaja en qué recinto; el valor toma una persona por recinto",
    pt: "um projeto não diz quem trabalha em que cômodo; o valor toma uma pessoa por cômodo",
  },
  {
    en: "the fill has no soffit with pieces",
    es: "el plano no tiene fondo de losa con piezas",
    pt: "o plano não tem fundo de laje com peças",
  },
  {
    en: "the fill has no slab panels",
    es: "el plano no tiene paneles de losa",
    pt: "o plano não tem painéis de laje",
  },
  { en: "the fill has no ties", es: "el plano no tiene corbatas", pt: "o plano não tem gravatas" },
  {
    en: "a project has no member for movement joints: where two walls stand beside one, see that no tie crosses it",
    es: "un proyecto no tiene dónde decir juntas de movimiento: donde dos muros están junto a una, cuide que ninguna corbata la cruce",
    pt: "um projeto não tem onde dizer juntas de movimentação: onde duas paredes ficam junto a uma, cuide que nenhuma gravata a cruze",
  },
  {
    en: "the kit gives no rows of ties (rule tieRows)",
    es: "el kit no da filas de corbatas (regla tieRows)",
    pt: "o kit não dá linhas de gravatas (regra tieRows)",
  },
  {
    en: "the kit does not say where its panels have holes (rule holes)",
    es: "el kit no dice dónde tienen agujeros sus paneles (regla holes)",
    pt: "o kit não diz onde os seus painéis têm furos (regra holes)",
  },
  {
    en: "face {id} at {x} mm, opposite the corner of {inner}",
    es: "cara {id} a {x} mm, frente al esquinero de {inner}",
    pt: "face {id} a {x} mm, diante do canto de {inner}",
  },
  {
    en: "face {id} at {x} mm, before the middle of {piece} on {other}",
    es: "cara {id} a {x} mm, frente al medio de {piece} en {other}",
    pt: "face {id} a {x} mm, diante do meio de {piece} em {other}",
  },
  {
    en: "face {id} from {low} to {high} mm",
    es: "cara {id} de {low} a {high} mm",
    pt: "face {id} de {low} a {high} mm",
  },
  {
    en: "faces {one} and {other}: {mine} and {theirs} joints",
    es: "caras {one} y {other}: {mine} y {theirs} juntas",
    pt: "faces {one} e {other}: {mine} e {theirs} juntas",
  },
  {
    en: "faces {one} and {other} at {z} mm",
    es: "caras {one} y {other} a {z} mm",
    pt: "faces {one} e {other} a {z} mm",
  },
  { en: "faces {one} and {other}", es: "caras {one} y {other}", pt: "faces {one} e {other}" },
  { en: "no {what} on face {id}", es: "falta {what} en la cara {id}", pt: "falta {what} na face {id}" },
  {
    en: "tie {number} is not on face {id}",
    es: "la corbata {number} no está en la cara {id}",
    pt: "a gravata {number} não está na face {id}",
  },
  {
    en: "tie {number} at service {id}",
    es: "corbata {number} junto a la instalación {id}",
    pt: "gravata {number} junto à instalação {id}",
  },
  { en: "the row at {z} mm", es: "la fila a {z} mm", pt: "a linha a {z} mm" },
  {
    en: "slab panel {piece} under {room}",
    es: "panel de losa {piece} bajo {room}",
    pt: "painel de laje {piece} sob {room}",
  },
  { en: "prop {piece} of {name}", es: "puntal {piece} de {name}", pt: "escora {piece} de {name}" },
  {
    en: "{code}: {owned} of {needed} needed",
    es: "{code}: {owned} de {needed} necesarias",
    pt: "{code}: {owned} de {needed} necessárias",
  },
  { en: "{code} in unit {unit}", es: "{code} en la unidad {unit}", pt: "{code} na unidade {unit}" },
  {
    en: "face {id} at {x} mm, {z} mm up",
    es: "cara {id} a {x} mm, a {z} mm de altura",
    pt: "face {id} a {x} mm, a {z} mm de altura",
  },
  { en: "face {id}", es: "cara {id}", pt: "face {id}" },
  { en: "soffit of {room}", es: "fondo de losa de {room}", pt: "fundo de laje de {room}" },
  {
    en: "tie {number} at {z} mm on face {id}",
    es: "corbata {number} a {z} mm en la cara {id}",
    pt: "gravata {number} a {z} mm na face {id}",
  },
  { en: "tie {number} at {z} mm", es: "corbata {number} a {z} mm", pt: "gravata {number} a {z} mm" },
  {
    en: "ties {one} and {other} at {z} mm",
    es: "corbatas {one} y {other} a {z} mm",
    pt: "gravatas {one} e {other} a {z} mm",
  },
  {
    en: "opening {id} has no left",
    es: "al vano {id} le falta la jamba izquierda",
    pt: "falta ao vão {id} a ombreira esquerda",
  },
  {
    en: "opening {id} has no right",
    es: "al vano {id} le falta la jamba derecha",
    pt: "falta ao vão {id} a ombreira direita",
  },
  { en: "opening {id} has no head", es: "al vano {id} le falta el dintel", pt: "falta ao vão {id} a verga" },
  {
    en: "opening {id} has no sill",
    es: "al vano {id} le falta el antepecho",
    pt: "falta ao vão {id} o peitoril",
  },
  { en: "opening {id}", es: "vano {id}", pt: "vão {id}" },
  { en: "a ring", es: "un anillo", pt: "um anel" },
  {
    en: "{code}: {listed} listed, {billed} in the bill",
    es: "{code}: {listed} en el plano, {billed} en la lista",
    pt: "{code}: {listed} no plano, {billed} na lista",
  },
  { en: "{piece} on face {id}", es: "{piece} en la cara {id}", pt: "{piece} na face {id}" },
  { en: "and {count} more", es: "y {count} más", pt: "e mais {count}" },
];
