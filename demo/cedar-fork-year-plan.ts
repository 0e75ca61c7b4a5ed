import { type YearPlan, yearPlanSchema } from "#core/year";

/** Ines's year: the holidays of Illinois, with the two on which nobody around her closes. */
export const cedarForkYearPlan: YearPlan = yearPlanSchema.parse({
  format: "hallful/year-plan@1",
  holidays: { region: "US-IL", not: ["2026-10-12", "2026-11-11"] },
  school: { text: "Spring break: March 22–26, 2027\nThanksgiving week: November 23–27, 2026" },
});
