import "../tonight/tonight.css";
import { Link, useParams } from "@tanstack/react-router";
import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import type { KeptStream } from "#app/ports";
import type { AccidentState } from "#core/roll";
import type { Locale } from "#core/words";
import { momentWords } from "#core/notice";
import { ask } from "../api/ask.ts";
import { usePractice } from "../drafts/use-practice.ts";
import { WordsField } from "../fields/words-field.tsx";
import { PageTitle } from "../parts/page-title.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { type RecordOpen, useRecord } from "../record/use-record.ts";
import { RecordLine } from "../tonight/record-line.tsx";
import { useRun, useWriter } from "../tonight/register-here.ts";

type Accident = { readonly id: string; readonly state: AccidentState };

/** The accident book: what was written stays, more can be added. It is read from the server and kept on no device. */
export function AccidentsPage() {
  const { practice } = useParams({ from: "/practice/$practice/accidents" });
  const here = usePractice(practice);
  const { locale, zone } = here.practice;
  const record = useRecord(practice, locale);
  const { data, refetch } = useQuery({
    queryKey: ["accidents", practice, record.readAt],
    queryFn: () => ask(`/api/practices/${encodeURIComponent(practice)}/record/accidents`),
  });
  return (
    <>
      <RecordLine record={record} />
      <div className="page-head">
        <PageTitle tab="The accident book">The accident book</PageTitle>
        <p>
          Kept apart from the registers. How long it must be kept, and what has to be reported, the insurer
          and the law where you teach decide.
        </p>
      </div>
      {data === undefined ? <p>Reading …</p> : null}
      {data !== undefined && !data.ok ? <ProblemList problems={data.problems} /> : null}
      {data?.ok === true ? (
        <AccidentList
          accidents={accidentsIn(data.value)}
          record={record}
          locale={locale}
          zone={zone}
          again={() => void refetch()}
        />
      ) : null}
      <p className="no-print">
        <Link to="/practice/$practice/tonight" params={{ practice }} className="reach-link">
          Back to tonight
        </Link>
      </p>
    </>
  );
}

function accidentsIn(answer: unknown): readonly Accident[] {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own server, same contract
  const { streams } = answer as { readonly streams: readonly KeptStream[] };
  return (
    streams
      // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the list is of accidents
      .map(({ stream, state }) => ({ id: stream.slice("accident/".length), state: state as AccidentState }))
      .toSorted((one, other) => (one.state.facts.at < other.state.facts.at ? 1 : -1))
  );
}

type ListProps = {
  readonly accidents: readonly Accident[];
  readonly record: RecordOpen;
  readonly locale: Locale;
  readonly zone: string;
  readonly again: () => void;
};

function AccidentList({ accidents, ...rest }: ListProps) {
  if (accidents.length === 0) return <p>Nothing is written in it.</p>;
  return (
    <ul className="list-plain ledger">
      {accidents.map((it) => (
        <li key={it.id}>
          <OneAccident accident={it} {...rest} />
        </li>
      ))}
    </ul>
  );
}

type OneProps = Omit<ListProps, "accidents"> & { readonly accident: Accident };

function OneAccident({ accident, record, locale, zone, again }: OneProps) {
  const { facts, added } = accident.state;
  const writer = useWriter(locale);
  const { run, said } = useRun(record);
  const [text, setText] = useState("");
  const add = () => {
    const done = run({ kind: "add to accident", accident: accident.id, text }, "Add to an accident record");
    if (!done) return;
    setText("");
    again();
  };
  return (
    <section className="stack" aria-label={`Accident of ${momentWords(facts.at, zone, writer)}`}>
      <h2>{momentWords(facts.at, zone, writer)}</h2>
      <dl>
        {factLines(facts).map(([label, words]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{words}</dd>
          </div>
        ))}
        {added.map(({ text: more, at }) => (
          <div key={at}>
            <dt>Added on {momentWords(at, zone, writer)}</dt>
            <dd>{more}</dd>
          </div>
        ))}
      </dl>
      <div className="stack no-print">
        <WordsField label="Add to it" long value={text} onChange={setText} />
        <p className="row">
          <button type="button" className="button" disabled={text.trim() === ""} onClick={add}>
            Add this
          </button>
          <button type="button" className="button" onClick={() => print()}>
            Print the book
          </button>
        </p>
        <output>{said.says.join(" ")}</output>
        <ProblemList problems={said.problems} />
      </div>
    </section>
  );
}

function factLines(facts: AccidentState["facts"]): readonly (readonly [string, string])[] {
  const lines: readonly (readonly [string, string])[] = [
    ["Who was hurt", facts.person],
    ["How to reach them", facts.contact],
    ["Age", facts.ageBand],
    ["Where", facts.place],
    ["What was being done", facts.activity],
    ["What happened", facts.happened],
    ["What was hurt", facts.injury],
    ["First aid", [facts.firstAid, facts.by].filter((it) => it !== "").join(", by ")],
    ["Ambulance", facts.ambulance ? "came" : "none"],
    ["Who saw it", facts.witnesses],
    ["The hall or the kit", facts.premises],
    ["Who was told", facts.told],
  ];
  return lines.filter(([, words]) => words !== "");
}
