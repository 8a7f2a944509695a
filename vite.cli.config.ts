import { defineConfig } from "vite";

// The command line as one file that Node runs as it is. Packages stay outside and are installed beside it.
export default defineConfig({
  build: {
    ssr: "src/cli/bin.ts",
    outDir: "dist-cli",
    target: "node20",
    rolldownOptions: { output: { entryFileNames: "panelwright.js" } },
  },
});
