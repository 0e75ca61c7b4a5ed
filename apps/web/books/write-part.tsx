import { word } from "#core/words";
import { Show } from "../parts/show.tsx";
import { DoneWords } from "../people/done-words.tsx";
import { useDoing } from "../people/use-doing.ts";
import type { BooksAt } from "./books-at.ts";
import { CostForm } from "./cost-form.tsx";
import { MoveForm } from "./move-form.tsx";
import { OwnForm } from "./own-form.tsx";
import { WorkForm } from "./work-form.tsx";

/** What the register does not know of: costs, work for others, her own money, money that changes its place. */
export function WritePart({ at }: { readonly at: BooksAt }) {
  const doing = useDoing(at.practiceId, at.practice.locale);
  return (
    <section className="part books-part no-print" aria-labelledby="write">
      <h2 id="write" className="part-title">
        Write into the books
      </h2>
      <p>Places and passes come in from the register and from People. The rest is written here.</p>
      <Show summary={`A cost: a hall, ${word("cover", at.practice.locale)}, travel and the like`}>
        <CostForm at={at} doing={doing} />
      </Show>
      <Show summary="Work that is paid by invoice, like a class for a studio">
        <WorkForm at={at} doing={doing} />
      </Show>
      <Show summary="Your own money, put in or taken out">
        <OwnForm at={at} doing={doing} />
      </Show>
      <Show summary="Money that changes its place, like takings brought to the bank">
        <MoveForm at={at} doing={doing} />
      </Show>
      <DoneWords doing={doing} />
    </section>
  );
}
