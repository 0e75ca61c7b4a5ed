import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type DataPlace, openStore } from "#adapters/store";
import { openPracticeIn, realPostgres } from "#testing";
import type { Clock } from "./clock.ts";
import { type BareStore, bareFile, bareDatabase } from "./register-bare.ts";
import { fillPast, MATS } from "./register-past.ts";
import { type Doer, doerOn } from "./register-people.ts";
import { type Pace, paceOf } from "./register-pace.ts";

export type RegisterOrder = {
  /** places of past evenings that are there already */
  readonly past: number;
  /** people who act at the same time, each with the next action as soon as the one before is answered */
  readonly users: number;
  /** of all users together, in each of the rounds */
  readonly actions: number;
  readonly rounds: number;
  /** the name of a store, "" for both */
  readonly only: string;
};

export type StoreMeasured = {
  readonly store: "SQLite" | "PostgreSQL";
  readonly past: number;
  readonly fillingSeconds: number;
  /** a place taken and paid, or a name marked: decided, and on disk with its events and postings */
  readonly actions: Pace;
  /** as many transactions of one row each in the same database, by the same number of users at once */
  readonly bare: Pace;
  /** actions a second over bare transactions a second */
  readonly share: number;
};

const PRACTICE = "oriel";

/** Both stores, one after the other; rounds of actions and of bare transactions take turns. */
export async function measureStores(order: RegisterOrder, clock: Clock): Promise<readonly StoreMeasured[]> {
  const folder = mkdtempSync(join(tmpdir(), "hallful-bench-"));
  const server = await realPostgres();
  try {
    const file = join(folder, "register.sqlite");
    const url = await server.emptySchema();
    const places = [
      ["SQLite", { kind: "file", file }, () => bareFile(join(folder, "bare.sqlite"))],
      ["PostgreSQL", { kind: "database", url }, async () => bareDatabase(await server.emptySchema())],
    ] as const;
    const measured: StoreMeasured[] = [];
    for (const [store, place, bare] of places) {
      if (order.only !== "" && order.only !== store) continue;
      // oxlint-disable-next-line no-await-in-loop -- one after the other, so that neither slows the other
      measured.push(await measure(store, place, await bare(), order, clock));
    }
    return measured;
  } finally {
    await server.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}

async function measure(
  store: StoreMeasured["store"],
  place: DataPlace,
  bare: BareStore,
  order: RegisterOrder,
  clock: Clock,
): Promise<StoreMeasured> {
  const opened = await openStore(place, () => "2026-12-01T12:00:00Z");
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems));
  await openPracticeIn(opened.value, PRACTICE);
  const { record } = opened.value;
  const doer = doerOn(record, PRACTICE, MATS);
  const started = clock();
  for (let person = 0; person < order.users; person += 1) await doer.meet(person);
  const past = await fillPast(record, doer, PRACTICE, order.past);
  const fillingSeconds = Math.round((clock() - started) / 100) / 10;
  const taken: number[][] = [];
  const written: number[][] = [];
  for (let round = 0; round < order.rounds; round += 1) {
    const act = await evening(doer, round, order);
    taken.push(await timed(order, clock, act));
    written.push(await timed(order, clock, (user, nth) => bare.write(`${round}-${user}-${nth}`)));
  }
  await opened.value.close();
  await bare.close();
  const [actions, peer] = [paceOf(taken), paceOf(written)];
  const share = Math.round((100 * actions.perSecond) / peer.perSecond) / 100;
  return { store, past, fillingSeconds, actions, bare: peer, share };
}

/** A user takes a place and then marks it, in evenings of which no two users' places are ever too many. */
async function evening(doer: Doer, round: number, { users, actions }: RegisterOrder) {
  const evenings = Math.ceil(actions / 2 / MATS) + 1;
  const names = Array.from({ length: evenings }, (_, number) => `round-${round}.${number}`);
  const dated = names.map((id) => ({ id, date: "2026-12-01", starts: "2026-12-01T18:30:00Z" }));
  // as many as can be opened at once
  for (let start = 0; start < dated.length; start += 400) await doer.open(dated.slice(start, start + 400));
  return (user: number, nth: number): Promise<void> => {
    const number = user + users * Math.floor(nth / 2);
    const session = names[Math.floor(number / MATS)] ?? "";
    const place = `round-${round}.p${number}`;
    return nth % 2 === 0 ? doer.take(session, place, user) : doer.mark(session, place);
  };
}

/** Milliseconds of each action, the last of all the milliseconds that all of them took together. */
async function timed(
  { users, actions }: RegisterOrder,
  clock: Clock,
  act: (user: number, nth: number) => Promise<void>,
): Promise<number[]> {
  const each = Math.floor(actions / users);
  const times: number[] = [];
  const started = clock();
  const oneUser = async (user: number) => {
    for (let nth = 0; nth < each; nth += 1) {
      const asked = clock();
      // oxlint-disable-next-line no-await-in-loop -- the next when the one before is answered
      await act(user, nth);
      times.push(clock() - asked);
    }
  };
  await Promise.all(Array.from({ length: users }, (_, user) => oneUser(user)));
  return [...times, clock() - started];
}
