import "./tonight.css";
import { Link, useParams } from "@tanstack/react-router";
import type { Problem } from "#core/words";
import { useEffect, useState } from "react";
import { usePractice } from "../drafts/use-practice.ts";
import { PageTitle } from "../parts/page-title.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { type RecordOpen, useRecord } from "../record/use-record.ts";
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
  const session = record.look.session(id);
  const { looked, problems } = useLook(record, id, session !== undefined);
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

/** A date too far away to be on the device is asked of the server; the id of a session ends with its date. */
function useLook({ keeper, ready, silent }: RecordOpen, id: string, known: boolean) {
  const [looked, setLooked] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  useEffect(() => {
    if (known || (!ready && !silent)) return;
    const lookUp = async () => {
      const answer = await keeper.look(id.slice(-10));
      setProblems(answer.ok ? [] : answer.problems);
      setLooked(true);
    };
    void lookUp();
  }, [keeper, id, known, ready, silent]);
  return { looked, problems };
}
