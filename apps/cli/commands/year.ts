import { writeCalendarFile } from "#adapters/calendar";
import { drawingSvg, type YearAnswer, yearDrawing } from "#core/year";
import { bad, good, problem, type Result } from "#core/words";
import { Temporal } from "temporal-polyfill";
import type { Answer, Command, Given } from "../command.ts";
import { moneyText } from "../money-text.ts";
import { type HallCalendar, readHallCalendars } from "../read-hall-calendars.ts";
import { readInput } from "../read-input.ts";
import type { World } from "../world.ts";
import { writeNewFile } from "../write-new-file.ts";
import { readYearFile, yearAnswerOf, type YearRead } from "../year-answer-of.ts";
import type { YearFile } from "../year-document.ts";
import { yearText } from "../year-text.ts";

export const year: Command = {
  name: "year",
  summary: "a year of real dates, and its money month by month",
  words: ["YEAR.json"],
  options: {
    "hall-calendar": {
      value: "HALL=FILE.ics",
      says: "what a hall has booked by its own calendar; several with commas between",
    },
    picture: { value: "FILE.svg", says: "write the year as a picture on one sheet" },
    "calendar-out": { value: "FILE.ics", says: "write the sessions for a calendar program" },
    replace: { says: "replace the files if they are there already" },
  },
  details: `
YEAR.json has a calendar (classes, halls, holidays, time off) or money (what is
taught and how it is paid, tax, the path to full time), or both, as hallful
schema year describes it; - reads standard input. Dates are counted and never
assumed to be 52: each that is missing says why. In the file for a calendar
program each session keeps its id wherever it moves; nothing of your time off or
of people is in it.`,
  run: async (given, world) => {
    const [name = "-"] = given.words;
    const input = await readInput(name, world);
    if (!input.ok) return input;
    const file = readYearFile(input.value);
    if (!file.ok) return file;
    const halls = await withHalls(file.value.file, given, world);
    if (!halls.ok) return halls;
    const read = yearAnswerOf(halls.value.file, file.value.unused);
    if (!read.ok) return read;
    const files = await writeFiles(read.value.calendar, given, world);
    return files.ok ? good(answerOf(read.value, halls.value.halls, files.value)) : files;
  },
};

type WithHalls = { readonly file: YearFile; readonly halls: readonly HallCalendar[] };

async function withHalls(file: YearFile, given: Given, world: World): Promise<Result<WithHalls>> {
  const option = given.values["hall-calendar"];
  if (option === undefined) return good({ file, halls: [] });
  if (file.calendar === undefined) return bad(noCalendar("--hall-calendar"));
  const read = await readHallCalendars(option, file.calendar, world);
  if (!read.ok) return read;
  return good({ file: { ...file, calendar: read.value.calendar }, halls: read.value.halls });
}

/** The names of the files that were asked for, written. */
async function writeFiles(
  calendar: YearAnswer | null,
  given: Given,
  world: World,
): Promise<Result<readonly string[]>> {
  const { picture, "calendar-out": calendarOut } = given.values;
  const files: string[] = [];
  for (const [option, name, text] of [
    ["--picture", picture, pictureText],
    ["--calendar-out", calendarOut, calendarText],
  ] as const) {
    if (name === undefined) continue;
    if (calendar === null) return bad(noCalendar(option));
    const bytes = new TextEncoder().encode(text(calendar, world));
    // oxlint-disable-next-line no-await-in-loop -- the second is not begun when the first cannot be written
    const written = await writeNewFile(name, bytes, given.flags.has("replace"), world);
    if (!written.ok) return bad(...written.problems.map((it) => ({ ...it, place: option })));
    files.push(written.value);
  }
  return good(files);
}

function pictureText({ picture }: YearAnswer): string {
  return drawingSvg(
    yearDrawing(picture),
    picture.title,
    [...picture.months].flatMap(({ title, words }) => [title, ...words]),
  );
}

function calendarText({ entries }: YearAnswer, world: World): string {
  return writeCalendarFile(entries, { name: "Classes", made: Temporal.Instant.from(world.now()) });
}

function answerOf(
  { calendar, money, unused }: YearRead,
  halls: readonly HallCalendar[],
  files: readonly string[],
): Answer {
  const texts = [
    ...(calendar === null ? [] : [yearText(calendar, halls)]),
    ...(money === null ? [] : [moneyText(money)]),
    ...files.map((it) => `Written to ${it}.\n`),
  ];
  return {
    text: texts.join("\n"),
    json: {
      format: "hallful/year-answer@1",
      calendar: calendar?.json ?? null,
      hallCalendars: halls,
      money,
      files,
    },
    unused,
  };
}

function noCalendar(option: string) {
  const says = `${option} needs a calendar, and the document has none.`;
  return problem("year-without-calendar", option, says, "Add one, or leave the option out.");
}
