import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { VitePWA } from "vite-plugin-pwa";

const server = process.env["HALLFUL_SERVER"] ?? "http://127.0.0.1:4610";

// changeOrigin stays off: the server takes changes only from pages under its own name
const proxy = { "/api": { target: server, changeOrigin: false } };

/** The teacher's screens: sources in apps/web, built to dist/web, which the server hands out. */
export default defineConfig({
  root: fileURLToPath(new URL("apps/web", import.meta.url)),
  // assets stay files, because the page's security policy takes nothing from data: addresses
  build: {
    outDir: fileURLToPath(new URL("dist/web", import.meta.url)),
    emptyOutDir: true,
    assetsInlineLimit: 0,
    target: "es2022",
  },
  worker: { format: "es" },
  server: { host: "127.0.0.1", proxy },
  preview: { host: "127.0.0.1", proxy },
  plugins: [
    react(),
    VitePWA({
      // main.tsx registers it: no script inside the page
      injectRegister: false,
      filename: "offline.js",
      manifestFilename: "hallful.webmanifest",
      manifest: {
        name: "Hallful",
        short_name: "Hallful",
        description: "From the floor to the mats, the mats to the price, the price to the year.",
        lang: "en",
        display: "standalone",
        start_url: "/",
        background_color: "#f7f1e3",
        theme_color: "#f7f1e3",
        icons: [{ src: "/icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" }],
      },
      workbox: {
        globPatterns: ["**/*.{html,js,css,woff2,svg,webmanifest,wasm}"],
        // the solver has 3.5 MB: it is asked for in halls, where there may be no signal
        maximumFileSizeToCacheInBytes: 5_000_000,
        navigateFallback: "/index.html",
        navigateFallbackDenylist: [/^\/(api|calendar)\//],
        skipWaiting: true,
        clientsClaim: true,
        cleanupOutdatedCaches: true,
      },
    }),
  ],
});
