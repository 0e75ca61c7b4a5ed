import { coverOrCancel, runTonight } from "#core/outlook";
import type { WorkingLine, Writer } from "#core/words";

/** What is asked about one session that she cannot, or may not want to, teach. Money in whole minor units. */
export type CoverChoiceAsked = {
  readonly currency: string;
  readonly booked: number;
  /** who is expected of those booked */
  readonly expected: number;
  /** what each leaves after what is spent on each */
  readonly margin: number;
  readonly hall: number;
  readonly hallPastNotice: boolean;
  /** of a cover teacher; null where nobody is asked */
  readonly fee: number | null;
};

export type CoverChoice = {
  readonly says: string;
  readonly running: readonly WorkingLine[];
  readonly cancelling: readonly WorkingLine[];
};

/** Who is expected of those booked where nothing else is known: 85 in a hundred, a planning guess without a source. */
export function usualExpected(booked: number): number {
  return Math.round(booked * 0.85);
}

/** Covering, or running it thin, against cancelling: what each leaves, with the sum. Method: trade F15, F17. */
export function coverChoice(asked: CoverChoiceAsked, writer: Writer): CoverChoice {
  const { expected, margin, hall, hallPastNotice, fee, currency } = asked;
  const base = { expected, margin, hall, hallPastNotice, cancelling: 0 };
  const { does, cancels } =
    fee === null ? runTonight({ ...base, avoidable: 0 }) : coverOrCancel({ ...base, fee });
  const money = (amount: number) => writer.money(Math.round(amount), currency);
  const doing = fee === null ? "Running it" : "Having it covered";
  const better = does > cancels ? doing : "Cancelling";
  const by = money(Math.abs(does - cancels));
  const weighed = by === money(0) ? "They come to the same" : `${better} is better by ${by}`;
  return {
    says: `${doing} leaves ${money(does)}; cancelling leaves ${money(cancels)}. ${weighed}, before what people feel about it.`,
    running: [
      {
        label: `${expected} expected of ${asked.booked} booked`,
        sum: `${expected} × ${money(margin)}`,
        amount: money(expected * margin),
      },
      { label: "Less the hall", sum: "", amount: money(-hall) },
      ...(fee === null
        ? []
        : [{ label: `Less the ${writer.word("cover teacher")}`, sum: "", amount: money(-fee) }]),
      { label: doing, sum: "", amount: money(does), total: true },
    ],
    cancelling: [
      hallPastNotice
        ? { label: "The hall, past its notice", sum: "", amount: money(-hall) }
        : { label: "The hall is not charged", sum: "", amount: money(0) },
      { label: "Cancelling", sum: "", amount: money(cancels), total: true },
    ],
  };
}
