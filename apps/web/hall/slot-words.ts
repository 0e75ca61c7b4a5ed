import type { HireTermsDocument } from "#core/hall";

/** "At least 60 minutes are charged, in steps of 30; 15 minutes before are free." */
export function slotWords(hire: HireTermsDocument): string {
  if (hire.perSession !== undefined) return "A session is charged whole, however long it is.";
  const { minimumMinutes, incrementMinutes, freeBeforeMinutes, freeAfterMinutes } = hire;
  const least =
    minimumMinutes > 0 ? `At least ${minutesWords(minimumMinutes)} charged` : "Minutes are charged";
  const steps = incrementMinutes > 1 ? `in steps of ${incrementMinutes}` : "to the minute";
  const free = [
    ...(freeBeforeMinutes > 0 ? [`${minutesWords(freeBeforeMinutes)} free before`] : []),
    ...(freeAfterMinutes > 0 ? [`${minutesWords(freeAfterMinutes)} free after`] : []),
  ].join(" and ");
  return `${least}, ${steps}${free === "" ? "" : `; ${free}`}.`;
}

function minutesWords(count: number): string {
  return count === 1 ? "1 minute is" : `${count} minutes are`;
}
