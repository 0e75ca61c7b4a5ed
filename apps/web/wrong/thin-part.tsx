import { coverChoice } from "#app/views";
import { takesMat } from "#core/roll";
import { useState } from "react";
import { TickField } from "../fields/tick-field.tsx";
import { ShowWorking, Working } from "../parts/working.tsx";
import { CountBox, countTyped } from "./count-box.tsx";
import type { WrongHere } from "./wrong-here.ts";

/** Few are booked: run it, or cancel it; only what can still be avoided counts. */
export function ThinPart({ here }: { readonly here: WrongHere }) {
  const { session, currency, evening, writer } = here;
  const booked = session.places.filter(takesMat).length;
  const [heads, setHeads] = useState(String(booked));
  const [past, setPast] = useState(true);
  const expected = countTyped(heads);
  const choice =
    evening === null || expected === null
      ? null
      : coverChoice({ currency, booked, expected, ...evening, hallPastNotice: past, fee: null }, writer);
  return (
    <div className="stack">
      <h2>Run it, or cancel it</h2>
      {choice === null ? (
        <p>What an evening leaves cannot be said until the class sheet has its hall and prices.</p>
      ) : (
        <>
          <p className="answer" data-choice>
            {choice.says}
          </p>
          <ShowWorking>
            <Working caption="Running it" lines={choice.running} />
            <Working caption="Cancelling it" lines={choice.cancelling} />
          </ShowWorking>
        </>
      )}
      <CountBox label={`Expected of the ${booked} booked`} text={heads} put={setHeads} />
      <TickField label="The hall is past its notice and charged either way" checked={past} put={setPast} />
      <p className="small">
        A class that is often cancelled when few are booked stops growing. If you cancel, tell people three
        hours before at the latest.
      </p>
    </div>
  );
}
