import { readPdf, wordsOfPage } from "#testing";
import { expect, it } from "vitest";
import { shownAs } from "./shown-as.ts";
import { todayIn } from "./today-in.ts";
import { trialDemo } from "./trial-server.ts";

const sheet = (rest: string): string => `/api/practices/oriel/halls/${rest}`;

it("the hall sheet of a saved hall is a PDF of one A4 page under the name of the hall", async () => {
  const { get } = await trialDemo();
  const answer = await get(sheet("tithe-barn-hall/hall-sheet.pdf"));
  expect(answer.statusCode).toBe(200);
  expect(answer.headers["content-type"]).toBe("application/pdf");
  expect(answer.headers["content-disposition"]).toContain('filename="Hall sheet Tithe Barn Hall.pdf"');
  const read = await readPdf(answer.rawPayload);
  expect(read.numPages).toBe(1);
  const words = await wordsOfPage(read, 1);
  expect(words).toContain("The hall’s posted number is 60 people: 59 on mats and 1 beside them.");
  expect(words).toContain("from version 1 of its measures.");
});

it("for a class it has the class’s name and cap, on the paper that is asked for", async () => {
  const { get } = await trialDemo();
  const answer = await get(sheet("tithe-barn-hall/hall-sheet.pdf?class=tuesday-evening&paper=letter"));
  const read = await readPdf(answer.rawPayload);
  const { width, height } = (await read.getPage(1)).getViewport({ scale: 1 });
  expect([width, height].map(Math.round).toSorted((a, b) => a - b)).toEqual([612, 792]);
  const words = await wordsOfPage(read, 1);
  expect(words).toContain("Tuesday evening");
  expect(words).toContain("Lay no more than 16 of them: the teacher’s own cap sets it.");
});

it.each([
  ["no-such-hall/hall-sheet.pdf", 404, "not-found"],
  ["tithe-barn-hall/hall-sheet.pdf?class=no-such-class", 404, "not-found"],
  ["tithe-barn-hall/hall-sheet.pdf?paper=a3", 422, "document-choice"],
  ["tithe-barn-hall/hall-sheet.pdf?arrangement=in-a-heap", 422, "document-choice"],
])("asked for %s it answers %i with %s", async (rest, status, code) => {
  const { get } = await trialDemo();
  const answer = await get(sheet(rest));
  expect([answer.statusCode, answer.json().problems[0].code]).toEqual([status, code]);
});

it("the contract says that it answers a PDF, or problems", async () => {
  const { get } = await trialDemo();
  const { paths } = (await get("/api/openapi.json")).json();
  const { responses } = paths["/api/practices/{practice}/halls/{id}/hall-sheet.pdf"].get;
  expect(Object.keys(responses["200"].content)).toEqual(["application/pdf"]);
  expect(Object.keys(responses.default.content)).toEqual(["application/json"]);
});

it("a name in any letters and with quotes in it goes into the header whole", () => {
  // é is é and an accent; ł has no plain letter
  expect(shownAs('Café "Łódź".pdf')).toBe(
    `inline; filename="Cafe --odz-.pdf"; filename*=UTF-8''Caf%C3%A9%20%22%C5%81%C3%B3d%C5%BA%22.pdf`,
  );
});

it("today is the day where the practice is", () => {
  // 14 hours apart: the first is never the later day
  const [early, late] = [todayIn("Pacific/Pago_Pago"), todayIn("Pacific/Kiritimati")];
  expect(early < late).toBe(true);
});
