import type { ClassYearJson, YearAnswer } from "#core/year";
import type { HallCalendar } from "./read-hall-calendars.ts";

/** The answer first, then what to look at, then every date of every class by its month and why the others fall out. */
export function yearText({ json }: YearAnswer, halls: readonly HallCalendar[]): string {
  const lost = json.notUnderstood.map(
    ({ place, line, text, says }) => `${place}, line ${line}, “${text}”: ${says}`,
  );
  const read = halls.flatMap(({ hall, file, booked, notes }) => [
    `${file}: ${booked} bookings of ${hall} in the year.`,
    ...notes.map(({ line, says }) => `${file}, line ${line}: ${says}.`),
  ]);
  const holidays = json.holidays.map(({ date, name, standsFor, movedTo }) => {
    const beside =
      standsFor === null ? (movedTo === null ? "" : `, kept on ${movedTo}`) : `, for ${standsFor}`;
    return `${date} ${name}${beside}`;
  });
  return [
    ...json.sentences,
    ...section("Look at these", json.notes),
    ...section("Lines that are not understood", lost),
    ...section("Calendars of halls", read),
    ...json.classes.flatMap(classLines),
    ...section("Public holidays", holidays),
    "",
    "Public holidays are worked out by the rules of the law; a day proclaimed later is not among them. The hall",
    "decides when it is open: ask for its dates.",
    "",
  ].join("\n");
}

function section(heading: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : ["", heading, ...lines.map((it) => `  ${it}`)];
}

function classLines({
  name,
  hallName,
  sessions,
  weeks,
  months,
  dates,
  lost,
  zone,
}: ClassYearJson): readonly string[] {
  const byMonth = months.flatMap(({ month }) => {
    const days = dates
      .filter(({ date }) => date.startsWith(month))
      .map(({ date, movedFrom, extra }) => {
        const mark = movedFrom === null ? (extra ? " (added)" : "") : ` (moved from ${movedFrom})`;
        return `${Number(date.slice(8))}${mark}`;
      });
    return days.length === 0 ? [] : [`  ${month}  ${days.join(", ")}`];
  });
  const gone = lost.map(({ date, reasons }) => `  ${date}  ${reasons.map(({ why }) => why).join("; ")}`);
  return [
    "",
    `${name}, ${hallName} (${zone}): ${sessions} sessions in ${weeks} weeks`,
    ...byMonth,
    ...(gone.length === 0 ? [] : ["  Not on:", ...gone]),
  ];
}
