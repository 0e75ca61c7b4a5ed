import { coverChoice, usualExpected } from "#app/views";
import { coverProblem } from "#app/record";
import type { PersonState } from "#core/roll";
import { takesMat } from "#core/roll";
import { Link } from "@tanstack/react-router";
import { useState } from "react";
import { TickField } from "../fields/tick-field.tsx";
import { ShowWorking, Working } from "../parts/working.tsx";
import { AmountBox, minorTyped } from "../tonight/amount-box.tsx";
import { amountText } from "../tonight/amount-text.ts";
import { CountBox, countTyped } from "./count-box.tsx";
import type { WrongHere } from "./wrong-here.ts";

/** She cannot teach: somebody insured from her list takes it, weighed against cancelling. */
export function CoverPart({ here }: { readonly here: WrongHere }) {
  const { session, currency, evening, writer } = here;
  const booked = session.places.filter(takesMat).length;
  const [heads, setHeads] = useState(String(usualExpected(booked)));
  const [fee, setFee] = useState("");
  const [past, setPast] = useState(true);
  const [agrees, setAgrees] = useState(false);
  const expected = countTyped(heads);
  const coverFee = minorTyped(fee, currency);
  const choice =
    evening === null || expected === null || coverFee === null
      ? null
      : coverChoice({ currency, booked, expected, ...evening, hallPastNotice: past, fee: coverFee }, writer);
  return (
    <div className="stack">
      <h2>Have it covered, or cancel it</h2>
      {choice === null ? (
        <p>
          {evening === null
            ? "What an evening leaves cannot be said until the class sheet has its hall and prices."
            : "Write the fee that is asked, and covering is weighed against cancelling."}
        </p>
      ) : (
        <>
          <p className="answer" data-choice>
            {choice.says}
          </p>
          <ShowWorking>
            <Working caption="Having it covered" lines={choice.running} />
            <Working caption="Cancelling it" lines={choice.cancelling} />
          </ShowWorking>
        </>
      )}
      <div className="fields">
        <CountBox
          label={`Expected of the ${booked} booked`}
          help="A guess until your own register says better"
          text={heads}
          put={setHeads}
        />
        <AmountBox
          label={`Fee of the ${writer.word("cover teacher")}`}
          currency={currency}
          text={fee}
          put={setFee}
        />
      </div>
      <TickField label="The hall is past its notice and charged either way" checked={past} put={setPast} />
      <TickField
        label={`The hall agrees that somebody else teaches under your ${writer.word("hire")}`}
        checked={agrees}
        put={setAgrees}
      />
      <CoverList here={here} fee={coverFee} agrees={agrees} putFee={setFee} />
    </div>
  );
}

type ListProps = {
  readonly here: WrongHere;
  readonly fee: number | null;
  readonly agrees: boolean;
  readonly putFee: (text: string) => void;
};

function CoverList({ here, fee, agrees, putFee }: ListProps) {
  const { session, record, practiceId, writer } = here;
  const list = record.look.people.filter(({ state }) => state.mayCover !== null);
  if (session.cover !== null) return <Covered here={here} />;
  if (list.length === 0)
    return (
      <p>
        Nobody is on your {writer.word("cover")} list.{" "}
        <Link to="/practice/$practice/people" params={{ practice: practiceId }}>
          Write down who may {writer.word("cover")}
        </Link>
        , with the insurance you saw.
      </p>
    );
  return (
    <ul className="list-plain ledger" data-cover-list>
      {list.map(({ id, state }) => (
        <li key={id} className="stack-close">
          <strong>{state.contact.name}</strong>
          <CoverRow here={here} id={id} person={state} fee={fee} agrees={agrees} putFee={putFee} />
        </li>
      ))}
    </ul>
  );
}

type RowProps = ListProps & { readonly id: string; readonly person: PersonState };

function CoverRow({ here, id, person, fee, agrees, putFee }: RowProps) {
  const { session, currency, writer, run } = here;
  const found = coverProblem(session, person, agrees, writer);
  const usual = person.mayCover?.fee ?? 0;
  const asked = fee ?? usual;
  const take = () =>
    run(
      { kind: "cover session", session: here.id, person: id, fee: asked, hallAgrees: agrees },
      `${person.contact.name} takes ${session.name}`,
    );
  return (
    <>
      <span className="small soft">
        {person.mayCover?.styles} {person.contact.phone} Usual fee {writer.money(usual, currency)}.
      </span>
      {found === null ? null : (
        <p>
          {found.says} {found.next}
        </p>
      )}
      <p className="row">
        <button type="button" className="button" onClick={() => putFee(amountText(usual, currency))}>
          Reckon with this fee
        </button>
        <button type="button" className="button button-main reach" disabled={found !== null} onClick={take}>
          {person.contact.name} takes it for {writer.money(asked, currency)}
        </button>
      </p>
    </>
  );
}

function Covered({ here }: { readonly here: WrongHere }) {
  const { session, record, writer, practiceId, id } = here;
  const name = record.look.person(session.cover?.by ?? "")?.contact.name ?? "Somebody from your list";
  return (
    <p>
      <strong>{name} takes it</strong> for {writer.money(session.cover?.fee ?? 0, session.currency)}.{" "}
      <Link to="/practice/$practice/sessions/$id/handover" params={{ practice: practiceId, id }}>
        Print the handover sheet
      </Link>
    </p>
  );
}
