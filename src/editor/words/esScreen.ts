// The words of the screen itself, in Spanish.

import type { Translated } from "./en.ts";
import type { screenEnglish } from "./enScreen.ts";

export const screenSpanish: Translated<typeof screenEnglish> = {
  "command.things": "Abrir o cerrar la lista de elementos",
  "command.all-widths": "Anchos de todas las piezas",
  "command.new-unit": "Unidad nueva, trazada desde cero",
  "command.theme": "Claro u oscuro",
  "command.sheets": "Hojas",
  "command.checks": "Verificaciones",
  "step.concrete": "cambiar el concreto",
  "step.loads": "cambiar las cargas",
  "command.speak-en": "Idioma: inglés (English)",
  "command.speak-es": "Idioma: español",
  "command.speak-pt": "Idioma: portugués (Português)",

  "place.wall": "Muro {wall}",
  "place.wall-thick": "Muro {wall}, espesor {thickness}",
  "place.jamb": "jamba {width}",
  "place.door": "Puerta {opening}",
  "place.window": "Ventana {opening}",
  "place.room": "{room}",
  "place.service": "Instalación {id}",
  "place.control-line": "Eje de control {id}",
  "place.slab": "Losa {id}",
  "place.slab-opening": "Vano de losa {id}",
  "place.pinned": "Piezas fijadas {id}",
  "place.kit": "Kit",
  "place.face": "{wall}, a {x} mm de la izquierda",
  "place.things": { one: "Un elemento seleccionado", other: "{count} elementos seleccionados" },
  "place.nothing": "Nada seleccionado",

  "region.plan": "Planta",
  "region.tools": "Herramientas",
  "region.options": "Opciones de la herramienta",
  "region.widths": "Anchos en uso",
  "region.problems": "Problemas",
  "region.things": "Elementos de la planta",
  "region.pane": "Elevación",

  "score.closures": "Cierres",
  "score.fillers": "Suplementos",
  "score.sizes": "Medidas",
  "score.panels": "Paneles",
  "score.mass": "Peso",
  "score.change": "{change} desde el último cambio",

  "widths.title": "Anchos en uso",
  "widths.of": "{used} de {all} del kit",
  "widths.gone": "ya no",
  "widths.closure": "cierre",

  "problems.count": { one: "{count} problema", other: "{count} problemas" },
  "problems.none": "Nada que corregir",
  "problems.nothing": "Nada que corregir.",
  "problems.title": "Problemas",
  "problems.stops": "{count} por corregir, {rest} por revisar",
  "problems.close": "Cerrar",
  "problems.kit-broken": "El kit de este proyecto no se puede leer, por eso no se puede llenar nada.",

  "things.rooms": "Recintos",
  "things.walls": "Muros",
  "things.openings": "Vanos",
  "things.others": "Otros",
  "things.wall": "{length} de largo, espesor {thickness}",
  "things.opening": "{width} de ancho, en el muro {wall}",

  "option.thickness": "Espesor",
  "option.justify": "La línea es",
  "option.justify-left": "borde izquierdo",
  "option.justify-centre": "eje",
  "option.justify-right": "borde derecho",
  "option.width": "Ancho",
  "option.depth": "Fondo",
  "option.sill": "Antepecho",
  "option.head": "Dintel",
  "option.clearance": "Resguardo",
  "option.ortho": "Recto",
  "option.snap": "Imán",
  "option.grid": "Cuadrícula",

  "find.label": "Buscar un comando",
  "find.none": "No hay un comando con ese nombre.",

  "bar.tip": "{name} ({keys})",
  "bar.saved": "Guardado",
  "bar.saving": "Guardando",
  "bar.unsaved": "Sin guardar",
  "bar.unit": "Unidad",

  "readout.at": "x {x} y {y}",
  "readout.scale": "1 px = {mm} mm",
  "readout.ortho": "Recto",
  "readout.free": "Cualquier ángulo",
  "readout.grid": "Cuadrícula {step}",
  "readout.no-snap": "Sin imán",

  "pane.size": "Altura del cuadro de elevación",

  "step.new-unit": "empezar una unidad",
  "step.language": "cambiar el idioma",
  "unit.new": "Unidad nueva",

  "message.fill-broken":
    "Esta planta no se pudo llenar: es una falla del programa, no suya. El dibujo se conserva; deshaga, o siga dibujando.",
  "message.no-words": "Las palabras de este idioma no se pudieron cargar. Cargue la página de nuevo.",
  "hint.take": "Escriba una cifra, Tab para la siguiente, Enter para confirmar",

  "name.room": "Nombre del recinto",
};
