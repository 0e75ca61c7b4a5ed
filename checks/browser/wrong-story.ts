import type { KeptStream } from "#app/ports";
import { Temporal } from "temporal-polyfill";

/** A practice whose Thursday class meets on a day some days from now, with its dates in the record. */
export type ClassAhead = {
  readonly practice: string;
  readonly session: string;
  /** the dates of the class from that day on, ISO */
  readonly dates: readonly string[];
  readonly act: (what: object) => Promise<void>;
  readonly state: (stream: string) => Promise<Readonly<Record<string, unknown>>>;
  readonly classDocument: () => Promise<{
    readonly year: { readonly closures: readonly { from: string }[] };
  }>;
  /** sums of the books by account, in minor units */
  readonly books: () => Promise<Readonly<Record<string, number>>>;
  /** everything that the record and the books answer, as text */
  readonly everything: () => Promise<string>;
};

/** The class is Thursday beginners of the demo, at 10.00, in a hall whose evening costs 27.00. */
export async function classAhead(address: string, practice: string, days: number): Promise<ClassAhead> {
  const base = `${address}/api/practices/${practice}`;
  await ask(`${address}/api/practices`, "POST", {
    action: `begin-${practice}`,
    id: practice,
    start: "demo-marlsford",
  });
  const day = Temporal.Now.plainDateISO("Europe/London").add({ days });
  const dates = Array.from({ length: 16 }, (_, week) => day.add({ weeks: week }).toString());
  await shapeClass(base, day);
  let count = 0;
  const act = async (what: object) => {
    count += 1;
    await ask(`${base}/record`, "POST", { action: `story-action-${count}`, do: what });
  };
  await act(opened(dates));
  const streams = async (path: string): Promise<readonly KeptStream[]> =>
    (await ask(`${base}/record/${path}`, "GET")).streams;
  const stretch = `evenings?from=${dates[0]}T00:00:00Z&until=${dates[1]}T00:00:00Z`;
  return {
    practice,
    session: `thursday-beginners.${dates[0]}`,
    dates,
    act,
    state: async (name) => {
      const all = [...(await streams(stretch)), ...(await streams("passes")), ...(await streams("people"))];
      const found = all.find(({ stream }) => stream === name);
      if (found === undefined) throw new Error(`not there: ${name}`);
      // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the test names the kind
      return found.state as Readonly<Record<string, unknown>>;
    },
    classDocument: async () => {
      const whole = await ask(base, "GET");
      return whole.classes.find((it: { id: string }) => it.id === "thursday-beginners").document;
    },
    books: async () => {
      const { postings } = await ask(`${base}/record/postings?from=2020-01-01&until=2099-12-31`, "GET");
      const sums: Record<string, number> = {};
      for (const { account, commodity, amount } of postings)
        if (commodity === "GBP") sums[account] = (sums[account] ?? 0) + amount;
      return sums;
    },
    everything: async () => {
      const parts = [stretch, "people", "passes", "postings?from=2020-01-01&until=2099-12-31"];
      return JSON.stringify(await Promise.all(parts.map((it) => ask(`${base}/record/${it}`, "GET"))));
    },
  };
}

/** A single at 10.00 of which 2.30 goes on each head leaves 7.70; an hour and a half at 18.00 is 27.00. */
async function shapeClass(base: string, day: Temporal.PlainDate): Promise<void> {
  const whole = await ask(base, "GET");
  const known = whole.classes.find((it: { id: string }) => it.id === "thursday-beginners");
  const hall = whole.halls.find((it: { id: string }) => it.id === "quay-street-mission-room");
  const hire = { perHour: "18.00", incrementMinutes: 30, minimumMinutes: 30 };
  await ask(`${base}/halls/${hall.id}`, "PUT", {
    action: "hall-for-story",
    from: hall.version,
    document: { ...hall.document, hire },
  });
  const year = { from: day.subtract({ weeks: 8 }), until: day.add({ weeks: 15 }) };
  await ask(`${base}/classes/${known.id}`, "PUT", {
    action: "class-for-story",
    from: known.version,
    document: {
      ...known.document,
      weekday: day.dayOfWeek,
      minutes: { setUp: 15, class: 60, packDown: 15, travel: 0, preparation: 0, admin: 0 },
      costs: { travel: "0.00", music: "0.00", cover: "0.00", other: "0.00", perHead: "2.30" },
      prices: { single: "10.00", passes: [] },
      mix: { single: 1 },
      planning: undefined,
      outlook: undefined,
      guesses: [],
      year: { from: String(year.from), until: String(year.until), closures: [], fixedPerYear: "0.00" },
    },
  });
}

function opened(dates: readonly string[]) {
  return {
    kind: "open sessions",
    class: "thursday-beginners",
    name: "Thursday beginners",
    sessions: dates.map((date) => ({
      id: `thursday-beginners.${date}`,
      date,
      starts: `${date}T18:30:00Z`,
    })),
    zone: "Europe/London",
    minutes: 60,
    hall: "quay-street-mission-room",
    capacity: 15,
    posted: 30,
    currency: "GBP",
    single: 1000,
    concession: 800,
    notice: { kind: "elapsed", hours: 24 },
    firstLateWaived: true,
  };
}

async function ask(url: string, method: string, body?: object) {
  const answer = await fetch(url, {
    method,
    headers: { "content-type": "application/json" },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  const told = await answer.json();
  if (!answer.ok) throw new Error(`${method} ${url}: ${JSON.stringify(told)}`);
  return told;
}

/** So many people, each with a place held in the way given. */
export async function booked(
  { act, session }: ClassAhead,
  names: readonly string[],
  how: (person: string) => Promise<object>,
): Promise<void> {
  for (const name of names) {
    const person = name.toLowerCase().replaceAll(" ", "-");
    await act({ kind: "meet person", person, contact: { name, phone: "01632 960555" } });
    const taken = await how(person);
    await act({ kind: "take place", session, people: [{ place: `pl-${person}`, person, ...taken }] });
  }
}
