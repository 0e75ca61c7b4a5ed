import type { BrowserContextOptions, Page } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { freshPage, phone, wide } from "./chromium.ts";
import { faultsOf } from "./page-faults.ts";
import { storyServer } from "./story-server.ts";

const looks: readonly (readonly [string, BrowserContextOptions])[] = [
  ["a phone in the light", { ...phone, colorScheme: "light" }],
  ["a phone in the dark", { ...phone, colorScheme: "dark" }],
  ["a wide screen in the light", { ...wide, colorScheme: "light" }],
  ["a wide screen in the dark", { ...wide, colorScheme: "dark" }],
];

const story = storyServer();
const pages: string[] = [];

async function openDemo(which: string): Promise<void> {
  const { context, page } = await freshPage(story.browser, wide);
  await page.goto(story.server.address);
  await page.getByRole("button", { name: which }).click();
  await page.getByRole("heading", { name: "Classes", level: 1 }).waitFor();
  for (const place of ["Classes", "Halls"]) {
    await page.getByRole("navigation", { name: "Places" }).getByRole("link", { name: place }).click();
    await page.getByRole("heading", { name: place, level: 1 }).waitFor();
    pages.push(new URL(page.url()).pathname);
    const links = page.getByRole("main").getByRole("listitem").getByRole("link");
    await links.first().waitFor();
    pages.push((await links.first().getAttribute("href")) ?? "");
  }
  for (const place of ["compare", "people", "week"])
    pages.push(new URL(page.url()).pathname.replace(/halls$/, place));
  await context.close();
}

/** Opens every question that a hall's page asks of its plan, and waits until each is answered. */
async function openQuestions(page: Page): Promise<void> {
  const lines = page.locator(".question > summary");
  await lines.first().waitFor();
  for (const line of await lines.all()) await line.click();
  await page
    .getByText(/gains? .* the most of|gains a mat|gains nothing/)
    .first()
    .waitFor();
  await page
    .getByRole("button", { name: /^Try: / })
    .first()
    .click();
  await page.getByText("Only a trial.").first().waitFor();
  await page
    .getByRole("button", { name: "Along the walls or across them: lay them so" })
    .waitFor({ timeout: 60_000 });
}

/** Asks everything that a class's sheet can ask about its future, and waits until it is answered. */
async function askFuture(page: Page): Promise<void> {
  const ticks = [
    "Weigh a person sent home against an empty mat",
    "It has been: write down what happened",
    "Weigh a bigger hall",
    "Weigh a second class",
    "Ask whether to run it, have it covered or cancel",
  ];
  for (const name of ticks) await page.getByRole("checkbox", { name }).check();
  await page.getByRole("button", { name: "Add a day, if it is not any day" }).click();
  await page.getByText("The seasons of the year", { exact: true }).first().click();
  await page.getByText("Show each session ahead").click();
  await page
    .getByText(/^Run it yourself on /)
    .first()
    .waitFor();
}

async function settled(page: Page): Promise<void> {
  await page.waitForLoadState("networkidle");
  await page.locator('main [role="img"], main svg, main h1').first().waitFor();
  // the plan comes from a worker
  await page.waitForTimeout(600);
}

beforeAll(async () => {
  await openDemo("Open Marlsford, in pounds");
  await openDemo("Open Cedar Fork, in dollars");
  pages.push("/", "/no-such-page", pages[0]?.replace(/[^/]+\/classes$/, "nobody/classes") ?? "");
});

describe.each(looks)("on %s", (_name, options) => {
  test("every page passes axe, fits the screen and uses our words", async () => {
    const { context, page, errors } = await freshPage(story.browser, options);
    expect(pages.length).toBe(17);
    for (const path of pages) {
      await page.goto(story.server.address + path);
      await settled(page);
      expect(await faultsOf(page), path).toEqual([]);
      expect(await page.title(), path).toMatch(/Hallful/);
    }
    expect(errors.filter((it) => !it.includes("404"))).toEqual([]);
    await context.close();
  });

  test("a hall’s page passes too with every question of its plan open and a change on trial", async () => {
    const { context, page, errors } = await freshPage(story.browser, options);
    const halls = pages.filter((it) => /\/halls\/./.test(it));
    expect(halls.length).toBe(2);
    for (const path of halls) {
      await page.goto(story.server.address + path);
      await settled(page);
      await openQuestions(page);
      expect(await faultsOf(page), path).toEqual([]);
    }
    expect(errors).toEqual([]);
    await context.close();
  });

  test("a class’s sheet passes too with all that it can ask about its future", async () => {
    const { context, page, errors } = await freshPage(story.browser, options);
    const classes = pages.find((it) => it.endsWith("/classes")) ?? "";
    await page.goto(`${story.server.address}${classes}/tuesday-evening`);
    await settled(page);
    await askFuture(page);
    expect(await faultsOf(page)).toEqual([]);
    expect(errors).toEqual([]);
    await context.close();
  });
});
