import { useQuery } from "@tanstack/react-query";
import type { PassState } from "#core/books";
import { DoneWords } from "./done-words.tsx";
import { NotRead } from "./not-read.tsx";
import type { Classes } from "./pass-dates.ts";
import { PassItem } from "./pass-item.tsx";
import type { PersonAt } from "./person-page.tsx";
import { passesQuery, type PersonHere } from "./record-reads.ts";
import { SellPass } from "./sell-pass.tsx";
import { type Doing, useDoing } from "./use-doing.ts";

export type PassesAt = {
  readonly at: PersonAt;
  readonly classes: Classes;
  readonly people: readonly PersonHere[];
};

/** Handing on is told by the part: the pass itself is then on another page. */
export type PassesHere = PassesAt & { readonly handing: Doing };

/** The passes and blocks of one person, what can be done to each, and the sale of another. */
export function PassesPart(given: PassesAt) {
  const { at } = given;
  const handing = useDoing(at.practiceId, at.practice.locale);
  const passes = useQuery(passesQuery(at.practiceId, at.id));
  return (
    <section className="part" aria-labelledby="passes">
      <h2 id="passes">Passes</h2>
      {passes.isError ? <NotRead error={passes.error} again={passes.refetch} /> : null}
      {passes.data?.length === 0 ? <p>No pass and no block.</p> : null}
      {newestFirst(passes.data ?? []).map((pass) => (
        <PassItem key={pass.pass} {...given} handing={handing} pass={pass} />
      ))}
      <DoneWords doing={{ ...handing, problems: [] }} />
      <SellPass at={at} classes={given.classes} />
    </section>
  );
}

function newestFirst(passes: readonly PassState[]): readonly PassState[] {
  return [...passes].sort((one, other) =>
    one.soldOn < other.soldOn ? 1 : Number(one.soldOn > other.soldOn) * -1,
  );
}
