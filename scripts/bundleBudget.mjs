// The budget of the page: what a browser must load before the first view, gzipped.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

const LIMIT_KB = 300;
const page = readFileSync("dist/index.html", "utf8");
const scripts = [...page.matchAll(/(?:src|href)="\.?\/?([^"]+\.js)"/g)].map((match) => match[1]);
if (scripts.length === 0) throw new Error("dist/index.html names no script: build the page first");

let total = 0;
for (const script of new Set(scripts)) {
  const kilobytes = gzipSync(readFileSync(join("dist", script))).length / 1000;
  total += kilobytes;
  console.log(`${kilobytes.toFixed(1).padStart(7)} kB  ${script}`);
}
console.log(
  `${total.toFixed(1).padStart(7)} kB of ${LIMIT_KB} kB: JavaScript before the first view, gzipped`,
);
if (total > LIMIT_KB) process.exitCode = 1;
