import { expect, test } from "vitest";
import { freshPage, phone } from "./chromium.ts";
import { storyServer } from "./story-server.ts";

const story = storyServer();

test("with no signal a hall is still planned, kept on the phone, and delivered when the signal is back", async () => {
  const { context, page } = await freshPage(story.browser, phone);
  await page.goto(story.server.address);
  await page.getByRole("button", { name: "Open Marlsford, in pounds" }).click();
  await page.getByRole("link", { name: "Halls" }).click();
  await page.getByRole("link", { name: /Tithe Barn Hall/ }).click();
  await page.getByText("30 mats fit").first().waitFor();
  await page.evaluate(async () => navigator.serviceWorker.ready);
  await page.reload();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await page.getByText("30 mats fit").first().waitFor();

  await context.setOffline(true);
  const gap = page.getByRole("textbox", { name: "Beside a mat" });
  await gap.fill("0.9");
  await gap.press("Tab");
  // 8.20 m wide less walls 0.5 each side, mats every 1.51 m: 5 across instead of 6
  await page
    .getByText(/^2[0-4] mats fit/)
    .first()
    .waitFor();
  await page
    .getByText(/Kept on this device/)
    .first()
    .waitFor();

  await page.reload();
  await page
    .getByText(/^2[0-4] mats fit/)
    .first()
    .waitFor();
  await context.setOffline(false);
  await page
    .getByText(/^Saved/)
    .first()
    .waitFor();

  const elsewhere = await freshPage(story.browser, phone);
  await elsewhere.page.goto(page.url());
  await elsewhere.page
    .getByText(/^2[0-4] mats fit/)
    .first()
    .waitFor();
  await elsewhere.context.close();
  await context.close();
});

test("two windows on one hall: the later save is told of the earlier one and both choices are offered", async () => {
  const first = await freshPage(story.browser, phone);
  await first.page.goto(story.server.address);
  await first.page.getByRole("button", { name: "Open Cedar Fork, in dollars" }).click();
  await first.page.getByRole("link", { name: "Halls" }).click();
  await first.page.getByRole("link", { name: /Grange Hall/ }).click();
  await first.page.getByRole("textbox", { name: "Notes" }).waitFor();
  const second = await freshPage(story.browser, phone);
  await second.page.goto(first.page.url());
  await second.page.getByRole("textbox", { name: "Notes" }).waitFor();

  await first.page.getByRole("textbox", { name: "Notes" }).fill("Key from the custodian.");
  await first.page
    .getByText(/^Saved \d/)
    .first()
    .waitFor();
  await second.page.getByRole("textbox", { name: "Notes" }).fill("Key under the bell.");
  await second.page
    .getByText(/changed (elsewhere|in another window|meanwhile)/i)
    .first()
    .waitFor();
  await second.page.getByRole("textbox", { name: "Notes" }).waitFor();
  expect(await second.page.getByRole("textbox", { name: "Notes" }).inputValue()).toBe("Key under the bell.");
  await first.context.close();
  await second.context.close();
});
