import type { PastAction } from "#app/record";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { thursdayHappened, tuesdayHappened } from "../marlsford-happened.ts";
import { saturdayLong, thursdayBeginners, tuesdayEvening } from "../marlsford-classes.ts";
import { quayStreetMissionRoom } from "../quay-street-mission-room.ts";
import { stBrannocsChurchHall } from "../st-brannocs-church-hall.ts";
import { titheBarnHall } from "../tithe-barn-hall.ts";
import { classHistory } from "./class-history.ts";
import { hallCosts } from "./hall-costs.ts";
import type { PastClass, PastEvening } from "./past-class.ts";
import { saturdays } from "./saturdays.ts";

const SEED = 20261125;

/**
 * A year of Oriel's classes as it was done, action by action in the order of time: nothing of it is written into the
 * record in another way. The Tuesdays and Thursdays are those that her class sheets tell of.
 */
export function marlsfordHistory(): readonly PastAction[] {
  const random = xoroshiro128plus(SEED);
  const told = [
    ...coverTeachers,
    ...classHistory(saturday, 0, random),
    ...classHistory(tuesday, 200, random),
    ...classHistory(thursday, 400, random),
    ...hallCosts(saturday, saturdayLong, stBrannocsChurchHall),
    ...hallCosts(tuesday, tuesdayEvening, titheBarnHall),
    ...hallCosts(thursday, thursdayBeginners, quayStreetMissionRoom),
  ];
  return told.toSorted((one, other) => (one.at < other.at ? -1 : one.at > other.at ? 1 : 0));
}

/** Two who may be asked to cover: of one the certificate was seen, the other's runs out soon. */
const coverTeachers: readonly PastAction[] = [
  ...coverTeacher("person-901", "Maren Oxley", "2027-04-30", 3500),
  ...coverTeacher("person-902", "Tobin Reyes", "2026-11-30", 3000),
];

function coverTeacher(
  person: string,
  name: string,
  insuredUntil: string,
  fee: number,
): readonly PastAction[] {
  const contact = { name, phone: "01632 960099" };
  return [
    { at: "2026-01-05T10:00:00Z", do: { kind: "meet person", person, contact } },
    {
      at: "2026-01-05T10:05:00Z",
      do: { kind: "may cover", person, insuredUntil, styles: "mixed and gentle classes", fee },
    },
  ];
}

const saturday: PastClass = {
  class: "saturday-long",
  name: "Saturday long practice",
  hall: "st-brannocs-church-hall",
  start: "09:30",
  minutes: 90,
  capacity: 18,
  posted: 90,
  single: 1200,
  concession: 1000,
  pass: { size: 6, price: 6400, weeks: 14 },
  evenings: saturdays,
  ahead: ["2026-11-28", "2026-12-05", "2026-12-12"],
};

const tuesday: PastClass = {
  class: "tuesday-evening",
  name: "Tuesday evening, mixed",
  hall: "tithe-barn-hall",
  start: "19:00",
  minutes: 75,
  capacity: 16,
  posted: 60,
  single: 950,
  concession: 750,
  pass: { size: 10, price: 8200, weeks: 18 },
  evenings: eveningsOf(tuesdayHappened),
  ahead: ["2026-12-01", "2026-12-08", "2026-12-15"],
};

const thursday: PastClass = {
  class: "thursday-beginners",
  name: "Thursday beginners",
  hall: "quay-street-mission-room",
  start: "18:30",
  minutes: 60,
  capacity: 12,
  posted: 30,
  single: 900,
  concession: 700,
  pass: { size: 5, price: 4200, weeks: 10 },
  evenings: eveningsOf(thursdayHappened),
  ahead: ["2026-11-26", "2026-12-03", "2026-12-10"],
};

function eveningsOf({ sessions }: typeof tuesdayHappened): readonly PastEvening[] {
  return sessions.map(({ date, heads, newcomers = 0 }) => ({ date, heads, newcomers }));
}
