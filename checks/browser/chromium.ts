import { type Browser, type BrowserContextOptions, type Page, chromium } from "playwright-core";

const quiet = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export const phone: BrowserContextOptions = {
  viewport: { width: 390, height: 844 },
  hasTouch: true,
  isMobile: true,
};
export const wide: BrowserContextOptions = { viewport: { width: 1280, height: 900 } };

export function openChromium(): Promise<Browser> {
  const executablePath = process.env["HALLFUL_CHROMIUM"] ?? "/usr/bin/chromium";
  return chromium.launch({ executablePath, args: quiet });
}

/** A fresh page whose own errors are collected: a story ends by expecting none. */
export async function freshPage(browser: Browser, options: BrowserContextOptions) {
  const context = await browser.newContext({ locale: "en-GB", timezoneId: "Europe/London", ...options });
  const page = await context.newPage();
  const errors: string[] = [];
  page.on("pageerror", (error) => errors.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") errors.push(message.text());
  });
  return { context, page, errors };
}

/** What a reader sees, as one string. */
export function wordsOn(page: Page): Promise<string> {
  return page.locator("body").innerText();
}
