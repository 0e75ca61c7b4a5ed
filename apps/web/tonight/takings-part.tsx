import { postingsContract, type KeptPosting } from "#app/ports";
import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { type CashBox, cashBox, cashCount, takingsOf as dayTakings } from "#core/books";
import { meansOfPaying } from "#core/roll";
import type { Writer } from "#core/words";
import { ask } from "../api/ask.ts";
import { keepOnDevice, readOnDevice } from "../drafts/on-device.ts";
import { currencyOf } from "../hall/hall-form.ts";
import { AmountBox, minorTyped } from "./amount-box.tsx";
import type { RegisterHere } from "./register-here.ts";
import { type Takings, takingsIn, takingsOf, totalOf } from "./takings.ts";

/** What came in, by means, and the count of the box. */
export function TakingsPart({ here }: { readonly here: RegisterHere }) {
  const { session, writer } = here;
  const own = takingsOf(session);
  const day = useDay(here);
  const money = (amount: number) => writer.money(amount, session.currency);
  return (
    <section className="part no-print" aria-labelledby="takings">
      <h2 id="takings">Takings</h2>
      <p>
        For this class {money(totalOf(own))}: {byMeans(own, money)}.
      </p>
      <p>
        {day === null
          ? "What else came in on this day, like passes sold, is in the books and shown when there is signal."
          : `All of ${writer.day(session.date)} in the books, passes sold among it: ${money(totalOf(day.takings))}, that is ${byMeans(day.takings, money)}.`}
      </p>
      <CashCount here={here} box={day?.box ?? boxOf(own, session.currency)} whole={day !== null} />
    </section>
  );
}

function byMeans(takings: Takings, money: (amount: number) => string): string {
  return meansOfPaying.map((means) => `${means} ${money(takings[means])}`).join(", ");
}

/** What is known without signal: this class alone. */
function boxOf({ cash }: Takings, currency: string): CashBox {
  return { float: 0, taken: cash, paidOut: 0, moved: 0, currency };
}

type Day = { readonly takings: Takings; readonly box: CashBox };

/** The books of the day; null while they cannot be asked, or while money waits to be sent to them. */
function useDay({ practiceId, session, record }: RegisterHere): Day | null {
  const { date, currency } = session;
  const asked = useQuery({
    queryKey: ["postings", practiceId, date, record.readAt],
    queryFn: () => readPostings(practiceId, date),
    enabled: !record.silent,
  });
  if (record.silent || record.outbox.queue.length > 0 || asked.data == null) return null;
  return {
    takings: takingsIn(dayTakings(asked.data, date, currency)),
    box: cashBox(asked.data, date, currency),
  };
}

async function readPostings(practice: string, date: string): Promise<readonly KeptPosting[] | null> {
  const path = `/api/practices/${encodeURIComponent(practice)}/record/postings?from=${date}&until=${date}`;
  const answer = await ask(path);
  if (!answer.ok) return null;
  const read = postingsContract.safeParse(answer.value);
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- read by the contract; names of streams are text there
  return read.success ? (read.data.postings as readonly KeptPosting[]) : null;
}

type CountProps = {
  readonly here: RegisterHere;
  /** of the day by the books, but for what was in it before */
  readonly box: CashBox;
  /** whether that is all cash of the day; without signal only this class is known */
  readonly whole: boolean;
};

function CashCount({ here, box, whole }: CountProps) {
  const { practiceId, session, writer } = here;
  const currency = currencyOf(session.currency);
  const key = `float/${practiceId}`;
  const [float, setFloat] = useState(() => {
    const kept = readOnDevice(key);
    return typeof kept === "string" ? kept : "";
  });
  const [counted, setCounted] = useState("");
  const inBox = minorTyped(float === "" ? "0" : float, currency);
  const found = minorTyped(counted, currency);
  return (
    <div className="stack-close holds-fields measure">
      <AmountBox
        label="In the box before"
        help="The float, kept on this device"
        currency={currency}
        text={float}
        put={(text) => {
          keepOnDevice(key, text);
          setFloat(text);
        }}
      />
      <AmountBox label="Counted now" currency={currency} text={counted} put={setCounted} />
      <output>
        {whole ? "" : "Of this class alone, without what else was paid in cash today: "}
        {inBox === null ? "" : countWords({ ...box, float: inBox }, found, writer)}
      </output>
    </div>
  );
}

function countWords(box: CashBox, counted: number | null, writer: Writer): string {
  const { expected, sentence } = cashCount(box, counted ?? 0, writer);
  return counted === null ? `${writer.money(expected, box.currency)} should be in the box.` : sentence;
}
