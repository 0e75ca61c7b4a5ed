import type { ClassDocument } from "#core/class";
import type { Locale } from "#core/words";
import { lazy, Suspense, useId, useState } from "react";
import { usePractice } from "../drafts/use-practice.ts";
import { dateWords, today } from "../words/dates.ts";
import { datesAhead } from "./open-order.ts";

type Props = {
  readonly practiceId: string;
  readonly id: string;
  readonly document: ClassDocument;
  readonly title?: string;
  /** whether what is to be filled in stands open from the start */
  readonly open?: boolean;
};

// the record and a plan of the mats of its own are loaded only when they are asked for
const DatesForm = lazy(async () => ({ default: (await import("./dates-form.tsx")).DatesForm }));

/** The dates of a class put into the record: how many mats each takes, what is asked, by when a place is given up. */
export function DatesPart({
  practiceId,
  id,
  document,
  title = "The dates in the record",
  open = false,
}: Props) {
  const { practice } = usePractice(practiceId);
  const [asked, setAsked] = useState(open);
  const heading = useId();
  const dates = datesAhead(document, today());
  return (
    <section className="part no-print" aria-labelledby={heading} data-dates>
      <h2 id={heading}>{title}</h2>
      <p>{datesWords(dates, practice.locale)}</p>
      {dates.length > 0 && !asked ? (
        <p>
          <button type="button" className="button" onClick={() => setAsked(true)}>
            Set the mats and the notice
          </button>
        </p>
      ) : null}
      {dates.length > 0 && asked ? (
        <Suspense fallback={<output>Reading the record …</output>}>
          <DatesForm practiceId={practiceId} id={id} document={document} />
        </Suspense>
      ) : null}
    </section>
  );
}

function datesWords(dates: readonly string[], locale: Locale): string {
  const [first] = dates;
  const last = dates.at(-1);
  if (first === undefined || last === undefined)
    return "Its year has no teaching date from today on: put the year of the class right first.";
  const count = dates.length === 1 ? "1 teaching date" : `${dates.length} teaching dates`;
  return `${count}, from ${dateWords(first, locale)} to ${dateWords(last, locale)}.`;
}
