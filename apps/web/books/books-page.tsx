import "../people/people.css";
import "./books.css";
import { Link, useParams } from "@tanstack/react-router";
import { booksAnswer, type BooksInput, taxYearAround } from "#app/views";
import { useMemo, useState } from "react";
import { usePractice } from "../drafts/use-practice.ts";
import { PageTitle } from "../parts/page-title.tsx";
import { NotRead } from "../people/not-read.tsx";
import { todayHere } from "../people/today-here.ts";
import { recordWords } from "../record/record-words.ts";
import { useRecord } from "../record/use-record.ts";
import type { BooksAt } from "./books-at.ts";
import { DayPart } from "./day-part.tsx";
import { OwedPart } from "./owed-part.tsx";
import { DuePart } from "./due-part.tsx";
import { StretchFields } from "./stretch-fields.tsx";
import { UnpaidPart } from "./unpaid-part.tsx";
import { useBooks } from "./use-books.ts";
import { ViewsPart } from "./views-part.tsx";
import { WritePart } from "./write-part.tsx";

/** The books: what came in, what was earned, who owes what, and what is to be written down. */
export function BooksPage() {
  const { practice: practiceId } = useParams({ from: "/practice/$practice/books" });
  const { practice, halls } = usePractice(practiceId);
  const today = todayHere(practice.zone);
  const [stretch, setStretch] = useState(() => taxYearAround(today, practice.currency));
  const { input, error, again } = useBooks({ practiceId, practice, halls }, stretch);
  const at: BooksAt = { practiceId, practice, halls, today };
  return (
    <>
      <div className="page-head">
        <p className="small no-print">
          <Link to="/practice/$practice/money" params={{ practice: practiceId }}>
            Money
          </Link>
        </p>
        <PageTitle tab="The books">The books</PageTitle>
        {input === null ? (
          <output>{error === null ? "Reading the books …" : ""}</output>
        ) : (
          <Answer input={input} today={today} />
        )}
        {error === null ? null : <NotRead error={error} again={again} />}
        <Waiting at={at} />
        <StretchFields stretch={stretch} today={today} currency={practice.currency} put={setStretch} />
        <p>
          <Link to="/practice/$practice/books/year-end" params={{ practice: practiceId }}>
            Year end, to print or as a file
          </Link>
        </p>
      </div>
      {input === null ? null : (
        <>
          <ViewsPart input={input} />
          <OwedPart input={input} />
          <UnpaidPart input={input} at={at} />
          <DuePart input={input} at={at} />
        </>
      )}
      <WritePart at={at} />
      <DayPart at={at} />
    </>
  );
}

function Answer({ input, today }: { readonly input: BooksInput; readonly today: string }) {
  const { says, balanced, check } = useMemo(() => booksAnswer(input, today), [input, today]);
  return (
    <>
      <p className="answer">
        {says.map((it) => (
          <span key={it}>{it} </span>
        ))}
      </p>
      <p className={balanced ? "small soft" : "caution"}>{check}</p>
    </>
  );
}

/** What was done on this device and is not in the books yet. */
function Waiting({ at: { practiceId, practice } }: { readonly at: BooksAt }) {
  const record = useRecord(practiceId, practice.locale);
  const waits = record.outbox.queue.length + record.outbox.unsettled.length;
  if (waits === 0) return null;
  return <p className="caution">{recordWords(record)} What waits is not in these books yet.</p>;
}
