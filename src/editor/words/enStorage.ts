// The words about where a project is kept, in English: projects, files, tabs, and what can go wrong with them.

export const storageEnglish = {
  "command.projects": "Open or close the list of projects",

  "projects.title": "Projects",
  "projects.note": { one: "One kept in this browser", other: "{count} kept in this browser" },
  "projects.in-hand": "Open here",
  "projects.name": "Name of this project",
  "projects.nameless": "Without a name",
  "projects.not-kept": "Kept from the first change on",
  "projects.saved-at": "saved {when}",
  "projects.new": "New project",
  "projects.sample": "Open the sample",
  "projects.open-file": "Open a file",
  "projects.save-file": "Save as a file",
  "projects.duplicate": "Duplicate",
  "projects.missing": "{name} was deleted in another tab, and is not there any more.",
  "projects.not-opened": "{name} could not be opened: the browser does not give it out. Try again.",
  "projects.not-deleted": "{name} could not be deleted: {reason}",
  "projects.open": "Open {name}",
  "projects.delete": "Delete",
  "projects.delete-sure": "Delete for good",
  "projects.delete-this": "Delete {name}",
  "projects.delete-this-sure": "Delete for good: {name}",
  "projects.kept": "The browser has agreed to keep these projects.",
  "projects.may-be-cleared":
    "The browser may clear these projects when it runs short of room. Save what matters as a file, too.",

  "step.rename-project": "rename the project",
  "project.new": "New project",
  "project.copy": "{name}, copy",

  "file.saved": "Saved as {name}.",
  "file.not-saved": "{name} could not be saved: {reason}",
  "file.not-read": "The file could not be read: {reason}",
  "file.not-a-project": {
    one: "{name} cannot be opened. {fault}",
    other: "{name} cannot be opened. {fault} It has {count} faults in all.",
  },

  "notice.region": "About keeping this project",
  "notice.full":
    "The browser has no room left for this page: the last changes are not kept. Save the project as a file, or delete projects you need no longer.",
  "notice.unavailable":
    "This browser keeps nothing for this page; a private window does that. Save the project as a file before you close it.",
  "notice.newer":
    "A later version of Panelwright is open in another tab, so this one can keep nothing any more. Save the project as a file, then load the page anew.",
  "notice.failed": "The last changes could not be kept: {reason}",
  "notice.conflict":
    "This project was changed in another tab. Your last changes are not kept: keep them as a project of their own, or give them up.",
  "notice.gone": "This project was deleted in another tab. What is on the screen can be kept as a new one.",
  "notice.reading":
    "This project is open in another tab, and is changed there. Here it can be looked at, or taken over.",
  "notice.damaged": "The project {name} cannot be read, and is left as it is. {fault}",
  "notice.unsaved":
    "The last changes of this project are not kept. Save it as a file first, or give them up.",
  "notice.version":
    "A later version of Panelwright is ready. Loading it keeps the project, not the steps to undo.",
  "notice.others": { one: "Open in another tab, too", other: "Open in {count} other tabs, too" },

  "notice.save-file": "Save as a file",
  "notice.save-what-is-there": "Save what is there as a file",
  "notice.projects": "Projects",
  "notice.try-again": "Try again",
  "notice.load-anew": "Load the page anew",
  "notice.keep-as-new": "Keep as a project of its own",
  "notice.give-up": "Give them up",
  "notice.take-over": "Take over",
  "notice.close": "Close",

  "desk.reading": "This project is changed in another tab. Take it over to change it here.",
} as const;
