import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    projects: [{ test: { name: "core", environment: "node", include: ["test/**/*.test.ts"] } }],
    coverage: { provider: "v8", include: ["src/**"] },
  },
});
