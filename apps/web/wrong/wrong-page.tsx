import "../tonight/tonight.css";
import { Link, useParams } from "@tanstack/react-router";
import { useState } from "react";
import { PageTitle } from "../parts/page-title.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { Show } from "../parts/show.tsx";
import { BigChoice } from "../tonight/big-choice.tsx";
import { RecordLine } from "../tonight/record-line.tsx";
import { AccidentPart } from "./accident-part.tsx";
import { CancelPart } from "./cancel-part.tsx";
import { CoverPart } from "./cover-part.tsx";
import { MergePart } from "./merge-part.tsx";
import { MovePart } from "./move-part.tsx";
import { ThinPart } from "./thin-part.tsx";
import { useWrongHere } from "./use-wrong-here.ts";
import type { WrongHere } from "./wrong-here.ts";

/** One screen for what goes wrong: everything that follows is listed before it is done. */
export function WrongPage() {
  const { practice: practiceId, id } = useParams({ from: "/practice/$practice/sessions/$id/wrong" });
  const { practice, record, looked, here } = useWrongHere(practiceId, id);
  return (
    <>
      <RecordLine record={record} />
      <div className="page-head">
        <PageTitle tab="Something is wrong">Something is wrong</PageTitle>
        {here === null ? (
          <p>{looked ? "There is no such session here." : "Reading …"}</p>
        ) : (
          <p className="answer">
            {here.session.name} on {here.writer.day(here.session.date)}. Nothing is done before you have read
            what follows from it.
          </p>
        )}
      </div>
      {here === null ? null : (
        <WhatIsWrong
          here={here}
          halls={practice.halls.map(({ id: hall, document }) => ({ id: hall, name: document.name }))}
        />
      )}
      <p>
        <Link
          to="/practice/$practice/sessions/$id"
          params={{ practice: practiceId, id }}
          className="reach-link"
        >
          Back to the register
        </Link>
      </p>
    </>
  );
}

const choices = [
  { value: "hall shut", label: "The hall is shut" },
  { value: "teacher", label: "I cannot teach" },
  { value: "too few", label: "Too few are coming" },
  { value: "weather", label: "The weather" },
  { value: "hurt", label: "Somebody was hurt" },
] as const;

type WhatProps = {
  readonly here: WrongHere;
  readonly halls: readonly { readonly id: string; readonly name: string }[];
};

function WhatIsWrong({ here, halls }: WhatProps) {
  const [what, setWhat] = useState<(typeof choices)[number]["value"] | null>(null);
  return (
    <section className="part" aria-label="What is wrong">
      <div className="stack measure">
        <BigChoice
          label="What is wrong?"
          value={what ?? ""}
          choices={choices}
          put={(value) => setWhat(value === "" ? null : value)}
        />
        <output>{here.said.says.join(" ")}</output>
        <ProblemList problems={here.said.problems} />
        {what === "teacher" ? <CoverPart here={here} /> : null}
        {what === "too few" ? (
          <>
            <ThinPart here={here} />
            <MergePart here={here} />
          </>
        ) : null}
        {what === "hurt" ? <AccidentPart here={here} /> : null}
        {what === null || what === "hurt" ? null : (
          <>
            {what === "teacher" && here.session.cover !== null && here.session.cancelled === null ? (
              <Show summary="Or cancel it all the same">
                <CancelPart key={what} here={here} why={what} />
              </Show>
            ) : (
              <CancelPart key={what} here={here} why={what} />
            )}
            <MovePart here={here} why={what} halls={halls} />
          </>
        )}
      </div>
    </section>
  );
}
