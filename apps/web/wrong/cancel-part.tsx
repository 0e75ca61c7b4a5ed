import { type HallCharge, hallCharge } from "#app/views";
import { doorNotice, type Follows, followsDrafts, followsSentences } from "#app/record";
import { type CancelReason, takesMat } from "#core/roll";
import type { Writer } from "#core/words";
import { useState } from "react";
import { AmountBox, minorTyped } from "../tonight/amount-box.tsx";
import { amountText } from "../tonight/amount-text.ts";
import { BigChoice } from "../tonight/big-choice.tsx";
import { DraftList } from "./draft-list.tsx";
import { keepDrafts, keptDrafts } from "./kept-drafts.ts";
import { useClosure } from "./use-closure.ts";
import { cancelAsked, followsHere, type WrongHere } from "./wrong-here.ts";

type Props = { readonly here: WrongHere; readonly why: CancelReason };

/** Cancelling, with everything that follows listed first; what is done is what was listed. */
export function CancelPart({ here, why }: Props) {
  const follows = followsHere(here, why);
  if (here.session.cancelled !== null) return <Cancelled here={here} />;
  return follows === undefined ? null : <CancelForm here={here} why={why} follows={follows} />;
}

const singlesChoices = [
  { value: "give back", label: "Give it back" },
  { value: "keep", label: "Keep it for another date" },
] as const;

function CancelForm({ here, why, follows }: Props & { readonly follows: Follows }) {
  const { session, writer, currency } = here;
  const [singles, setSingles] = useState<"give back" | "keep">("give back");
  const [hire, setHire] = useState<string | null>(null);
  const closure = useClosure(here);
  const byNotice = chargeByNotice(here, why, writer);
  const text = hire ?? amountText(byNotice?.charged ?? 0, currency);
  const charged = minorTyped(text, currency);
  const drafts = {
    messages: followsDrafts(follows, why, writer, singles),
    notice: doorNotice(follows, why, writer),
  };
  const cancel = () => {
    if (charged === null) return;
    const { teachingDates, passes } = cancelAsked(here, why);
    const done = here.run(
      {
        kind: "cancel session",
        session: here.id,
        why,
        teachingDates: [...teachingDates],
        passes: [...passes],
        singles,
        hire: session.hall === null ? null : { hall: session.hall, charged },
        seen: session.places.filter(takesMat).map(({ id }) => id),
      },
      `Cancel ${session.name} on ${writer.day(session.date)}`,
    );
    if (!done) return;
    keepDrafts(here, drafts);
    closure.add(why);
  };
  return (
    <div className="stack">
      <h2>What follows</h2>
      <ul className="stack-close" data-follows>
        {[
          ...followsSentences(follows, writer, singles),
          ...hallSentences(here, byNotice, charged),
          ...closure.says,
        ].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {follows.back.length > 0 ? (
        <BigChoice
          label="What was paid for this date alone"
          value={singles}
          choices={singlesChoices}
          put={setSingles}
        />
      ) : null}
      <AmountBox
        label="What the hall charges for the date all the same"
        help={
          why === "hall shut"
            ? "Nothing, when the hall takes the date back; look at its conditions"
            : "All of it past the hall’s notice, less or nothing before; its conditions decide"
        }
        currency={currency}
        text={text}
        put={setHire}
      />
      <p>
        <button
          type="button"
          className="button button-main reach"
          disabled={charged === null}
          onClick={cancel}
        >
          Cancel this session, and do all of this
        </button>
      </p>
      <DraftList here={here} drafts={drafts} />
    </div>
  );
}

/** By the notice of the class sheet; null where the sheet cannot say what the evening's hall costs. */
function chargeByNotice({ session, evening, document, now }: WrongHere, why: CancelReason, writer: Writer) {
  if (evening === null) return null;
  const { zone, starts, currency } = session;
  const noticeDays = document?.outlook?.notice?.days ?? null;
  return hallCharge({ why, zone, starts, now, hire: evening.hall, currency, noticeDays }, writer);
}

function hallSentences(
  { writer, currency }: WrongHere,
  byNotice: HallCharge | null,
  charged: number | null,
): readonly string[] {
  if (charged === null) return ["Write below what the hall charges: 0 where it is nothing."];
  const due =
    charged > 0
      ? [`${writer.money(charged, currency)} for the hall goes into the books as due.`]
      : ["Nothing is due to the hall."];
  return byNotice === null ? due : [byNotice.sentence, ...due];
}

/** What was drafted stays on this device, to be sent after it is done. */
function Cancelled({ here }: { readonly here: WrongHere }) {
  const drafts = keptDrafts(here);
  return (
    <div className="stack">
      <p>
        <strong>
          {here.session.name} on {here.writer.day(here.session.date)} is cancelled.
        </strong>{" "}
        {drafts === null
          ? "Who was told is in your hands: what was drafted is on the device on which it was cancelled."
          : "Tell people now; nothing is sent by itself."}
      </p>
      {drafts === null ? null : <DraftList here={here} drafts={drafts} />}
    </div>
  );
}
