// Does the packed program do what the checkout does? Packs it, installs the package into an empty folder, fills a
// sample and prints its sheets with both, and compares exit codes, standard output and every file byte for byte.
//
//   node scripts/packedTrial.mjs [PROJECT]

import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";

const checkout = dirname(dirname(fileURLToPath(import.meta.url)));
const project = resolve(process.argv[2] ?? firstSample());
const folder = mkdtempSync(join(tmpdir(), "panelwright-trial-"));
try {
  const app = install(pack());
  const packed = outputs(app, "npx", ["--no-install", "panelwright"], "packed");
  const source = outputs(checkout, "npm", ["run", "--silent", "cli", "--"], "checkout");
  assert.deepEqual(packed.names, source.names, "the packed program writes other files than the checkout");
  assert.deepEqual(
    packed.codes,
    source.codes,
    "the packed program ends with another exit code than the checkout",
  );
  for (const [name, bytes] of packed.files) {
    assert.ok(
      bytes.equals(source.files.get(name)),
      `${name} differs between the packed program and the checkout`,
    );
  }
  process.stdout.write(
    `Packed trial: ${packed.names.length} outputs equal, exit codes ${packed.codes.join(", ")}.\n`,
  );
} finally {
  rmSync(folder, { recursive: true });
}

function firstSample() {
  const samples = join(checkout, "samples");
  const name = readdirSync(samples)
    .filter((entry) => entry.endsWith(".json"))
    .sort()[0];
  assert.ok(name, "there is no sample to try");
  return join(samples, name);
}

/** The path of the package. Building is the business of its `prepack`. */
function pack() {
  const where = join(folder, "package");
  mkdirSync(where);
  run(checkout, "npm", ["pack", "--pack-destination", where]);
  const [name, ...others] = readdirSync(where);
  assert.ok(name && others.length === 0, "packing gives one file");
  return join(where, name);
}

function install(archive) {
  const app = join(folder, "app");
  mkdirSync(app);
  writeFileSync(join(app, "package.json"), '{ "private": true }\n');
  run(app, "npm", ["install", "--prefer-offline", "--no-audit", "--no-fund", archive]);
  const installed = readdirSync(join(app, "node_modules", "panelwright")).sort();
  for (const name of ["src", "test", "node_modules"])
    assert.ok(!installed.includes(name), `${name} is packed`);
  return app;
}

/** What both commands write, by name, and how they end. */
function outputs(where, command, words, name) {
  const files = new Map();
  const codes = ["fill", "sheets"].map((task) => {
    const out = join(folder, `${name}-${task}`);
    const ran = spawnSync(command, [...words, task, project, "--out", out], { cwd: where, maxBuffer: 1e9 });
    assert.ok(ran.status === 0 || ran.status === 1, `${command} ended with ${ran.status}: ${ran.stderr}`);
    for (const file of readdirSync(out).sort()) files.set(`${task}: ${file}`, readFileSync(join(out, file)));
    files.set(`${task}: standard output`, ran.stdout);
    return ran.status;
  });
  return { codes, names: [...files.keys()], files };
}

function run(where, command, words) {
  const ran = spawnSync(command, words, { cwd: where, encoding: "utf8" });
  assert.equal(ran.status, 0, `${command} ${words[0]} failed:\n${ran.stdout}${ran.stderr}${ran.error ?? ""}`);
}
