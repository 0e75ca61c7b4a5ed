import { loadSolver, type Solver } from "#kernels/search";
import { beforeAll, describe, expect, it } from "vitest";
import { anHour, smallWeek } from "./small-week.ts";
import { weekAnswer } from "./week-answer.ts";
import type { WeekDocumentInput } from "./week-document.ts";

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

function answer(input: WeekDocumentInput) {
  const read = weekAnswer(input, solver);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.json;
}

const ids = (chosen: readonly { readonly id: string }[]) => chosen.map(({ id }) => id);

describe("a day", () => {
  it("WEEK-4: goes home between two classes only when an hour is left there", () => {
    const noon = anHour("noon", "yard", 2, "12:00");
    // the yard until 13:05, 12 minutes home, 20 to the barn and 10 to spare: 13:05 + 42 + 60 = 14:47 to be there,
    // 14:57 to begin
    const day = (start: string) =>
      answer(smallWeek([noon, anHour("barn", "barn", 2, start)])).days[0]?.stops[1];
    expect(day("14:57")).toMatchObject({ fromHome: true, travelMinutes: 32, waitingMinutes: 0 });
    // a minute sooner she drives across, 22 minutes, and waits 14:46 − 13:05 − 22 = 79
    expect(day("14:56")).toMatchObject({ fromHome: false, travelMinutes: 22, waitingMinutes: 79 });
  });

  it("WEEK-4: needs the way and the buffer between two places, and neither in one", () => {
    const first = anHour("first", "yard", 2, "12:00");
    const both = (place: string, start: string) =>
      ids(answer(smallWeek([first, anHour("second", place, 2, start)])).chosen).length;
    // 13:05 + 22 + 10 = 13:37 to be there, 13:47 to begin
    expect([both("barn", "13:47"), both("barn", "13:46")]).toEqual([2, 1]);
    // in the same hall the next may be set up at 13:05
    expect([both("yard", "13:15"), both("yard", "13:14")]).toEqual([2, 1]);
  });

  it("WEEK-5: costs its ways as often as the busier of the classes at their ends", () => {
    const noon = anHour("noon", "yard", 2, "12:00");
    const later = anHour("later", "barn", 2, "14:00", { sessions: 30, contribution: "60.00" });
    const { earns, working } = answer(
      smallWeek([noon, later], { travelCost: { perKm: "0.30", perHour: "6.00" } }),
    );
    // out: 40 × (6 × 0.30 + 12 × 0.10) = 120.00; across, 13:05 to 13:50: 40 × (16 × 0.30 + 45 × 0.10) = 372.00;
    // back: 30 × (14 × 0.30 + 20 × 0.10) = 186.00. 40 × 30 + 30 × 60 − 678 = 2322
    expect(earns).toBe("2322.00");
    const ways = working.filter(({ part }) => part === "travel").map(({ amount }) => amount);
    expect(ways).toEqual(["120.00", "372.00", "186.00", "678.00"]);
  });
});

const at = (id: string, latitude: number) => ({ id, at: { latitude, longitude: -2.1 } });

describe("a guess of a way", () => {
  it("WEEK-2: is named where the week can need it: from home, and between places of one day", () => {
    const places = [at("home", 51.2), at("barn", 51.25), at("yard", 51.3), at("far", 51.4)];
    const [one, other] = [anHour("one", "barn", 2, "12:00"), anHour("other", "yard", 3, "12:00")];
    const apart = smallWeek([one, other], { places, travel: [] });
    expect(answer(apart).guesses).toEqual(["home to barn", "home to yard"]);
    const oneDay = smallWeek([one, { ...other, weekday: 2, start: "18:00" }], { places, travel: [] });
    expect(answer(oneDay).guesses).toEqual(["home to barn", "home to yard", "barn to yard"]);
  });
});

const chosen = (input: WeekDocumentInput) => ids(answer(input).chosen);

const twiceOn = (weekday: number) => [
  anHour(`${weekday} morning`, "yard", weekday, "09:00", { contribution: `${30 + weekday}.00` }),
  anHour(`${weekday} evening`, "yard", weekday, "19:00", { contribution: `${20 + weekday}.00` }),
];

const three = (last: string) => [
  anHour("a", "yard", 2, "09:00"),
  anHour("b", "yard", 2, "10:15"),
  anHour("c", "yard", 2, last),
];

