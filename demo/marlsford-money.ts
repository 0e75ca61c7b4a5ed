import { type MoneyPlan, moneyPlanSchema } from "#core/cash";

const afterMonth = (days: number) => ({ when: "after-month", days }) as const;

/** Oriel's money: a job of three days, studio work that pays late, and two of her own classes that should grow. */
export const marlsfordMoney: MoneyPlan = moneyPlanSchema.parse({
  format: "hallful/money-plan@1",
  from: "2026-09-01",
  months: 11,
  opening: "1460.00",
  own: [
    {
      class: "thursday-beginners",
      changes: [
        { from: "2027-01-11", perSession: { low: "58.00", middle: "76.00", high: "96.00" } },
        { from: "2027-04-12", perSession: { low: "66.00", middle: "92.00", high: "118.00" } },
      ],
    },
    {
      class: "saturday-long",
      changes: [{ from: "2027-01-11", perSession: { low: "118.00", middle: "160.00", high: "205.00" } }],
    },
  ],
  work: [
    work("plum-monday", "Plum Yard Monday", "studio", 1, "32.00", "1.80", afterMonth(30)),
    work("baths-thursday", "Hartsmoor Baths Thursday", "gym", 4, "30.00", "6.30", afterMonth(60)),
    work("plum-wednesday", "Plum Yard Wednesday", "studio", 3, "28.00", "1.80", afterMonth(30)),
  ],
  moves: [
    move("job", "The job, three days a week", "in", "1040.00", "2026-09-25", 1, false),
    move("living", "What she lives on", "out", "1380.00", "2026-09-01", 1, false),
    move("insurance", "Insurance", "out", "85.00", "2026-09-14", 12, true),
    move("data-fee", "Data protection fee", "out", "52.00", "2026-11-02", 12, true),
    move("training", "Training weekend", "out", "195.00", "2027-02-19", 12, true),
    move("music", "Music licence", "out", "96.00", "2027-01-15", 12, true),
  ],
  tax: {
    place: "uk",
    other: "13400.00",
    registered: true,
    soFar: { income: "3120.00", costs: "1240.00" },
    last: { bill: "1120.00" },
    pot: "700.00",
  },
  path: {
    need: "1700.00",
    mayDrop: [
      { id: "plum-monday", hours: 2, noticeWeeks: 4 },
      { id: "baths-thursday", hours: 2.5, noticeWeeks: 6 },
      { id: "plum-wednesday", hours: 2, noticeWeeks: 4 },
    ],
  },
  guesses: ["moves.training.amount", "path.need"],
});

function work(
  id: string,
  name: string,
  kind: "studio" | "gym",
  weekday: number,
  perSession: string,
  travel: string,
  paid: ReturnType<typeof afterMonth>,
) {
  const off = ["2026-12-21", "2026-12-23", "2026-12-24", "2026-12-28", "2026-12-30", "2026-12-31"];
  return {
    id,
    name,
    kind,
    weekly: { weekday, from: "2026-06-29", until: "2027-07-31", off },
    perSession,
    paid,
    costs: [{ name: "travel", perSession: travel }],
  };
}

function move(
  id: string,
  name: string,
  way: "in" | "out",
  amount: string,
  on: string,
  everyMonths: number,
  business: boolean,
) {
  return { id, name, way, amount, on, everyMonths, business };
}
