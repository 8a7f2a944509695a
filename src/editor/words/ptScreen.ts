// The words of the screen itself, in Portuguese.

import type { Translated } from "./en.ts";
import type { screenEnglish } from "./enScreen.ts";

export const screenPortuguese: Translated<typeof screenEnglish> = {
  "command.things": "Abrir ou fechar a lista de elementos",
  "command.all-widths": "Larguras de todas as peças",
  "command.new-unit": "Unidade nova, traçada do zero",
  "command.theme": "Claro ou escuro",
  "command.sheets": "Folhas",
  "command.checks": "Verificações",
  "step.concrete": "mudar o concreto",
  "step.loads": "mudar as cargas",
  "command.speak-en": "Idioma: inglês (English)",
  "command.speak-es": "Idioma: espanhol (Español)",
  "command.speak-pt": "Idioma: português",

  "place.wall": "Parede {wall}",
  "place.wall-thick": "Parede {wall}, espessura {thickness}",
  "place.jamb": "ombreira {width}",
  "place.door": "Porta {opening}",
  "place.window": "Janela {opening}",
  "place.room": "{room}",
  "place.service": "Instalação {id}",
  "place.control-line": "Eixo de controle {id}",
  "place.slab": "Laje {id}",
  "place.slab-opening": "Vão de laje {id}",
  "place.pinned": "Peças fixadas {id}",
  "place.kit": "Kit",
  "place.face": "{wall}, a {x} mm da esquerda",
  "place.things": { one: "{count} elemento selecionado", other: "{count} elementos selecionados" },
  "place.nothing": "Nada selecionado",

  "region.plan": "Planta",
  "region.tools": "Ferramentas",
  "region.options": "Opções da ferramenta",
  "region.widths": "Larguras em uso",
  "region.problems": "Problemas",
  "region.things": "Elementos da planta",
  "region.pane": "Elevação",

  "score.closures": "Fechamentos",
  "score.fillers": "Complementos",
  "score.sizes": "Medidas",
  "score.panels": "Painéis",
  "score.mass": "Peso",
  "score.change": "{change} desde a última mudança",

  "widths.title": "Larguras em uso",
  "widths.of": "{used} de {all} do kit",
  "widths.gone": "não mais",
  "widths.closure": "fechamento",

  "problems.count": { one: "{count} problema", other: "{count} problemas" },
  "problems.none": "Nada a corrigir",
  "problems.nothing": "Nada a corrigir.",
  "problems.title": "Problemas",
  "problems.stops": "{count} a corrigir, {rest} a revisar",
  "problems.close": "Fechar",
  "problems.kit-broken": "O kit deste projeto não pode ser lido, por isso nada pode ser preenchido.",

  "things.rooms": "Cômodos",
  "things.walls": "Paredes",
  "things.openings": "Vãos",
  "things.others": "Outros",
  "things.wall": "{length} de comprimento, espessura {thickness}",
  "things.opening": "{width} de largura, na parede {wall}",

  "option.thickness": "Espessura",
  "option.justify": "A linha é",
  "option.justify-left": "borda esquerda",
  "option.justify-centre": "eixo",
  "option.justify-right": "borda direita",
  "option.width": "Largura",
  "option.depth": "Profundidade",
  "option.sill": "Peitoril",
  "option.head": "Verga",
  "option.clearance": "Afastamento",
  "option.ortho": "Reto",
  "option.snap": "Ímã",
  "option.grid": "Grade",

  "find.label": "Buscar um comando",
  "find.none": "Nenhum comando com esse nome.",

  "bar.tip": "{name} ({keys})",
  "bar.saved": "Salvo",
  "bar.saving": "Salvando",
  "bar.unsaved": "Não salvo",
  "bar.unit": "Unidade",

  "readout.at": "x {x} y {y}",
  "readout.scale": "1 px = {mm} mm",
  "readout.ortho": "Reto",
  "readout.free": "Qualquer ângulo",
  "readout.grid": "Grade {step}",
  "readout.no-snap": "Sem ímã",

  "pane.size": "Altura do quadro da elevação",

  "step.new-unit": "começar uma unidade",
  "step.language": "mudar o idioma",
  "unit.new": "Unidade nova",

  "message.fill-broken":
    "Esta planta não pôde ser preenchida: é uma falha do programa, não sua. O desenho é conservado; desfaça, ou continue a desenhar.",
  "message.no-words": "As palavras deste idioma não puderam ser carregadas. Carregue a página de novo.",
  "hint.take": "Digite um número, Tab para o próximo, Enter para confirmar",

  "name.room": "Nome do cômodo",
};
