import type { Browser } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { openChromium } from "./chromium.ts";
import { forget, type RunningServer, startServer } from "./hallful-server.ts";

/** One browser and one server on an empty data file for all stories of a file; both are there once a story begins. */
export function storyServer(): { readonly browser: Browser; readonly server: RunningServer } {
  let open: { readonly browser: Browser; readonly server: RunningServer } | undefined;
  beforeAll(async () => {
    const [browser, server] = await Promise.all([openChromium(), startServer()]);
    open = { browser, server };
  });
  afterAll(async () => {
    await open?.browser.close();
    await open?.server.stop();
    if (open !== undefined) forget(open.server.data);
  });
  const now = () => {
    if (open === undefined) throw new Error("a story asks for its browser before it begins");
    return open;
  };
  return {
    get browser() {
      return now().browser;
    },
    get server() {
      return now().server;
    },
  };
}
