import { type YearPlan, yearPlanSchema } from "#core/year";

/** Oriel's year: what her class sheets and her halls do not tell. */
export const marlsfordYearPlan: YearPlan = yearPlanSchema.parse({
  format: "hallful/year-plan@1",
  holidays: { region: "GB-ENG" },
  school: {
    text: [
      "Autumn half-term: Monday 26 to Friday 30 October 2026",
      "Christmas: 21 December to 1 January 2027",
      "February half-term: 15 to 19 February 2027",
      "Easter: 26 March to 9 April 2027",
      "May half-term: 31 May to 4 June 2027",
    ].join("\n"),
  },
  timeOff: { days: [{ from: "2027-06-07", until: "2027-06-12", why: "walking week" }] },
  elections: ["2027-05-06"],
  halls: [
    { id: "quay-street-mission-room", polling: true },
    {
      id: "tithe-barn-hall",
      booked: [
        { title: "Parish supper", from: "2026-11-24T17:00", until: "2026-11-24T22:00" },
        { title: "Blood donors", from: "2027-04-20T13:00", until: "2027-04-20T19:30" },
      ],
      mine: ["Tamsett"],
    },
  ],
  changes: [
    { kind: "move", class: "saturday-long", date: "2026-12-12", to: "2026-12-13" },
    { kind: "cancel", class: "wednesday-chairs", date: "2027-01-20", why: "first-aid course" },
  ],
});
