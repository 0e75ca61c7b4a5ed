import type { KeptStream } from "#app/ports";
import type { DoAskInput, Told } from "#app/record";
import { good, type Locale, type Problem, type Result } from "#core/words";
import { acted, actedAll } from "./acted.ts";
import {
  type Outbox,
  type Queued,
  withAgain,
  withKept,
  withoutRefused,
  withQueued,
  withRefused,
} from "./outbox.ts";
import { overlaid, type RecordWorld, type Seen } from "./record-world.ts";

/** How long a silent server is left alone before the next try, in milliseconds. */
const NEXT_TRY = 15_000;

/** The record as it stands on this device. */
export type RecordHere = {
  /** false until this device's own copy, or the server, was read */
  readonly ready: boolean;
  /** the server's streams with all that waits done on top */
  readonly streams: readonly KeptStream[];
  /** when the server last told, ISO; null: never */
  readonly readAt: string | null;
  /** the last try found no signal, or no server */
  readonly silent: boolean;
  readonly outbox: Outbox;
  /** whether what waits is at least on the device */
  readonly onDevice: boolean;
};

export type RecordKeeper = ReturnType<typeof recordKeeperOf>;

/**
 * Keeps the record of one practice on this device: shows at once what is done, sends it in order, each once, when
 * there is signal, and then takes what the server says for true, with what still waits on top.
 */
export function recordKeeperOf(world: RecordWorld, locale: () => Locale) {
  let seen: Seen = { streams: [], readAt: null };
  let here: RecordHere = {
    ready: false,
    streams: [],
    readAt: null,
    silent: false,
    outbox: world.outbox(),
    onDevice: true,
  };
  let running: Promise<void> | null = null;
  let wantedAgain = false;
  let everybody = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const listeners = new Set<() => void>();

  const put = (part: Partial<RecordHere>) => {
    here = { ...here, ...part };
    for (const listener of listeners) listener();
  };
  // read anew at every change: another window of this practice has the same outbox
  const change = (recipe: (outbox: Outbox) => Outbox) => {
    const outbox = recipe(world.outbox());
    const onDevice = world.keepOutbox(outbox);
    put({ outbox: onDevice ? outbox : recipe(here.outbox), onDevice });
  };
  const hear = (streams: readonly KeptStream[], readAt: string | null) => {
    seen = { streams: overlaid([seen.streams, streams]), readAt };
    put({ ready: true, readAt, streams: actedAll(seen.streams, here.outbox.queue, locale()) });
  };
  const open = async () => {
    const kept = await world.seen();
    if (kept !== null && !here.ready) hear(kept.streams, kept.readAt);
  };
  const opening = open();
  const later = () => {
    clearTimeout(timer);
    timer = setTimeout(() => void sync(), NEXT_TRY);
  };

  const sendFirst = async (queued: Queued): Promise<boolean> => {
    const answer = await world.send(queued, locale());
    if (!answer.ok && isSilence(answer.problems)) return false;
    if (here.silent) put({ silent: false });
    if (!answer.ok) {
      change((outbox) => withRefused(outbox, queued, answer.problems));
      return true;
    }
    const after = acted(seen.streams, queued, locale());
    if (after.ok) seen = { ...seen, streams: after.value.streams };
    // first kept, then no longer waiting: a page closed in between shows it twice asked and once done
    await world.keepSeen(seen);
    change((outbox) => withKept(outbox, queued.action, otherwiseOf(queued, answer.value)));
    return true;
  };
  const read = async (): Promise<boolean> => {
    const answer = await world.read(!everybody);
    if (!answer.ok) return false;
    everybody = true;
    hear(answer.value, world.now());
    await world.keepSeen(seen);
    return true;
  };
  const waits = () => world.outbox().queue[0] ?? here.outbox.queue[0];
  /** Sends what waits, in order, until nothing does or nobody answers; then reads. */
  const once = async (): Promise<boolean> => {
    await opening;
    let heard = true;
    do {
      for (let next = waits(); heard && next !== undefined; next = waits()) heard = await sendFirst(next);
      if (heard) heard = await read();
    } while (heard && waits() !== undefined);
    put({ silent: !heard });
    return heard;
  };
  const run = async (): Promise<void> => {
    clearTimeout(timer);
    let heard = false;
    try {
      do {
        wantedAgain = false;
        heard = await once();
      } while (wantedAgain);
    } finally {
      running = null;
      if (!heard) later();
    }
  };
  /** One at a time; asked again while it runs it runs once more, because the signal may have come back meanwhile. */
  const sync = (): Promise<void> => {
    wantedAgain = running !== null;
    running ??= run();
    return running;
  };

  return {
    read: () => here,
    subscribe: (listener: () => void) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    /** Does it at once on this device and sends it as soon as may be; what cannot be done at all is refused here. */
    act: (asked: DoAskInput, words: string): Result<Told> => {
      const queued = { action: world.newId(), made: world.now(), do: asked, words };
      const after = acted(here.streams, queued, locale());
      if (!after.ok && after.problems.some(({ code }) => code !== "not-at-hand")) return after;
      const outcome = after.ok ? after.value.told.outcome : undefined;
      change((outbox) => withQueued(outbox, { ...queued, outcome }));
      if (after.ok) put({ streams: after.value.streams });
      void sync();
      return after.ok ? good(after.value.told) : good({ says: ["Kept on this device until it is sent."] });
    },
    /** What it would come to now, without doing it. */
    would: (asked: DoAskInput): Result<Told> => {
      const after = acted(here.streams, { made: world.now(), do: asked }, locale());
      return after.ok ? good(after.value.told) : after;
    },
    /** Sends and reads now; with `all` everybody and every pass too. */
    sync: (all = false): Promise<void> => {
      if (all) everybody = false;
      return sync();
    },
    /** Reads one day that is too far away to be kept on the device. */
    look: async (date: string): Promise<Result<null>> => {
      const answer = await world.readDay(date);
      if (!answer.ok) return answer;
      hear(answer.value, seen.readAt);
      return good(null);
    },
    again: (action: string) => {
      change((outbox) => withAgain(outbox, action));
      put({ streams: actedAll(seen.streams, here.outbox.queue, locale()) });
      void sync();
    },
    putAside: (action: string) => change((outbox) => withoutRefused(outbox, action)),
    /** Another window changed what waits. */
    elsewhere: () => {
      const before = here.outbox.queue.length;
      put({ outbox: world.outbox() });
      put({ streams: actedAll(seen.streams, here.outbox.queue, locale()) });
      // what went from there is on the server, and here only once it is read
      if (here.outbox.queue.length < before) void sync();
    },
    lost: () => put({ silent: true }),
  };
}

// no signal, a page of somebody else's in between, or a server that cannot keep anything just now
const silences = new Set([
  "server-silent",
  "server-unreadable",
  "record-busy",
  "store-busy",
  "disk-full",
  "store-read-only",
  "too-many-requests",
]);

function isSilence(problems: readonly Problem[]): boolean {
  return problems.every(({ code }) => silences.has(code));
}

function otherwiseOf({ action, words, outcome }: Queued, told: Told) {
  const same = told.outcome === outcome && told.outcome !== "came over";
  return same ? null : { action, words, says: told.says };
}
