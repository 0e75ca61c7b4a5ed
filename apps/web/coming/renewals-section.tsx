import { datesInWords } from "#app/views";
import type { Period, StaysAnswer } from "#core/outlook";
import { chanceText } from "#core/price";
import type { Locale } from "#core/words";
import { useId } from "react";
import { ChoiceField } from "../fields/choice-field.tsx";
import { onPage } from "../import/on-page.ts";
import { ProblemList } from "../parts/problem-list.tsx";
import { Show } from "../parts/show.tsx";
import { TableFrame } from "../parts/table-frame.tsx";
import type { Renewal, RenewalsAnswer } from "./visits-job.ts";

type Props = {
  readonly renewals: RenewalsAnswer;
  readonly renewal: Renewal;
  readonly put: (renewal: Renewal) => void;
  readonly locale: Locale;
};

/** How long people stay where they renew, a pass or a term at a time: the share seen, and the share fitted to it. */
export function RenewalsSection({ renewals, renewal, put, locale }: Props) {
  return (
    <section className="part" aria-labelledby="renewals">
      <h2 id="renewals">Where people renew: passes, blocks and terms</h2>
      {renewals.kind === "ready" ? (
        <Renewals answer={renewals.answer} locale={locale} />
      ) : (
        <ProblemList problems={renewals.problems.map(onPage)} announce={false} />
      )}
      <div className="measure">
        <RenewalFields renewal={renewal} put={put} />
      </div>
    </section>
  );
}

function RenewalFields({ renewal, put }: Pick<Props, "renewal" | "put">) {
  return (
    <fieldset className="fields holds-fields">
      <legend>What they renew by</legend>
      <ChoiceField
        label="A period is"
        help="somebody who comes once in it has stayed through it"
        value={renewal.period}
        choices={PERIODS.map(([value, label]) => ({ value, label }))}
        onChange={(value) => put({ ...renewal, period: periodOf(value) })}
      />
      <ChoiceField
        label="Gone is who was not seen for"
        help="a guess"
        value={String(renewal.goneAfter)}
        choices={[1, 2, 3, 4, 6].map((it) => ({
          value: String(it),
          label: it === 1 ? "1 period" : `${it} periods`,
        }))}
        onChange={(value) => put({ ...renewal, goneAfter: Number(value) })}
      />
    </fieldset>
  );
}

const PERIODS: readonly (readonly [Period, string])[] = [
  ["week", "a teaching week"],
  ["month", "a month"],
  ["year", "a year"],
];

function periodOf(value: string): Period {
  return PERIODS.find(([period]) => period === value)?.[0] ?? "month";
}

function Renewals({ answer, locale }: { readonly answer: StaysAnswer; readonly locale: Locale }) {
  return (
    <>
      {answer.sentences.map((it) => (
        <p key={it}>{datesInWords(it, locale)}</p>
      ))}
      <Show summary="Show each period">
        <RenewalsTable answer={answer} />
      </Show>
    </>
  );
}

/** Beside what was seen what is fitted, and beyond it what is expected. */
function RenewalsTable({ answer }: { readonly answer: StaysAnswer }) {
  const title = useId();
  const { expected, curve } = answer.stays;
  return (
    <TableFrame labelledBy={title}>
      <table className="figures">
        <caption id={title}>Of those who began, there through each period</caption>
        <thead>
          <tr>
            <th scope="col">Period</th>
            <th scope="col">Seen</th>
            <th scope="col">By the fit</th>
          </tr>
        </thead>
        <tbody>
          {expected.map((share, at) => {
            const period = at + 1;
            const seen = curve.find((it) => it.period === period);
            return (
              <tr key={period}>
                <th scope="row">{period}</th>
                <td>{seen === undefined ? "–" : chanceText(seen.value)}</td>
                <td>{chanceText(share)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </TableFrame>
  );
}
