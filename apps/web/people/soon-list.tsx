import { useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { type PassState, type UseByWarning, useByWarning } from "#core/books";
import type { PracticeDocument, Writer } from "#core/words";
import { screenWriter } from "../record/screen-writer.ts";
import { NotRead } from "./not-read.tsx";
import { type Classes, passDates } from "./pass-dates.ts";
import { passesQuery, type PersonHere } from "./record-reads.ts";
import { todayHere } from "./today-here.ts";

type Props = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly classes: Classes;
  readonly people: readonly PersonHere[];
};

type Soon = { readonly pass: PassState; readonly warning: UseByWarning };

/** Passes whose holders should be told: one teaching week left, and up to four. */
export function SoonList({ practiceId, practice, classes, people }: Props) {
  const passes = useQuery(passesQuery(practiceId));
  const soon = soonOf(passes.data ?? [], classes, todayHere(practice.zone), screenWriter(practice.locale));
  const names = new Map(people.map(({ id, person }) => [id, person.contact.name]));
  return (
    <section className="part" aria-labelledby="soon">
      <h2 id="soon">Passes that run out soon</h2>
      {passes.isError ? <NotRead error={passes.error} again={passes.refetch} /> : null}
      {passes.data !== undefined && soon.length === 0 ? (
        <p>No pass runs out within four teaching weeks.</p>
      ) : null}
      {([1, 4] as const).map((weeks) => {
        const due = soon.filter(({ warning }) => warning.weeks === weeks);
        return due.length === 0 ? null : (
          <div key={weeks} className="stack-close">
            <h3>{weeks === 1 ? "Within a teaching week" : "Within four teaching weeks"}</h3>
            <ul className="list-plain ledger">
              {due.map(({ pass, warning }) => (
                <li key={pass.pass} className="stack-close">
                  <Link
                    to="/practice/$practice/people/$person"
                    params={{ practice: practiceId, person: pass.holder }}
                  >
                    {names.get(pass.holder) ?? "A holder who was erased"}
                  </Link>
                  <span className="small">To tell: {warning.sentence}</span>
                </li>
              ))}
            </ul>
          </div>
        );
      })}
    </section>
  );
}

function soonOf(
  passes: readonly PassState[],
  classes: Classes,
  today: string,
  writer: Writer,
): readonly Soon[] {
  return passes.flatMap((pass) => {
    const warning = useByWarning(pass, passDates(pass.valid, classes), today, writer);
    return warning === null ? [] : [{ pass, warning }];
  });
}
