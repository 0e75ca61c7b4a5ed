import "./people.css";
import { useQuery } from "@tanstack/react-query";
import { Link, useParams } from "@tanstack/react-router";
import type { PersonExport } from "#app/ports";
import { useState } from "react";
import { usePractice } from "../drafts/use-practice.ts";
import { TickField } from "../fields/tick-field.tsx";
import { ExportButton, fileNameOf } from "../parts/files.tsx";
import { PageTitle } from "../parts/page-title.tsx";
import { KeptWords } from "./kept-words.tsx";
import { NotRead } from "./not-read.tsx";
import { keptQuery } from "./record-reads.ts";

/** All that is kept about one person, to be read or handed over as a file. */
export function KeptPage() {
  const { practice: practiceId, person } = useParams({ from: "/practice/$practice/people/$person/kept" });
  const { practice } = usePractice(practiceId);
  const [opened, setOpened] = useState(false);
  const kept = useQuery(keptQuery(practiceId, person, opened ? "opened" : "closed"));
  const name = kept.data?.contact["name"] ?? "this person";
  return (
    <>
      <div className="page-head">
        <p className="small">
          <Link to="/practice/$practice/people/$person" params={{ practice: practiceId, person }}>
            Back
          </Link>
        </p>
        <PageTitle tab="All that is kept">All that is kept about {name}</PageTitle>
        <p>
          Whoever asks for what is kept about her can have this page on paper, or the file. Accident records
          are kept apart and are not part of it; look there for the name yourself.
        </p>
        <TickField label="With the note about health, opened" checked={opened} put={setOpened} />
        {kept.data === undefined ? null : <HandOver kept={kept.data} />}
      </div>
      {kept.isError ? <NotRead error={kept.error} again={kept.refetch} /> : null}
      {kept.isPending ? <output>Reading …</output> : null}
      {kept.data === undefined ? null : <KeptWords kept={kept.data} practice={practice} />}
    </>
  );
}

function HandOver({ kept }: { readonly kept: PersonExport }) {
  return (
    <p className="row no-print">
      <ExportButton
        label="Save it as a file"
        name={fileNameOf(kept.contact["name"] ?? "", "person")}
        document={kept}
      />
      <button type="button" className="button" onClick={() => globalThis.print()}>
        Print this page
      </button>
    </p>
  );
}
