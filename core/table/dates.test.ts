import { dateOfDay, dayNumberOf } from "#kernels/calendar";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { dateStyleOf, dayInStyle } from "./date-order.ts";
import { readAnyDate } from "./read-any-date.ts";

function bothWays(text: string): readonly (string | undefined)[] {
  const reading = readAnyDate(text);
  return [reading?.dayFirst, reading?.monthFirst].map((day) =>
    day === undefined ? undefined : dateOfDay(day),
  );
}

test.each([
  "2027-04-05",
  "2027/04/05",
  "2027.4.5",
  "20270405",
  "2027-04-05T18:30:00Z",
  "2027-04-05 18:30",
  "5 April 2027",
  "5 Apr 27",
  "5-Apr-2027",
  "5th April 2027",
  "Monday 5 April 2027",
  "Mon, 5 Apr 2027 18:30",
  "April 5, 2027",
  "Apr 5 2027",
  "5. April 2027",
  "5 avril 2027",
  "5 de abril de 2027",
])("TABLE-3: “%s” is 5 April 2027 whatever comes first elsewhere", (text) => {
  expect(bothWays(text)).toEqual(["2027-04-05", "2027-04-05"]);
});

test.each(["05/04/2027", "5.4.2027", "5-4-27", "5. 4. 2027", "05/04/27 6:30pm", " 05\u00a004 2027 "])(
  "TABLE-4: “%s” is 5 April or 4 May",
  (text) => {
    expect(bothWays(text)).toEqual(["2027-04-05", "2027-05-04"]);
  },
);

test("TABLE-3: two digits are a year from 1980 to 2079, and a first number over 31 is the year", () => {
  expect(bothWays("25/04/79")).toEqual(["2079-04-25", undefined]);
  expect(bothWays("25/04/80")).toEqual(["1980-04-25", undefined]);
  expect(bothWays("97-01-31")).toEqual(["1997-01-31", "1997-01-31"]);
});

test.each([
  "",
  "Tuesday",
  "12.50",
  "31/02/2027",
  "2027-02-30",
  "5/4",
  "00/04/2027",
  "05/04/1066",
  "05/04/20277",
  "2027",
  "April 2027",
  "about 5/4/2027",
  "5 Smarch 2027",
])("TABLE-3: “%s” is no date", (text) => {
  expect(readAnyDate(text)).toBeUndefined();
});

function styleOf(...texts: readonly string[]) {
  const style = dateStyleOf(texts, "Date");
  return style.ok ? [style.value.order, style.value.how] : style.problems[0]?.code;
}

test("TABLE-4: one day over twelve settles the whole column", () => {
  expect(styleOf("05/04/2027", "12/04/2027", "19/04/2027")).toEqual(["day-first", "shown"]);
  expect(styleOf("04/05/2027", "04/12/2027", "04/19/2027")).toEqual(["month-first", "shown"]);
});

test("TABLE-4: dates that can only be read one way need no order", () => {
  expect(styleOf("2027-04-05", "5 May 2027", "07/07/2027")).toEqual(["day-first", "written"]);
});

test("TABLE-4: a class that keeps its weekday makes one order likely", () => {
  // Tuesdays with the day first: 6 April, 4 May, 1 June, 6 July; five weekdays with the month first
  expect(styleOf("06/04/2027", "04/05/2027", "01/06/2027", "06/07/2027", "03/08/2027")).toEqual([
    "day-first",
    "likely",
  ]);
});

test("TABLE-4: where nothing shows the order it is asked, with both readings of one date", () => {
  const style = dateStyleOf(["05/04/2027", "05/05/2027"], "Date");
  expect(style).toMatchObject({ ok: false, problems: [{ code: "date-order-unclear", place: "Date" }] });
  expect(!style.ok && style.problems[0]?.says).toContain("2027-04-05 or 2027-05-04");
  expect(dateStyleOf(["05/04/2027"], "Date", "month-first")).toMatchObject({ value: { how: "told" } });
});

test("TABLE-5: a column with both orders is asked about, and one slip in twenty is not", () => {
  const days = Array.from({ length: 18 }, (_, at) => `${at + 13}/04/2027`);
  expect(styleOf(...days, "04/20/2027")).toEqual(["day-first", "shown"]);
  expect(styleOf("20/04/2027", "04/20/2027")).toBe("date-order-mixed");
});

test("TABLE-3: days counted by a spreadsheet are dates where the column is full of them", () => {
  // 28 September 2026 is 46293 days after 30 December 1899
  expect((dayNumberOf("2026-09-28") ?? 0) - (dayNumberOf("1899-12-30") ?? 0)).toBe(46_293);
  const style = dateStyleOf(["46293", "46300", "46307.75"], "Date");
  if (!style.ok) throw new Error(JSON.stringify(style.problems));
  expect(style.value.written).toBe("serial");
  expect(dateOfDay(dayInStyle("46307.75", style.value) ?? 0)).toBe("2026-10-12");
});

test("TABLE-4: any column of dates, written in one order, is read back or asked about, never read wrongly and sure", () => {
  const day = fc.integer({ min: 19_000, max: 22_000 });
  fc.assert(
    fc.property(fc.array(day, { minLength: 1, maxLength: 20 }), fc.boolean(), (days, dayFirst) => {
      const texts = days.map((number) => {
        const [year = "", month = "", date = ""] = dateOfDay(number).split("-");
        return dayFirst ? `${date}/${month}/${year}` : `${month}/${date}/${year}`;
      });
      const style = dateStyleOf(texts, "Date");
      if (!style.ok) return;
      const read = texts.map((text) => dayInStyle(text, style.value));
      if (style.value.how !== "likely") expect(read).toEqual(days);
    }),
    { numRuns: 300 },
  );
});
