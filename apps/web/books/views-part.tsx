import { booksCash, booksEarned, type BooksInput, cashLines, earnedLines } from "#app/views";
import { useMemo } from "react";
import { Working } from "../parts/working.tsx";
import { LinesTable } from "./lines-table.tsx";
import { OpenedOnly } from "./opened-only.tsx";
import { PlacesTable } from "./places-table.tsx";

/** The two views side by side, never added together; each month opens to its sum and its lines. */
export function ViewsPart({ input }: { readonly input: BooksInput }) {
  return (
    <section className="part books-part" aria-labelledby="views">
      <h2 id="views" className="part-title">
        Month by month, in two views
      </h2>
      <p>
        The same books, looked at twice. A pass is money on the day it is paid for and income on each evening
        it is used, so the two never agree within a month and are never added together.
      </p>
      <div className="books-two">
        <CashMonths input={input} />
        <EarnedMonths input={input} />
      </div>
    </section>
  );
}

function CashMonths({ input }: { readonly input: BooksInput }) {
  const months = useMemo(() => booksCash(input), [input]);
  return (
    <div className="books-view">
      <h3>Cash view, for tax</h3>
      <p className="small">Money when it came in and when it was paid.</p>
      {months.length === 0 ? <p>No money moved in these days.</p> : null}
      {months.map(({ month, says, headings, places }) => (
        <OpenedOnly key={month} summary={says}>
          {() => (
            <>
              <Working caption="By what it was for" lines={headings} />
              <PlacesTable places={places} />
              <LinesTable caption="Every movement" lines={cashLines(input, month)} locale={input.locale} />
            </>
          )}
        </OpenedOnly>
      ))}
    </div>
  );
}

function EarnedMonths({ input }: { readonly input: BooksInput }) {
  const months = useMemo(() => booksEarned(input), [input]);
  return (
    <div className="books-view">
      <h3>Earned view, for decisions</h3>
      <p className="small">Income when it was taught, costs when they arose, paid or not.</p>
      {months.length === 0 ? <p>Nothing was earned and no cost arose in these days.</p> : null}
      {months.map(({ month, says, working }) => (
        <OpenedOnly key={month} summary={says}>
          {() => (
            <>
              <Working caption="By what it was for" lines={working} />
              <LinesTable
                caption="Everything earned and every cost"
                lines={earnedLines(input, month)}
                locale={input.locale}
              />
            </>
          )}
        </OpenedOnly>
      ))}
    </div>
  );
}
