import { readPdf, wordsOfPage } from "#testing";
import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { beforeAll, expect, test } from "vitest";
import { freshPage, phone, wide } from "./chromium.ts";
import { storyServer } from "./story-server.ts";

const story = storyServer();

beforeAll(async () => {
  for (const [id, start] of [
    ["oriel", "demo-marlsford"],
    ["ines", "demo-cedar-fork"],
  ])
    await fetch(`${story.server.address}/api/practices`, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ action: `open-${id}`, id, start }),
    });
});

async function opened(page: Page, path: string): Promise<void> {
  await page.goto(`${story.server.address}${path}`);
  await page.locator(".paper-page").first().waitFor();
}

/** What the printer gets: pages as they are sized in the style sheet. */
async function printed(page: Page) {
  await page.evaluate(() => document.fonts.ready);
  return readPdf(await page.pdf({ preferCSSPageSize: true }));
}

async function sizeOf(read: Awaited<ReturnType<typeof printed>>): Promise<readonly number[]> {
  const { width, height } = (await read.getPage(1)).getViewport({ scale: 1 });
  return [Math.round(width), Math.round(height)];
}

test("from a hall to its sheet, which prints on one A4 page and says what the screen says", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await page.goto(`${story.server.address}/practice/oriel/halls/tithe-barn-hall`);
  await page.getByRole("link", { name: "Hall sheet" }).click();
  await page.getByRole("heading", { name: "Hall sheet: Tithe Barn Hall" }).waitFor();
  const posted = "The hall’s posted number is 60 people: 59 on mats and 1 beside them.";
  await page.getByRole("paragraph").filter({ hasText: posted }).waitFor();
  await page.locator(".paper-page").waitFor();
  const read = await printed(page);
  expect([read.numPages, await sizeOf(read)]).toEqual([1, [595, 842]]);
  const words = await wordsOfPage(read, 1);
  expect(words).toContain("Tithe Barn Hall");
  expect(words).toContain(posted);
  expect(words).toContain("To fill in at the hall");
  // what is for the screen stays off the paper
  for (const screen of ["Save as PDF", "Back to the hall", "Paper in the printer", "Light or dark"])
    expect(words).not.toContain(screen);
  expect(errors).toEqual([]);
  await context.close();
});

test("the printed drawing is to its scale: the front wall of 8.20 m", async () => {
  const { context, page } = await freshPage(story.browser, wide);
  await opened(page, "/practice/oriel/halls/tithe-barn-hall/hall-sheet");
  const scale = Number(/drawn 1:(\d+)/.exec(await page.locator("main").innerText())?.[1]);
  await page.emulateMedia({ media: "print" });
  // CSS has 96 px to the inch; the walls are the polygon with the thickest edge
  const width = await page
    .locator('.paper-page polygon[stroke-width="0.8"]')
    .evaluate((walls) => walls.getBoundingClientRect().width);
  expect(((width * 25.4) / 96) * scale).toBeCloseTo(8200, 0);
  await context.close();
});

test("a teacher in the United States gets Letter, feet and her own posted number, on one page", async () => {
  const { context, page, errors } = await freshPage(story.browser, wide);
  await opened(page, "/practice/ines/halls/grange-hall/hall-sheet");
  const read = await printed(page);
  expect(read.numPages).toBe(1);
  expect((await sizeOf(read)).toSorted((a, b) => a - b)).toEqual([612, 792]);
  const words = await wordsOfPage(read, 1);
  expect(words).toContain("The hall’s posted number is 28 people: 27 on mats and 1 beside them.");
  expect(words).toMatch(/Scale [\d/]+ in to the foot \(1:\d+\) on Letter, printed at 100 %/);
  // and on A4 where that is in the printer
  await page.getByLabel("Paper in the printer").selectOption("a4");
  await page.getByText("on A4, printed").first().waitFor();
  expect((await sizeOf(await printed(page))).toSorted((a, b) => a - b)).toEqual([595, 842]);
  expect(errors).toEqual([]);
  await context.close();
});

