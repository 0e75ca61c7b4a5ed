import type { PracticeDocument } from "#core/words";
import { mondayAfterWork } from "./cedar-fork-classes.ts";
import { cedarForkMoney } from "./cedar-fork-money.ts";
import { cedarForkWeek } from "./cedar-fork-week.ts";
import { cedarForkYearPlan } from "./cedar-fork-year-plan.ts";
import type { DemoPractice } from "./demo-practice.ts";
import { grangeHall } from "./grange-hall.ts";

const practice: PracticeDocument = {
  name: "Ines Okafor",
  currency: "USD",
  zone: "America/Chicago",
  locale: "en-US",
  units: "feet",
};

/** The invented practice of Ines Okafor at Cedar Fork: dollars, feet, another zone. */
export const cedarFork: DemoPractice = {
  practice,
  halls: [{ id: "grange-hall", document: grangeHall }],
  classes: [{ id: "monday-after-work", document: mondayAfterWork }],
  happened: [],
  plans: [
    { id: "week", document: cedarForkWeek },
    { id: "year", document: cedarForkYearPlan },
    { id: "money", document: cedarForkMoney },
  ],
};
