// Reads tables for spreadsheets, for tests of what writes them.

/** Reads RFC 4180 letter by letter: slow and plain, and no relation of the writer. */
export function readCsv(text: string): string[][] {
  const rows: string[][] = [[""]];
  let isQuoted = false;
  for (let i = 0; i < text.length; i++) {
    const row = rows[rows.length - 1]!;
    const sign = text[i]!;
    if (isQuoted && sign === '"' && text[i + 1] === '"') {
      row.push(`${row.pop()}"`);
      i++;
    } else if (sign === '"') isQuoted = !isQuoted;
    else if (!isQuoted && sign === ",") row.push("");
    else if (!isQuoted && sign === "\r" && text[i + 1] === "\n") {
      i++;
      rows.push([""]);
    } else row.push(row.pop()! + sign);
  }
  if (isQuoted) throw new Error("a quote is not closed");
  return rows.slice(0, -1); // every row ends in CR LF, so the last one is empty
}