test("the sheet of a class has its name and its cap, and the PDF that is saved says the same", async () => {
  const { context, page, errors } = await freshPage(story.browser, phone);
  await page.goto(`${story.server.address}/practice/oriel/classes/tuesday-evening`);
  await page.getByRole("link", { name: "Hall sheet" }).click();
  await page.getByText("Lay no more than 16 of them").first().waitFor();
  await page.locator(".paper-page").waitFor();
  const address = await page.getByRole("link", { name: "Save as PDF" }).getAttribute("href");
  const answer = await fetch(`${story.server.address}${address}`);
  const words = await wordsOfPage(await readPdf(new Uint8Array(await answer.arrayBuffer())), 1);
  const onPage = await page.locator(".sheet-items li:not(.sheet-blank)").allInnerTexts();
  expect(onPage.length).toBeGreaterThan(10);
  // spaces that bind are read as plain ones
  for (const says of onPage) expect(words).toContain(says.replaceAll("\u00A0", " "));
  expect(errors).toEqual([]);
  await context.close();
});

function bench(x: number, y: number) {
  return [
    [x, y],
    [x + 0.2, y],
    [x + 0.2, y + 0.3],
    [x, y + 0.3],
  ];
}

test("what does not fit on one page goes on on the next, on the printer as on the screen", async () => {
  const fixtures = Array.from({ length: 160 }, (_, index) => ({
    label: `Bench with a long name, kept for the choir, number ${index}`,
    outline: bench(0.2 + (index % 16) * 0.45, 0.5 + Math.floor(index / 16)),
  }));
  const outline = [
    [0, 0],
    [8, 0],
    [8, 12],
    [0, 12],
  ];
  const gaps = { side: 0.5, end: 0.3, wall: 0.5 };
  const document = { name: "Choir room", outline, fixtures, mat: { length: 1.83, width: 0.61 }, gaps };
  await fetch(`${story.server.address}/api/practices/oriel/halls/choir-room`, {
    method: "PUT",
    headers: { "content-type": "application/json" },
    body: JSON.stringify({ action: "save-choir-room", from: 0, document }),
  });
  const { context, page, errors } = await freshPage(story.browser, wide);
  await opened(page, "/practice/oriel/halls/choir-room/hall-sheet");
  const count = await page.locator(".paper-page").count();
  const read = await printed(page);
  expect(count).toBeGreaterThan(1);
  expect(read.numPages).toBe(count);
  expect(await wordsOfPage(read, 1)).toContain("It goes on on page 2.");
  expect(await wordsOfPage(read, count)).toContain(`Page ${count} of ${count}`);
  expect(errors).toEqual([]);
  await context.close();
});

test.each([
  ["a phone in the light", { ...phone, colorScheme: "light" }],
  ["a phone in the dark", { ...phone, colorScheme: "dark" }],
  ["a wide screen in the light", { ...wide, colorScheme: "light" }],
  ["a wide screen in the dark", { ...wide, colorScheme: "dark" }],
] as const)("on %s nothing keeps a reader out, and nothing stands beside the screen", async (_, look) => {
  const { context, page, errors } = await freshPage(story.browser, look);
  await opened(page, "/practice/oriel/halls/st-brannocs-church-hall/hall-sheet");
  const seen = await new AxeBuilder({ page })
    .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"])
    .analyze();
  expect(seen.violations.map((it) => `${it.id}: ${it.nodes[0]?.target.join(" ")}`)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBe(0);
  expect(errors).toEqual([]);
  await context.close();
});

test("with no signal the sheet is still there to read and to print", async () => {
  const { context, page } = await freshPage(story.browser, phone);
  await opened(page, "/practice/oriel/halls/tithe-barn-hall/hall-sheet");
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.reload();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await context.setOffline(true);
  await page.reload();
  await page.locator(".paper-page").waitFor();
  await page.getByText("The hall’s posted number is 60 people").first().waitFor();
  await context.close();
});
