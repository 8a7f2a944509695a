// The words in formulas and rules of the checks, and those of a source that are no citation.

import type { Sentence } from "../retold.ts";

export const FORMULA_SENTENCES: readonly Sentence[] = [
  {
    en: "p at the floor ≤ panelPressure",
    es: "p en el piso ≤ panelPressure",
    pt: "p no piso ≤ panelPressure",
  },
  {
    en: "R ≤ the rate at which panels and ties just bear the pressure",
    es: "R ≤ la velocidad a la que paneles y corbatas apenas soportan la presión",
    pt: "R ≤ a velocidade à qual painéis e gravatas apenas suportam a pressão",
  },
  { en: "the method solved for R", es: "el método despejado para R", pt: "o método resolvido para R" },
  {
    en: "F = greater of ∫ p·b dz over the tie's strip and its reaction as support of a stiff beam over the rows of its line",
    es: "F = lo mayor entre ∫ p·b dz en la franja de la corbata y su reacción como apoyo de una viga rígida sobre las filas de su línea",
    pt: "F = o maior entre ∫ p·b dz na faixa da gravata e a sua reação como apoio de uma viga rígida sobre as linhas da sua fila",
  },
  {
    en: "distance between {what} along a row ≤ {rule}",
    es: "distancia entre {what} a lo largo de una fila ≤ {rule}",
    pt: "distância entre {what} ao longo de uma linha ≤ {rule}",
  },
  {
    en: "no stretch between the brackets of a row without a ledger",
    es: "ningún tramo entre las ménsulas de una fila sin alineador",
    pt: "nenhum trecho entre os suportes de uma linha sem alinhador",
  },
  {
    en: "N = (t + c)·∫ p dz over the height of the jamb",
    es: "N = (t + c)·∫ p dz en la altura de la jamba",
    pt: "N = (t + c)·∫ p dz na altura da ombreira",
  },
  {
    en: "c: leg of an inside corner within {near} mm",
    es: "c: ala de un esquinero interior a menos de {near} mm",
    pt: "c: aba de um canto interno a menos de {near} mm",
  },
  {
    en: "U = (p(sill) − p(head))·t·W",
    es: "U = (p(antepecho) − p(dintel))·t·W",
    pt: "U = (p(peitoril) − p(verga))·t·W",
  },
  { en: "U = p(sill)·t·W", es: "U = p(antepecho)·t·W", pt: "U = p(peitoril)·t·W" },
  { en: "U = p(floor)·d", es: "U = p(piso)·d", pt: "U = p(piso)·d" },
  {
    en: "f_c ≥ 10 MPa and ≥ twice the stress it will carry",
    es: "f_c ≥ 10 MPa y ≥ el doble del esfuerzo que soportará",
    pt: "f_c ≥ 10 MPa e ≥ o dobro da tensão que suportará",
  },
  { en: "strength as measured", es: "resistencia medida", pt: "resistência medida" },
  { en: "less {margin} MPa", es: "menos {margin} MPa", pt: "menos {margin} MPa" },
  {
    en: "M = Σ (T − T_0)·Δt, colder intervals left out",
    es: "M = Σ (T − T_0)·Δt, sin los lapsos más fríos",
    pt: "M = Σ (T − T_0)·Δt, sem os lapsos mais frios",
  },
  {
    en: "E = 33.5 kJ/mol, below 20 °C 33.5 + 1.47·(20 − T)",
    es: "E = 33,5 kJ/mol, bajo 20 °C 33,5 + 1,47·(20 − T)",
    pt: "E = 33,5 kJ/mol, abaixo de 20 °C 33,5 + 1,47·(20 − T)",
  },
  {
    en: "t_e = Σ exp(−(E/R)·(1/(273 + T) − 1/293))·Δt, E = 33.5 kJ/mol, below 20 °C 33.5 + 1.47·(20 − T)",
    es: "t_e = Σ exp(−(E/R)·(1/(273 + T) − 1/293))·Δt, E = 33,5 kJ/mol, bajo 20 °C 33,5 + 1,47·(20 − T)",
    pt: "t_e = Σ exp(−(E/R)·(1/(273 + T) − 1/293))·Δt, E = 33,5 kJ/mol, abaixo de 20 °C 33,5 + 1,47·(20 − T)",
  },
  { en: "two people: 2·m_1·2/3", es: "dos personas: 2·m_1·2/3", pt: "duas pessoas: 2·m_1·2/3" },
  {
    en: "RWL = 23·(25/H)·(1 − 0.003·|V − 75|)·(0.82 + 4.5/D)·(1 − 0.0032·A)·FM·CM, lengths in cm",
    es: "RWL = 23·(25/H)·(1 − 0,003·|V − 75|)·(0,82 + 4,5/D)·(1 − 0,0032·A)·FM·CM, longitudes en cm",
    pt: "RWL = 23·(25/H)·(1 − 0,003·|V − 75|)·(0,82 + 4,5/D)·(1 − 0,0032·A)·FM·CM, comprimentos em cm",
  },
  {
    en: "LI = m/RWL, RWL = 23·(25/H)·(1 − 0.003·|V − 75|)·(0.82 + 4.5/D)·(1 − 0.0032·A)·FM·CM, lengths in cm",
    es: "LI = m/RWL, RWL = 23·(25/H)·(1 − 0,003·|V − 75|)·(0,82 + 4,5/D)·(1 − 0,0032·A)·FM·CM, longitudes en cm",
    pt: "LI = m/RWL, RWL = 23·(25/H)·(1 − 0,003·|V − 75|)·(0,82 + 4,5/D)·(1 − 0,0032·A)·FM·CM, comprimentos em cm",
  },
  {
    en: "a pour adds 1/(number of slabs from the lowest unpropped one) to each of these",
    es: "un vaciado añade 1/(número de losas desde la más baja sin puntales) a cada una de ellas",
    pt: "uma concretagem acrescenta 1/(número de lajes desde a mais baixa sem escoras) a cada uma delas",
  },
  {
    en: "taking out P adds P/(number of slabs above) to each",
    es: "retirar P añade P/(número de losas encima) a cada una",
    pt: "retirar P acrescenta P/(número de lajes acima) a cada uma",
  },
  { en: "w·h where C1·√R > H", es: "w·h donde C1·√R > H", pt: "w·h onde C1·√R > H" },
  {
    en: "live 2.4 and q_min 4.8 kPa, with motorised carts 3.6 and 6.0 kPa",
    es: "carga viva 2,4 y q_min 4,8 kPa, con carretillas motorizadas 3,6 y 6,0 kPa",
    pt: "carga variável 2,4 e q_min 4,8 kPa, com carrinhos motorizados 3,6 e 6,0 kPa",
  },
  {
    en: "q = γ·h + g + live, at least q_min",
    es: "q = γ·h + g + live, al menos q_min",
    pt: "q = γ·h + g + live, ao menos q_min",
  },
  {
    en: "R_k = {cap} kN at any extension",
    es: "R_k = {cap} kN en cualquier extensión",
    pt: "R_k = {cap} kN em qualquer extensão",
  },
  {
    en: "E1 P_max = C_w·C_c·(150 + 9000·R/T), E2 C_w·C_c·(150 + 43400/T + 2800·R/T) psf, at least 600·C_w, at most w·H",
    es: "E1 P_max = C_w·C_c·(150 + 9000·R/T), E2 C_w·C_c·(150 + 43400/T + 2800·R/T) psf, al menos 600·C_w, a lo más w·H",
    pt: "E1 P_max = C_w·C_c·(150 + 9000·R/T), E2 C_w·C_c·(150 + 43400/T + 2800·R/T) psf, ao menos 600·C_w, no máximo w·H",
  },
  {
    en: "N = 1.5 kN/m·s at the top of the form",
    es: "N = 1,5 kN/m·s en lo alto del encofrado",
    pt: "N = 1,5 kN/m·s no alto da fôrma",
  },
  {
    en: "f_c from test to test of the mix, straight over M",
    es: "f_c de ensayo a ensayo de la mezcla, recta sobre M",
    pt: "f_c de ensaio a ensaio da mistura, reta sobre M",
  },
  {
    en: "length of form that stands on the floor, all faces",
    es: "largo de encofrado que se apoya en el piso, todas las caras",
    pt: "comprimento de fôrma que se apoia no piso, todas as faces",
  },
  {
    en: "pieces, openings and open places make up each face exactly, none over another",
    es: "piezas, vanos y lugares abiertos completan cada cara con exactitud, ninguno sobre otro",
    pt: "peças, vãos e lugares abertos completam cada face com exatidão, nenhum sobre outro",
  },
  {
    en: "level joints between panels are as high on both faces of a wall, as far up as both have panels",
    es: "las juntas a nivel entre paneles están a igual altura en ambas caras de un muro, hasta donde ambas tienen paneles",
    pt: "as juntas de nível entre painéis ficam à mesma altura nas duas faces de uma parede, até onde as duas têm painéis",
  },
  {
    en: "wherever both faces of a wall carry panels a joint of one faces a joint of the other, 2.5 mm at most beside it",
    es: "donde ambas caras de un muro llevan paneles, cada junta de una queda frente a una junta de la otra, a 2,5 mm a lo más",
    pt: "onde as duas faces de uma parede levam painéis, cada junta de uma fica diante de uma junta da outra, a no máximo 2,5 mm",
  },
  {
    en: "opposite the leg end of each inside corner the outer face has a joint: its run is the inner one and the adjoining wall",
    es: "frente al fin del ala de cada esquinero interior la cara exterior tiene una junta: su largo es el interior más el muro contiguo",
    pt: "diante do fim da aba de cada canto interno a face externa tem uma junta: o seu comprimento é o interno mais a parede contígua",
  },
  {
    en: "opposite each joining wall stand one piece, or one and a closure, from leg end to leg end, no wider than the kit's rule tieSpacing",
    es: "frente a cada muro que llega va una pieza, o una y un cierre, de fin a fin de las alas, no más ancha que la regla tieSpacing del kit",
    pt: "diante de cada parede que chega vai uma peça, ou uma e um fechamento, de fim a fim das abas, não mais larga que a regra tieSpacing do kit",
  },
  {
    en: "a tie in every row of every joint that both faces of a wall share, but within tieEdge of an opening and on the closing side of a closure",
    es: "una corbata en cada fila de cada junta que comparten ambas caras de un muro, salvo a menos de tieEdge de un vano y en el lado que cierra un cierre",
    pt: "uma gravata em cada linha de cada junta que as duas faces de uma parede partilham, salvo a menos de tieEdge de um vão e no lado que fecha um fechamento",
  },
  {
    en: "each tie goes through one wall: both of its ends lie on its faces, none in a joining wall",
    es: "cada corbata atraviesa un solo muro: sus dos extremos están en las caras de este, ninguno en un muro que llega",
    pt: "cada gravata atravessa uma só parede: as suas duas pontas ficam nas faces desta, nenhuma em uma parede que chega",
  },
  {
    en: "each tie is on a hole of the kit's pattern up the panel's edge (holes)",
    es: "cada corbata está en un agujero del canto del panel según el kit (holes)",
    pt: "cada gravata fica em um furo da borda do painel segundo o kit (holes)",
  },
  {
    en: "all ties between two faces are hung from the one that is set first",
    es: "todas las corbatas entre dos caras se cuelgan de la que se arma primero",
    pt: "todas as gravatas entre duas faces são penduradas na que é montada primeiro",
  },
  {
    en: "no tie within the clearance of a service",
    es: "ninguna corbata en el resguardo de una instalación",
    pt: "nenhuma gravata no afastamento de uma instalação",
  },
  {
    en: "no tie crosses a movement joint",
    es: "ninguna corbata cruza una junta de movimiento",
    pt: "nenhuma gravata cruza uma junta de movimentação",
  },
  {
    en: "brackets, ledgers and a brace on each face that is set first, in the second and the highest row of ties",
    es: "ménsulas, alineadores y una tornapunta en cada cara que se arma primero, en la segunda fila de corbatas y en la más alta",
    pt: "suportes, alinhadores e um aprumador em cada face que é montada primeiro, na segunda linha de gravatas e na mais alta",
  },
  { en: "aligners on each facade", es: "alineadores en cada fachada", pt: "alinhadores em cada fachada" },
  {
    en: "a brace as wide as the opening holds each pair of jambs apart",
    es: "un tensor del ancho del vano mantiene separado cada par de jambas",
    pt: "uma trava da largura do vão mantém afastado cada par de ombreiras",
  },
  {
    en: "slab panels, strips, connectors and open places make up each soffit, none over another",
    es: "paneles de losa, franjas, uniones y lugares abiertos completan cada fondo de losa, ninguno sobre otro",
    pt: "painéis de laje, faixas, junções e lugares abertos completam cada fundo de laje, nenhum sobre outro",
  },
  {
    en: "each slab panel has two edges at least on strips or connectors",
    es: "cada panel de losa tiene al menos dos bordes sobre franjas o uniones",
    pt: "cada painel de laje tem ao menos duas bordas sobre faixas ou junções",
  },
  {
    en: "no two widths of panels on the walls less than {mm} mm apart",
    es: "en los muros no hay dos anchos de panel que difieran menos de {mm} mm",
    pt: "nas paredes não há duas larguras de painel que difiram menos de {mm} mm",
  },
  {
    en: "expected growth of the face with the most joints, {growth} mm a joint",
    es: "crecimiento esperado de la cara con más juntas, {growth} mm por junta",
    pt: "crescimento esperado da face com mais juntas, {growth} mm por junta",
  },
  {
    en: "the two faces of a wall have as many joints: {growth} mm for each more is no more than the kit's rule tieTolerance",
    es: "las dos caras de un muro tienen igual número de juntas: {growth} mm por cada una de más no pasa la regla tieTolerance del kit",
    pt: "as duas faces de uma parede têm o mesmo número de juntas: {growth} mm por cada uma a mais não passa da regra tieTolerance do kit",
  },
  {
    en: "no stretch of a face longer than {pitch} mm lies in the clearance of services: a layout pin finds its place",
    es: "ningún tramo de cara de más de {pitch} mm está en el resguardo de instalaciones: un pasador de replanteo encuentra su lugar",
    pt: "nenhum trecho de face de mais de {pitch} mm fica no afastamento de instalações: um pino de locação acha o seu lugar",
  },
  {
    en: "two control lines across one another give the datum of setting out",
    es: "dos ejes de control que se cruzan dan el origen del replanteo",
    pt: "dois eixos de controle que se cruzam dão a origem da locação",
  },
  {
    en: "greatest work of a room over the mean of the rooms ≤ 1.15",
    es: "mayor trabajo de un recinto entre la media de los recintos ≤ 1,15",
    pt: "maior trabalho de um cômodo sobre a média dos cômodos ≤ 1,15",
  },
  {
    en: "{piece} min a piece, {tie} min a tie",
    es: "{piece} min por pieza, {tie} min por corbata",
    pt: "{piece} min por peça, {tie} min por gravata",
  },
  {
    en: "of each kind of piece the set has as many as the day that needs most, those that stay counted on",
    es: "de cada clase de pieza el conjunto tiene las que pide el día que más necesita, contando las que quedan puestas",
    pt: "de cada tipo de peça o conjunto tem as que pede o dia que mais precisa, contando as que ficam montadas",
  },
  {
    en: "days from a pour until its props are needed again ≥ days that props stay by the table",
    es: "días desde un vaciado hasta que sus puntales se necesitan de nuevo ≥ días que quedan los puntales según la tabla",
    pt: "dias desde uma concretagem até que as suas escoras sejam precisas de novo ≥ dias que ficam as escoras segundo a tabela",
  },
  {
    en: "the kit has the mirror image of each handed piece of a mirrored pour",
    es: "el kit tiene la imagen en espejo de cada pieza con mano de un vaciado en espejo",
    pt: "o kit tem a imagem espelhada de cada peça com mão de uma concretagem espelhada",
  },
  {
    en: "each prop stands over one of the storey below, at most {beside} mm beside it",
    es: "cada puntal está sobre uno del piso de abajo, a {beside} mm de él a lo más",
    pt: "cada escora fica sobre uma do piso de baixo, a no máximo {beside} mm dela",
  },
  {
    en: "eccentricity of a prop's load, 25 mm: BS 5975:1996 in CROSS-UK report 32",
    es: "excentricidad de la carga de un puntal, 25 mm: BS 5975:1996 en CROSS-UK report 32",
    pt: "excentricidade da carga de uma escora, 25 mm: BS 5975:1996 em CROSS-UK report 32",
  },
  { en: "head w·H", es: "altura líquida w·H", pt: "altura líquida w·H" },
  {
    en: "{own}, at least {least}, at most {most}",
    es: "{own}, al menos {least}, a lo más {most}",
    pt: "{own}, ao menos {least}, no máximo {most}",
  },
  {
    en: "{own}, at least {least} and at most {most}",
    es: "{own}, al menos {least} y a lo más {most}",
    pt: "{own}, ao menos {least} e no máximo {most}",
  },
  { en: "{own}, at most {most}", es: "{own}, a lo más {most}", pt: "{own}, no máximo {most}" },
  {
    en: "no place of a face or a soffit is without a piece",
    es: "ningún lugar de una cara o de un fondo de losa queda sin pieza",
    pt: "nenhum lugar de uma face ou de um fundo de laje fica sem peça",
  },
  {
    en: "each tie stands in a joint of both of its faces, 2.5 mm at most beside it",
    es: "cada corbata está en una junta de sus dos caras, a 2,5 mm de ella a lo más",
    pt: "cada gravata fica em uma junta das suas duas faces, a no máximo 2,5 mm dela",
  },
  {
    en: "the lowest tie of a line from the floor is at most {row} mm up",
    es: "la corbata más baja de una línea desde el piso está a lo más a {row} mm",
    pt: "a gravata mais baixa de uma linha desde o piso fica a no máximo {row} mm",
  },
  {
    en: "no tie in an opening or nearer to it than the kit's rule tieEdge",
    es: "ninguna corbata en un vano ni más cerca de él que la regla tieEdge del kit",
    pt: "nenhuma gravata em um vão nem mais perto dele do que a regra tieEdge do kit",
  },
  {
    en: "no two ties at one place",
    es: "no hay dos corbatas en un mismo lugar",
    pt: "não há duas gravatas em um mesmo lugar",
  },
  {
    en: "each opening between jambs has jambs, a head and, off the floor, a sill",
    es: "cada vano entre jambas tiene jambas, dintel y, si no llega al piso, antepecho",
    pt: "cada vão entre ombreiras tem ombreiras, verga e, se não chega ao piso, peitoril",
  },
  {
    en: "each closure says why it is there",
    es: "cada cierre dice por qué está",
    pt: "cada fechamento diz por que está ali",
  },
  {
    en: "no ring of panels is locked",
    es: "ningún anillo de paneles queda trabado",
    pt: "nenhum anel de painéis fica travado",
  },
  {
    en: "the bill counts what faces, reveals, corners, soffits, ties and fittings list",
    es: "la lista cuenta lo que hay en caras, tapas de vano, esquineros, fondos de losa, corbatas y accesorios",
    pt: "a lista conta o que há em faces, tampas de vão, cantos, fundos de laje, gravatas e acessórios",
  },
  { en: "common practice, no source", es: "práctica común, sin fuente", pt: "prática comum, sem fonte" },
  { en: "invented for the demo", es: "inventado para la demostración", pt: "inventado para a demonstração" },
  { en: "the project's own test", es: "ensayo propio del proyecto", pt: "ensaio próprio do projeto" },
  {
    en: "statics, factor {factor} common practice, no source",
    es: "estática, factor {factor} práctica común, sin fuente",
    pt: "estática, fator {factor} prática comum, sem fonte",
  },
  { en: "statics", es: "estática", pt: "estática" },
  {
    en: "what to do about it is common practice, no source",
    es: "qué hacer es práctica común, sin fuente",
    pt: "o que fazer é prática comum, sem fonte",
  },
  {
    en: "limit: the kit's rule {rule} (common practice, no source)",
    es: "límite: regla {rule} del kit (práctica común, sin fuente)",
    pt: "limite: regra {rule} do kit (prática comum, sem fonte)",
  },
  {
    en: "limit: the kit's rule {rule}",
    es: "límite: regla {rule} del kit",
    pt: "limite: regra {rule} do kit",
  },
  {
    en: "limits: the kit's rules panelPressure and tieLoad",
    es: "límites: reglas panelPressure y tieLoad del kit",
    pt: "limites: regras panelPressure e tieLoad do kit",
  },
];
