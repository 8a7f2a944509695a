// Days and times for the screen, as the language of the project writes them.

import type { Language } from "../../plan/project.ts";

/** A moment with day and minute in the person's own time zone. @param at - milliseconds since 1970 */
export function formatWhen(at: number, language: Language): string {
  return new Intl.DateTimeFormat(language, { dateStyle: "medium", timeStyle: "short" }).format(at);
}
