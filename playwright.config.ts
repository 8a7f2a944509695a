import { defineConfig } from "@playwright/test";
import { chromiumArguments, findChromium } from "./scripts/browser.mjs";

export default defineConfig({
  testDir: "test/e2e",
  outputDir: "node_modules/.cache/e2e",
  workers: 1,
  timeout: 60_000,
  reporter: [["list"]],
  use: {
    baseURL: "http://127.0.0.1:4173",
    viewport: { width: 1440, height: 900 },
    launchOptions: { executablePath: findChromium() ?? "", args: [...chromiumArguments] },
  },
  webServer: {
    command: "npx vite preview",
    url: "http://127.0.0.1:4173",
    reuseExistingServer: false,
  },
});
