import type { ClassDocumentInput } from "#core/class";

/** Invented school dates of Marlsford, with the days on which its halls are really shut. */
export const marlsfordYear = {
  from: "2026-09-07",
  until: "2027-07-23",
  closures: [
    { from: "2026-10-26", until: "2026-10-30", why: "autumn half-term" },
    { from: "2026-12-19", until: "2027-01-03", why: "Christmas and New Year" },
    { from: "2027-02-15", until: "2027-02-19", why: "spring half-term" },
    { from: "2027-03-26", until: "2027-04-09", why: "Easter" },
    { from: "2027-05-03", until: "2027-05-03", why: "early May bank holiday" },
    { from: "2027-05-31", until: "2027-06-05", why: "summer half-term" },
  ],
} satisfies Omit<ClassDocumentInput["year"], "fixedPerYear">;
