import { Link } from "@tanstack/react-router";
import { paidFor, type SessionState } from "#core/roll";
import type { Locale } from "#core/words";
import { useCallback, useMemo, useState } from "react";
import { PageTitle } from "../parts/page-title.tsx";
import type { RecordOpen } from "../record/use-record.ts";
import { CloseRegister } from "./close-register.tsx";
import { HeadCount } from "./head-count.tsx";
import { PlaceForm } from "./place-form.tsx";
import { PlaceMore } from "./place-more.tsx";
import { PrintRegister } from "./print-register.tsx";
import { ReachBar } from "./reach-bar.tsx";
import { type RegisterHere, useRun, useWriter } from "./register-here.ts";
import { RegisterList } from "./register-list.tsx";
import { nameOf, registerRows, type RegisterRow } from "./register-rows.ts";
import { TakingsPart } from "./takings-part.tsx";
import { markedSentence, tonightSentence } from "./tonight-sentence.ts";
import { UnsettledPart } from "./unsettled-part.tsx";
import { useMarks } from "./use-marks.ts";
import { WaitingPart } from "./waiting-part.tsx";

type Props = {
  readonly practiceId: string;
  readonly id: string;
  readonly session: SessionState;
  readonly hall: string | null;
  readonly record: RecordOpen;
  readonly locale: Locale;
  readonly now: string;
  readonly title: string;
};

/** What is open over the register. */
export type Over = "walk in" | "book" | "heads" | "close" | { readonly place: string } | null;

/** One session with everybody in it: the answer first, then the register, then what follows from it. */
export function SessionRegister({ hall, title, ...given }: Props) {
  const { id, session, record, practiceId } = given;
  const writer = useWriter(given.locale);
  const here: RegisterHere = { ...given, writer, ...useRun(record) };
  const rows = useMemo(
    () => registerRows(id, session, record.look, writer),
    [id, session, record.look, writer],
  );
  const marks = useMarks(here);
  const [over, setOver] = useState<Over>(null);
  const more = useCallback((place: string) => setOver({ place }), []);
  return (
    <>
      <div className="page-head tonight-head no-print">
        <PageTitle tab={`${title}: ${session.name}`}>{title}</PageTitle>
        <p className="answer">{tonightSentence({ ...here, hall })}</p>
        {session.cover === null || session.cancelled !== null ? null : (
          <p>{nameOf(record.look, session.cover.by)} teaches it.</p>
        )}
      </div>
      <UnsettledPart record={record} />
      <section className="part register no-print" aria-labelledby="register">
        <div className="row">
          <h2 id="register">Register</h2>
          <p>
            {session.closed ? "Closed. " : ""}
            {markedSentence(session)}
          </p>
        </div>
        <RegisterList rows={rows} mark={marks.mark} more={more} />
        <Aside here={here} rows={rows} more={more} />
        <p className="small soft">{postedWords(session)}</p>
        <p className="row">
          {session.cancelled === null ? (
            <>
              <button type="button" className="button reach" onClick={() => setOver("book")}>
                Add a place
              </button>
              <button type="button" className="button reach" onClick={() => setOver("close")}>
                Close the register
              </button>
            </>
          ) : null}
          <button type="button" className="button reach" onClick={() => print()}>
            Print the register
          </button>
        </p>
      </section>
      <WaitingPart here={here} />
      <TakingsPart here={here} />
      <section className="part no-print" aria-label="When something is wrong">
        <p>
          <Link
            to="/practice/$practice/sessions/$id/wrong"
            params={{ practice: practiceId, id }}
            className="reach-link"
          >
            Something is wrong tonight
          </Link>
        </p>
      </section>
      <PrintRegister here={here} rows={rows} hall={hall} />
      {session.cancelled === null ? (
        <ReachBar said={here.said} last={marks.last} undo={marks.undo} open={setOver} />
      ) : null}
      <OverRegister here={here} rows={rows} over={over} close={() => setOver(null)} />
    </>
  );
}

function postedWords({ posted, capacity }: SessionState): string {
  return posted === null
    ? `The hall’s own number of people is not written down; ${capacity} mats is not that number.`
    : `The hall’s own number is ${posted} people, you and helpers among them.`;
}

type RowsProps = { readonly here: RegisterHere; readonly rows: readonly RegisterRow[] };
type AsideProps = RowsProps & { readonly more: (place: string) => void };

/** Whoever is beside the register: given up, with money that may have to go back or come in, or let in when no mat was left. */
function Aside({ here, rows, more }: AsideProps) {
  const { session, writer, record } = here;
  const gone = rows.filter(({ place }) => place.state.startsWith("given up"));
  return (
    <>
      {session.cameOver.map(({ person, paid }) => (
        <p key={person} className="caution">
          <strong>{nameOf(record.look, person)}</strong> was let in when no mat was left
          {paid === null
            ? "."
            : `, and paid ${writer.money(paid.amount, session.currency)} by ${paid.by}, which is in no book yet.`}{" "}
          Settle it with them.
        </p>
      ))}
      {gone.length > 0 ? (
        <p className="small">Given up: {gone.map((row) => goneWords(row, here)).join("; ")}.</p>
      ) : null}
      {gone
        .filter((row) => paidFor(row.place) > 0 || row.owes > 0)
        .map(({ place, name }) => (
          <button key={place.id} type="button" className="button reach" onClick={() => more(place.id)}>
            The money of {name}
          </button>
        ))}
    </>
  );
}

function goneWords({ name, place }: RegisterRow, { session, writer }: RegisterHere): string {
  const when = place.state === "given up early" ? "in time" : place.waived ? "late, let go" : "late, charged";
  const paid = paidFor(place);
  const back =
    paid > 0 && when !== "late, charged" ? `, ${writer.money(paid, session.currency)} came in` : "";
  return `${name} (${when}${back})`;
}

type OverProps = RowsProps & { readonly over: Over; readonly close: () => void };

function OverRegister({ here, rows, over, close }: OverProps) {
  if (over === null) return null;
  if (over === "walk in" || over === "book") return <PlaceForm here={here} way={over} close={close} />;
  if (over === "heads") return <HeadCount here={here} rows={rows} close={close} />;
  if (over === "close") return <CloseRegister here={here} rows={rows} close={close} />;
  const row = rows.find(({ place }) => place.id === over.place);
  return row === undefined ? null : <PlaceMore here={here} row={row} close={close} />;
}
