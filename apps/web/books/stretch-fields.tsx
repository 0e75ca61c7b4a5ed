import { taxYearAround } from "#app/views";
import { DateField } from "../fields/date-field.tsx";
import { Show } from "../parts/show.tsx";
import type { Stretch } from "./use-books.ts";
import { weeksBefore } from "../people/today-here.ts";

type Props = {
  readonly stretch: Stretch;
  readonly today: string;
  readonly currency: string;
  readonly put: (stretch: Stretch) => void;
};

/** From which day until which the books are shown: a tax year until she says other dates. */
export function StretchFields({ stretch, today, currency, put }: Props) {
  const now = taxYearAround(today, currency);
  const last = taxYearAround(weeksBefore(now.from, 1), currency);
  const problem =
    stretch.until < stretch.from ? "The last day is before the first. Choose a later one." : null;
  return (
    <Show summary="The days that are shown">
      <div className="holds-fields measure">
        <DateField label="From" value={stretch.from} put={(from) => put({ ...stretch, from })} />
        <DateField
          label="Until, with this day"
          value={stretch.until}
          problem={problem}
          put={(until) => put({ ...stretch, until })}
        />
      </div>
      <p className="row">
        <button type="button" className="button" onClick={() => put(now)}>
          This tax year
        </button>
        <button type="button" className="button" onClick={() => put(last)}>
          The tax year before
        </button>
      </p>
    </Show>
  );
}
