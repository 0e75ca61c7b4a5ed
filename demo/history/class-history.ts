import type { PastAction } from "#app/record";
import { dateOfDay, dayNumberOf, readPlainDate, readPlainTime, zonedStart } from "#kernels/calendar";
import { uniformInt } from "pure-rand/distribution/uniformInt";
import type { RandomGenerator } from "pure-rand/types/RandomGenerator";
import { type InventedPerson, inventedPerson } from "./invented-people.ts";
import type { PastClass, PastEvening } from "./past-class.ts";

const ZONE = "Europe/London";

/** Everybody books what is still ahead on one evening, after the last of all classes. */
const BOOKED_AHEAD = "2026-11-24T22:00:00Z";

/** Somebody who comes: what is left of her pass, and on how many evenings she was. */
type Regular = {
  readonly person: InventedPerson;
  pass: { readonly id: string; left: number; readonly useBy: string } | null;
};

type Telling = {
  readonly past: PastClass;
  readonly random: RandomGenerator;
  readonly regulars: Regular[];
  readonly told: PastAction[];
  /** the number of the next person, and of the next pass */
  next: number;
  passes: number;
};

/**
 * The history of a class as actions in the order of their time: its dates are put into the record, people are met, buy
 * passes, take places, come or do not, and the register is closed. The heads are those of the evenings given; who
 * comes is drawn from a seeded generator. People are numbered from `first` on.
 */
export function classHistory(past: PastClass, first: number, random: RandomGenerator): readonly PastAction[] {
  const telling: Telling = { past, random, regulars: [], told: [], next: first, passes: 0 };
  openDates(telling);
  for (const evening of past.evenings) tellEvening(telling, evening);
  for (const date of past.ahead) bookAhead(telling, date);
  return telling.told;
}

function openDates({ past, told }: Telling): void {
  const [firstEvening] = past.evenings;
  const dates = [...past.evenings.map(({ date }) => date), ...past.ahead];
  const { class: id, name, hall, minutes, capacity, posted, single, concession } = past;
  told.push({
    at: `${dayBefore(firstEvening?.date ?? "2026-01-01", 21)}T09:00:00Z`,
    do: {
      kind: "open sessions",
      class: id,
      name,
      hall,
      minutes,
      capacity,
      posted,
      single,
      concession,
      sessions: dates.map((date) => ({ id: `${id}.${date}`, date, starts: startOf(past, date) })),
      zone: ZONE,
      currency: "GBP",
      notice: { kind: "elapsed", hours: 24 },
      firstLateWaived: true,
    },
  });
}

/** Those who come, one who holds a place and does not come now and then, and the register. */
function tellEvening(telling: Telling, { date, heads, newcomers }: PastEvening): void {
  const { past, told, regulars } = telling;
  const session = `${past.class}.${date}`;
  const known = drawn(telling, Math.min(heads - newcomers, regulars.length));
  const fresh = Array.from({ length: heads - known.length }, () => meet(telling, date));
  for (const it of [...known, ...fresh]) takePlace(telling, it, date, `${dayBefore(date, 2)}T19:00:00Z`);
  const away =
    uniformInt(telling.random, 0, 3) === 0 ? drawnBeside(telling, [...known, ...fresh]) : undefined;
  if (away !== undefined && heads < past.capacity) {
    const place = `${session}.${away.person.id}`;
    const people = [{ place, person: away.person.id, how: "single" as const }];
    told.push({ at: `${dayBefore(date, 1)}T20:00:00Z`, do: { kind: "take place", session, people } });
    told.push({ at: startOf(past, date), do: { kind: "mark", session, place, as: "not come" } });
  }
  told.push({ at: startOf(past, date), do: { kind: "mark everybody", session } });
  told.push({ at: startOf(past, date), do: { kind: "count heads", session, heads: heads + 1 } });
  told.push({ at: endOf(past, date), do: { kind: "close register", session } });
}

