import type { KeptPosting, RecordCommit, RecordStore, StreamName } from "#app/ports";
import type { Doer } from "./register-people.ts";

export const MATS = 16;

/** The names that stand in the evening that is copied; every copy gets its own in their place. */
const NAMED = "past.s00000";
const DATED = "2026-12-08";

/**
 * Fills a record with past evenings of sixteen places, each held, paid and marked: one is made by acting, the rest are
 * copies of what that left, under their own names and dates. Answers the number of places.
 */
export async function fillPast(
  store: RecordStore,
  doer: Doer,
  practice: string,
  places: number,
): Promise<number> {
  await doer.open([{ id: NAMED, date: DATED, starts: `${DATED}T18:30:00Z` }]);
  for (let mat = 0; mat < MATS; mat += 1) {
    const place = `${NAMED}.p${mat}`;
    // oxlint-disable no-await-in-loop -- one person after the other
    await doer.take(NAMED, place, mat);
    await doer.mark(NAMED, place);
    // oxlint-enable no-await-in-loop
  }
  const evening = await read(store, practice);
  const evenings = Math.ceil(places / MATS);
  for (let number = 1; number < evenings; number += 1) {
    // oxlint-disable-next-line no-await-in-loop -- one evening after the other
    const done = await store.append(copyOf(evening, practice, number));
    if (!done.ok || done.value.outcome !== "done") throw new Error(JSON.stringify(done));
  }
  return evenings * MATS;
}

type Evening = {
  readonly state: unknown;
  readonly sort: string;
  readonly belongs: string;
  readonly events: readonly unknown[];
  readonly postings: readonly Omit<KeptPosting, "action" | "line">[];
};

async function read(store: RecordStore, practice: string): Promise<Evening> {
  const stream: StreamName = `session/${NAMED}`;
  const [streams, events, postings] = [
    await store.streams(practice, [stream]),
    await store.events(practice, stream),
    await store.postings(practice, { from: "2000-01-01", until: "2100-01-01" }),
  ];
  if (!streams.ok || !events.ok || !postings.ok || streams.value[0] === undefined)
    throw new Error("no evening to copy");
  const { state, sort, belongs } = streams.value[0];
  const lines = postings.value
    .filter(({ about }) => about === stream)
    .map(({ date, account, commodity, amount, about }) => ({ date, account, commodity, amount, about }));
  return { state, sort, belongs, events: events.value.map(({ body }) => body), postings: lines };
}

function copyOf(evening: Evening, practice: string, number: number): RecordCommit {
  const name = `past.s${String(number).padStart(5, "0")}`;
  const day = new Date(Date.UTC(2024, 0, 2 + (number % 700))).toISOString().slice(0, 10);
  const text = JSON.stringify(evening).replaceAll(NAMED, name).replaceAll(DATED, day);
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the text is that of an evening
  const { state, sort, belongs, events, postings } = JSON.parse(text) as Evening;
  return {
    practice,
    action: `copy-${name}`,
    asked: name,
    made: `${day}T20:00:00Z`,
    arrived: `${day}T20:00:00Z`,
    by: "teacher",
    streams: [{ stream: `session/${name}`, from: 0, belongs, sort, state, events }],
    postings,
    sealed: [],
    erased: [],
    answer: { says: [] },
  };
}
