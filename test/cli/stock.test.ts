// The command `stock`: a list in, the project with that stock out, nothing half-written.

import { describe, expect, it } from "vitest";
import { coreTools } from "../../src/cli/coreTools.ts";
import { main } from "../../src/cli/main.ts";
import { memoryIo } from "../support/memoryIo.ts";
import { oneRoom } from "../support/oneRoom.ts";

const LIST = "code;quantity\nW600x2250;120\nPin;3950\nother;3\n";

async function run(line: string, list = LIST, project: object = oneRoom) {
  const io = memoryIo({ "a.json": JSON.stringify(project), "list.csv": list, "-": list });
  const code = await main(line.split(" "), io, coreTools);
  return { code, ...io.screen, files: io.files };
}

describe("stock", () => {
  it("writes the project anew with what is owned, and tells what it left out", async () => {
    const { code, err, files } = await run("stock a.json --from list.csv --out b.json --buy false");
    expect(code).toBe(0);
    const written = JSON.parse(files.get("b.json")!);
    expect(written.stock).toEqual({ W600x2250: 120, Pin: 3950 });
    expect(written.buy).toBe(false);
    expect(written.units).toHaveLength(1);
    expect(err).toBe(
      'Warning: list.csv, line 4: the kit has no piece "other"; the line is left out.\n2 codes taken, 4070 pieces owned.\n',
    );
  });

  it("takes the place of the stock there was, and keeps whether more may be bought", async () => {
    const before = { ...oneRoom, stock: { Wedge: 9 }, buy: false };
    const { out } = await run("stock a.json --from - --out -", LIST, before);
    expect(JSON.parse(out)).toMatchObject({ stock: { W600x2250: 120, Pin: 3950 }, buy: false });
    expect(JSON.parse(out).stock.Wedge).toBeUndefined();
    const bought = JSON.parse((await run("stock a.json --from - --out - --buy true", LIST, before)).out);
    expect(bought.buy ?? true).toBe(true);
  });

  it.each([
    {
      why: "a faulty list",
      line: "stock a.json --from list.csv --out b.json",
      list: "code;quantity\nPin;-1\n",
      says: /^list\.csv is not a list of what is owned:\n {2}line 2: "-1" of "Pin" is less than none\.\n$/,
    },
    {
      why: "an empty list",
      line: "stock a.json --from list.csv --out b.json",
      list: "",
      says: /line 1: there is nothing in it\.\n$/,
    },
    { why: "no list", line: "stock a.json --out b.json", says: /stock needs --from FILE/ },
    { why: "no place for it", line: "stock a.json --from list.csv", says: /stock needs --out FILE/ },
    {
      why: "a list that is not there",
      line: "stock a.json --from none.csv --out b.json",
      says: /Cannot read none\.csv/,
    },
    {
      why: "over the project",
      line: "stock a.json --from list.csv --out a.json",
      says: /it is the project being read/,
    },
    {
      why: "over the list",
      line: "stock a.json --from list.csv --out list.csv",
      says: /it is the list being read/,
    },
    {
      why: "both from one place",
      line: "stock - --from - --out b.json",
      says: /cannot both come from standard input/,
    },
    {
      why: "neither yes nor no",
      line: "stock a.json --from list.csv --out b.json --buy maybe",
      says: /takes true, false, not "maybe"/,
    },
  ])("cannot: $why", async ({ line, list, says }) => {
    const { code, err, out, files } = await run(line, list);
    expect({ code, out, written: files.has("b.json") }).toEqual({ code: 2, out: "", written: false });
    expect(err).toMatch(says);
  });
});
