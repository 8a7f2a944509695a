// The words of the delta list in the languages of a project.

import type { Language } from "../../plan/project.ts";

/** Figures come as texts, written for the language already. */
interface DeltaWords {
  readonly title: string;
  readonly after: (pours: string) => string;
  readonly first: string;

  readonly needed: string;
  readonly goAlong: string;
  readonly betweenRooms: string;
  readonly fetched: string;
  readonly returned: string;
  readonly idle: string;

  readonly move: string;
  readonly toStore: string;
  readonly fromStore: string;
  readonly allRooms: string;
  readonly rooms: string;
  readonly swap: string;
  readonly staying: string;
  readonly freeFor: (pours: string) => string;
  readonly freeAfter: string;
  readonly idleNow: string;

  readonly rule: string;
  readonly sleeves: string;
  readonly props: (figures: {
    readonly retention: string;
    readonly cycle: string;
    readonly sets: number;
    readonly pieces: string;
    readonly isDefault: boolean;
  }) => string;
  readonly propsDiffer: (sets: string) => string;

  readonly description: (pour: string, moved: string, fetched: string, returned: string) => string;
}

export const DELTA_WORDS: Readonly<Record<Language, DeltaWords>> = {
  en: {
    title: "Delta list",
    after: (pours) => `after ${pours}`,
    first: "first pour: everything comes from the store, by room as on the packing list",
    needed: "pieces needed",
    goAlong: "go along with their room",
    betweenRooms: "from room to room",
    fetched: "from the store",
    returned: "back to the store",
    idle: "idle in the store",
    move: "From room to room",
    toStore: "Back to the store",
    fromStore: "From the store",
    allRooms: "all rooms",
    rooms: "Each room hands on",
    swap: "Left and right change places",
    staying: "Stays in place",
    freeFor: (pours) => `free for ${pours}`,
    freeAfter: "free after the last pour",
    idleNow: "Idle in the store",
    rule: "A piece goes to its own room first: the same room of the unit, else the room of that name, else by size. What is left goes to a room of equal size, then to any. No other way carries fewer pieces.",
    sleeves: "Tie sleeves stay in the concrete: new ones from the store for every pour.",
    props: ({ retention, cycle, sets, pieces, isDefault }) =>
      `Props and strips: ${retention} days under the slab at a pour every ${cycle === "1" ? "day" : `${cycle} days`} make ${sets} sets, ${pieces} pieces in all. Common practice, no source${isDefault ? "; 7 and 1 days unless the project says otherwise" : ""}. The engineer releases props.`,
    propsDiffer: (sets) => `This list goes by the kit: ${sets} sets.`,
    description: (pour, moved, fetched, returned) =>
      `Delta list for ${pour}: ${moved} pieces from room to room, ${fetched} from the store, ${returned} back to the store, and what stays or lies idle.`,
  },
  es: {
    title: "Lista de traslados",
    after: (pours) => `después de ${pours}`,
    first: "primer vaciado: todo sale del almacén, por recinto según la lista de despacho",
    needed: "piezas necesarias",
    goAlong: "siguen con su recinto",
    betweenRooms: "de recinto a recinto",
    fetched: "del almacén",
    returned: "al almacén",
    idle: "sin uso en almacén",
    move: "De recinto a recinto",
    toStore: "Vuelve al almacén",
    fromStore: "Sale del almacén",
    allRooms: "todos los recintos",
    rooms: "Cada recinto entrega",
    swap: "Izquierda y derecha se cambian",
    staying: "Se queda en su lugar",
    freeFor: (pours) => `libre para ${pours}`,
    freeAfter: "libre tras el último vaciado",
    idleNow: "Sin uso en el almacén",
    rule: "Cada pieza va primero a su recinto: el mismo recinto de la unidad, si no el de igual nombre, si no según tamaño. Lo que sobra va a un recinto de igual tamaño y luego a cualquiera. No hay forma de llevar menos piezas.",
    sleeves: "Las fundas de corbata se quedan en el concreto: nuevas del almacén en cada vaciado.",
    props: ({ retention, cycle, sets, pieces, isDefault }) =>
      `Puntales y franjas: ${retention} días bajo la losa con un vaciado cada ${cycle === "1" ? "día" : `${cycle} días`} hacen ${sets} conjuntos, ${pieces} piezas en total. Práctica común, sin fuente${isDefault ? "; 7 y 1 días si el proyecto no dice otra cosa" : ""}. El ingeniero autoriza retirar puntales.`,
    propsDiffer: (sets) => `Esta lista sigue el kit: ${sets} conjuntos.`,
    description: (pour, moved, fetched, returned) =>
      `Lista de traslados para ${pour}: ${moved} piezas de recinto a recinto, ${fetched} del almacén, ${returned} al almacén, y lo que se queda o está sin uso.`,
  },
  pt: {
    title: "Lista de remanejo",
    after: (pours) => `depois de ${pours}`,
    first: "primeira concretagem: tudo sai do almoxarifado, por cômodo conforme o romaneio",
    needed: "peças necessárias",
    goAlong: "seguem com seu cômodo",
    betweenRooms: "de cômodo a cômodo",
    fetched: "do almoxarifado",
    returned: "ao almoxarifado",
    idle: "paradas no almoxarifado",
    move: "De cômodo a cômodo",
    toStore: "Volta ao almoxarifado",
    fromStore: "Sai do almoxarifado",
    allRooms: "todos os cômodos",
    rooms: "Cada cômodo entrega",
    swap: "Esquerda e direita se trocam",
    staying: "Fica no lugar",
    freeFor: (pours) => `livre para ${pours}`,
    freeAfter: "livre após a última concretagem",
    idleNow: "Parado no almoxarifado",
    rule: "Cada peça vai primeiro ao seu cômodo: o mesmo cômodo da unidade, senão o de igual nome, senão por tamanho. O que sobra vai a um cômodo de igual tamanho e depois a qualquer um. Não há como levar menos peças.",
    sleeves: "As capas de gravata ficam no concreto: novas do almoxarifado em cada concretagem.",
    props: ({ retention, cycle, sets, pieces, isDefault }) =>
      `Escoras e faixas: ${retention} dias sob a laje com uma concretagem a cada ${cycle === "1" ? "dia" : `${cycle} dias`} fazem ${sets} conjuntos, ${pieces} peças ao todo. Prática comum, sem fonte${isDefault ? "; 7 e 1 dias se o projeto não disser outra coisa" : ""}. O engenheiro libera a retirada das escoras.`,
    propsDiffer: (sets) => `Esta lista segue o kit: ${sets} conjuntos.`,
    description: (pour, moved, fetched, returned) =>
      `Lista de remanejo para ${pour}: ${moved} peças de cômodo a cômodo, ${fetched} do almoxarifado, ${returned} ao almoxarifado, e o que fica ou está parado.`,
  },
};