describe("the limits", () => {
  it("WEEK-6: hold classes a week and a day, the best of them staying", () => {
    const all = [1, 3, 5].flatMap(twiceOn);
    expect(chosen(smallWeek(all, { limits: { classesAWeek: 2 } }))).toEqual(["3 morning", "5 morning"]);
    expect(chosen(smallWeek(all, { limits: { classesADay: 1 } }))).toHaveLength(3);
    // going without an evening, and having five free days
    expect(chosen(smallWeek(all, { limits: { evenings: 0 } }))).toHaveLength(3);
    expect(chosen(smallWeek(all, { limits: { freeDays: 6 } }))).toEqual(["5 morning", "5 evening"]);
  });

  it("WEEK-6: let no third class follow without a break of thirty minutes", () => {
    // each begins 75 minutes after the one before, so that none waits; the last may begin 30 minutes later
    expect(chosen(smallWeek(three("11:30")))).toHaveLength(2);
    expect(chosen(smallWeek(three("11:59")))).toHaveLength(2);
    expect(chosen(smallWeek(three("12:00")))).toHaveLength(3);
    expect(chosen(smallWeek(three("11:30"), { limits: { backToBack: 3 } }))).toHaveLength(3);
  });

  it("WEEK-6: leave eleven hours from being home to leaving, Sunday before Monday too", () => {
    // home at 21:35 + 5 + 12 = 21:52 on Sunday; leaving at 09:14 − 10 − 10 − 12 = 08:42 on Monday: 10 h 50 min
    const late = anHour("late", "yard", 7, "20:35");
    expect(chosen(smallWeek([late, anHour("early", "yard", 1, "09:14")]))).toHaveLength(1);
    expect(chosen(smallWeek([late, anHour("early", "yard", 1, "09:24")]))).toHaveLength(2);
  });

  it("WEEK-7: weigh wishes by their price, and tell earned from left", () => {
    const saturday = anHour("saturday", "yard", 6, "09:00");
    // 30.00 − 2 × 6 × 0.30 = 26.40 a session, 1056.00 a year; a free Saturday at 20.00 a week is 800.00, at 27.00 1080.00
    const wish = (perWeek: string) =>
      answer(smallWeek([saturday], { wishes: [{ kind: "day-free", weekday: 6, perWeek }] }));
    expect(wish("20.00")).toMatchObject({ earns: "1056.00", wishes: "800.00", leaves: "256.00" });
    expect(wish("27.00")).toMatchObject({ earns: "0.00", wishes: "0.00", leaves: "0.00", chosen: [] });
  });
});

