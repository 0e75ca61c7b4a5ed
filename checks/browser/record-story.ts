import type { KeptStream, PracticeWhole } from "#app/ports";

/** What a story does with the record beside the page, as the register would. */
export async function recordOf(address: string, practice: string) {
  const base = `${address}/api/practices/${practice}`;
  const get = async (path: string) => (await fetch(`${base}${path}`)).text();
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own server
  const { classes } = JSON.parse(await get("")) as PracticeWhole;
  let count = 1000;
  const act = async (what: object): Promise<void> => {
    count += 1;
    const body = JSON.stringify({ action: `story-${practice}-${count}`, by: "teacher", do: what });
    const headers = { "content-type": "application/json" };
    const reply = await fetch(`${base}/record`, { method: "POST", headers, body });
    if (!reply.ok) throw new Error(`${body}: ${await reply.text()}`);
  };
  const openDates = (id: string, dates: readonly string[], other: object = {}) =>
    act({
      kind: "open sessions",
      class: id,
      name: classes.find((it) => it.id === id)?.document.name ?? id,
      sessions: dates.map((date) => ({ id: `story-${id}.${date}`, date, starts: `${date}T19:00:00Z` })),
      ...usual,
      ...other,
    });
  const passOf = async (person: string): Promise<string> => {
    // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own server
    const read = JSON.parse(await get(`/record/passes?holder=${person}`)) as {
      readonly streams: readonly KeptStream[];
    };
    return read.streams[0]?.stream.slice("pass/".length) ?? "";
  };
  /** everything that registers, exports and books are made of */
  const everything = (person: string) =>
    Promise.all(
      [
        "/record/people",
        "/record/passes",
        "/record/evenings?from=2020-01-01T00:00:00Z&until=2100-01-01T00:00:00Z",
        "/record/postings?from=2020-01-01&until=2100-01-01",
        `/record/people/${person}/export`,
      ].map(get),
    );
  const aPersonWithPass = async (person: string, id: string) => {
    const [first = "", second = "", third = ""] = weeksAhead(3);
    await openDates(id, [first, second, third]);
    await act({ kind: "meet person", person, contact: { name: "Perran Oakley-Thirsk" } });
    const sold = { pass: "pass-axe", holder: person, on: first, useBy: third, valid: [id] };
    await act({ ...aPass, ...sold });
    const people = [{ place: "pl-axe", person, how: "pass", pass: "pass-axe" }];
    await act({ kind: "take place", session: `story-${id}.${second}`, people });
    await act({ kind: "consent", person, to: "health", given: true, wording: "A short note may be kept." });
    const note = "left knee: no kneeling without a blanket";
    await act({ kind: "health form", person, speak: true, reviewBy: "2099-01-01", note });
  };
  return { classes, act, openDates, passOf, everything, aPersonWithPass };
}

/** So many dates, a week apart, from tomorrow on. */
export function weeksAhead(count: number): readonly string[] {
  const day = 24 * 60 * 60 * 1000;
  return Array.from({ length: count }, (_, week) =>
    new Date(Date.now() + day * (1 + 7 * week)).toISOString().slice(0, 10),
  );
}

const usual = {
  zone: "Europe/London",
  minutes: 75,
  hall: null,
  capacity: 16,
  posted: 60,
  currency: "GBP",
  single: 1000,
  concession: 800,
  notice: { kind: "elapsed", hours: 24 },
  firstLateWaived: true,
};

const aPass = {
  kind: "sell pass",
  form: "pass",
  name: "Pass of 10",
  size: 10,
  price: 8500,
  currency: "GBP",
  paid: "later",
  terms: { perClassOnRefund: 1000, transferable: true, pauses: null },
};
