import { datesInWords } from "#app/views";
import type { ClassDocument } from "#core/class";
import type { ComingAnswer } from "#core/outlook";
import type { VisitColumn } from "#core/table";
import type { Locale } from "#core/words";
import { type ReactNode, useMemo } from "react";
import type { Listed } from "../drafts/use-practice.ts";
import { FirstRows } from "../import/first-rows.tsx";
import { onPage } from "../import/on-page.ts";
import { RowsLeft } from "../import/rows-left.tsx";
import type { TableAsk } from "../import/table-ask.ts";
import { TableChoices, type UseLabel } from "../import/table-choices.tsx";
import type { Source } from "../import/table-source.tsx";
import { focusNew } from "../parts/focus-new.ts";
import { ProblemList } from "../parts/problem-list.tsx";
import type { ComingForm } from "./coming-choices.ts";
import { ComingFields } from "./coming-fields.tsx";
import { NewcomersSection } from "./newcomers-section.tsx";
import { PeopleList } from "./people-list.tsx";
import { RenewalsSection } from "./renewals-section.tsx";
import { useVisits } from "./use-visits.ts";
import type { ComingChoices, VisitsAnswer } from "./visits-job.ts";
import { VisitsProgress } from "./visits-progress.tsx";

type Props = {
  readonly source: Source;
  readonly ask: TableAsk<VisitColumn>;
  readonly setAsk: (ask: TableAsk<VisitColumn>) => void;
  readonly choices: ComingChoices;
  readonly form: ComingForm;
  readonly setForm: (form: ComingForm) => void;
  readonly classes: readonly Listed<ClassDocument>[];
  readonly locale: Locale;
  readonly keeping: ReactNode;
};

/** The answer to a list of visits: sentences, people, newcomers; then how it was read and what it rests on. */
export function ComingResult(props: Props) {
  const { source, ask, setAsk, choices, form, setForm, classes, locale, keeping } = props;
  const { bytes } = source;
  const { renewal } = form;
  const job = useMemo(() => ({ bytes, ask, choices, renewal }), [bytes, ask, choices, renewal]);
  const work = useVisits(job);
  const { answer, now } = work.state;
  const { answer: ready = null, renewals = null } = answer?.kind === "ready" ? answer : {};
  const problems = answer === null || answer.kind === "ready" ? [] : answer.problems.map(onPage);
  return (
    <>
      <section className="stack sheet-heading" aria-label="The answer" ref={focusNew} tabIndex={-1}>
        <VisitsProgress
          source={sourceWords(source, answer)}
          before={ready !== null}
          now={now}
          stop={work.stop}
          again={work.again}
        />
        {ready === null ? null : <Sentences answer={ready} locale={locale} />}
        <ProblemList problems={problems} />
      </section>
      {ready === null ? null : (
        <>
          <PeopleList people={ready.coming.people} notSeenFor={ready.coming.notSeenFor} locale={locale} />
          <NewcomersSection stays={ready.newcomers} says={ready.sentences.at(-1) ?? ""} />
          {renewals === null ? null : (
            <RenewalsSection
              renewals={renewals}
              renewal={renewal}
              locale={locale}
              put={(next) => setForm({ ...form, renewal: next })}
            />
          )}
        </>
      )}
      <section className="part" aria-label="What it rests on">
        <div className="measure">
          <ComingFields form={form} classes={classes} put={setForm} />
        </div>
      </section>
      <section className="part" aria-labelledby="list">
        <h2 id="list">The list and how it was read</h2>
        {keeping}
        {answer === null || answer.kind === "no table" ? null : (
          <>
            <div className="measure">
              <TableChoices
                title="Which column is what"
                uses={USES}
                seen={answer.seen}
                ask={ask}
                asksOrder={asksOrder(answer)}
                put={setAsk}
              />
            </div>
            <FirstRows seen={answer.seen} />
          </>
        )}
        {answer?.kind === "ready" || answer?.kind === "not worked out" ? <HowRead answer={answer} /> : null}
      </section>
    </>
  );
}

const USES: readonly UseLabel<VisitColumn>[] = [
  { use: "person", label: "Person", needed: true },
  { use: "surname", label: "Surname, where it stands apart", needed: false },
  { use: "date", label: "Date", needed: true },
  { use: "amount", label: "Amount; below nought is no visit", needed: false },
];

function Sentences({ answer, locale }: { readonly answer: ComingAnswer; readonly locale: Locale }) {
  // the last sentence is that of the newcomers, who have a part of their own
  const [first, ...others] = answer.sentences.slice(0, -1).map((it) => datesInWords(it, locale));
  return (
    <>
      <output className="answer">{first}</output>
      {others.map((it) => (
        <p key={it}>{it}</p>
      ))}
      <p className="caution">{answer.caution}</p>
    </>
  );
}

type Read = Extract<VisitsAnswer, { kind: "ready" | "not worked out" }>;

function HowRead({ answer }: { readonly answer: Read }) {
  const { visits, seen, left, writtenTwoWays } = answer;
  const names = writtenTwoWays.slice(0, 10).join(", ");
  return (
    <>
      <p>
        {visits} visits out of {seen.rows} rows, parted by {seen.separator}, in {seen.encoding}.
      </p>
      {writtenTwoWays.length === 0 ? null : (
        <p>
          Written in more than one way and taken for one person: {names}
          {writtenTwoWays.length > 10 ? ` and ${writtenTwoWays.length - 10} more` : ""}. Two people of the
          same name are one here, too: nothing in a list can tell them apart.
        </p>
      )}
      <RowsLeft left={left} open={visits === 0} />
    </>
  );
}

function asksOrder(answer: Exclude<VisitsAnswer, { kind: "no table" }>): boolean {
  if (answer.kind === "asks") return answer.problems.some(({ code }) => code.startsWith("date-order"));
  return answer.dates.how === "likely" || answer.dates.how === "told";
}

function sourceWords({ name }: Source, answer: VisitsAnswer | null): string {
  if (answer === null) return name;
  if (answer.kind === "no table") return `${name} cannot be read.`;
  return answer.kind === "asks" ? `${name}: something must be said before it can be read.` : name;
}
