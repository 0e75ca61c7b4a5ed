import type { HappenedDocument } from "#core/outlook";

/** Invented: eleven Tuesdays of a class that grows until its sixteen places are nearly taken. */
export const tuesdayHappened: HappenedDocument = {
  format: "hallful/happened@1",
  capacity: 16,
  sessions: [
    { date: "2026-09-08", heads: 8, newcomers: 8 },
    { date: "2026-09-15", heads: 9, newcomers: 4 },
    { date: "2026-09-22", heads: 8, newcomers: 2 },
    { date: "2026-09-29", heads: 11, newcomers: 3 },
    { date: "2026-10-06", heads: 10, newcomers: 1 },
    { date: "2026-10-13", heads: 12, newcomers: 3 },
    { date: "2026-10-20", heads: 11, newcomers: 1 },
    { date: "2026-11-03", heads: 13, newcomers: 2 },
    { date: "2026-11-10", heads: 12, newcomers: 1 },
    { date: "2026-11-17", heads: 16, newcomers: 3, turnedAway: 1 },
    { date: "2026-11-24", heads: 13, newcomers: 1 },
  ],
};

/** Invented: ten Thursdays of a class that stays thin. */
export const thursdayHappened: HappenedDocument = {
  format: "hallful/happened@1",
  capacity: 12,
  sessions: [
    { date: "2026-09-10", heads: 7, newcomers: 7 },
    { date: "2026-09-17", heads: 6, newcomers: 2 },
    { date: "2026-09-24", heads: 6, newcomers: 1 },
    { date: "2026-10-01", heads: 5, newcomers: 1 },
    { date: "2026-10-08", heads: 5, newcomers: 0 },
    { date: "2026-10-15", heads: 4, newcomers: 0 },
    { date: "2026-10-22", heads: 4, newcomers: 1 },
    { date: "2026-11-05", heads: 3, newcomers: 0 },
    { date: "2026-11-12", heads: 4, newcomers: 1 },
    { date: "2026-11-19", heads: 3, newcomers: 0 },
  ],
};
