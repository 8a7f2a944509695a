// docs/checks.md lists every kind of check there is, and none that is gone.

import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { assessed } from "../support/assessed.ts";
import { samples } from "../support/samples.ts";

const page = readFileSync(new URL("../../docs/checks.md", import.meta.url), "utf8");
const table = page
  .split("\n")
  .filter((line) => line.startsWith("| `"))
  .flatMap((line) => [...line.split("|")[1]!.matchAll(/`([a-z-]+)`/g)].map(([, kind]) => kind!));

it("every kind of check has its line on the page", () => {
  const shoring = { shores: 2, reshores: 1, storeys: 6 };
  const kinds = samples().flatMap(({ project, fill }) =>
    assessed({ project: { ...project, loads: { shoring } }, fill }).checks.map(({ kind }) => kind),
  );
  expect([...new Set(table)].sort()).toEqual([...new Set(kinds)].sort());
  expect(new Set(table).size).toBe(table.length);
});