function bookAhead(telling: Telling, date: string): void {
  const nearest = date === telling.past.ahead[0];
  const count = Math.min(nearest ? 9 : 4, telling.past.capacity - 2, telling.regulars.length);
  for (const it of drawn(telling, count)) takePlace(telling, it, date, BOOKED_AHEAD);
}

function meet(telling: Telling, date: string): Regular {
  const person = inventedPerson(telling.next);
  telling.next += 1;
  const heard =
    ["poster", "a friend", "the hall’s notice board", "the library", "search"][telling.next % 5] ?? "";
  const contact = { name: person.name, phone: person.phone, heard };
  telling.told.push({
    at: `${dayBefore(date, 3)}T18:00:00Z`,
    do: { kind: "meet person", person: person.id, contact },
  });
  const regular: Regular = { person, pass: null };
  telling.regulars.push(regular);
  return regular;
}

function takePlace(telling: Telling, it: Regular, date: string, at: string): void {
  const { past, told, random } = telling;
  const session = `${past.class}.${date}`;
  const place = `${session}.${it.person.id}`;
  if ((it.pass === null || it.pass.left === 0 || it.pass.useBy < date) && uniformInt(random, 0, 2) > 0)
    buyPass(telling, it, at);
  const { pass } = it;
  if (pass !== null && pass.left > 0 && pass.useBy >= date) {
    pass.left -= 1;
    const people = [{ place, person: it.person.id, how: "pass" as const, pass: pass.id }];
    told.push({ at, do: { kind: "take place", session, people } });
    return;
  }
  const by = (["cash", "card", "bank"] as const)[uniformInt(random, 0, 2)] ?? "cash";
  const people = [{ place, person: it.person.id, how: "single" as const, paid: { amount: past.single, by } }];
  told.push({ at, do: { kind: "take place", session, people } });
}

function buyPass(telling: Telling, it: Regular, at: string): void {
  const { past, told, random } = telling;
  const { size, price, weeks } = past.pass;
  const on = at.slice(0, 10);
  const pass = { id: `${past.class}-pass-${telling.passes}`, left: size, useBy: dayBefore(on, -7 * weeks) };
  telling.passes += 1;
  told.push({
    at,
    do: {
      kind: "sell pass",
      pass: pass.id,
      form: "pass",
      holder: it.person.id,
      name: `${size} classes`,
      on,
      size,
      price,
      currency: "GBP",
      paid: (["bank", "card", "cash"] as const)[uniformInt(random, 0, 2)] ?? "bank",
      useBy: pass.useBy,
      valid: [past.class],
      terms: { perClassOnRefund: past.single, transferable: false, pauses: 2 },
    },
  });
  it.pass = pass;
}

/** So many of those who came before, each once; the later somebody began the likelier she still comes. */
function drawn({ regulars, random }: Telling, count: number): readonly Regular[] {
  const left = [...regulars];
  return Array.from({ length: count }, () => {
    const [one, other] = [uniformInt(random, 0, left.length - 1), uniformInt(random, 0, left.length - 1)];
    const [found] = left.splice(Math.max(one, other), 1);
    if (found === undefined) throw new Error("nobody is left to draw");
    return found;
  });
}

function drawnBeside(telling: Telling, known: readonly Regular[]): Regular | undefined {
  return telling.regulars.findLast((it) => !known.includes(it) && telling.regulars.indexOf(it) % 2 === 0);
}

function startOf({ start }: PastClass, date: string): string {
  const [day, time] = [readPlainDate(date), readPlainTime(start)];
  if (day === undefined || time === undefined) throw new Error(`not a start: ${date} ${start}`);
  return zonedStart(day, time, ZONE).toInstant().toString();
}

function endOf(past: PastClass, date: string): string {
  const day = readPlainDate(date);
  const time = readPlainTime(past.start);
  if (day === undefined || time === undefined) throw new Error(`not a start: ${date} ${past.start}`);
  return zonedStart(day, time, ZONE).add({ minutes: past.minutes }).toInstant().toString();
}

function dayBefore(date: string, days: number): string {
  const day = dayNumberOf(date);
  if (day === undefined) throw new Error(`not a date: ${date}`);
  return dateOfDay(day - days);
}
