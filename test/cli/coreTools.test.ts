import { expect, it } from "vitest";
import { coreTools } from "../../src/cli/coreTools.ts";
import { main } from "../../src/cli/main.ts";
import { memoryIo } from "../support/memoryIo.ts";
import { oneRoom } from "../support/oneRoom.ts";

async function fill(project: object) {
  const io = memoryIo({ "a.json": JSON.stringify(project) });
  const code = await main(["fill", "a.json", "--out", "o"], io, coreTools);
  return { code, ...io.screen, names: [...io.files.keys()] };
}

it("names the sheets of a unit's second storey apart from those of its first", async () => {
  const low = { id: "p1", name: "Ground", unit: "A" };
  const high = { id: "p2", name: "Roof", unit: "A", storey: { clearHeight: 2700, slab: 100 } };
  const { code, names } = await fill({ ...oneRoom, pours: [low, high] });
  expect(code).toBe(0);
  const storeys = names.filter((name) => name.endsWith("-storey-2.svg"));
  const firsts = names.filter((name) => /^o\/a-.*\.svg$/.test(name) && !storeys.includes(name));
  expect(firsts.length).toBeGreaterThan(0);
  expect(storeys.length).toBeGreaterThan(0);
});

it("warns of a member it does not know, and fills all the same", async () => {
  const { code, err } = await fill({ ...oneRoom, colour: "red" });
  expect(code).toBe(0);
  expect(err).toMatch(/^Warning: colour: /);
});

it.each([
  { why: "no such kit", project: { ...oneRoom, kit: "no-such-kit" }, fault: /^ {2}kit: expected .*"demo"/m },
  {
    why: "a wall without thickness",
    project: {
      ...oneRoom,
      units: [{ id: "A", walls: [{ id: "w1", from: [0, 0], to: [1, 0], thickness: "x" }] }],
    },
    fault: /^ {2}units\[0\]\.walls\[0\]\.thickness: expected .*, found "x"\.$/m,
  },
])("names the place inside the file: $why", async ({ project, fault }) => {
  const ran = await fill(project);
  expect(ran).toMatchObject({ code: 2, out: "", names: [], err: expect.stringMatching(fault) });
});