describe("the answer", () => {
  it("WEEK-11: takes of equal weeks the shortest, and names the others", () => {
    const equal = [
      anHour("long", "yard", 2, "12:00", {
        minutes: { before: 10, teach: 60, after: 5, preparation: 30 },
      }),
      anHour("short", "yard", 4, "12:00"),
    ];
    const { chosen, ties, nextBestLeavesLess } = answer(smallWeek(equal, { limits: { classesAWeek: 1 } }));
    expect([ids(chosen), ties, nextBestLeavesLess]).toEqual([["short"], [["long"]], "1056.00"]);
  });

  it("WEEK-12: tells what a class adds for an hour of its own, and what is lost without it", () => {
    const rich = anHour("rich", "barn", 2, "12:00", { contribution: "50.00" });
    const poor = anHour("poor", "barn", 4, "12:00", { contribution: "40.00" });
    const { chosen } = answer(smallWeek([rich, poor], { limits: { classesAWeek: 1 } }));
    // 40 × (50.00 − 28 × 0.30) = 1664.00 in 40 × (20 + 75 + 20) minutes: 41.60 × 60 ÷ 115 = 21.70; the other
    // leaves 40 × (40.00 − 8.40) = 1264.00, so 400.00 is lost
    expect(chosen).toMatchObject([
      {
        id: "rich",
        adds: "1664.00",
        minutesAWeek: 115,
        perHour: "21.70",
        frees: { day: true, evening: false },
      },
    ]);
    expect(chosen[0]?.without).toEqual({
      leavesLess: "400.00",
      comes: ["poor"],
      goes: ["rich"],
      proven: true,
    });
  });

  it("WEEK-13: tells how much more a rejected one must bring: with it the week leaves no less, with a coin less it does", () => {
    const base = [
      anHour("one", "barn", 2, "12:00", { contribution: "50.00" }),
      anHour("two", "yard", 2, "12:30", { contribution: "31.00", sessions: 37 }),
      anHour("three", "yard", 4, "18:30"),
    ];
    const input = smallWeek(base, { limits: { classesAWeek: 2 } });
    const before = answer(input);
    const [lacking] = before.rejected;
    expect(lacking).toMatchObject({ id: "two", withIt: { goes: ["one"] } });
    // 40 × 41.60 = 1664.00 against 37 × (31.00 − 3.60) = 1013.80: 650.20 ÷ 37 = 17.573, so 17.58
    expect(lacking?.lacksPerSession).toBe("17.58");
    const paid = (contribution: string) =>
      answer({
        ...input,
        candidates: base.map((it) => (it.id === "two" ? { ...it, contribution } : it)),
      });
    expect(ids(paid("48.58").chosen)).toContain("two");
    expect(ids(paid("48.57").chosen)).not.toContain("two");
  });

  it("WEEK-13: names what leaves no room where money cannot help", () => {
    const promised = anHour("promised", "barn", 2, "18:30", { fixed: true });
    const { rejected } = answer(smallWeek([promised, anHour("same hour", "yard", 2, "18:30")]));
    expect(rejected).toMatchObject([
      { id: "same hour", lacksPerSession: null, noRoomFor: ["the promise of promised"] },
    ]);
  });

  it("WEEK-14: names a minimal set in each other’s way, and nothing beside", () => {
    const fixed = [1, 2, 3].map((day) => anHour(`day ${day}`, "yard", day, "12:00", { fixed: true }));
    const read = weekAnswer(smallWeek(fixed, { limits: { freeDays: 5, evenings: 2 } }), solver);
    expect(read.ok ? [] : read.problems.map(({ code, says }) => [code, says])).toEqual([
      [
        "week-impossible",
        "No week can keep to these together: 5 free days at least, the promise of day 1, the promise of day 2 and the promise of day 3.",
      ],
    ]);
  });

  it("WEEK-16: finds the lightest week for a target, or the most there is", () => {
    const classes = [
      anHour("big", "yard", 2, "12:00", { contribution: "80.00" }),
      anHour("small", "yard", 3, "12:00"),
      anHour("middle", "yard", 4, "12:00", { contribution: "45.00" }),
    ];
    // 40 × (80.00 − 3.60) = 3056.00; 40 × 41.40 = 1656.00; 40 × 26.40 = 1056.00
    const target = (amount: string) => answer(smallWeek(classes, { target: amount })).target;
    expect(target("3056.00")).toMatchObject({
      reached: true,
      chosen: ["big"],
      earns: "3056.00",
      proven: true,
    });
    expect(target("3056.01")?.load).toMatchObject({ classes: 2 });
    expect(target("5768.01")).toMatchObject({ reached: false, earns: "5768.00" });
  });

  it("WEEK-17: a search that is stopped tells the week it has, and how much more one might leave", () => {
    // the solver proves weeks of this size at once, so its answer is handed on as one that is 12.34 from proven
    const stopping: Solver = {
      solve: (programme) => {
        const outcome = solver.solve(programme);
        return outcome.kind === "best"
          ? { kind: "stopped", found: outcome, bound: outcome.value + 1234.4 }
          : outcome;
      },
    };
    const read = weekAnswer(smallWeek([anHour("one", "yard", 2, "12:00")]), stopping);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    // 40 × (30.00 − 3.60)
    expect(read.value.json).toMatchObject({ leaves: "1056.00", bound: "1068.34", proven: false });
    expect(read.value.json.curve.classes).toMatchObject([{ count: 1, leaves: "1056.00", proven: false }]);
    expect(read.value.json.sentences).toContain(
      "The search was stopped: a week within these limits may leave up to 12.34 GBP a year more.",
    );
  });

  it("WEEK-17: a search that is stopped before it has any week says so, and blames no limit", () => {
    const many = Array.from({ length: 40 }, (_, at) =>
      anHour(`${at}`, at % 2 === 0 ? "yard" : "barn", 1 + (at % 6), `${10 + (at % 11)}:30`, {
        contribution: `${30 + ((at * 7) % 23)}.00`,
      }),
    );
    const read = weekAnswer(smallWeek(many), solver, undefined, { nodes: 0, looks: 0 });
    expect(read.ok ? [] : read.problems.map(({ code }) => code)).toEqual(["week-not-found"]);
  });

  it("says that an empty week is best where nothing pays", () => {
    const loss = anHour("loss", "barn", 2, "12:00", { contribution: "-5.00" });
    const { chosen, sentences, curve } = answer(smallWeek([loss]));
    expect([chosen, curve.classes]).toEqual([[], []]);
    expect(sentences[0]).toContain("the best week is an empty one");
  });
});
