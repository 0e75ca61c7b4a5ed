import type { ActAsk, KeptStream, StreamsAnswer } from "#app/ports";
import type { Told } from "#app/record";
import { good, type Locale, type Result } from "#core/words";
import { ask } from "../api/ask.ts";
import { newId } from "../api/new-id.ts";
import { deviceShelf } from "../drafts/device-shelf.ts";
import { keepOnDevice, readOnDevice } from "../drafts/on-device.ts";
import { DAYS_KEPT, forDevice } from "./for-device.ts";
import { emptyOutbox, type Outbox, type Queued } from "./outbox.ts";

/** The streams as the server told them last, with what it kept of ours since. */
export type Seen = { readonly streams: readonly KeptStream[]; readonly readAt: string | null };

/** What the record on this device needs of the world. */
export type RecordWorld = {
  readonly send: (queued: Queued, locale: Locale) => Promise<Result<Told>>;
  /** the evenings near now; with `all` everybody and every pass too */
  readonly read: (all: boolean) => Promise<Result<readonly KeptStream[]>>;
  readonly readDay: (date: string) => Promise<Result<readonly KeptStream[]>>;
  readonly outbox: () => Outbox;
  /** false where the device refuses to keep it */
  readonly keepOutbox: (outbox: Outbox) => boolean;
  readonly seen: () => Promise<Seen | null>;
  readonly keepSeen: (seen: Seen) => Promise<unknown>;
  readonly newId: () => string;
  readonly now: () => string;
};

/** After so many milliseconds without an answer there is no signal; what was sent is sent again under its id. */
const PATIENCE = 12_000;

const shelf = deviceShelf("hallful-record", "seen");

/** Under this key actions of a practice wait on the device: on its own shelf, because a tap must be kept at once. */
export const outboxKey = (practice: string) => `record/${practice}`;

/** The server of this page and the storage of this browser. */
export function recordWorld(practice: string): RecordWorld {
  const start = `/api/practices/${encodeURIComponent(practice)}/record`;
  const streamsAt = async (path: string) => {
    const answer = await ask(`${start}/${path}`, { method: "GET", patience: PATIENCE });
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own server, same contract
    return answer.ok ? good((answer.value as StreamsAnswer).streams) : answer;
  };
  return {
    send: async ({ action, made, do: asked }, locale) => {
      const body: ActAsk = { action, locale, device: { made, sent: now() }, do: asked };
      const answer = await ask(start, { method: "POST", body, patience: PATIENCE });
      // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- as above
      return answer.ok ? good(answer.value as Told) : answer;
    },
    read: async (all) => {
      const paths = [`evenings?${stretch(now())}`, ...(all ? ["people", "passes"] : [])];
      const answers = await Promise.all(paths.map(streamsAt));
      const bad = answers.find((it) => !it.ok);
      return bad ?? good(overlaid(answers.flatMap((it) => (it.ok ? [it.value] : []))));
    },
    readDay: (date) => {
      // a day is somewhere between fourteen hours before and after it in UTC
      const from = new Date(Date.parse(date) - 14 * 3_600_000).toISOString();
      const until = new Date(Date.parse(date) + 38 * 3_600_000).toISOString();
      return streamsAt(`evenings?from=${from}&until=${until}`);
    },
    outbox: () => readOutbox(practice),
    keepOutbox: (outbox) => keepOnDevice(outboxKey(practice), outbox),
    seen: async () => seenIn(await shelf("readonly", (it) => it.get(practice))),
    keepSeen: ({ streams, readAt }) => {
      const kept = { streams: forDevice(streams, now()), readAt };
      return shelf("readwrite", (it) => it.put(kept, practice));
    },
    newId,
    now,
  };
}

function now(): string {
  return new Date().toISOString();
}

/** What waits of a practice on this device; nothing where nothing was ever done. */
export function readOutbox(practice: string): Outbox {
  const read = readOnDevice(outboxKey(practice));
  if (typeof read !== "object" || read === null) return emptyOutbox;
  return { ...emptyOutbox, ...read };
}

/** The streams that this device kept of a practice. */
export async function readSeen(practice: string): Promise<Seen | null> {
  return seenIn(await shelf("readonly", (it) => it.get(practice)));
}

function seenIn(answer: { readonly value: unknown } | null): Seen | null {
  const value = answer?.value;
  if (typeof value !== "object" || value === null || !("streams" in value)) return null;
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- written by keepSeen
  return value as Seen;
}

function stretch(moment: string): string {
  const at = Date.parse(moment);
  const days = DAYS_KEPT * 86_400_000;
  return `from=${new Date(at - days).toISOString()}&until=${new Date(at + days).toISOString()}`;
}

/** Later lists over earlier ones. */
export function overlaid(lists: readonly (readonly KeptStream[])[]): readonly KeptStream[] {
  return [...new Map(lists.flat().map((it) => [it.stream, it])).values()];
}
