// The house rules that a reader relies on: which folder may import which, no cycles, no long files, no barrels.

import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, normalize, relative } from "node:path";
import { describe, expect, it } from "vitest";

const ROOT = join(import.meta.dirname, "..");

/** A folder imports only what its row lists; type imports count too. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  units: [],
  json: ["units"],
  geom: ["units"],
  kit: ["units", "json"],
  plan: ["units", "json", "geom"],
  solver: [],
  fill: ["units", "geom", "plan", "kit", "solver"],
  check: ["units"],
  assess: ["units", "json", "geom", "plan", "kit", "fill", "check"],
  exchange: ["units", "json", "geom", "plan", "kit", "fill"],
  sheet: ["units", "geom", "plan", "kit", "fill", "check", "assess"],
  editor: ["units", "json", "geom", "plan", "kit", "solver", "fill", "check", "assess", "exchange", "sheet"],
  cli: ["units", "json", "geom", "plan", "kit", "solver", "fill", "check", "assess", "exchange", "sheet"],
  main: ["editor"],
};

/** Packages that belong to one folder. Others may be imported by no core folder at all. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  geom: ["clipper2-wasm"],
  solver: ["highs"],
  exchange: ["fflate"],
  sheet: ["uqr", "fflate"],
  editor: [
    "react",
    "react-dom",
    "konva",
    "react-konva",
    "immer",
    "rbush",
    "idb",
    "clipper2-wasm",
    "pdfjs-dist",
    "@expo-google-fonts/ibm-plex-sans-condensed",
    "virtual:pwa-register",
  ],
  main: ["react", "react-dom"],
};

function filesBelow(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /\.(ts|tsx|mjs)$/.test(entry.name) && !entry.name.endsWith(".d.ts"))
    .map((entry) => relative(ROOT, join(entry.parentPath, entry.name)))
    .sort();
}

const source = filesBelow("src");
const importsOf = new Map(source.map((file) => [file, readImports(file)]));

function readImports(file: string): string[] {
  const text = readFileSync(join(ROOT, file), "utf8");
  const found = text.matchAll(
    /^\s*(?:import|export)\s(?:[^;"]*?\sfrom\s+)?"([^"]+)"|\bimport\(\s*"([^"]+)"\s*\)/gm,
  );
  return [...found].map((match) => match[1] ?? match[2] ?? "");
}

function layerOf(file: string): string {
  const [, first = ""] = file.split("/");
  return first.replace(/\.tsx?$/, "");
}

function target(file: string, specifier: string): string {
  return normalize(join(dirname(file), specifier.replace(/\?.*$/, "")));
}

describe("the layers", () => {
  it("are read from real files", () => {
    expect(source.length).toBeGreaterThan(60);
    expect([...importsOf.values()].flat().length).toBeGreaterThan(200);
  });

  it.each(source)("%s imports only the layers below it", (file) => {
    const layer = layerOf(file);
    const allowed = MAY_IMPORT[layer];
    expect(allowed, `${layer} has a row`).toBeDefined();
    const wrong = (importsOf.get(file) ?? []).filter((specifier) => {
      if (specifier.endsWith("/package.json")) return layer !== "cli"; // the version it prints
      if (target(file, specifier).startsWith("samples/")) return layer !== "editor"; // what it opens with
      if (specifier.startsWith(".")) {
        const other = layerOf(target(file, specifier));
        return other !== layer && !allowed?.includes(other);
      }
      if (specifier.startsWith("node:")) return layer !== "cli";
      const name = specifier
        .split("/")
        .slice(0, specifier.startsWith("@") ? 2 : 1)
        .join("/");
      return layer !== "cli" && !PACKAGES[layer]?.includes(name);
    });
    expect(wrong).toEqual([]);
  });

  it("have no import cycles, type imports included", () => {
    const state = new Map<string, "open" | "done">();
    const cycles: string[] = [];
    const visit = (file: string, path: readonly string[]): void => {
      if (state.get(file) === "done") return;
      if (state.get(file) === "open") {
        cycles.push([...path.slice(path.indexOf(file)), file].join(" → "));
        return;
      }
      state.set(file, "open");
      for (const specifier of importsOf.get(file) ?? []) {
        if (/^\..*\.tsx?$/.test(specifier)) visit(target(file, specifier), [...path, file]);
      }
      state.set(file, "done");
    };
    for (const file of source) visit(file, []);
    expect(cycles).toEqual([]);
  });
});

describe("the files", () => {
  const all = [...source, ...filesBelow("test"), ...filesBelow("scripts")];

  it.each(all)("%s has at most 400 lines", (file) => {
    expect(readFileSync(join(ROOT, file), "utf8").split("\n").length).toBeLessThanOrEqual(401);
  });

  it.each(source)("%s is named for what it holds and says so at its top", (file) => {
    expect(file).not.toMatch(/(^|\/)(utils?|helpers?|common|types|index|misc)\.tsx?$/);
    expect(readFileSync(join(ROOT, file), "utf8")).toMatch(/^(#!.*\n)?\/\/ /);
  });

  it.each(source)("%s keeps the core's arithmetic the same on every machine", (file) => {
    if (["editor", "main"].includes(layerOf(file))) return;
    const text = readFileSync(join(ROOT, file), "utf8").replace(/\/\/.*|\/\*[\s\S]*?\*\//g, "");
    // Powers and transcendental functions may differ in the last digit from one engine to another.
    expect(text).not.toMatch(/Math\.(sin|cos|tan|asin|acos|atan2?|pow|exp|log\w*|hypot|cbrt|random)\b/);
    if (layerOf(file) !== "cli") expect(text).not.toMatch(/\bDate\b|toLocale\w+|\bIntl\b|localeCompare/);
  });

  it("skip or focus no test", () => {
    const marked = filesBelow("test").filter((file) =>
      /\b(it|test|describe)\.(skip|only|todo)\b/.test(readFileSync(join(ROOT, file), "utf8")),
    );
    expect(marked.filter((file) => !file.endsWith("architecture.test.ts"))).toEqual([]);
  });
});
