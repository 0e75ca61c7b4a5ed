import { AxeBuilder } from "@axe-core/playwright";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { expect } from "vitest";
import { freshPage, wordsOn } from "./chromium.ts";
import type { RunningServer } from "./hallful-server.ts";

/** A fresh practice at its halls, or the halls of an invented one. */
export async function atHalls(
  browser: Browser,
  server: RunningServer,
  options: BrowserContextOptions,
  demo?: string,
) {
  const opened = await freshPage(browser, options);
  const { page } = opened;
  await page.goto(server.address);
  if (demo === undefined) {
    await page.getByRole("textbox", { name: "Name of the practice" }).fill("Wren Ashdown");
    await page.getByRole("button", { name: "Begin", exact: true }).click();
  } else await page.getByRole("button", { name: demo }).click();
  await page.getByRole("link", { name: "Halls" }).click();
  await page.getByRole("heading", { name: "Halls", level: 1 }).waitFor();
  return opened;
}

/** From here on the page must come from the device. */
export async function loseSignal(context: BrowserContext, page: Page): Promise<void> {
  await page.evaluate(async () => navigator.serviceWorker.ready);
  await page.reload();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await context.setOffline(true);
}

/** What a page without a signal cannot help: the browser tells of every request that found no network. */
export function ownErrors(errors: readonly string[]): readonly string[] {
  return errors.filter((it) => !it.includes("net::ERR_INTERNET_DISCONNECTED"));
}

type ServersHall = {
  readonly document: { readonly name: string; readonly outline: readonly [number, number][] };
};

/** The halls of the page's practice as the server has them. */
export async function hallsOnServer(page: Page, server: RunningServer): Promise<readonly ServersHall[]> {
  const practice = /practice\/([^/]+)/.exec(page.url())?.[1] ?? "";
  const answer = await fetch(`${server.address}/api/practices/${practice}`);
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own server, and what follows looks into it
  const whole = (await answer.json()) as { readonly halls: readonly ServersHall[] };
  return whole.halls;
}

/** By axe, in width, and in words. */
export async function expectSound(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"])
    .analyze();
  expect(violations.flatMap((it) => it.nodes.map((node) => `${it.id}: ${node.target.join(" ")}`))).toEqual(
    [],
  );
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThan(1);
  expect(await wordsOn(page)).not.toMatch(/NaN|undefined|Infinity/);
}
