import type { DayJson } from "#core/week";
import { expect, it } from "vitest";
import { weekDrawing } from "./week-drawing.ts";

const stop = (part: Partial<DayJson["stops"][number]>): DayJson["stops"][number] => ({
  id: "a",
  name: "A",
  place: "barn",
  accessFrom: "18:40",
  start: "19:00",
  end: "20:15",
  accessUntil: "20:30",
  fromHome: true,
  atHome: null,
  travelMinutes: 12,
  km: 6,
  waitingMinutes: 0,
  ...part,
});
const around = { places: [{ id: "barn", name: "Tithe Barn Hall" }], commitments: [] };

it("draws the way out, the hall with the class in it, and the way back", () => {
  const days: readonly DayJson[] = [{ weekday: 2, leaves: "18:18", home: "20:42", stops: [stop({})] }];
  const drawing = weekDrawing({ days }, around);
  expect(drawing.days.map(({ spans }) => spans.length)).toEqual([0, 4, 0, 0, 0, 0, 0]);
  // 18:18 is 1098 minutes after midnight
  expect(drawing.days[1]?.spans).toEqual([
    { kind: "way", from: 1098, until: 1120 },
    { kind: "way", from: 1230, until: 1242 },
    { kind: "hall", from: 1120, until: 1230 },
    { kind: "class", from: 1140, until: 1215 },
  ]);
  expect(drawing.days[1]?.classes).toMatchObject([
    { number: 1, place: "Tithe Barn Hall", way: "12 min and 6 km there" },
  ]);
});

it("leaves the time at home between two classes empty, and counts classes through the week", () => {
  const late = stop({ id: "b", atHome: { from: "11:30", until: "18:28" }, travelMinutes: 24, km: 12 });
  const early = stop({ accessFrom: "09:45", start: "10:00", end: "11:00", accessUntil: "11:15" });
  const days: readonly DayJson[] = [
    { weekday: 1, leaves: "09:30", home: "20:45", stops: [early, late] },
    {
      weekday: 6,
      leaves: "18:20",
      home: "20:45",
      stops: [stop({ waitingMinutes: 35, travelMinutes: 5, km: 0 })],
    },
  ];
  const drawing = weekDrawing({ days }, around);
  const ways = drawing.days[0]?.spans.filter(({ kind }) => kind === "way");
  expect(ways?.map(({ from, until }) => [from, until])).toEqual([
    [570, 585],
    [675, 690],
    [1108, 1120],
    [1230, 1245],
  ]);
  expect(drawing.days.flatMap(({ classes }) => classes.map(({ number, way }) => [number, way]))).toEqual([
    [1, "12 min and 6 km there"],
    [2, "24 min and 12 km by home"],
    [3, "5 min there, 35 min of waiting"],
  ]);
});

it("holds what reaches over midnight, and never less than from nine to six", () => {
  const night = stop({ accessFrom: "22:30", start: "22:45", end: "23:45", accessUntil: "23:59" });
  const drawing = weekDrawing(
    { days: [{ weekday: 3, leaves: "22:00", home: "00:30", stops: [night] }] },
    around,
  );
  expect([drawing.from, drawing.until, drawing.days[2]?.home]).toEqual([540, 1500, 1470]);
  const early = stop({ accessFrom: "00:10", start: "00:15", end: "01:00", accessUntil: "01:05" });
  expect(
    weekDrawing({ days: [{ weekday: 3, leaves: "23:50", home: "01:30", stops: [early] }] }, around).from,
  ).toBe(-60);
  expect(weekDrawing({ days: [] }, around)).toMatchObject({ from: 540, until: 1080 });
});

it("draws what is fixed besides on its day, with or without a class", () => {
  const commitments = [{ weekday: 4, from: "07:30", until: "08:30" }];
  const drawing = weekDrawing({ days: [] }, { ...around, commitments });
  expect(drawing.days[3]).toMatchObject({
    spans: [{ kind: "busy", from: 450, until: 510 }],
    busy: [{ name: "Not free" }],
  });
  expect(drawing.from).toBe(420);
});
