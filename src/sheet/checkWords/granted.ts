// What the checks take for granted.

import type { Sentence } from "../retold.ts";

export const GRANTED_SENTENCES: readonly Sentence[] = [
  {
    en: "What a panel bears is one figure of the kit for every panel and every place in it.",
    es: "Lo que soporta un panel es una sola cifra del kit para todo panel y todo lugar de él.",
    pt: "O que um painel suporta é um só valor do kit para todo painel e todo lugar dele.",
  },
  {
    en: "Rows are proposed for a plain strip of wall as wide as the kit's rule tieSpacing, on the holes of the lowest panel; ties beside openings carry what their own check says.",
    es: "Las filas se proponen para una franja simple de muro del ancho de la regla tieSpacing del kit, en los agujeros del panel más bajo; las corbatas junto a vanos cargan lo que dice su propia verificación.",
    pt: "As linhas são propostas para uma faixa simples de parede da largura da regra tieSpacing do kit, nos furos do painel mais baixo; as gravatas junto a vãos carregam o que diz a sua própria verificação.",
  },
  {
    en: "Walls and slab are placed in one go: the concrete presses with its head up to the top of the slab.",
    es: "Muros y losa se vacían de una vez: el concreto presiona con su altura hasta la cara superior de la losa.",
    pt: "Paredes e laje são concretadas de uma vez: o concreto pressiona com a sua altura até a face superior da laje.",
  },
  {
    en: "A tie holds the form half the way to the next tie, jamb or end of the face on either side; jambs, stop-ends and corners are taken to hold their half, pinned as the lists say.",
    es: "Una corbata sujeta el encofrado hasta la mitad del camino a la siguiente corbata, jamba o fin de la cara a cada lado; se supone que jambas, tapas y esquineros sujetan su mitad, con los pasadores de las listas.",
    pt: "Uma gravata retém a fôrma até a metade do caminho à próxima gravata, ombreira ou fim da face de cada lado; supõe-se que ombreiras, tampas e cantos retêm a sua metade, com os pinos das listas.",
  },
  {
    en: "As a beam, the panels of a line are taken as stiff and free at floor and top; real panels lie between that and the plain strips.",
    es: "Como viga, los paneles de una línea se toman rígidos y libres en el piso y arriba; los reales están entre eso y las franjas simples.",
    pt: "Como viga, os painéis de uma linha são tomados rígidos e livres no piso e em cima; os reais ficam entre isso e as faixas simples.",
  },
  {
    en: "A tie left out is taken one at a time, of the two lowest in its line; the panels beside it are not taken to help.",
    es: "La corbata olvidada se toma de a una, de las dos más bajas de su línea; no se cuenta con la ayuda de los paneles vecinos.",
    pt: "A gravata esquecida é tomada uma por vez, das duas mais baixas da sua linha; não se conta com a ajuda dos painéis vizinhos.",
  },
  {
    en: "Figures for jambs, sills, boxes and feet of panels are forces without a load factor, to be held by what the engineer says; no limit is known for them here.",
    es: "Las cifras de jambas, antepechos, cajas y pies de paneles son fuerzas sin factor de carga, que se sujetan con lo que diga el ingeniero; aquí no se conoce límite para ellas.",
    pt: "Os valores de ombreiras, peitoris, caixas e pés de painéis são forças sem coeficiente de majoração, a conter com o que o engenheiro disser; aqui não se conhece limite para elas.",
  },
  {
    en: "Under the feet of the panels the full pressure is taken to stand over the depth of the frame, as where the seal has failed.",
    es: "Bajo los pies de los paneles se toma la presión completa en la profundidad del marco, como donde falló el sello.",
    pt: "Sob os pés dos painéis toma-se a pressão completa na profundidade do quadro, como onde a vedação falhou.",
  },
  {
    en: "Along a row the form is held by ties, jambs, ends of the face and legs of inside corners; the width of a closure counts as part of its joint.",
    es: "A lo largo de una fila el encofrado lo sujetan corbatas, jambas, fines de la cara y alas de esquineros interiores; el ancho de un cierre cuenta como parte de su junta.",
    pt: "Ao longo de uma linha a fôrma é retida por gravatas, ombreiras, fins da face e abas de cantos internos; a largura de um fechamento conta como parte da sua junta.",
  },
  {
    en: "Where part of a wall's face is set second, its fittings stand on the other face; distances are then measured between fittings only, and elsewhere twice the distance to the end counts, too.",
    es: "Donde parte de la cara de un muro se arma en segundo lugar, sus accesorios van en la otra cara; entonces se mide solo entre accesorios, y en lo demás cuenta también el doble de la distancia al fin.",
    pt: "Onde parte da face de uma parede é montada em segundo lugar, os seus acessórios ficam na outra face; então mede-se só entre acessórios, e no resto conta também o dobro da distância ao fim.",
  },
  {
    en: "A prop counts as extended over the whole clear height of its room, without the depth of strip and head under the soffit: longer than it is, on the conservative side.",
    es: "Un puntal cuenta extendido en toda la altura libre de su recinto, sin descontar la franja ni la cabeza bajo el fondo de losa: más largo de lo que es, del lado conservador.",
    pt: "Uma escora conta estendida em toda a altura livre do seu cômodo, sem descontar a faixa nem a cabeça sob o fundo de laje: mais comprida do que é, do lado conservador.",
  },
  {
    en: "The slab is as thick as the storey says everywhere, also where a soffit is dropped; thicker parts are not in these figures.",
    es: "La losa tiene en todas partes el espesor que dice el piso, también donde el fondo de losa baja; las partes más gruesas no están en estas cifras.",
    pt: "A laje tem em toda parte a espessura que diz o piso, também onde o fundo de laje baixa; as partes mais espessas não estão nestes valores.",
  },
  {
    en: "A prop carries the one slab cast on its own forms. What comes down through props of the storeys above is not in these figures.",
    es: "Un puntal soporta la losa vaciada sobre su propio encofrado. Lo que baja por los puntales de los pisos de arriba no está en estas cifras.",
    pt: "Uma escora suporta a laje concretada sobre a sua própria fôrma. O que desce pelas escoras dos pisos de cima não está nestes valores.",
  },
  {
    en: "A piece that is over the limit of one person is carried by two, who may lift two thirds of twice that limit; its mass is taken as shared equally.",
    es: "Una pieza que pasa el límite de una persona la cargan dos, que pueden levantar dos tercios del doble de ese límite; se supone que su peso se reparte por igual.",
    pt: "Uma peça que passa do limite de uma pessoa é carregada por duas, que podem levantar dois terços do dobro desse limite; supõe-se que o seu peso se divide por igual.",
  },
  {
    en: "The lifting index goes by plain lifts: from a stack 350 mm away and 400 to 900 mm up, to a wall with a twist of 30°, overhead to 1750 mm; good footing, fair grip, an hour or two at a time. Common practice, no source: measure the real ones.",
    es: "El índice de levantamiento se basa en levantamientos simples: desde una pila a 350 mm y de 400 a 900 mm de altura, a un muro con giro de 30°, sobre la cabeza hasta 1750 mm; buen apoyo, agarre regular, una o dos horas seguidas. Práctica común, sin fuente: mida los reales.",
    pt: "O índice de levantamento baseia-se em levantamentos simples: de uma pilha a 350 mm e de 400 a 900 mm de altura, a uma parede com giro de 30°, acima da cabeça até 1750 mm; bom apoio, pega razoável, uma ou duas horas seguidas. Prática comum, sem fonte: meça os reais.",
  },
  {
    en: "Pieces under 3 kg are not listed.",
    es: "Las piezas de menos de 3 kg no se listan.",
    pt: "As peças de menos de 3 kg não são listadas.",
  },
  {
    en: "Walls and slab are cast together: no wall panel that carries the slab's forms comes down before the slab's time.",
    es: "Muros y losa se vacían juntos: ningún panel de muro que soporta el encofrado de la losa se retira antes del tiempo de la losa.",
    pt: "Paredes e laje são concretadas juntas: nenhum painel de parede que suporta a fôrma da laje é retirado antes do tempo da laje.",
  },
  {
    en: "A slab spans the shorter side of its room; it is governed by bending and thinner than 350 mm.",
    es: "Una losa salva el lado corto de su recinto; la gobierna la flexión y tiene menos de 350 mm.",
    pt: "Uma laje vence o lado curto do seu cômodo; é governada pela flexão e tem menos de 350 mm.",
  },
  {
    en: "Hours of a table are no proof of strength, and count only while the concrete is as warm as the table asks.",
    es: "Las horas de una tabla no prueban resistencia, y cuentan solo mientras el concreto está tan tibio como pide la tabla.",
    pt: "As horas de uma tabela não provam resistência, e contam só enquanto o concreto está tão quente como pede a tabela.",
  },
  {
    en: "Over many storeys slabs are alike, elastic and without creep, shores rigid and close and over one another, the lowest on rigid ground; measured shores differ from this by up to half.",
    es: "En muchos pisos las losas son iguales, elásticas y sin fluencia; los puntales, rígidos, juntos y uno sobre otro, los más bajos sobre suelo rígido; lo medido difiere de esto hasta en la mitad.",
    pt: "Em muitos pisos as lajes são iguais, elásticas e sem fluência; as escoras, rígidas, juntas e uma sobre a outra, as mais baixas sobre solo rígido; o medido difere disso em até a metade.",
  },
  {
    en: "A slab is set against its service load at full strength: at an early age it bears less, and the strength it has then decides.",
    es: "Una losa se compara con su carga de servicio a plena resistencia: a edad temprana soporta menos, y decide la resistencia que tiene entonces.",
    pt: "Uma laje é comparada com a sua carga de serviço à plena resistência: em idade jovem suporta menos, e decide a resistência que tem então.",
  },
  {
    en: "The weight of forms, a tenth of a slab's or so, and the people at work on the topmost slab are added once, on the prop under it and on the slab that carries most.",
    es: "El peso del encofrado, cerca de un décimo del de una losa, y la gente que trabaja en la losa más alta se suman una vez, en el puntal bajo ella y en la losa que más soporta.",
    pt: "O peso da fôrma, cerca de um décimo do de uma laje, e as pessoas que trabalham na laje mais alta somam-se uma vez, na escora sob ela e na laje que mais suporta.",
  },
  {
    en: "Completeness goes by what the fill lists; what nobody drew, such as services without a path, is not missed.",
    es: "La integridad se mide por lo que lista el plano; lo que nadie dibujó, como instalaciones sin recorrido, no se echa de menos.",
    pt: "A integridade mede-se pelo que o plano lista; o que ninguém desenhou, como instalações sem percurso, não faz falta.",
  },
  {
    en: "Props take vertical load alone: the horizontal load of the slab goes into the forms of the walls it is cast with, closed, pinned and braced.",
    es: "Los puntales toman solo carga vertical: la carga horizontal de la losa va al encofrado de los muros con que se vacía, cerrado, con pasadores y tornapuntas.",
    pt: "As escoras tomam só carga vertical: a carga horizontal da laje vai para a fôrma das paredes com que é concretada, fechada, com pinos e aprumadores.",
  },
  { en: "Props stand plumb.", es: "Los puntales están a plomo.", pt: "As escoras ficam a prumo." },
  {
    en: "A pour takes its set from the pours before it in working order; a unit stands over itself from storey to storey.",
    es: "Un vaciado toma su conjunto de los vaciados anteriores en el orden de trabajo; una unidad está sobre sí misma de piso a piso.",
    pt: "Uma concretagem toma o seu conjunto das concretagens anteriores na ordem de trabalho; uma unidade fica sobre si mesma de piso a piso.",
  },
];
