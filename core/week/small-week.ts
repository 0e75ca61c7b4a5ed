import type { WeekDocumentInput } from "./week-document.ts";

type CandidateInput = WeekDocumentInput["candidates"][number];

/** Home, a barn 20 minutes and 14 km away, a yard 12 and 6; 22 and 16 between; 0.30 a km. For tests. */
export function smallWeek(
  candidates: readonly CandidateInput[],
  more: Partial<WeekDocumentInput> = {},
): WeekDocumentInput {
  return {
    currency: "GBP",
    home: "home",
    places: [{ id: "home", name: "Home" }, { id: "barn", name: "Barn" }, { id: "yard" }],
    travel: [
      { from: "home", to: "barn", minutes: 20, km: 14 },
      { from: "home", to: "yard", minutes: 12, km: 6 },
      { from: "barn", to: "yard", minutes: 22, km: 16 },
    ],
    travelCost: { perKm: "0.30" },
    candidates: [...candidates],
    ...more,
  };
}

/** An hour, 40 times a year, 30.00 a session, 10 minutes before and 5 after. */
export function anHour(
  id: string,
  place: string,
  weekday: number,
  start: string,
  more: Partial<CandidateInput> = {},
): CandidateInput {
  const minutes = { before: 10, teach: 60, after: 5 };
  return { id, kind: "own", place, weekday, start, minutes, contribution: "30.00", sessions: 40, ...more };
}
