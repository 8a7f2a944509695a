// What a line of arithmetic comes to: figures, per cent, + − × /, powers, roots, brackets, bars, min, max, exp, and the clauses
// "at least" and "at most" behind it. Shares nothing with the program.

/** @throws {Error} if the text is no arithmetic */
export function workOut(text: string): number {
  const clause = / ?,? (?:and )?at (least|most) (.+)$/.exec(text);
  if (clause !== null) {
    const before = text.slice(0, clause.index);
    const nested = /^(.+?),? (?:and )?at (least|most) (.+)$/.exec(clause[2]!);
    if (nested !== null) {
      const inner = bounded(workOut(before), clause[1]!, plain(nested[1]!));
      return bounded(inner, nested[2]!, plain(nested[3]!));
    }
    return bounded(workOut(before), clause[1]!, plain(clause[2]!));
  }
  return plain(text);
}

function bounded(value: number, bound: string, by: number): number {
  return bound === "least" ? Math.max(value, by) : Math.min(value, by);
}

// A unit may stand behind.
function plain(text: string): number {
  const tokens = text
    .replace(/ (?:kPa|kN|MPa|psf|m|h|kg|d)$/, "")
    .replaceAll(/(\d) (?=\d{3}(?!\d))/g, "$1")
    .replaceAll(/(\d+(?:\.\d+)?) %/g, "($1/100)")
    .match(/\d+(?:\.\d+)?|[a-z]+|[-+−×·/()√²^|;]/g);
  if (tokens === null) throw new Error(`no arithmetic: ${text}`);
  let at = 0;
  const peek = () => tokens[at];
  const next = () => tokens[at++];
  const expect = (token: string) => {
    if (next() !== token) throw new Error(`${token} is missing in ${text}`);
  };
  const sum = (): number => {
    let value = product();
    while (peek() === "+" || peek() === "−") value += next() === "+" ? product() : -product();
    return value;
  };
  const product = (): number => {
    let value = power();
    while (peek() === "×" || peek() === "·" || peek() === "/")
      value = next() === "/" ? value / power() : value * power();
    return value;
  };
  const power = (): number => {
    let value = atom();
    while (peek() === "²" || peek() === "^") value = next() === "²" ? value ** 2 : value ** atom();
    return value;
  };
  const atom = (): number => {
    const token = next();
    if (token === undefined) throw new Error(`something is missing in ${text}`);
    if (token === "−") return -power();
    if (token === "√") return Math.sqrt(atom());
    if (token === "(" || token === "|") {
      const value = sum();
      expect(token === "(" ? ")" : "|");
      return token === "(" ? value : Math.abs(value);
    }
    if (token === "exp") return Math.exp(atom());
    if (token === "min" || token === "max") {
      expect("(");
      const values = [sum()];
      while (peek() === ";") {
        next();
        values.push(sum());
      }
      expect(")");
      return Math[token](...values);
    }
    const value = Number(token);
    if (!Number.isFinite(value)) throw new Error(`${token} is no figure in ${text}`);
    return value;
  };
  const value = sum();
  if (at < tokens.length) throw new Error(`${tokens.slice(at).join(" ")} is left of ${text}`);
  return value;
}
