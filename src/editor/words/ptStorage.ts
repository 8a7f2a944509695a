// The words about where a project is kept, in Portuguese.

import type { Translated } from "./en.ts";
import type { storageEnglish } from "./enStorage.ts";

export const storagePortuguese: Translated<typeof storageEnglish> = {
  "command.projects": "Abrir ou fechar a lista de projetos",

  "projects.title": "Projetos",
  "projects.note": {
    one: "{count} guardado neste navegador",
    other: "{count} guardados neste navegador",
  },
  "projects.in-hand": "Aberto aqui",
  "projects.name": "Nome deste projeto",
  "projects.nameless": "Sem nome",
  "projects.not-kept": "Guardado a partir da primeira mudança",
  "projects.saved-at": "salvo {when}",
  "projects.new": "Projeto novo",
  "projects.sample": "Abrir o exemplo",
  "projects.open-file": "Abrir um arquivo",
  "projects.save-file": "Salvar como arquivo",
  "projects.duplicate": "Duplicar",
  "projects.missing": "{name} foi excluído em outra aba e não está mais aqui.",
  "projects.not-opened": "{name} não pôde ser aberto: o navegador não o entrega. Tente de novo.",
  "projects.not-deleted": "{name} não pôde ser excluído: {reason}",
  "projects.open": "Abrir {name}",
  "projects.delete": "Excluir",
  "projects.delete-sure": "Excluir para sempre",
  "projects.delete-this": "Excluir {name}",
  "projects.delete-this-sure": "Excluir para sempre: {name}",
  "projects.kept": "O navegador aceitou conservar estes projetos.",
  "projects.may-be-cleared":
    "O navegador pode apagar estes projetos quando lhe faltar espaço. Salve também como arquivo o que importa.",

  "step.rename-project": "renomear o projeto",
  "project.new": "Projeto novo",
  "project.copy": "{name}, cópia",

  "file.saved": "Salvo como {name}.",
  "file.not-saved": "{name} não pôde ser salvo: {reason}",
  "file.not-read": "O arquivo não pôde ser lido: {reason}",
  "file.not-a-project": {
    one: "{name} não pode ser aberto. {fault}",
    other: "{name} não pode ser aberto. {fault} Ele tem {count} falhas ao todo.",
  },

  "notice.region": "Sobre a conservação deste projeto",
  "notice.full":
    "O navegador não tem mais espaço para esta página: as últimas mudanças não foram salvas. Salve o projeto como arquivo, ou exclua projetos de que não precisa mais.",
  "notice.unavailable":
    "Este navegador não guarda nada para esta página; uma janela privada faz isso. Salve o projeto como arquivo antes de fechá-la.",
  "notice.newer":
    "Uma versão mais recente do Panelwright está aberta em outra aba, por isso esta não pode mais guardar nada. Salve o projeto como arquivo e carregue a página de novo.",
  "notice.failed": "As últimas mudanças não puderam ser salvas: {reason}",
  "notice.conflict":
    "Este projeto foi mudado em outra aba. As suas últimas mudanças não estão salvas: conserve-as como projeto à parte, ou descarte-as.",
  "notice.gone":
    "Este projeto foi excluído em outra aba. O que está na tela pode ser conservado como um novo.",
  "notice.reading":
    "Este projeto está aberto em outra aba e é mudado lá. Aqui se pode olhar, ou assumir o controle.",
  "notice.damaged": "O projeto {name} não pode ser lido e fica como está. {fault}",
  "notice.unsaved":
    "As últimas mudanças deste projeto não estão salvas. Salve-o antes como arquivo, ou descarte-as.",
  "notice.version":
    "Há uma versão mais recente do Panelwright. Carregá-la conserva o projeto, não os passos a desfazer.",
  "notice.others": {
    one: "Aberto também em {count} outra aba",
    other: "Aberto também em {count} outras abas",
  },

  "notice.save-file": "Salvar como arquivo",
  "notice.save-what-is-there": "Salvar o que há como arquivo",
  "notice.projects": "Projetos",
  "notice.try-again": "Tentar de novo",
  "notice.load-anew": "Carregar a página de novo",
  "notice.keep-as-new": "Conservar como projeto à parte",
  "notice.give-up": "Descartá-las",
  "notice.take-over": "Assumir o controle",
  "notice.close": "Fechar",

  "desk.reading": "Este projeto é mudado em outra aba. Assuma o controle para mudá-lo aqui.",
};
