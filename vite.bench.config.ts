import { defineConfig } from "vite";

// The benchmarks as one plain file: a loader that compiles on the fly would be measured with them.
export default defineConfig({
  build: {
    ssr: "test/bench/bench.ts",
    outDir: "dist-bench",
    target: "node20",
    rolldownOptions: { output: { entryFileNames: "bench.js" } },
  },
});
