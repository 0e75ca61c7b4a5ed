import { booksTakings, type BooksTakings } from "#app/views";
import { cashCount } from "#core/books";
import { useQuery } from "@tanstack/react-query";
import { useId, useMemo, useState } from "react";
import { DateField } from "../fields/date-field.tsx";
import { currencyOf } from "../hall/hall-form.ts";
import { TableFrame } from "../parts/table-frame.tsx";
import { DoneWords } from "../people/done-words.tsx";
import { NotRead } from "../people/not-read.tsx";
import { useDoing } from "../people/use-doing.ts";
import { screenWriter } from "../record/screen-writer.ts";
import { AmountBox, minorTyped } from "../tonight/amount-box.tsx";
import type { BooksAt } from "./books-at.ts";
import { booksQuery } from "./books-reads.ts";

/** A day's takings by means, and the box: what it should hold, and what it holds. */
export function DayPart({ at }: { readonly at: BooksAt }) {
  const { practiceId, practice } = at;
  const [day, setDay] = useState(at.today);
  const read = useQuery(booksQuery(practiceId, day, day));
  const { currency, locale } = practice;
  const takings = useMemo(
    () =>
      read.data === undefined
        ? null
        : booksTakings({ ...read.data, currency, writer: screenWriter(locale) }, day),
    [read.data, currency, locale, day],
  );
  return (
    <section className="part books-part no-print" aria-labelledby="day">
      <h2 id="day" className="part-title">
        A day’s takings and the cash box
      </h2>
      <div className="holds-fields measure">
        <DateField label="Day" value={day} put={setDay} />
      </div>
      {read.isError ? <NotRead error={read.error} again={read.refetch} /> : null}
      {takings === null ? null : (
        <>
          <TakingsTable takings={takings} />
          <CountBox key={day} at={at} day={day} takings={takings} />
        </>
      )}
    </section>
  );
}

function TakingsTable({ takings: { says, rows } }: { readonly takings: BooksTakings }) {
  const id = useId();
  return (
    <>
      <p>{says}</p>
      {rows.length === 0 ? null : (
        <TableFrame labelledBy={id}>
          <table className="figures books-table">
            <caption id={id}>
              By where it came in; moved is what was put in or found, less what was taken elsewhere
            </caption>
            <thead>
              <tr>
                <th scope="col">Where</th>
                <th scope="col">Taken</th>
                <th scope="col">Given back</th>
                <th scope="col">Paid for costs</th>
                <th scope="col">Moved</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((it) => (
                <tr key={it.where}>
                  <th scope="row">{it.where}</th>
                  <td>{it.taken}</td>
                  <td>{it.givenBack}</td>
                  <td>{it.paidOut}</td>
                  <td>{it.moved}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </TableFrame>
      )}
    </>
  );
}

type CountProps = { readonly at: BooksAt; readonly day: string; readonly takings: BooksTakings };

function CountBox({ at: { practiceId, practice }, day, takings }: CountProps) {
  const doing = useDoing(practiceId, practice.locale);
  const [text, setText] = useState("");
  const { currency, locale } = practice;
  const writer = screenWriter(locale);
  const counted = minorTyped(text, currencyOf(currency));
  const found = counted === null ? null : cashCount(takings.box, counted, writer);
  const { expected } = cashCount(takings.box, 0, writer);
  const write = async () => {
    if (counted === null) return;
    const done = await doing.run({ kind: "count cash", currency, on: day, expected, counted });
    if (done) setText("");
  };
  return (
    <div className="stack-close measure holds-fields">
      <p>
        By the books the cash box holds {writer.money(expected, currency)} at the end of this day. Count it
        and write what is in it.
      </p>
      <AmountBox label="Counted in the cash box" currency={currencyOf(currency)} text={text} put={setText} />
      <output className="books-found">{found?.sentence ?? ""}</output>
      <p>
        <button
          type="button"
          className="button"
          disabled={doing.busy || found === null || found.difference === 0}
          onClick={() => void write()}
        >
          Write the difference into the books
        </button>
      </p>
      <DoneWords doing={doing} />
    </div>
  );
}
