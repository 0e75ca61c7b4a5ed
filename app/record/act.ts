import { readIds } from "#app/actions";
import type { Actor, RecordStore } from "#app/ports";
import { type MadeAt, madeAt } from "#core/notice";
import { bad, type Locale, problem, readDocument, type Result } from "#core/words";
import type { Told } from "./doing.ts";
import { instantSchema } from "./doings/ask-parts.ts";
import { doAskSchema } from "./doings/index.ts";
import { doJobs, type Job } from "./do-jobs.ts";
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
  const arrived = recorder.now();
  const moment = readMoment(order, arrived);
  if (!moment.ok) return moment;
  const { practice, action, by, locale } = order;
  const job: Job = { action, by, locale, ask: asked.value.value, arrived, ...moment.value };
  return recorder.inTurn(practice, job, (jobs: readonly Job[]) => doJobs(recorder, practice, jobs));
}

function readMoment({ device }: ActOrder, arrived: string): Result<MadeAt> {
  const told = device ?? { made: arrived, sent: arrived };
  if (![told.made, told.sent].every((it) => instantSchema.safeParse(it).success))
    return bad(timeUnreadable());
  const times = { deviceMade: told.made, deviceSent: told.sent, serverReceived: arrived };
  return { ok: true, value: madeAt(times) };
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
