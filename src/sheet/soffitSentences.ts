// What the fill says of soffits, strips and props, in the other languages: see problemSentences.ts.

import type { Language } from "../plan/project.ts";

export const SOFFIT_SENTENCES: readonly Readonly<Record<Language, string>>[] = [
  {
    en: "In {room} one row of slab panels reaches from connector to connector: nothing stays under the slab when they are struck; keep them until the slab has its full striking strength, or add a strip.",
    es: "En {room} una sola fila de paneles de losa va de unión a unión muro-losa: nada queda bajo la losa al retirarlos; déjelos hasta que la losa tenga toda la resistencia de desencofrado, o agregue una franja de puntales.",
    pt: "Em {room} uma só fila de painéis de laje vai de junção a junção parede-laje: nada fica sob a laje quando são retirados; mantenha-os até a laje ter toda a resistência de desforma, ou acrescente uma faixa de escoras.",
  },
  {
    en: "In {room} 1 prop stands within {edge} mm of an opening that the floor below has too: cover the opening to carry them, or move it.",
    es: "En {room} 1 puntal queda a menos de {edge} mm de un vano que también tiene el piso de abajo: cubra el vano para que lo soporte, o muévalo.",
    pt: "Em {room} 1 escora fica a menos de {edge} mm de um vão que o piso de baixo também tem: cubra o vão para que a suporte, ou mova-o.",
  },
  {
    en: "In {room} {count} props stand within {edge} mm of an opening that the floor below has too: cover the opening to carry them, or move it.",
    es: "En {room} {count} puntales quedan a menos de {edge} mm de un vano que también tiene el piso de abajo: cubra el vano para que los soporte, o muévalo.",
    pt: "Em {room} {count} escoras ficam a menos de {edge} mm de um vão que o piso de baixo também tem: cubra o vão para que as suporte, ou mova-o.",
  },
  {
    en: "The kit has no prop that reaches {height} mm: no soffit at that height stands on anything; add one to the kit.",
    es: "El kit no tiene puntal que llegue a {height} mm: ningún fondo de losa a esa altura se apoya en nada; añada uno al kit.",
    pt: "O kit não tem escora que chegue a {height} mm: nenhum fundo de laje a essa altura se apoia em nada; acrescente uma ao kit.",
  },
  {
    en: "The kit has no slab panel: the soffits of all rooms stay open; add slab panels to the kit.",
    es: "El kit no tiene panel de losa: el fondo de losa de todos los recintos queda abierto; agregue paneles de losa al kit.",
    pt: "O kit não tem painel de laje: o fundo de laje de todos os cômodos fica aberto; acrescente painéis de laje ao kit.",
  },
  {
    en: "The kit has no shoring strip: soffits longer than one slab panel stay open; add strips to the kit.",
    es: "El kit no tiene franja de puntales: los fondos de losa más largos que un panel quedan abiertos; agregue franjas al kit.",
    pt: "O kit não tem faixa de escoras: os fundos de laje mais compridos que um painel ficam abertos; acrescente faixas ao kit.",
  },
  {
    en: "In the soffit of {room} no slab panels, strips and closure of the kit make up a field of {size} mm: add a size to the kit, move a wall, or plan it as made to measure.",
    es: "En el fondo de losa de {room} ningún conjunto de paneles de losa, franjas y cierre del kit completa un campo de {size} mm: agregue una medida al kit, mueva un muro, o prevéalo a medida.",
    pt: "No fundo de laje de {room} nenhum conjunto de painéis de laje, faixas e fechamento do kit completa um campo de {size} mm: acrescente uma medida ao kit, mova uma parede, ou preveja-o sob medida.",
  },
  {
    en: "In the soffit of {room} no slab panels, strips and closure of the kit make up a field of {size} mm, and {count} more: add a size to the kit, move a wall, or plan it as made to measure.",
    es: "En el fondo de losa de {room} ningún conjunto de paneles de losa, franjas y cierre del kit completa un campo de {size} mm, y {count} más: agregue una medida al kit, mueva un muro, o prevéalo a medida.",
    pt: "No fundo de laje de {room} nenhum conjunto de painéis de laje, faixas e fechamento do kit completa um campo de {size} mm, e mais {count}: acrescente uma medida ao kit, mova uma parede, ou preveja-o sob medida.",
  },
  {
    en: "In the soffit of {room} the connectors by wall {wall} reach over each other: the walls stand too near for their depth; form that place to measure or move a wall.",
    es: "En el fondo de losa de {room} las uniones muro-losa junto al muro {wall} se pisan: los muros están demasiado cerca para su ancho; encofre ese lugar a medida o mueva un muro.",
    pt: "No fundo de laje de {room} as junções parede-laje junto à parede {wall} se sobrepõem: as paredes estão perto demais para a sua largura; forme esse lugar sob medida ou mova uma parede.",
  },
  {
    en: "In the soffit of {room} the row of connectors by wall {wall} is broken: nothing forms the edge of the slab there; form that place to measure.",
    es: "En el fondo de losa de {room} la fila de uniones muro-losa junto al muro {wall} se interrumpe: allí nada forma el borde de la losa; encofre ese lugar a medida.",
    pt: "No fundo de laje de {room} a fila de junções parede-laje junto à parede {wall} é interrompida: ali nada forma a borda da laje; forme esse lugar sob medida.",
  },
  {
    en: "The soffit of {room} is not square at its edges: {area} m² beside the slab panels is made to measure, on supports that the engineer draws.",
    es: "El fondo de losa de {room} no es recto en sus bordes: {area} m² junto a los paneles de losa se hacen a medida, sobre apoyos que dibuja el ingeniero.",
    pt: "O fundo de laje de {room} não é reto nas bordas: {area} m² junto aos painéis de laje são feitos sob medida, sobre apoios que o engenheiro desenha.",
  },
  {
    en: "In {room} {count} of {total} props do not stand over a prop of the storey below: the engineer decides whether the slab between carries that, or give both storeys one connector and one direction.",
    es: "En {room} {count} de {total} puntales no quedan sobre un puntal del piso de abajo: el ingeniero decide si la losa intermedia lo soporta, o dé a los dos pisos una misma unión muro-losa y una misma dirección.",
    pt: "Em {room} {count} de {total} escoras não ficam sobre uma escora do piso de baixo: o engenheiro decide se a laje entre elas o suporta, ou dê aos dois pisos uma mesma junção parede-laje e uma mesma direção.",
  },
  {
    en: "Slab {slab} is drawn with an outline that crosses itself: nothing can be formed to it, and it is left out; draw it anew.",
    es: "La losa {slab} está dibujada con un contorno que se cruza: no se puede encofrar y queda fuera; dibújela de nuevo.",
    pt: "A laje {slab} está desenhada com um contorno que se cruza: não pode ser formada e fica de fora; desenhe-a de novo.",
  },
  {
    en: "Slab opening {opening} is drawn with an outline that crosses itself: nothing can be formed to it, and it is left out; draw it anew.",
    es: "El vano de losa {opening} está dibujado con un contorno que se cruza: no se puede encofrar y queda fuera; dibújelo de nuevo.",
    pt: "O vão de laje {opening} está desenhado com um contorno que se cruza: não pode ser formado e fica de fora; desenhe-o de novo.",
  },
  {
    en: "Slab {slab} reaches over {room} by {area} m²: forms are counted twice there; draw the slab outside the walls only, its edge along their outside face.",
    es: "La losa {slab} invade {room} en {area} m²: allí las piezas se cuentan dos veces; dibuje la losa solo fuera de los muros, con su borde en la cara exterior.",
    pt: "A laje {slab} invade {room} em {area} m²: ali as peças são contadas duas vezes; desenhe a laje só fora das paredes, com a borda na face externa.",
  },
  {
    en: 'Openings in the slab take all of the soffit of {room} within its connectors: give the room the kind "open" if it is a shaft, else make them smaller.',
    es: "Los vanos de la losa ocupan todo el fondo de losa de {room}: dé al recinto la clase “open” si es un pozo, o hágalos más pequeños.",
    pt: "Os vãos da laje ocupam todo o fundo de laje de {room}: dê ao cômodo o tipo “open” se é um poço, ou faça-os menores.",
  },
  {
    en: "Slab {slab} lies along no outside wall: nothing but its own strips carries it; draw its edge on the wall's face if it belongs to one.",
    es: "La losa {slab} no corre junto a ningún muro exterior: solo la llevan sus propias franjas; dibuje su borde sobre la cara del muro si pertenece a uno.",
    pt: "A laje {slab} não corre junto a nenhuma parede externa: só as suas próprias faixas a suportam; desenhe a sua borda na face da parede se pertence a uma.",
  },
  {
    en: "The kit gives no rule propPitch: props stand where panels meet, and nothing limits how far apart; add the rule.",
    es: "El kit no da la regla propPitch: los puntales van donde se encuentran los paneles y nada limita su separación; agregue la regla.",
    pt: "O kit não dá a regra propPitch: as escoras ficam onde os painéis se encontram e nada limita o seu afastamento; acrescente a regra.",
  },
];
