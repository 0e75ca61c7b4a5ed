import { type MoneyPlan, moneyPlanSchema } from "#core/cash";

/** Ines's money: a class of her own, two studio hours paid two weeks after the month, federal and state tax. */
export const cedarForkMoney: MoneyPlan = moneyPlanSchema.parse({
  format: "hallful/money-plan@1",
  from: "2026-09-01",
  months: 10,
  opening: "900.00",
  work: [
    work("elm-wednesday", "Elm Street Wednesday", 3, "38.00"),
    work("elm-monday", "Elm Street Monday noon", 1, "34.00"),
  ],
  moves: [
    {
      id: "insurance",
      name: "Insurance",
      way: "out",
      amount: "179.00",
      on: "2026-10-05",
      everyMonths: 12,
    },
  ],
  tax: {
    place: "us",
    other: "31000.00",
    stateRate: 0.038,
    soFar: { income: "4100.00", costs: "900.00" },
    paidSoFar: "350.00",
  },
  guesses: ["tax.stateRate"],
});

function work(id: string, name: string, weekday: number, perSession: string) {
  return {
    id,
    name,
    kind: "studio",
    weekly: {
      weekday,
      from: "2026-08-03",
      until: "2027-06-30",
      off: ["2026-11-25", "2026-12-21", "2026-12-23"],
    },
    perSession,
    paid: { when: "after-month", days: 14 },
    costs: [{ name: "travel", perSession: "4.60" }],
  };
}
