import type { KeptStream } from "#app/ports";
import type { SessionState } from "#core/roll";
import type { Page } from "playwright-core";
import { Temporal } from "temporal-polyfill";

/** The practice of a story about one evening, with a class that meets later today. */
export type Evening = {
  readonly practice: string;
  /** of the session of tonight */
  readonly session: string;
  /** does something with the record as another device would; answers what was told */
  readonly act: (what: object) => Promise<{ readonly outcome?: string; readonly says?: readonly string[] }>;
  /** tonight's session as the server has it */
  readonly kept: () => Promise<SessionState>;
  /** sums of the books by account, in minor units */
  readonly books: () => Promise<Readonly<Record<string, number>>>;
};

/** A demo practice whose Tuesday class meets later today, as the class sheet would have it. */
export async function eveningOn(address: string, practice: string): Promise<Evening> {
  const ask = asker(address);
  const start = `/api/practices/${practice}`;
  await ask("POST", "/api/practices", { action: `begin-${practice}`, id: practice, start: "demo-marlsford" });
  const at = laterToday(Temporal.Now.zonedDateTimeISO("Europe/London"));
  const whole = await ask("GET", start);
  const known = whole.classes.find((it: { id: string }) => it.id === "tuesday-evening");
  const document = {
    ...known.document,
    name: "Slow Tuesday",
    weekday: at.dayOfWeek,
    start: at.toPlainTime().toString({ smallestUnit: "minute" }),
    year: {
      ...known.document.year,
      from: at.toPlainDate().toString(),
      until: at.toPlainDate().add({ days: 120 }).toString(),
      closures: [],
    },
  };
  const change = { action: `class-${practice}`, from: known.version, document };
  await ask("PUT", `${start}/classes/tuesday-evening`, change);
  let count = 0;
  const session = `tuesday-evening.${at.toPlainDate().toString()}`;
  return {
    practice,
    session,
    act: (what) => {
      count += 1;
      return ask("POST", `${start}/record`, { action: `elsewhere-${count}`, do: what });
    },
    kept: async () => {
      const from = at.subtract({ hours: 1 }).toInstant().toString();
      const until = at.add({ hours: 1 }).toInstant().toString();
      const answer = await ask("GET", `${start}/record/evenings?from=${from}&until=${until}`);
      const streams: readonly KeptStream[] = answer.streams;
      const found = streams.find(({ stream }) => stream === `session/${session}`);
      if (found === undefined) throw new Error(`no such session: ${session}`);
      // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the name holds the kind
      return found.state as SessionState;
    },
    books: async () => {
      const answer = await ask("GET", `${start}/record/postings?from=2020-01-01&until=2099-12-31`);
      const sums: Record<string, number> = {};
      for (const { account, amount } of answer.postings) sums[account] = (sums[account] ?? 0) + amount;
      return sums;
    },
  };
}

/** Two hours from now, or the end of today: money of today is then in the books of the same day. */
function laterToday(now: Temporal.ZonedDateTime): Temporal.ZonedDateTime {
  const later = now.add({ hours: 2 });
  return later.day === now.day ? later : now.withPlainTime("23:58");
}

function asker(address: string) {
  return async (method: string, path: string, body?: object) => {
    const answer = await fetch(address + path, {
      method,
      headers: { "content-type": "application/json" },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    const told = await answer.json();
    if (!answer.ok) throw new Error(`${method} ${path}: ${JSON.stringify(told)}`);
    return told;
  };
}

/** The dates of the class go into the record from its own page, on this many mats. */
export async function openDates(page: Page, address: string, evening: Evening, mats: number) {
  await page.goto(`${address}/practice/${evening.practice}/classes/tuesday-evening`);
  const part = page.getByRole("region", { name: "The dates in the record" });
  await part.getByRole("button", { name: "Set the mats and the notice" }).click();
  const box = part.getByRole("textbox", { name: "Mats for each date" });
  // the class sheet's own answer for Tithe Barn Hall: 18 mats owned, 16 wanted
  await part.getByText("mats", { exact: true }).waitFor();
  await page.waitForFunction(
    () => document.querySelector<HTMLInputElement>("[data-dates] input")?.value === "16",
  );
  await box.fill(String(mats));
  await part.getByRole("button", { name: "Put these dates into the record" }).click();
  await part.getByText(/dates of Slow Tuesday are in the record\./).waitFor();
  // what was said is on the page; bookings come from elsewhere and need it on the server
  for (let tries = 0; tries < 100; tries += 1) {
    if (await evening.kept().then(Boolean, () => false)) return;
    await page.waitForTimeout(50);
  }
  throw new Error("the dates did not reach the server");
}

/** So many people with a place tonight: every third has paid, the second has a pass of ten. */
export async function bookings({ act, session }: Evening, names: readonly string[]): Promise<void> {
  for (const [index, name] of names.entries()) {
    const person = `p-${index}`;
    await act({ kind: "meet person", person, contact: { name } });
    if (index === 1) await act(passOf(person));
    const how = index === 1 ? { how: "pass", pass: "ten" } : { how: "single" };
    const paid = index % 3 === 0 ? { paid: { amount: 950, by: "bank" } } : {};
    await act({ kind: "take place", session, people: [{ place: `pl-${index}`, person, ...how, ...paid }] });
  }
}

function passOf(holder: string) {
  return {
    kind: "sell pass",
    pass: "ten",
    form: "pass",
    holder,
    name: "Ten classes",
    on: "2026-09-01",
    size: 10,
    price: 8200,
    currency: "GBP",
    paid: "card",
    useBy: "2099-12-31",
    valid: "all",
    terms: { perClassOnRefund: null, transferable: false, pauses: 1 },
  };
}

export const names = [
  "Ana Brook",
  "Ben Hale",
  "Cora Finch",
  "Dov Amber",
  "Elin Marsh",
  "Fay Oakes",
  "Gil Tarn",
  "Hana Wold",
  "Ivo Crane",
  "Jun Pell",
  "Kit Rowe",
  "Lena Holt",
  "Mo Sands",
  "Nell Grove",
  "Otto Birch",
  "Pia Lark",
  "Quin Dell",
  "Rosa Thorn",
  "Sefton Vale",
  "Tova Wren",
] as const;
