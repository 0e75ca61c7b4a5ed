import "./tonight.css";
import { Link, useParams } from "@tanstack/react-router";
import { usePractice } from "../drafts/use-practice.ts";
import { PageTitle } from "../parts/page-title.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { useRecord } from "../record/use-record.ts";
import { useSessionLook } from "../record/use-session-look.ts";
import { RecordLine } from "./record-line.tsx";
import { SessionRegister } from "./session-register.tsx";
import { useNow } from "./use-now.ts";

/** The register of any one session. */
export function SessionPage() {
  const { practice, id } = useParams({ from: "/practice/$practice/sessions/$id" });
  const here = usePractice(practice);
  const { locale } = here.practice;
  const record = useRecord(practice, locale);
  const now = useNow();
  const { session, looked, problems } = useSessionLook(record, id);
  return (
    <>
      <RecordLine record={record} />
      {session === undefined ? (
        <div className="page-head">
          <PageTitle tab="A session">{looked ? "There is no such session here" : "A session"}</PageTitle>
          <p>{looked ? "It is not in the record, or the record cannot be read now." : "Reading …"}</p>
          <ProblemList problems={problems} />
        </div>
      ) : (
        <SessionRegister
          key={id}
          practiceId={practice}
          id={id}
          session={session}
          hall={here.halls.find((it) => it.id === session.hall)?.document.name ?? null}
          record={record}
          locale={locale}
          now={now}
          title={session.name}
        />
      )}
      <p className="no-print">
        <Link to="/practice/$practice/tonight" params={{ practice }} className="reach-link">
          Tonight
        </Link>
      </p>
    </>
  );
}
