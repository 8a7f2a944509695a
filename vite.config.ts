import react from "@vitejs/plugin-react";
import { defineConfig, type Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";

// What the built page may load and ask for: itself. The browser holds it to that, whatever a file that is opened says.
// The loader of the polygon library makes its calls by `new Function`; styles are set on elements by the drawing.
const POLICY = [
  "default-src 'self'",
  "script-src 'self' 'unsafe-eval' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self' data: blob:",
  "worker-src 'self' blob:",
  "frame-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

const policy: Plugin = {
  name: "content-security-policy",
  apply: "build",
  transformIndexHtml: () => [
    {
      tag: "meta",
      attrs: { "http-equiv": "Content-Security-Policy", content: POLICY },
      injectTo: "head-prepend",
    },
  ],
};

// The page. Everything it needs is built into dist/ and kept by its service worker: no request leaves the machine.
export default defineConfig({
  base: "./",
  plugins: [
    react(),
    policy,
    VitePWA({
      registerType: "prompt",
      manifest: {
        name: "Panelwright",
        short_name: "Panelwright",
        description: "Plans hand-set modular formwork for concrete housing.",
        start_url: ".",
        display: "standalone",
        background_color: "#fbfbf9",
        theme_color: "#f4f4f1",
        icons: [{ src: "icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" }],
      },
      workbox: {
        globPatterns: ["**/*.{js,mjs,css,html,svg,wasm,woff2,ttf}"],
        maximumFileSizeToCacheInBytes: 8_000_000,
      },
    }),
  ],
  worker: { format: "es" },
  // Its loader finds the wasm beside itself; pre-bundling would part the two.
  optimizeDeps: { exclude: ["clipper2-wasm"] },
  build: { target: "es2022", outDir: "dist", chunkSizeWarningLimit: 900 },
  server: { host: "127.0.0.1", port: 5173 },
  preview: { host: "127.0.0.1", port: 4173, strictPort: true },
});
