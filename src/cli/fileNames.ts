// Turns the titles of sheets, which hold names somebody typed, into file names that every system takes and that
// stay inside their folder: letters, digits, "-" and "_" only.

const NOT_KEPT = /[^\p{L}\p{M}\p{N}_]+/gu;

/** Names that stand for a device on one widespread system, whatever their ending. */
const DEVICE = /^(?:con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])$/i;

/** Four bytes a letter at most, with room for a number and an ending within the usual 255 bytes. */
const MOST_LETTERS = 50;

/**
 * One file name for each title, in order: without a path separator or a dot, and no two alike even where capitals
 * do not count. A later one of two alike gets "-2", "-3" … A title without a letter or digit becomes "sheet".
 *
 * @param ending - with its dot, such as ".svg"
 */
export function fileNames(titles: readonly string[], ending: string): readonly string[] {
  const taken = new Set<string>();
  return titles.map((title) => {
    const plain = plainName(title);
    let name = plain;
    for (let number = 2; taken.has(caseless(name)); number++) name = `${plain}-${number}`;
    taken.add(caseless(name));
    return name + ending;
  });
}

function plainName(title: string): string {
  const kept = title.normalize("NFC").replace(NOT_KEPT, "-");
  const name = [...kept.replace(/^[-\p{M}]+/u, "")].slice(0, MOST_LETTERS).join("").replace(/-+$/, "");
  if (!/[\p{L}\p{N}]/u.test(name)) return "sheet";
  return DEVICE.test(name) ? `${name}_` : name;
}

// Upper case first: it makes one of letters that differ in lower case only, such as the two forms of s.
const caseless = (name: string) => name.toUpperCase().toLowerCase();
