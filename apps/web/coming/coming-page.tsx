import "./coming.css";
import { useParams } from "@tanstack/react-router";
import type { VisitColumn } from "#core/table";
import { useEffect, useMemo, useState } from "react";
import { usePractice } from "../drafts/use-practice.ts";
import { type TableAsk, nothingSaid } from "../import/table-ask.ts";
import { exampleDay } from "../import/example-day.ts";
import { type Source, TableSource } from "../import/table-source.tsx";
import { PageTitle } from "../parts/page-title.tsx";
import { type ComingForm, comingChoices, firstChoices } from "./coming-choices.ts";
import { ComingResult } from "./coming-result.tsx";
import { FileKeeping } from "./file-keeping.tsx";
import { type KeptVisits, keptVisits } from "./kept-visits.ts";

/** A hundred thousand visits are some four million bytes. */
const MOST_BYTES = 50_000_000;

/** Who is still coming, from a file of visits whose names stay on this device. */
export function ComingPage() {
  const { practice: id } = useParams({ from: "/practice/$practice/people/coming" });
  const { practice, classes } = usePractice(id);
  const [source, setSource] = useState<Source | null>(null);
  const [ask, setAsk] = useState<TableAsk<VisitColumn>>(nothingSaid);
  const [form, setForm] = useState<ComingForm>(() => firstChoices(classes));
  const [kept, setKept] = useState<KeptVisits | null>(null);
  useEffect(() => {
    let here = true;
    void keptVisits(id).then((found) => (here ? setKept(found) : undefined));
    return () => {
      here = false;
    };
  }, [id]);
  const choices = useMemo(() => comingChoices(form, classes), [form, classes]);
  const open = (visits: KeptVisits) => {
    setAsk(visits.ask);
    setSource(visits.source);
  };
  const forgotten = () => {
    setSource(null);
    setAsk(nothingSaid);
    setKept(null);
  };
  return (
    <>
      <div className="page-head">
        <PageTitle tab="Who is still coming">Who is still coming</PageTitle>
        {source === null ? (
          <>
            <p className="answer">
              A list of who came on which day tells who has not been seen for some weeks, what visits to
              expect, and how long newcomers stay.
            </p>
            <p>
              The names stay on this device. The list is read here; nothing of it is sent anywhere or goes
              into the practice’s record.
            </p>
          </>
        ) : null}
      </div>
      {source === null ? (
        <section className="part" aria-label="A list of visits">
          {kept === null ? null : (
            <p className="row">
              <button type="button" className="button button-main" onClick={() => open(kept)}>
                Open the list kept on this device
              </button>
              <span className="small soft">{kept.source.name}</span>
            </p>
          )}
          <TableSource
            fileLabel="Choose a file of visits"
            pasteLabel="Or paste rows"
            example={`a row for each visit: who, and on which day, like Nell Arkwright; ${exampleDay(practice.locale)}`}
            most={MOST_BYTES}
            put={(chosen) => open({ source: chosen, ask: nothingSaid })}
          />
          {kept === null ? null : (
            <FileKeeping practice={id} visits={kept} kept put={setKept} forgotten={forgotten} />
          )}
        </section>
      ) : (
        <ComingResult
          source={source}
          ask={ask}
          setAsk={setAsk}
          choices={choices}
          form={form}
          setForm={setForm}
          classes={classes}
          locale={practice.locale}
          keeping={
            <FileKeeping
              practice={id}
              visits={{ source, ask }}
              kept={kept?.source === source && kept.ask === ask}
              put={setKept}
              forgotten={forgotten}
            />
          }
        />
      )}
    </>
  );
}
