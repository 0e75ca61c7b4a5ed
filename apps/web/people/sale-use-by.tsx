import type { Result } from "#core/words";
import { DateField } from "../fields/date-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { Working } from "../parts/working.tsx";
import { screenWriter } from "../record/screen-writer.ts";
import { type UseByFound, validClasses } from "./pass-dates.ts";
import { weeksFor } from "./pass-offers.ts";
import type { SalePart } from "./sale-fields.tsx";

type Props = SalePart & {
  readonly weeks: number;
  readonly found: Result<UseByFound>;
  readonly useBy: string | null;
};

/** The use-by: so many teaching weeks, worked out from the dates of the classes; or a day of her own. */
export function SaleUseBy({ draft, put, classes, at, today, weeks, found, useBy }: Props) {
  const { day } = screenWriter(at.practice.locale);
  const suggested = weeksFor(draft.size, validClasses(draft.valid, classes));
  return (
    <div className="measure holds-fields stack-close">
      <NumberField
        path="sale.weeks"
        label="Runs for"
        unit={weeks === 1 ? "teaching week" : "teaching weeks"}
        {...(suggested === null
          ? {}
          : {
              help: `Suggested: ${suggested.weeks}, by how often holders come${suggested.guess ? ", which is a guess" : ""}.`,
            })}
        range={{ least: 1, most: 200, whole: true }}
        value={weeks}
        put={(next) => put({ ...draft, weeks: next, useBy: null })}
      />
      {found.ok ? (
        <Working caption="The use-by" lines={found.value.working} />
      ) : (
        <ProblemList problems={found.problems} announce={false} />
      )}
      <DateField
        label="Use by"
        help={draft.useBy === null ? "As worked out above; or give a day of your own." : "A day of your own."}
        value={useBy ?? ""}
        put={(date) => put({ ...draft, useBy: date })}
        problem={
          useBy !== null && useBy < today ? `This is before today, ${day(today)}. Give a later day.` : null
        }
      />
      {draft.useBy === null ? null : (
        <p>
          <button type="button" className="link-button" onClick={() => put({ ...draft, useBy: null })}>
            Back to the day that is worked out
          </button>
        </p>
      )}
    </div>
  );
}
