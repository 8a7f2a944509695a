// Names from a file end up on somebody's terminal, where control characters would be obeyed.

// Every control character but the line feed, and the marks that turn the direction of writing.
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const OBEYED = /[\u0000-\u0009\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069]/g;

/** The text with each such character shown as its code, such as \u001b. */
export function plainText(text: string): string {
  return text.replace(OBEYED, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`);
}
