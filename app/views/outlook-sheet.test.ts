import { type ClassDocument, classDocumentSchema } from "#core/class";
import { type HallDocument, hallDocumentSchema } from "#core/hall";
import { type HappenedDocument, outlookAnswer } from "#core/outlook";
import { bad, problem } from "#core/words";
import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { type OutlookSheetInput, outlookSheet } from "./outlook-sheet.ts";
import type { SheetPart } from "./sheet-part.ts";

const tuesdays: ClassDocument = classDocumentSchema.parse({
  name: "Tuesday evening",
  weekday: 2,
  start: "18:30",
  minutes: { setUp: 20, class: 60, packDown: 15, travel: 30, preparation: 15, admin: 10 },
  costs: { travel: "3.40", music: "0", cover: "0", other: "0", perHead: "0.20" },
  prices: { single: "10.00", passes: [], concession: "8.00" },
  mix: { single: 0.5, concession: 0.5 },
  heads: 8,
  year: { from: "2026-09-08", until: "2027-07-20", closures: [], fixedPerYear: "42.00" },
  guesses: ["heads"],
});

const quayStreet: HallDocument = hallDocumentSchema.parse({
  name: "Quay Street Mission Room",
  outline: [
    [0, 0],
    [8, 0],
    [8, 12],
    [0, 12],
  ],
  mat: { length: 1.8, width: 0.61 },
  gaps: { side: 0.5, end: 0.3, wall: 0.5 },
  postedCapacity: 60,
  hire: { perHour: "14.00", incrementMinutes: 30 },
});

function sessionsOf(heads: readonly number[], from = 8): HappenedDocument {
  // Tuesdays from 8 September 2026
  return {
    capacity: 12,
    sessions: heads.map((count, at) => ({
      date: Temporal.PlainDate.from("2026-08-31")
        .add({ days: from + 7 * at })
        .toString(),
      heads: count,
    })),
  };
}

const whole: OutlookSheetInput = {
  practice: { currency: "GBP", locale: "en-GB" },
  document: tuesdays,
  hall: quayStreet,
  capacity: { capacity: 12 },
  mats: 12,
  happened: sessionsOf([6, 7, 8, 8, 9, 9, 10, 9, 10, 11, 10]),
  today: "2026-11-25",
  money: (exact) => `£${(exact.valueOf() / 100).toFixed(2)}`,
};

function sheet(change: Partial<OutlookSheetInput> = {}) {
  return outlookSheet({ ...whole, ...change }, outlookAnswer);
}

function says(part: SheetPart): string {
  if (part.kind === "missing") return part.says;
  return part.kind === "ready"
    ? part.says.join(" ")
    : part.problems.map(({ code, place }) => `${code} at ${place}`).join();
}

test("a free first class is answered from the mats, the caps and the posted number of its own hall", () => {
  // published: 12 mats at 0.6 take 15
  const { opening } = sheet();
  expect(opening.kind === "ready" && [opening.accept, opening.room]).toEqual([15, 12]);
  expect(says(opening)).toContain("At the door stop at 59 people");
  expect(opening.kind === "ready" && opening.guessNames).toEqual(["how many of those accepted come"]);
  const own = sheet({
    document: { ...tuesdays, ownCap: 8, outlook: { opening: { turnUp: 0.5, paid: true } } },
  });
  expect(says(own.opening)).toContain("Accept 8");
});

test("a class that grows is kept, with reasons in money and a firm word after ten weeks with a September", () => {
  const { next, going } = sheet();
  expect(says(next)).toMatch(/^Keep the class\. The chance that it comes to the \d+ people it needs is /);
  expect(says(next)).toContain("after the notice are expected to leave £");
  expect(going.kind === "ready" && [going.held.length, going.ahead[0]?.date, going.places]).toEqual([
    11,
    "2026-12-01",
    12,
  ]);
  expect(says(going)).toContain("Learned from 11 sessions");
});

test("an opening that was planned and has not been is the first session ahead; without a plan it is an ordinary week", () => {
  const none: HappenedDocument = { capacity: 12, sessions: [] };
  const planned = { ...tuesdays, outlook: { opening: { turnUp: 0.6 } } };
  const { going } = sheet({ document: planned, happened: none });
  // 15 are accepted, 0.6 of them come
  expect(says(going)).toContain("taken for the opening, to which about 9 people come");
  expect(going.kind === "ready" && going.ahead[0]?.mean).toBeGreaterThan(7);
  const { going: ordinary } = sheet({ happened: none });
  expect(says(ordinary)).not.toContain("opening");
  const over = { ...tuesdays, outlook: { opening: { happened: { accepted: 15, came: 8 } } } };
  expect(says(sheet({ document: over, happened: none }).going)).not.toContain("opening");
  expect(says(sheet({ document: planned }).going)).toContain(
    "The first session is taken as the opening: its 6 people",
  );
});

