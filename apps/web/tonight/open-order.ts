import type { DoAskInput } from "#app/record";
import { type ClassDocument, teachingDates } from "#core/class";
import type { NoticeRule } from "#core/notice";
import { isCurrency, type PracticeDocument, readMoney } from "#core/words";
import { startsAt } from "./session-times.ts";

export type OpenAsk = Extract<DoAskInput, { readonly kind: "open sessions" }>;

export type OpenAsked = {
  readonly id: string;
  readonly document: ClassDocument;
  readonly practice: PracticeDocument;
  /** ISO date: nothing before it is opened */
  readonly today: string;
  readonly capacity: number;
  readonly posted: number | null;
  readonly notice: NoticeRule;
  readonly firstLateWaived: boolean;
};

/** The teaching dates of a class from today to the end of its year. */
export function datesAhead(document: ClassDocument, today: string): readonly string[] {
  return teachingDates(document).filter((date) => date >= today);
}

/** A session is called after its class and its date. */
export function sessionId(ofClass: string, date: string): string {
  return `${ofClass}.${date}`;
}

/** What puts the dates of a class into the record; null while its price or its time cannot be read. */
export function openOrder(asked: OpenAsked): OpenAsk | null {
  const { id, document, practice } = asked;
  const single = minorOf(document.prices.single ?? "0", practice.currency);
  if (single === null) return null;
  const concession = minorOf(document.prices.concession ?? "", practice.currency) ?? single;
  const sessions = datesAhead(document, asked.today).flatMap((date) => {
    const starts = startsAt(date, document.start, practice.zone);
    return starts === null ? [] : [{ id: sessionId(id, date), date, starts }];
  });
  return {
    kind: "open sessions",
    class: id,
    name: document.name.trim() === "" ? "Class" : document.name,
    sessions,
    zone: practice.zone,
    minutes: document.minutes.class,
    hall: document.hall,
    capacity: asked.capacity,
    posted: asked.posted,
    currency: practice.currency,
    single,
    concession,
    notice: asked.notice,
    firstLateWaived: asked.firstLateWaived,
  };
}

function minorOf(text: string, currency: string): number | null {
  if (!isCurrency(currency)) return null;
  const read = readMoney(text, currency, "prices");
  return read.ok ? read.value : null;
}
