import type { Hall, HallDocument } from "#core/hall";

/** The hall with the numbers of its document; one that is no number of people is told at its field, and left out. */
export function numberedHall(
  hall: Hall,
  { postedCapacity, peopleNotOnMats }: Pick<HallDocument, "postedCapacity" | "peopleNotOnMats">,
): Hall {
  return {
    ...hall,
    postedCapacity: isPeople(postedCapacity) ? postedCapacity : undefined,
    peopleNotOnMats: isPeople(peopleNotOnMats) ? peopleNotOnMats : 1,
  };
}

function isPeople(count: number | undefined): count is number {
  return count !== undefined && Number.isSafeInteger(count) && count >= 0;
}
