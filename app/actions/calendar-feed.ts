import type { PracticeWhole, Store } from "#app/ports";
import { yearPlanOf, yearQuestion } from "#app/views";
import { type CalendarEntry, yearAnswer } from "#core/year";
import { bad, good, problem, type Result } from "#core/words";

export type CalendarFeed = {
  /** of the practice */
  readonly name: string;
  readonly entries: readonly CalendarEntry[];
};

/** The secret part of an address is made by the page: 26 letters and figures, 128 random bits. */
const SECRET = /^[0-9a-z]{24,40}$/;

/**
 * A calendar program asks for the sessions of a year by the secret in its address; whoever has the address sees where
 * and when she teaches, and nothing else. Problems: "feed-unknown" for an address that is none or was taken back.
 */
export async function calendarFeed(
  store: Store,
  secret: string,
  today: (zone: string) => string,
): Promise<Result<CalendarFeed>> {
  if (!SECRET.test(secret)) return bad(unknown());
  const practices = await store.practices();
  if (!practices.ok) return practices;
  for (const { id } of practices.value) {
    // one after the other, because the first that has the secret ends it
    // oxlint-disable-next-line no-await-in-loop -- on purpose
    const whole = await store.whole(id);
    if (!whole.ok) return whole;
    const plan = planOf(whole.value);
    if (plan.feed === secret) return feedOf(id, whole.value, today);
  }
  return bad(unknown());
}

function planOf({ practice, plans }: PracticeWhole) {
  return yearPlanOf(plans.find(({ id }) => id === "year")?.document ?? {}, practice.document);
}

function feedOf(id: string, whole: PracticeWhole, today: (zone: string) => string): Result<CalendarFeed> {
  const { practice, classes, halls } = whole;
  const { document } = yearQuestion({
    practice: practice.document,
    plan: planOf(whole),
    classes,
    halls,
    today: today(practice.document.zone),
  });
  const read = yearAnswer(document, id);
  return read.ok ? good({ name: `Classes of ${practice.document.name}`, entries: read.value.entries }) : read;
}

function unknown() {
  const says = "No calendar has this address, or it was taken back.";
  return problem("feed-unknown", "", says, "Take the address that the page of the year shows now.");
}
