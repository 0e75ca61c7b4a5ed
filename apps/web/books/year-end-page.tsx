import "./books.css";
import { Link, useParams } from "@tanstack/react-router";
import { booksAnswer, type BooksInput, booksYearEnd, taxYearAround } from "#app/views";
import { bookRows, yearEndRows } from "#core/books";
import { useMemo, useState } from "react";
import { usePractice } from "../drafts/use-practice.ts";
import { PageTitle } from "../parts/page-title.tsx";
import { Working } from "../parts/working.tsx";
import { NotRead } from "../people/not-read.tsx";
import { todayHere } from "../people/today-here.ts";
import { CsvButton } from "./csv-button.tsx";
import { StretchFields } from "./stretch-fields.tsx";
import { useBooks } from "./use-books.ts";

/** A tax year for the accountant: by heading, with what a cash basis leaves out beside it, as paper or as a file. */
export function YearEndPage() {
  const { practice: practiceId } = useParams({ from: "/practice/$practice/books/year-end" });
  const { practice, halls } = usePractice(practiceId);
  const today = todayHere(practice.zone);
  const [stretch, setStretch] = useState(() => taxYearAround(today, practice.currency));
  const { input, error, again } = useBooks({ practiceId, practice, halls }, stretch);
  return (
    <>
      <div className="page-head">
        <p className="small no-print">
          <Link to="/practice/$practice/books" params={{ practice: practiceId }}>
            The books
          </Link>
        </p>
        <PageTitle tab="Year end">Year end of {practice.name}</PageTitle>
        {error === null ? null : <NotRead error={error} again={again} />}
        <div className="no-print">
          <StretchFields stretch={stretch} today={today} currency={practice.currency} put={setStretch} />
        </div>
      </div>
      {input === null ? (
        <output>{error === null ? "Reading the books …" : ""}</output>
      ) : (
        <YearEndSheet input={input} today={today} />
      )}
    </>
  );
}

function YearEndSheet({ input, today }: { readonly input: BooksInput; readonly today: string }) {
  const found = useMemo(() => booksYearEnd(input), [input]);
  const { check, balanced } = useMemo(() => booksAnswer(input, today), [input, today]);
  const { from, until } = input;
  return (
    <section className="part books-part">
      <p className="answer">
        {found.says}
        {until >= today && from <= today ? " The year is not over yet." : ""}
      </p>
      <Working caption="Received and paid, by heading" lines={found.working} />
      <Working caption="For memory: not counted above, as at the last day" lines={found.memory} />
      {found.beside === null ? null : (
        <>
          <Working caption="Two ways to come to a result" lines={found.beside.lines} />
          <p className="caution">{found.beside.note}</p>
        </>
      )}
      {found.cautions.map((it) => (
        <p key={it} className="caution">
          {it}
        </p>
      ))}
      <p className={balanced ? "small soft" : "caution"}>{check}</p>
      <p className="row no-print">
        <button type="button" className="button" onClick={() => globalThis.print()}>
          Print this page
        </button>
        <CsvButton
          label="The year as a file for a spreadsheet"
          name={`year-end-${from}-${until}.csv`}
          rows={() => yearEndRows(found.year, found.atTheEnd)}
        />
        <CsvButton
          label="Every line as a file for a spreadsheet"
          name={`books-${from}-${until}.csv`}
          rows={() => bookRows(input.lines)}
        />
      </p>
    </section>
  );
}
