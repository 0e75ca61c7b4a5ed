import { memo } from "react";
import type { Locale } from "#core/words";
import { DateField } from "../fields/date-field.tsx";
import { useFormField } from "../fields/form.tsx";
import { GuessAt } from "../fields/guess-at.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { Rows } from "../fields/rows.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { dateWords, today } from "../words/dates.ts";
import type { ClassPart } from "./class-part.ts";
import { sameParts } from "./same-parts.ts";

type Props = ClassPart & { readonly locale: Locale };

/** The teaching year: from when until when, the weeks without class, and the costs of a year. */
export const YearFields = memo(function YearFields({ document, change, locale }: Props) {
  const { year } = document;
  const from = useFormField("year.from");
  const until = useFormField("year.until");
  const put = (part: Partial<typeof year>) => change({ year: { ...year, ...part } });
  const backwards = year.until < year.from;
  return (
    <div>
      <DateField
        label="The year begins"
        help={dateWords(year.from, locale)}
        value={year.from}
        put={(date) => {
          put({ from: date });
          from.setGuess(false);
        }}
        problem={from.problem?.says ?? null}
        after={<GuessAt path="year.from" label="The year begins" />}
      />
      <DateField
        label="The year ends"
        help={dateWords(year.until, locale)}
        value={year.until}
        put={(date) => {
          put({ until: date });
          until.setGuess(false);
        }}
        problem={
          backwards ? "It ends before it begins. Put the later date here." : (until.problem?.says ?? null)
        }
        after={<GuessAt path="year.until" label="The year ends" />}
      />
      <MoneyField
        path="year.fixedPerYear"
        label="Costs of the year that this class should carry"
        help="Insurance, training, a share of the phone"
        per="a year"
        guessable
        value={year.fixedPerYear}
        put={(fixedPerYear) => put({ fixedPerYear })}
      />
      <Closures document={document} change={change} locale={locale} />
    </div>
  );
}, sameParts("year"));

/** Weeks without class: the first and the last day, and why. */
function Closures({ document, change, locale }: Props) {
  const { year } = document;
  return (
    <Rows
      title="When there is no class"
      path="year.closures"
      compact
      rows={year.closures}
      fresh={() => {
        const day = today() > year.from && today() < year.until ? today() : year.from;
        return { from: day, until: day, why: "" };
      }}
      add="Add days without class"
      named={(index) => year.closures[index]?.why || "these days"}
      put={(rows) => change({ year: { ...year, closures: [...rows] } })}
      before={<GuessAt path="year.closures" label="When there is no class" />}
      renderRow={(closure, put) => (
        <>
          <WordsField label="Why" value={closure.why} onChange={(why) => put({ ...closure, why })} />
          <DateField
            label="First day"
            help={dateWords(closure.from, locale)}
            value={closure.from}
            put={(from) => put({ ...closure, from })}
          />
          <DateField
            label="Last day"
            help={dateWords(closure.until, locale)}
            value={closure.until}
            put={(until) => put({ ...closure, until })}
            problem={
              closure.until < closure.from ? "It is before the first day. Put the later date here." : null
            }
          />
        </>
      )}
    />
  );
}
