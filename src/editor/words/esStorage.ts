// The words about where a project is kept, in Spanish.

import type { Translated } from "./en.ts";
import type { storageEnglish } from "./enStorage.ts";

export const storageSpanish: Translated<typeof storageEnglish> = {
  "command.projects": "Abrir o cerrar la lista de proyectos",

  "projects.title": "Proyectos",
  "projects.note": { one: "Uno guardado en este navegador", other: "{count} guardados en este navegador" },
  "projects.in-hand": "Abierto aquí",
  "projects.name": "Nombre de este proyecto",
  "projects.nameless": "Sin nombre",
  "projects.not-kept": "Se guarda desde el primer cambio",
  "projects.saved-at": "guardado {when}",
  "projects.new": "Proyecto nuevo",
  "projects.sample": "Abrir el ejemplo",
  "projects.open-file": "Abrir un archivo",
  "projects.save-file": "Guardar como archivo",
  "projects.duplicate": "Duplicar",
  "projects.missing": "{name} se eliminó en otra pestaña y ya no está.",
  "projects.not-opened": "{name} no se pudo abrir: el navegador no lo entrega. Intente de nuevo.",
  "projects.not-deleted": "{name} no se pudo eliminar: {reason}",
  "projects.open": "Abrir {name}",
  "projects.delete": "Eliminar",
  "projects.delete-sure": "Eliminar para siempre",
  "projects.delete-this": "Eliminar {name}",
  "projects.delete-this-sure": "Eliminar para siempre: {name}",
  "projects.kept": "El navegador aceptó conservar estos proyectos.",
  "projects.may-be-cleared":
    "El navegador puede borrar estos proyectos cuando le falte espacio. Guarde también como archivo lo que importa.",

  "step.rename-project": "renombrar el proyecto",
  "project.new": "Proyecto nuevo",
  "project.copy": "{name}, copia",

  "file.saved": "Guardado como {name}.",
  "file.not-saved": "{name} no se pudo guardar: {reason}",
  "file.not-read": "El archivo no se pudo leer: {reason}",
  "file.not-a-project": {
    one: "{name} no se puede abrir. {fault}",
    other: "{name} no se puede abrir. {fault} Tiene {count} faltas en total.",
  },

  "notice.region": "Sobre la conservación de este proyecto",
  "notice.full":
    "El navegador no tiene más espacio para esta página: los últimos cambios no se guardaron. Guarde el proyecto como archivo, o elimine proyectos que ya no necesite.",
  "notice.unavailable":
    "Este navegador no guarda nada para esta página; así hace una ventana privada. Guarde el proyecto como archivo antes de cerrarla.",
  "notice.newer":
    "Una versión más reciente de Panelwright está abierta en otra pestaña, por eso esta ya no puede guardar nada. Guarde el proyecto como archivo y cargue la página de nuevo.",
  "notice.failed": "Los últimos cambios no se pudieron guardar: {reason}",
  "notice.conflict":
    "Este proyecto se cambió en otra pestaña. Sus últimos cambios no están guardados: consérvelos como proyecto aparte, o descártelos.",
  "notice.gone":
    "Este proyecto se eliminó en otra pestaña. Lo que está en pantalla se puede conservar como uno nuevo.",
  "notice.reading":
    "Este proyecto está abierto en otra pestaña y allí se cambia. Aquí se puede mirar, o tomar el control.",
  "notice.damaged": "El proyecto {name} no se puede leer y se deja como está. {fault}",
  "notice.unsaved":
    "Los últimos cambios de este proyecto no están guardados. Guárdelo antes como archivo, o descártelos.",
  "notice.version":
    "Hay una versión más reciente de Panelwright. Cargarla conserva el proyecto, no los pasos por deshacer.",
  "notice.others": {
    one: "Abierto también en otra pestaña",
    other: "Abierto también en otras {count} pestañas",
  },

  "notice.save-file": "Guardar como archivo",
  "notice.save-what-is-there": "Guardar lo que hay como archivo",
  "notice.projects": "Proyectos",
  "notice.try-again": "Intentar de nuevo",
  "notice.load-anew": "Cargar la página de nuevo",
  "notice.keep-as-new": "Conservar como proyecto aparte",
  "notice.give-up": "Descartarlos",
  "notice.take-over": "Tomar el control",
  "notice.close": "Cerrar",

  "desk.reading": "Este proyecto se cambia en otra pestaña. Tome el control para cambiarlo aquí.",
};
