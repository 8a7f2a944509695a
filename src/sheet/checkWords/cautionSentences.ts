// What goes with every result of a check.

import type { Sentence } from "../retold.ts";

export const CAUTION_SENTENCES: readonly Sentence[] = [
  {
    en: "This is a planning aid and no design: the temporary-works engineer appointed for the job designs, checks and approves forms, ties, props, bearing, bracing and every step of striking, and the local code governs.",
    es: "Esto es una ayuda para planear y no un diseño: el ingeniero de obras temporales designado para la obra diseña, verifica y aprueba encofrados, corbatas, puntales, apoyos, arriostramiento y cada paso del desencofrado, y manda la norma local.",
    pt: "Isto é uma ajuda para planejar e não um projeto: o engenheiro de obras temporárias designado para a obra projeta, verifica e aprova fôrmas, gravatas, escoras, apoios, contraventamento e cada passo da desforma, e manda a norma local.",
  },
  {
    en: "A pressure below the full liquid head holds only for the mix, the temperature of the concrete and the highest rate of placing stated, with vibration from inside and placing from above; self-compacting concrete, pumping from below, external vibration and expanding cement are outside the formulas.",
    es: "Una presión menor que la altura líquida completa vale solo para la mezcla, la temperatura del concreto y la mayor velocidad de vaciado indicadas, con vibrado interno y vaciado desde arriba; el concreto autocompactante, el bombeo desde abajo, el vibrado externo y el cemento expansivo quedan fuera de las fórmulas.",
    pt: "Uma pressão menor que a altura líquida completa vale só para a mistura, a temperatura do concreto e a maior velocidade de concretagem indicadas, com vibração interna e concretagem por cima; o concreto autoadensável, o bombeamento por baixo, a vibração externa e o cimento expansivo ficam fora das fórmulas.",
  },
  {
    en: "Do not vibrate the layer below again through its depth: the poker goes a hand's breadth into it. Where a poker works the pressure is liquid, and deep re-vibration has been measured to press far above the formulas.",
    es: "No vuelva a vibrar la capa de abajo en toda su profundidad: el vibrador entra en ella un palmo. Donde trabaja un vibrador la presión es líquida, y se ha medido que el revibrado profundo presiona muy por encima de las fórmulas.",
    pt: "Não vibre de novo a camada de baixo em toda a sua profundidade: o vibrador entra nela um palmo. Onde trabalha um vibrador a pressão é líquida, e mediu-se que a revibração profunda pressiona muito acima das fórmulas.",
  },
  {
    en: "Place in layers, all round a room and on both sides of every opening at nearly one level, and never let the concrete fall free through more than the specification allows.",
    es: "Vacíe por capas, alrededor de todo el recinto y a ambos lados de cada vano casi al mismo nivel, y nunca deje caer el concreto más de lo que permite la especificación.",
    pt: "Concrete por camadas, ao redor de todo o cômodo e dos dois lados de cada vão quase no mesmo nível, e nunca deixe o concreto cair mais do que a especificação permite.",
  },
  {
    en: "A figure for a tie counts on every tie beside it: two people count the lowest rows before the pour, and a form that moves stops it.",
    es: "La cifra de una corbata cuenta con todas las vecinas: dos personas cuentan las filas más bajas antes del vaciado, y un encofrado que se mueve lo detiene.",
    pt: "O valor de uma gravata conta com todas as vizinhas: duas pessoas contam as linhas mais baixas antes da concretagem, e uma fôrma que se move a interrompe.",
  },
  {
    en: "Permissible loads and design strengths are never mixed: each limit of the kit is taken as the project says it is stated.",
    es: "Cargas admisibles y resistencias de cálculo nunca se mezclan: cada límite del kit se toma como el proyecto dice que está declarado.",
    pt: "Cargas admissíveis e resistências de cálculo nunca se misturam: cada limite do kit é tomado como o projeto diz que está declarado.",
  },
  {
    en: "The engineer of the permanent structure confirms what the slab can carry at each age.",
    es: "El ingeniero de la estructura definitiva confirma qué puede soportar la losa a cada edad.",
    pt: "O engenheiro da estrutura definitiva confirma o que a laje pode suportar em cada idade.",
  },
  {
    en: "No panel, strip or prop is loosened without a signed permit that states the strength measured and the strength required; hours alone prove nothing, for cold, retarder, slag or a late load set the clock back.",
    es: "Ningún panel, franja o puntal se afloja sin un permiso firmado que diga la resistencia medida y la exigida; las horas solas no prueban nada: frío, retardador, escoria o una carga tardía atrasan el reloj.",
    pt: "Nenhum painel, faixa ou escora é afrouxado sem uma permissão assinada que diga a resistência medida e a exigida; as horas sozinhas não provam nada: frio, retardador, escória ou uma carga tardia atrasam o relógio.",
  },
  {
    en: "Props that are to stay remain tight and untouched while the panels come down; none is taken out and put back unless the drawing shows that step.",
    es: "Los puntales que han de quedar siguen apretados e intactos mientras bajan los paneles; ninguno se quita y se repone salvo que el plano muestre ese paso.",
    pt: "As escoras que devem ficar continuam apertadas e intactas enquanto os painéis descem; nenhuma é retirada e reposta salvo se o desenho mostrar esse passo.",
  },
  {
    en: "Strike by and by: ease all supports first, then from mid-span towards walls and columns, cantilevers from the tip; nobody stands under a bay that is struck in part.",
    es: "Desencofre poco a poco: primero afloje todos los apoyos, luego de media luz hacia muros y columnas, los voladizos desde la punta; nadie se para bajo un paño desencofrado a medias.",
    pt: "Desforme aos poucos: primeiro alivie todos os apoios, depois do meio do vão para paredes e pilares, balanços pela ponta; ninguém fica sob um pano desformado pela metade.",
  },
  {
    en: "Nothing is stored on a floor, and none is cast over it, before its day on the load chart.",
    es: "Nada se acopia sobre un piso, ni se vacía otro encima, antes de su día en la tabla de cargas.",
    pt: "Nada se estoca sobre um piso, nem se concreta outro acima, antes do seu dia na tabela de cargas.",
  },
  {
    en: "Each prop is straight and undamaged, of the stated class and length, with its own pin, plumb within 1.5 degrees, loaded within 25 mm of its axis, with full end plates on a sound base, and stands over the prop below.",
    es: "Cada puntal está recto y sin daño, es de la clase y el largo indicados, con su propio pasador, a plomo dentro de 1,5 grados, cargado a menos de 25 mm de su eje, con bases completas sobre apoyo firme, y queda sobre el puntal de abajo.",
    pt: "Cada escora é reta e sem dano, da classe e do comprimento indicados, com o seu próprio pino, a prumo dentro de 1,5 grau, carregada a menos de 25 mm do seu eixo, com bases inteiras sobre apoio firme, e fica sobre a escora de baixo.",
  },
  {
    en: "Reshores are set snug and not driven tight: force lifts the slab and loads it where it should not be loaded.",
    es: "El reapuntalado se ajusta sin forzar: la fuerza levanta la losa y la carga donde no debe.",
    pt: "O reescoramento é ajustado sem forçar: a força levanta a laje e a carrega onde não deve.",
  },
  {
    en: "Look at the props before, during and after placing, and stop if one settles, bows or lifts at its head.",
    es: "Mire los puntales antes, durante y después del vaciado, y pare si uno se asienta, se pandea o se levanta en su cabeza.",
    pt: "Olhe as escoras antes, durante e depois da concretagem, e pare se uma recalca, flamba ou se levanta na cabeça.",
  },
  {
    en: "Balconies, free edges, openings, stair landings and thicker strips need props of their own, drawn for the purpose.",
    es: "Balcones, bordes libres, vanos, descansos de escalera y franjas más gruesas necesitan puntales propios, dibujados para ello.",
    pt: "Sacadas, bordas livres, vãos, patamares de escada e faixas mais espessas precisam de escoras próprias, desenhadas para isso.",
  },
  {
    en: "Place the concrete evenly, in no heap beyond the allowance stated.",
    es: "Reparta el concreto parejo, sin acumularlo más de lo previsto.",
    pt: "Distribua o concreto por igual, sem acumulá-lo além do previsto.",
  },
  {
    en: "Another slab thickness, storey height, mix, cycle or order of work makes these figures void until they are checked again.",
    es: "Otro espesor de losa, altura de piso, mezcla, ciclo u orden de trabajo anula estas cifras hasta verificarlas de nuevo.",
    pt: "Outra espessura de laje, altura de piso, mistura, ciclo ou ordem de trabalho anula estes valores até serem verificados de novo.",
  },
];
