import type { PracticeDocument } from "#core/words";
import type { DemoPractice } from "./demo-practice.ts";
import { saturdayLong, thursdayBeginners, tuesdayEvening, wednesdayChairs } from "./marlsford-classes.ts";
import { thursdayHappened, tuesdayHappened } from "./marlsford-happened.ts";
import { marlsfordMoney } from "./marlsford-money.ts";
import { marlsfordWeek } from "./marlsford-week.ts";
import { marlsfordYearPlan } from "./marlsford-year-plan.ts";
import { quayStreetMissionRoom } from "./quay-street-mission-room.ts";
import { stBrannocsChurchHall } from "./st-brannocs-church-hall.ts";
import { titheBarnHall } from "./tithe-barn-hall.ts";

const practice: PracticeDocument = {
  name: "Oriel Tamsett",
  currency: "GBP",
  zone: "Europe/London",
  locale: "en-GB",
  units: "metric",
};

/** The invented practice of Oriel Tamsett around Marlsford. */
export const marlsford: DemoPractice = {
  practice,
  halls: [
    { id: "tithe-barn-hall", document: titheBarnHall },
    { id: "quay-street-mission-room", document: quayStreetMissionRoom },
    { id: "st-brannocs-church-hall", document: stBrannocsChurchHall },
  ],
  classes: [
    { id: "tuesday-evening", document: tuesdayEvening },
    { id: "wednesday-chairs", document: wednesdayChairs },
    { id: "thursday-beginners", document: thursdayBeginners },
    { id: "saturday-long", document: saturdayLong },
  ],
  happened: [
    { id: "tuesday-evening", document: tuesdayHappened },
    { id: "thursday-beginners", document: thursdayHappened },
  ],
  plans: [
    { id: "week", document: marlsfordWeek },
    { id: "year", document: marlsfordYearPlan },
    { id: "money", document: marlsfordMoney },
  ],
};
