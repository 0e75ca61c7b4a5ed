import { readIds } from "#app/actions";
import type { Actor, KeptStream, RecordCommit, RecordStore, StreamName } from "#app/ports";
import { type MadeAt, madeAt } from "#core/notice";
import { bad, good, type Locale, plainWriter, problem, readDocument, type Result } from "#core/words";
import { type Desk, deskWith, type Setting } from "./desk.ts";
import type { Told } from "./doing.ts";
import { type DoAsk, doAskSchema, doingOf } from "./doings/index.ts";
import type { InTurn } from "./in-turn.ts";

/** What the record needs of the world. */
export type Recorder = {
  readonly store: RecordStore;
  /** ISO 8601 instant, UTC */
  readonly now: () => string;
  readonly inTurn: InTurn;
  /** closes a note of health under the key of this server */
  readonly seal: (practice: string, person: string, text: string) => string;
};

export type ActOrder = {
  readonly practice: string;
  /** an id made by whoever asks; the same action twice is done once */
  readonly action: string;
  readonly by: Actor;
  /** whose words and dates the answer is in */
  readonly locale: Locale;
  /** by the clock of the device: when it was done and when it was sent; both left out where there is no device */
  readonly device?: { readonly made: string; readonly sent: string } | undefined;
  /** what is to be done, as one of the doings reads it */
  readonly do: unknown;
};

/** How often an action is decided anew when another program was first. */
const MOST_TRIES = 20;

/**
 * One action of somebody, done once and all of it: what it needs is read, a pure decision is made, and what it tells
 * is committed; when somebody else was first it is decided anew from what is there now.
 * Problems: those of the doing and of the store, "action-unreadable", "id-unreadable", "time-unreadable",
 * "record-busy".
 */
export async function act(recorder: Recorder, order: ActOrder): Promise<Result<Told>> {
  const ids = readIds(order);
  if (!ids.ok) return ids;
  const asked = readDocument(doAskSchema, order.do);
  if (!asked.ok) return asked;
  const moment = readMoment(order, recorder.now());
  if (!moment.ok) return moment;
  return recorder.inTurn(order.practice, () => tries(recorder, order, asked.value.value, moment.value));
}

async function tries(
  recorder: Recorder,
  order: ActOrder,
  ask: DoAsk,
  moment: MadeAt & { readonly arrived: string },
): Promise<Result<Told>> {
  const asked = JSON.stringify(ask);
  const before = await recorder.store.answered(order.practice, order.action, asked);
  if (!before.ok) return before;
  if (before.value !== undefined) return good(toldOf(before.value.answer));
  for (let tried = 0; tried < MOST_TRIES; tried += 1) {
    const done = await once(recorder, order, ask, asked, moment);
    if (done !== "moved") return done;
  }
  return bad(busy());
}

async function once(
  { store, seal }: Recorder,
  { practice, action, by, locale }: ActOrder,
  ask: DoAsk,
  asked: string,
  { made, arrived, sentence }: MadeAt & { readonly arrived: string },
): Promise<Result<Told> | "moved"> {
  const doing = doingOf(ask);
  const setting = { made, arrived, by, writer: plainWriter(locale) };
  const read = await readAll(store, practice, (known) => doing.needs(ask, known), setting);
  if (!read.ok) return read;
  const { desk, written } = deskWith(read.value.streams, read.value.asked, setting);
  const decided = doing.decide(ask, desk);
  if (!decided.ok) return decided;
  const told =
    sentence === "" ? decided.value : { ...decided.value, says: [...decided.value.says, sentence] };
  const work = written();
  const sealed = work.sealed.map(({ person, text }) => ({
    person,
    text: text === null ? null : seal(practice, person, text),
  }));
  const commit: RecordCommit = { practice, action, asked, made, arrived, by, ...work, sealed, answer: told };
  const appended = await store.append(commit);
  if (!appended.ok) return appended;
  switch (appended.value.outcome) {
    case "done":
      return good(told);
    case "done before":
      return good(toldOf(appended.value.answer));
    case "moved":
      return "moved";
  }
}

/** Reads what is needed, and what that shows to be needed, until nothing new is. */
async function readAll(
  store: RecordStore,
  practice: string,
  needs: (known: Desk) => readonly StreamName[],
  setting: Setting,
): Promise<Result<{ readonly streams: readonly KeptStream[]; readonly asked: ReadonlySet<StreamName> }>> {
  let read: readonly KeptStream[] = [];
  const asked = new Set<StreamName>();
  for (;;) {
    const missing = [...new Set(needs(deskWith(read, asked, setting).desk))].filter(
      (name) => !asked.has(name),
    );
    if (missing.length === 0) return good({ streams: read, asked });
    const more = await store.streams(practice, missing);
    if (!more.ok) return more;
    missing.forEach((name) => asked.add(name));
    read = [...read, ...more.value];
  }
}

function readMoment({ device }: ActOrder, arrived: string): Result<MadeAt & { readonly arrived: string }> {
  const told = device ?? { made: arrived, sent: arrived };
  if (![told.made, told.sent].every((it) => INSTANT.test(it))) return bad(timeUnreadable());
  const times = { deviceMade: told.made, deviceSent: told.sent, serverReceived: arrived };
  return good({ ...madeAt(times), arrived });
}

const INSTANT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d{1,9})?Z$/;

function toldOf(answer: unknown): Told {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- only what was told here is kept as an answer
  return answer as Told;
}

function timeUnreadable() {
  const says = "The time at which this was done cannot be read.";
  return problem(
    "time-unreadable",
    "device.made",
    says,
    "Give an instant in UTC, like 2026-12-01T18:58:00Z.",
  );
}

function busy() {
  const says = "Others were writing the same session all the time.";
  return problem("record-busy", "action", says, "Nothing was changed. Do it again; it is done once only.");
}
