import { type CompareSheet, type CompareSheetInput, compareSheet, type HallOffered } from "#app/views";
import type { ClassDocument } from "#core/class";
import { capacityOf, type HallDocument, matPlan, readHall } from "#core/hall";
import { isCurrency } from "#core/words";
import { type LineRequest, replyTo } from "../prices/worker-line.ts";
import { moneyWords } from "../words/money-words.ts";

/** A comparison as the page asks for it: how many each hall takes is planned here. */
export type CompareJob = Omit<CompareSheetInput, "money" | "halls"> & {
  readonly halls: readonly Omit<HallOffered, "capacity">[];
};

addEventListener("message", (event: MessageEvent<LineRequest<CompareJob>>) => {
  postMessage(replyTo(event.data, answered));
});

function answered(job: CompareJob): CompareSheet {
  const { currency, locale } = job.practice;
  if (!isCurrency(currency)) throw new RangeError(`not a currency: ${currency}`);
  return compareSheet({
    ...job,
    halls: job.halls.map((it) => ({ ...it, capacity: placesFor(job.document, it.document) })),
    money: (exact) => moneyWords(exact, currency, locale),
  });
}

/** Plans are kept by what they rest on: a key in a price must not lay every floor again. */
const counts = new Map<
  string,
  { readonly count: number; readonly bound: number; readonly proven: boolean } | null
>();
const MOST_KEPT = 200;

/** How many the class could have in a hall, with its own mats and limits; null when the floor is not sound. */
function placesFor(course: ClassDocument, hall: HallDocument): number | null {
  const plan = planned(course.mats === null ? hall : { ...hall, ...course.mats });
  if (plan === null) return null;
  const { matsOwned, ownCap, insurerCap } = course;
  const { postedCapacity, peopleNotOnMats } = hall;
  return capacityOf(plan, { postedCapacity, peopleNotOnMats, matsOwned, ownCap, insurerCap }).capacity;
}

function planned(hall: HallDocument) {
  const { hire: _, notes: __, address: ___, ...floor } = hall;
  const key = JSON.stringify(floor);
  const kept = counts.get(key);
  if (kept !== undefined) return kept;
  const read = readHall(hall);
  const plan = read.ok ? matPlan(read.value) : null;
  if (counts.size >= MOST_KEPT) counts.clear();
  counts.set(key, plan);
  return plan;
}
