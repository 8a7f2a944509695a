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
    en: "pieces, openings and open places make up each face exactly",
    es: "piezas, vanos y lugares abiertos completan cada cara con exactitud",
    pt: "peças, vãos e lugares abertos completam cada face com exatidão",
  },
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
