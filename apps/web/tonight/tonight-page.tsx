import "./tonight.css";
import { Link, useParams } from "@tanstack/react-router";
import { usePractice } from "../drafts/use-practice.ts";
import { PageTitle } from "../parts/page-title.tsx";
import { nameOr } from "../places/hall-name.ts";
import { useRecord } from "../record/use-record.ts";
import { DatesPart } from "./dates-part.tsx";
import { pickTonight } from "./pick-tonight.ts";
import { RecordLine } from "./record-line.tsx";
import { useWriter } from "./register-here.ts";
import { SessionRegister } from "./session-register.tsx";
import { UnsettledPart } from "./unsettled-part.tsx";
import { UpcomingPart } from "./upcoming-part.tsx";
import { useNow } from "./use-now.ts";

/** The next session and its register, and what comes after. */
export function TonightPage() {
  const { practice: id } = useParams({ from: "/practice/$practice/tonight" });
  const here = usePractice(id);
  const { locale } = here.practice;
  const record = useRecord(id, locale);
  const writer = useWriter(locale);
  const now = useNow();
  const tonight = pickTonight(record.look.sessions, now);
  const hall = here.halls.find((it) => it.id === tonight?.state.hall);
  return (
    <>
      <RecordLine record={record} />
      {tonight === undefined ? (
        <NoSession practiceId={id} record={record} />
      ) : (
        <SessionRegister
          key={tonight.id}
          practiceId={id}
          id={tonight.id}
          session={tonight.state}
          hall={hall?.document.name ?? null}
          record={record}
          locale={locale}
          now={now}
          title="Tonight"
        />
      )}
      {record.ready ? (
        <UpcomingPart
          practiceId={id}
          sessions={record.look.sessions}
          above={tonight?.id}
          now={now}
          writer={writer}
        />
      ) : null}
    </>
  );
}

type NoSessionProps = { readonly practiceId: string; readonly record: ReturnType<typeof useRecord> };

/** No session is at hand: the dates of a class are put into the record here. */
function NoSession({ practiceId, record }: NoSessionProps) {
  const here = usePractice(practiceId);
  return (
    <>
      <div className="page-head">
        <PageTitle tab="Tonight">Tonight</PageTitle>
        <p className="answer">
          {record.ready
            ? "No session of the next fourteen days is in the record."
            : record.silent
              ? "There is no signal, and this device has not read the record before."
              : "Reading the record …"}
        </p>
        {record.ready && here.classes.length === 0 ? (
          <p>
            <Link to="/practice/$practice/classes" params={{ practice: practiceId }}>
              Begin a class
            </Link>{" "}
            first; its dates are put into the record here.
          </p>
        ) : null}
      </div>
      <UnsettledPart record={record} />
      {record.ready
        ? here.classes.map(({ id, document }) => (
            <DatesPart
              key={id}
              practiceId={practiceId}
              id={id}
              document={document}
              open={here.classes.length === 1}
              title={`The dates of ${nameOr(document.name, "a class without a name")}`}
            />
          ))
        : null}
    </>
  );
}
