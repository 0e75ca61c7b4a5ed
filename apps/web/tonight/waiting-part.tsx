import { momentWords } from "#core/notice";
import { freeMats, type Waiting } from "#core/roll";
import { word } from "#core/words";
import { useState } from "react";
import { BigChoice } from "./big-choice.tsx";
import { howChoices } from "./how-choices.ts";
import type { RegisterHere } from "./register-here.ts";
import { nameOf } from "./register-rows.ts";
import { SheetDialog } from "./sheet-dialog.tsx";

/** The waiting list in its order, what was offered and until when, and answers given for somebody. */
export function WaitingPart({ here }: { readonly here: RegisterHere }) {
  const { id, session, locale, run } = here;
  const [taking, setTaking] = useState<string | null>(null);
  if (session.waiting.length === 0) return null;
  const list = word("waiting list", locale);
  const entry = session.waiting.find((it) => it.entry === taking);
  return (
    <section className="part no-print" aria-labelledby="waiting">
      <h2 id="waiting">The {list}</h2>
      <ol className="list-plain ledger">
        {session.waiting.map((it, index) => (
          <li key={it.entry} className="stack-close">
            <p>
              {index + 1}. <strong>{nameOf(here.record.look, it.person)}</strong>
              {it.with === null ? "" : ", comes with somebody"}: {offerWords(it, here)}
            </p>
            <p className="row">
              {it.offer === null ? null : (
                <button type="button" className="button reach" onClick={() => setTaking(it.entry)}>
                  Takes the place
                </button>
              )}
              <button
                type="button"
                className="button reach"
                onClick={() =>
                  run(
                    { kind: "leave waiting list", session: id, entry: it.entry },
                    `${nameOf(here.record.look, it.person)} leaves the ${list}`,
                  )
                }
              >
                {it.offer === null ? "Wants to wait no longer" : "Does not take it"}
              </button>
            </p>
          </li>
        ))}
      </ol>
      <p>
        <button
          type="button"
          className="button reach"
          onClick={() =>
            run({ kind: "settle waiting list", session: id }, `Offer the free mats to the ${list}`)
          }
        >
          Offer what is free
        </button>
      </p>
      {entry === undefined ? null : <TakeOffer here={here} entry={entry} close={() => setTaking(null)} />}
    </section>
  );
}

function offerWords({ offer }: Waiting, { session, writer }: RegisterHere): string {
  if (offer === null) return "waits; nothing offered yet.";
  if (offer.until === null)
    return freeMats(session) < 1
      ? "was asked; another replied first, and the turn is kept."
      : "may have a mat; the first to reply has it.";
  return `offered a mat, to answer by ${momentWords(offer.until, session.zone, writer)}.`;
}

type TakeProps = {
  readonly here: RegisterHere;
  readonly entry: Waiting;
  readonly close: () => void;
};

function TakeOffer({ here, entry, close }: TakeProps) {
  const { id, session, record, writer, run } = here;
  const [how, setHow] = useState("");
  const ways = howChoices(id, session, entry.person, record.look, writer);
  const chosen = ways.find((it) => it.value === how) ?? ways[0];
  const name = nameOf(record.look, entry.person);
  const take = () => {
    if (chosen === undefined) return;
    const asked = {
      kind: "take offer",
      session: id,
      entry: entry.entry,
      how: chosen.how,
      pass: chosen.pass,
    } as const;
    if (run(asked, `${name} takes the place that was offered`)) close();
  };
  return (
    <SheetDialog title={`${name} takes the place`} close={close}>
      <BigChoice label="How" value={chosen?.value ?? ""} choices={ways} put={setHow} />
      <button type="button" className="button button-main reach" onClick={take}>
        Keep the place
      </button>
    </SheetDialog>
  );
}
