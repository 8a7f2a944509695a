// Builds the page, serves it to this machine alone, and opens it where there is a browser to open it.
//
//   node scripts/start.mjs          PORT=… takes another port, BROWSER=none opens nothing

import { spawn } from "node:child_process";
import { createServer } from "node:net";
import { build, preview } from "vite";

/** Always the same: what the browser keeps, it keeps for one address with one port. */
const PORT = 7407;
const OPENERS = { darwin: ["open"], win32: ["cmd", "/c", "start", ""] };

const port = Number(process.env.PORT ?? PORT);
if (!Number.isInteger(port) || port < 1 || port > 65535) {
  console.error(`PORT is ${process.env.PORT}, which is no port: give a number from 1 to 65535.`);
  process.exit(2);
}
const address = `http://127.0.0.1:${port}/`;

if (await isFree()) {
  await build({ logLevel: "error" });
  await preview({ logLevel: "error", preview: { host: "127.0.0.1", port, strictPort: true } });
  console.log(`Panelwright is at ${address}\nCtrl+C stops it; projects stay in the browser.`);
  openBrowser();
} else {
  console.error(
    `Port ${port} is taken, perhaps by Panelwright itself: look at ${address}\n` +
      `PORT=${port + 1} npm start takes another port, for which the browser keeps other projects.`,
  );
  process.exitCode = 1;
}

// Asked before the page is built: the one that is being served would be built over.
function isFree() {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once("error", () => resolve(false));
    probe.listen(port, "127.0.0.1", () => probe.close(() => resolve(true)));
  });
}

// A machine without a screen, or without anything to open pages with, is none the worse for it.
function openBrowser() {
  const hasScreen = process.platform !== "linux" || process.env.DISPLAY || process.env.WAYLAND_DISPLAY;
  if (!process.stdout.isTTY || !hasScreen || process.env.BROWSER === "none") return;
  const [command, ...rest] = OPENERS[process.platform] ?? ["xdg-open"];
  const opener = spawn(command, [...rest, address], { stdio: "ignore", detached: true });
  opener.on("error", () => {});
  opener.unref();
}
