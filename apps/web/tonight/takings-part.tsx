import { postingsContract, type KeptPosting } from "#app/ports";
import { useQuery } from "@tanstack/react-query";
import { useState } from "react";
import { meansOfPaying } from "#core/roll";
import { ask } from "../api/ask.ts";
import { keepOnDevice, readOnDevice } from "../drafts/on-device.ts";
import { currencyOf } from "../hall/hall-form.ts";
import { AmountBox, minorTyped } from "./amount-box.tsx";
import type { RegisterHere } from "./register-here.ts";
import { cashCount, type Takings, takingsIn, takingsOf, totalOf } from "./takings.ts";

/** What came in, by means, and the count of the box. */
export function TakingsPart({ here }: { readonly here: RegisterHere }) {
  const { session, writer } = here;
  const own = takingsOf(session);
  const day = useDayTakings(here);
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
          : `All of ${writer.day(session.date)} in the books, passes sold among it: ${money(totalOf(day))}, that is ${byMeans(day, money)}.`}
      </p>
      <CashCount here={here} cash={(day ?? own).cash} whole={day !== null} />
    </section>
  );
}

function byMeans(takings: Takings, money: (amount: number) => string): string {
  return meansOfPaying.map((means) => `${means} ${money(takings[means])}`).join(", ");
}

/** The books of the day; null while they cannot be asked, or while money waits to be sent to them. */
function useDayTakings({ practiceId, session, record }: RegisterHere): Takings | null {
  const { date, currency } = session;
  const asked = useQuery({
    queryKey: ["postings", practiceId, date, record.readAt],
    queryFn: () => readPostings(practiceId, date),
    enabled: !record.silent,
  });
  if (record.silent || record.outbox.queue.length > 0 || asked.data == null) return null;
  return takingsIn(asked.data, currency);
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
  readonly cash: number;
  /** whether that is all cash of the day; without signal only this class is known */
  readonly whole: boolean;
};

function CashCount({ here, cash, whole }: CountProps) {
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
        {inBox === null ? "" : countWords(inBox, cash, found, (it) => writer.money(it, currency))}
      </output>
    </div>
  );
}

function countWords(
  float: number,
  cash: number,
  counted: number | null,
  money: (amount: number) => string,
): string {
  const { expected, over } = cashCount({ float, cash, counted: counted ?? 0 });
  const sum = `${money(float)} and ${money(cash)} in cash: ${money(expected)} should be in the box.`;
  if (counted === null) return sum;
  if (over === 0) return `${sum} It is.`;
  return `${sum} There is ${money(Math.abs(over))} ${over > 0 ? "more" : "less"}.`;
}
