import type { BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { afterEach, expect, test } from "vitest";
import { phone } from "./chromium.ts";
import { storyServer } from "./story-server.ts";
import { atHalls, expectSound, hallsOnServer, loseSignal, ownErrors } from "./measuring-story.ts";

const story = storyServer();
let context: BrowserContext;
let page: Page;
let errors: string[] = [];

afterEach(async () => {
  expect(ownErrors(errors)).toEqual([]);
  await context.close();
});

async function begin(options: BrowserContextOptions): Promise<void> {
  ({ context, page, errors } = await atHalls(story.browser, story.server, options));
}

const button = (name: string | RegExp) => page.getByRole("button", { name, exact: true });
const box = (name: string) => page.getByRole("textbox", { name, exact: true });

const halls = () => hallsOnServer(page, story.server);

/** A plan of 8 × 12 m at 50 points to the metre, its corner A at (150, 700), drawn in the browser as a picture. */
async function planPhoto(): Promise<Buffer> {
  const drawn = await page.evaluate(async () => {
    const canvas = document.createElement("canvas");
    canvas.width = 700;
    canvas.height = 800;
    const pen = canvas.getContext("2d");
    if (pen === null) throw new Error("no pen");
    pen.fillStyle = "#fff";
    pen.fillRect(0, 0, 700, 800);
    pen.lineWidth = 4;
    pen.strokeRect(150, 100, 400, 600);
    return canvas.toDataURL("image/png").split(",")[1] ?? "";
  });
  return Buffer.from(drawn, "base64");
}

/** Moves the cross-hair by keys from where it stands. */
async function crossHairTo(x: number, y: number): Promise<void> {
  const said = /Cross-hair at (\d+), (\d+)/.exec(await page.getByText(/^Cross-hair at/).innerText());
  const [left, down] = [x - Number(said?.[1]), y - Number(said?.[2])];
  const press = async (by: number, less: string, more: string) => {
    const key = by < 0 ? less : more;
    const size = Math.abs(by);
    for (let step = 0; step < Math.floor(size / 50); step++) await page.keyboard.press(`Shift+${key}`);
    for (let step = 0; step < Math.floor((size % 50) / 10); step++) await page.keyboard.press(key);
    for (let step = 0; step < size % 10; step++) await page.keyboard.press(`Alt+${key}`);
  };
  await press(left, "ArrowLeft", "ArrowRight");
  await press(down, "ArrowUp", "ArrowDown");
}

test("with no signal a photographed plan is traced with the keyboard alone, becomes a hall, and never leaves the device", async () => {
  await begin(phone);
  const sent: string[] = [];
  page.on("request", (request) => {
    if (request.method() !== "GET") sent.push(request.postData() ?? "");
  });
  await loseSignal(context, page);
  await page.getByRole("link", { name: "Measure a hall" }).click();
  await button("Trace over a picture of its plan").click();
  await page.getByText("The picture stays on this device.").waitFor();
  await expectSound(page);
  const choose = page.getByLabel("Or choose a picture");
  await choose.setInputFiles({ name: "notes.txt", mimeType: "image/png", buffer: Buffer.from("no picture") });
  await page.getByText("“notes.txt” is no picture that this browser can read.").waitFor();
  await choose.setInputFiles({ name: "plan.png", mimeType: "image/png", buffer: await planPhoto() });
  await button("Mark on the picture").focus();

  // both ends at the same place, and only one: said, and nothing is lost
  await page.keyboard.press("Enter");
  await page.getByText("Only one end of the known distance is marked.").waitFor();
  await page.keyboard.press("Enter");
  await box("The known distance").fill("8");
  await page.getByText("Both ends of the known distance are marked at the same place.").waitFor();
  await page.getByRole("radio", { name: /^a distance that you know/ }).check();
  await button("Mark on the picture").focus();
  for (const [x, y] of [
    [150, 700],
    [550, 700],
  ] as const) {
    await crossHairTo(x, y);
    await page.keyboard.press("Enter");
  }
  await page.getByRole("radio", { name: /^the corners of the hall/ }).check();
  await button("Mark on the picture").focus();
  for (const [x, y] of [
    [151, 700],
    [550, 702],
    [549, 100],
    [150, 98],
    [300, 300],
  ] as const) {
    await crossHairTo(x, y);
    await page.keyboard.press("Enter");
  }
  await page.keyboard.press("Backspace");
  await page.getByText("Corner D is marked. Mark corner E, if there is one more.").waitFor();
  // 8 m over 400 points: 20 mm a point
  await page.getByText(/One point of the picture is 20\.0 mm of the hall\./).waitFor();
  await expectSound(page);
  await page.reload();
  await page.getByText("Corner D is marked.", { exact: false }).waitFor();
  await button("Mark on the picture").waitFor();
  await box("Name of the hall").fill("Traced Hall");
  await button("Make it a new hall").click();
  await page.getByText("Not saved: the server does not answer. Kept on this device.").waitFor();
  await context.setOffline(false);
  await expect.poll(halls).toHaveLength(1);
  const [hall] = await halls();
  const [a = [0, 0], b = [0, 0], c = [0, 0]] = hall?.document.outline ?? [];
  expect(Math.abs(b[0] - a[0] - 8)).toBeLessThan(0.06);
  expect(Math.abs(c[1] - b[1] - 12)).toBeLessThan(0.06);
  // square by choice, and to the centimetre
  expect([a[1], b[0]]).toEqual([b[1], c[0]]);
  expect(sent.length).toBeGreaterThan(0);
  for (const body of sent) expect(body.length).toBeLessThan(5000);
});

test("a leaning picture shows in the second distance, and a finger marks too", async () => {
  await begin(phone);
  await page.getByRole("link", { name: "Measure a hall" }).click();
  await button("Trace over a picture of its plan").click();
  await page
    .getByLabel("Or choose a picture")
    .setInputFiles({ name: "plan.png", mimeType: "image/png", buffer: await planPhoto() });
  const picture = button("Mark on the picture");
  await picture.waitFor();
  const tap = async (x: number, y: number) => {
    const at = await picture.boundingBox();
    if (at === null) throw new Error("the picture is not shown");
    await picture.tap({ position: { x: (x / 700) * at.width, y: (y / 800) * at.height } });
  };
  for (const [x, y] of [
    [150, 700],
    [550, 700],
    [150, 700],
    [550, 700],
    [550, 100],
    [150, 100],
  ] as const)
    await tap(x, y);
  await box("The known distance").fill("8");
  await page.getByRole("radio", { name: /^a second distance/ }).check();
  await tap(150, 700);
  await tap(150, 100);
  // 600 points are 12 m; in the hall it is said to be 13 m
  await box("A second distance, to check it").fill("13");
  await page.getByText(/[78]\.\d %, too short\. The picture was not taken flat-on/).waitFor();
  await expectSound(page);
});
