import "../tonight/tonight.css";
import { Link, useParams } from "@tanstack/react-router";
import { takesMat } from "#core/roll";
import { PageTitle } from "../parts/page-title.tsx";
import { registerRows } from "../tonight/register-rows.ts";
import { clockOf } from "../tonight/session-times.ts";
import { useWrongHere } from "./use-wrong-here.ts";
import type { WrongHere } from "./wrong-here.ts";

/** One sheet for whoever takes the class: the room, the people, the money rule. No word about anybody's health. */
export function HandoverPage() {
  const { practice: practiceId, id } = useParams({ from: "/practice/$practice/sessions/$id/handover" });
  const { practice, looked, here } = useWrongHere(practiceId, id);
  return (
    <>
      <div className="page-head">
        <PageTitle tab="Handover sheet">Handover sheet</PageTitle>
        {here === null ? <p>{looked ? "There is no such session here." : "Reading …"}</p> : null}
      </div>
      {here === null ? null : <Handover here={here} teacher={practice.practice.name} />}
    </>
  );
}

type Props = { readonly here: WrongHere; readonly teacher: string };

function Handover({ here, teacher }: Props) {
  const { session, document, hall, writer, record, id } = here;
  const rows = registerRows(id, session, record.look, writer).filter(({ place }) => takesMat(place));
  const by = record.look.person(session.cover?.by ?? "")?.contact.name;
  return (
    <section className="part" aria-label="Handover sheet">
      <p className="answer">
        {session.name}, {writer.day(session.date)} at {clockOf(session.starts, session.zone, writer)},{" "}
        {session.minutes} minutes
        {hall === undefined ? "" : `, ${hall.name}`}.
      </p>
      <dl>
        <dt>Taught by</dt>
        <dd>
          {by === undefined
            ? "________"
            : `${by}, for ${writer.money(session.cover?.fee ?? 0, session.currency)}`}{" "}
          in place of {teacher}
        </dd>
        <dt>Who it is for</dt>
        <dd>{document?.whoFor === undefined || document.whoFor === "" ? "________" : document.whoFor}</dd>
        <dt>People in the room</dt>
        <dd>
          {session.capacity} mats;{" "}
          {session.posted === null
            ? "the hall’s own number is on its notice"
            : `the hall’s own number is ${session.posted} people`}
          . Let nobody in beyond it, keep the ways to the doors clear, and count heads.
        </dd>
        <dt>Money</dt>
        <dd>
          {writer.money(session.single, session.currency)} for whoever comes without a place; note the name
          and how it was paid.
        </dd>
        <dt>Whoever has a dot</dt>
        <dd>
          Ask quietly before the class whether there is something you should know; they tell you themselves.
        </dd>
        <dt>Where</dt>
        <dd>{hall === undefined ? "________" : [hall.name, hall.address].filter(Boolean).join(", ")}</dd>
        <dt>Key, lights, heating</dt>
        <dd>{hall?.notes === undefined || hall.notes === "" ? "________" : hall.notes}</dd>
        <dt>If something happens</dt>
        <dd>Emergency services first. Then ring {teacher}: ________</dd>
      </dl>
      <table className="print-register">
        <caption>Booked: {rows.length}</caption>
        <thead>
          <tr>
            <th scope="col">Name</th>
            <th scope="col">How</th>
            <th scope="col">Here</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ place, name, how, speak }) => (
            <tr key={place.id}>
              <td>
                {name}
                {speak ? " • speak first" : ""}
              </td>
              <td>{how}</td>
              <td className="print-box">{"\u00a0"}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="no-print">
        <button type="button" className="button button-main reach" onClick={() => print()}>
          Print this sheet
        </button>
      </p>
      <p className="no-print">
        <Link
          to="/practice/$practice/sessions/$id"
          params={{ practice: here.practiceId, id }}
          className="reach-link"
        >
          Back to the register
        </Link>
      </p>
    </section>
  );
}
