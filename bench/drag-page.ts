import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import react from "@vitejs/plugin-react";
import { type Browser, chromium } from "playwright-core";
import { build, type InlineConfig, preview } from "vite";
import { chromiumPath, quietly } from "./chromium-here.ts";

export type DragPage = {
  readonly browser: Browser;
  readonly version: string;
  readonly address: string;
  readonly close: () => Promise<void>;
};

/** Builds the page as the product is built, serves it on a free loopback port and starts the browser. */
export async function openDragPage(): Promise<DragPage> {
  const outDir = mkdtempSync(join(tmpdir(), "hallful-drag-"));
  const settings: InlineConfig = {
    configFile: false,
    root: join(process.cwd(), "apps/web/floor/drag-page"),
    logLevel: "error",
    plugins: [react()],
    worker: { format: "es" },
    build: { outDir, emptyOutDir: true, target: "es2022" },
    preview: { host: "127.0.0.1", port: 0 },
  };
  await build(settings);
  const server = await preview(settings);
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: quietly });
  return {
    browser,
    version: browser.version(),
    address: server.resolvedUrls?.local[0] ?? "",
    close: async () => {
      await browser.close();
      await server.close();
      rmSync(outDir, { recursive: true, force: true });
    },
  };
}
