// Why a check has no verdict, what is over, and what the tables of striking remark.

import type { Sentence } from "../retold.ts";

export const REASON_SENTENCES: readonly Sentence[] = [
  {
    en: "the kit states no pressure its panels bear (rule panelPressure)",
    es: "el kit no declara qué presión soportan sus paneles (regla panelPressure)",
    pt: "o kit não declara que pressão os seus painéis suportam (regra panelPressure)",
  },
  {
    en: "the full liquid head does not depend on the rate",
    es: "la altura líquida completa no depende de la velocidad",
    pt: "a altura líquida completa não depende da velocidade",
  },
  {
    en: "the kit does not state what both panels and ties bear (panelPressure, tieLoad)",
    es: "el kit no declara qué soportan paneles y corbatas (panelPressure, tieLoad)",
    pt: "o kit não declara o que painéis e gravatas suportam (panelPressure, tieLoad)",
  },
  {
    en: "panels and ties bear the full liquid head: no rate is too fast for them",
    es: "paneles y corbatas soportan la altura líquida completa: ninguna velocidad es demasiada para ellos",
    pt: "painéis e gravatas suportam a altura líquida completa: nenhuma velocidade é demais para eles",
  },
  {
    en: "no rate of the method keeps the pressure that low",
    es: "ninguna velocidad del método mantiene tan baja la presión",
    pt: "nenhuma velocidade do método mantém a pressão tão baixa",
  },
  {
    en: "the kit states no load a tie may carry (rule tieLoad); whoever made and tested the ties knows it",
    es: "el kit no declara qué carga admite una corbata (regla tieLoad); lo sabe quien hizo y probó las corbatas",
    pt: "o kit não declara que carga uma gravata admite (regra tieLoad); sabe-o quem fez e ensaiou as gravatas",
  },
  {
    en: "the line has no other tie: without it nothing holds the form there",
    es: "la línea no tiene otra corbata: sin ella nada sujeta allí el encofrado",
    pt: "a linha não tem outra gravata: sem ela nada retém ali a fôrma",
  },
  {
    en: "none: the load is over the limit with a tie in every hole",
    es: "ninguna: la carga pasa el límite aun con una corbata en cada agujero",
    pt: "nenhuma: a carga passa do limite mesmo com uma gravata em cada furo",
  },
  {
    en: "only one face of the wall shows this opening",
    es: "solo una cara del muro muestra este vano",
    pt: "só uma face da parede mostra este vão",
  },
  {
    en: "the kit states no load for opening braces: set spreaders as wide as the opening low down, at about 1000 mm and under the lintel, and carry a ledger across",
    es: "el kit no declara carga para los tensores de vano: ponga tensores del ancho del vano abajo, a unos 1000 mm y bajo el dintel, y pase un alineador de lado a lado",
    pt: "o kit não declara carga para as travas de vão: ponha travas da largura do vão embaixo, a cerca de 1000 mm e sob a verga, e passe um alinhador de lado a lado",
  },
  {
    en: "tie the box down: it floats",
    es: "amarre la caja hacia abajo: flota",
    pt: "amarre a caixa para baixo: ela flutua",
  },
  {
    en: "close the sill with a plate with vent holes, pinned to the sill panels of both faces and these held down: an open one boils over",
    es: "cierre el antepecho con una tapa con orificios de ventilación, con pasadores a los paneles de antepecho de ambas caras, y sujete estos hacia abajo: uno abierto se desborda",
    pt: "feche o peitoril com uma tampa com furos de respiro, com pinos nos painéis de peitoril das duas faces, e prenda estes para baixo: um aberto transborda",
  },
  {
    en: "seal the foot on the side of the concrete and hold the panels down at every second layout pin: paste under the frames lifts them",
    es: "selle el pie del lado del concreto y sujete los paneles hacia abajo en uno de cada dos pasadores de replanteo: la lechada bajo los marcos los levanta",
    pt: "vede o pé do lado do concreto e prenda os painéis para baixo em um de cada dois pinos de locação: a nata sob os quadros os levanta",
  },
  { en: "there are no {what}", es: "no hay {what}", pt: "não há {what}" },
  { en: "ties", es: "corbatas", pt: "gravatas" },
  { en: "pieces of wall-bracket", es: "ménsulas", pt: "suportes" },
  { en: "pieces of brace", es: "tornapuntas", pt: "aprumadores" },
  { en: "pieces of facade-aligner", es: "alineadores de fachada", pt: "alinhadores de fachada" },
  {
    en: "the kit does not say how far apart (rule {rule})",
    es: "el kit no dice a qué distancia (regla {rule})",
    pt: "o kit não diz a que distância (regra {rule})",
  },
  { en: "the fill has no wall brackets", es: "el plano no tiene ménsulas", pt: "o plano não tem suportes" },
  {
    en: "the kit has no alignment ledgers",
    es: "el kit no tiene alineadores",
    pt: "o kit não tem alinhadores",
  },
  {
    en: "no slab is cast in this storey",
    es: "en este piso no se vacía losa",
    pt: "neste piso não se concreta laje",
  },
  {
    en: "the kit has no prop {code}",
    es: "el kit no tiene el puntal {code}",
    pt: "o kit não tem a escora {code}",
  },
  {
    en: "the kit gives no class of EN 1065 for {code}",
    es: "el kit no da clase de EN 1065 para {code}",
    pt: "o kit não dá classe da EN 1065 para {code}",
  },
  {
    en: "the kit states no limit for one person (rule personLimit)",
    es: "el kit no declara límite para una persona (regla personLimit)",
    pt: "o kit não declara limite para uma pessoa (regra personLimit)",
  },
  {
    en: "the project does not say when the slab is struck (concrete.strikeAt), nor what strength was measured",
    es: "el proyecto no dice cuándo se desencofra la losa (concrete.strikeAt) ni qué resistencia se midió",
    pt: "o projeto não diz quando se desforma a laje (concrete.strikeAt) nem que resistência se mediu",
  },
  {
    en: "the project gives no strength measured and no log of the slab's temperature",
    es: "el proyecto no da resistencia medida ni registro de la temperatura de la losa",
    pt: "o projeto não dá resistência medida nem registro da temperatura da laje",
  },
  {
    en: "the log of the temperature ends before the slab is struck; nothing is guessed",
    es: "el registro de temperatura termina antes de desencofrar la losa; nada se supone",
    pt: "o registro de temperatura termina antes de desformar a laje; nada se supõe",
  },
  {
    en: "the model of strength holds from {days} days at 20 °C on and the slab is younger: test it",
    es: "el modelo de resistencia vale desde {days} días a 20 °C y la losa es más joven: ensáyela",
    pt: "o modelo de resistência vale a partir de {days} dias a 20 °C e a laje é mais nova: ensaie-a",
  },
  {
    en: "the project gives no strength at 28 days (concrete.cubeStrength or cylinderStrength) or no service load (concrete.serviceLoad)",
    es: "el proyecto no da resistencia a 28 días (concrete.cubeStrength o cylinderStrength) o carga de servicio (concrete.serviceLoad)",
    pt: "o projeto não dá resistência aos 28 dias (concrete.cubeStrength ou cylinderStrength) ou carga de serviço (concrete.serviceLoad)",
  },
  { en: "no strength to speak of", es: "sin resistencia que contar", pt: "sem resistência que conte" },
  {
    en: "the project does not say what the slab is designed for in all (concrete.serviceLoad)",
    es: "el proyecto no dice para qué carga total se diseñó la losa (concrete.serviceLoad)",
    pt: "o projeto não diz para que carga total a laje foi projetada (concrete.serviceLoad)",
  },
  {
    en: "only where the form holds up no slab; cast together, the slab's time governs",
    es: "solo donde el encofrado no soporta losa; vaciados juntos, manda el tiempo de la losa",
    pt: "só onde a fôrma não suporta laje; concretadas juntas, manda o tempo da laje",
  },
  {
    en: "only where the form holds up no slab; cast together, the slab's time governs; the longer of the two times it gives",
    es: "solo donde el encofrado no soporta losa; vaciados juntos, manda el tiempo de la losa; el mayor de los dos tiempos que da",
    pt: "só onde a fôrma não suporta laje; concretadas juntas, manda o tempo da laje; o maior dos dois tempos que dá",
  },
  {
    en: "the longer of the two times it gives",
    es: "el mayor de los dos tiempos que da",
    pt: "o maior dos dois tempos que dá",
  },
  {
    en: "span {span} mm, live load less than dead",
    es: "luz {span} mm, carga viva menor que la muerta",
    pt: "vão livre {span} mm, carga variável menor que a permanente",
  },
  { en: "span {span} mm", es: "luz {span} mm", pt: "vão livre {span} mm" },
  {
    en: "live load less than dead",
    es: "carga viva menor que la muerta",
    pt: "carga variável menor que a permanente",
  },
  {
    en: "bending governs, props left or not",
    es: "manda la flexión, queden o no puntales",
    pt: "manda a flexão, fiquem ou não escoras",
  },
  { en: "and twice the stress", es: "y el doble del esfuerzo", pt: "e o dobro da tensão" },
  {
    en: "tensile strength, with the props as far apart as the kit's rule propPitch says",
    es: "resistencia a tracción, con los puntales a la distancia de la regla propPitch del kit",
    pt: "resistência à tração, com as escoras à distância da regra propPitch do kit",
  },
  {
    en: "props put back at once",
    es: "los puntales se reponen de inmediato",
    pt: "as escoras são repostas de imediato",
  },
  {
    en: "needs the strength at 28 days and the service load (concrete.serviceLoad)",
    es: "necesita la resistencia a 28 días y la carga de servicio (concrete.serviceLoad)",
    pt: "precisa da resistência aos 28 dias e da carga de serviço (concrete.serviceLoad)",
  },
  {
    en: "the kit does not say how far apart props stand (rule propPitch)",
    es: "el kit no dice a qué distancia van los puntales (regla propPitch)",
    pt: "o kit não diz a que distância ficam as escoras (regra propPitch)",
  },
  {
    en: "mean surface temperature {warmth} °C",
    es: "temperatura superficial media {warmth} °C",
    pt: "temperatura superficial média {warmth} °C",
  },
  {
    en: "needs a log of the temperature that reaches the hour of striking",
    es: "necesita un registro de temperatura que llegue a la hora de desencofrar",
    pt: "precisa de um registro de temperatura que chegue à hora de desformar",
  },
];