test("under four sessions nothing is advised, and that is said", () => {
  const { next } = sheet({ happened: sessionsOf([6, 7, 8], 10) });
  expect(says(next)).toMatch(
    /^Too early to say whether to keep it: 3 sessions are written down, and below 4/,
  );
  expect(next.kind === "ready" && next.notices).toEqual([]);
});

test("without an intake month and ten weeks the advice is early, and says what is lacking", () => {
  // six sessions from 6 October on: 28 days after 8 September
  const { next } = sheet({ happened: sessionsOf([6, 7, 8, 8, 9, 9], 36) });
  expect(says(next)).toContain("That is early: 6 sessions of 10, no January or September yet.");
});

test("a class without a record or a price is still answered as far as it goes", () => {
  const bare = sheet({ hall: null, happened: { sessions: [] } });
  expect(says(bare.demand)).toBe("No session is written down yet.");
  expect(says(bare.going)).toContain("Nothing has happened yet");
  expect(says(bare.next)).toContain("No hall is chosen yet");
  const { going, opening } = sheet({ capacity: null, mats: null, happened: { sessions: [] } });
  expect([going.kind, opening.kind]).toEqual(["missing", "missing"]);
});

test("a record that cannot be is told at its place", () => {
  const twice = sheet({ happened: { capacity: 12, sessions: [{ date: "2026-11-03", heads: 13 }] } });
  expect(says(twice.going)).toBe("heads-over-capacity at sessions[0].heads");
  expect(says(twice.demand)).toBe("heads-over-capacity at sessions[0].heads");
});

test("a record that could not be learned from keeps back only what rests on it", () => {
  const unlearned = problem("record-not-learned", "happened", "It could not.", "Look at it.");
  const kept = outlookSheet(whole, () => bad(unlearned));
  expect([kept.opening.kind, kept.demand.kind]).toEqual(["ready", "ready"]);
  expect(says(kept.going)).toBe("record-not-learned at sessions");
  expect(says(kept.next)).toBe("record-not-learned at sessions");
});

test("a day that is there twice is told in words", () => {
  const sessions = [
    { date: "2026-11-03", heads: 9 },
    { date: "2026-11-03", heads: 8 },
  ];
  const { demand, going } = sheet({ happened: { capacity: 12, sessions } });
  for (const part of [demand, going]) {
    expect(part.kind === "unsound" && part.problems[0]?.says).toBe("3 November 2026 is there twice.");
  }
});

test("after the end of its year a class is looked at in ordinary weeks", () => {
  const { going, next } = sheet({ today: "2027-08-01" });
  expect(going.kind === "ready" && [going.ahead.length, going.ahead[0]?.says]).toEqual([40, "Week 1"]);
  expect(next.kind === "ready" && next.notices[0]?.when).toBe("Any day");
});

test("cheaper things come first for full evenings, and what costs more than it brings is said", () => {
  const outlook = {
    full: {
      extraMats: 2,
      secondClass: { cost: "40.00", shareWhoWouldCome: 0.5, ownPeople: 0 },
    },
  };
  const { full } = sheet({
    document: { ...tuesdays, outlook },
    happened: sessionsOf([9, 12, 10, 12, 11, 12, 9, 12, 11, 10, 12]),
  });
  expect(says(full)).toMatch(/^Try a tighter mat plan first: it leaves £\d+\.\d\d a session more\./);
  expect(full.kind === "ready" && full.rows.map(({ key }) => key)).toEqual(["tighter plan", "second class"]);
  expect(full.kind === "ready" && full.rows[1]?.says).toMatch(/less$/);
});

test("tonight only what can be avoided counts, and a cover teacher is weighed against both", () => {
  const evening = { expected: 3, hallPastNotice: true, avoidable: "5.00", fee: "30.00" };
  const { evening: part } = sheet({ document: { ...tuesdays, outlook: { evening } } });
  // a person brings 9.00 and costs 0.20; 95 min are charged as 120, 28.00: 3 × 8.80 − 28 − 5 = −6.60, cancelling −28
  expect(says(part)).toContain(
    "Run it yourself on 1 December 2026 (3 people expected): running it leaves £-6.60,",
  );
  expect(says(part)).toContain("having it covered £-31.60, cancelling £-28.00.");
  expect(says(sheet().evening)).toContain("Nothing is asked about the next session.");
});
