// Finds a Chromium for the browser tests, and installs Debian's where there is none.
//
//   node scripts/browser.mjs        prints its path, or says in a sentence what is missing

import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const PLACES = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/snap/bin/chromium",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/** No network of its own, no card, and root may start it. */
export const chromiumArguments = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** @returns {string | null} */
export function findChromium() {
  const named = process.env.CHROMIUM_PATH;
  if (named !== undefined && existsSync(named)) return named;
  return PLACES.find((place) => existsSync(place)) ?? null;
}

function installChromium() {
  // Without a password at hand it is better to say what is missing than to wait for one.
  const sudo = process.getuid?.() === 0 ? [] : ["sudo", "-n"];
  for (const step of [
    ["apt-get", "update", "-qq"],
    ["apt-get", "install", "-y", "-qq", "chromium"],
  ]) {
    const [command, ...rest] = [...sudo, ...step];
    const run = spawnSync(command, rest, {
      stdio: ["ignore", "ignore", "inherit"],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    });
    if (run.status !== 0) return;
  }
}

if (import.meta.filename === process.argv[1]) {
  if (findChromium() === null) installChromium();
  const found = findChromium();
  if (found === null) {
    console.error(
      "The browser tests need Chromium and it could not be installed: install it (on Debian: apt-get install chromium), " +
        "or give its path in CHROMIUM_PATH.",
    );
    process.exitCode = 1;
  } else {
    console.log(found);
  }
}
