import { type Choice, coverOrCancel, type Evening, runTonight } from "#core/outlook";
import type { EveningAnswer } from "#core/price";
import { guessesBehind } from "#core/class";
import { type CurrencyCode, exactNumber, readAmount, word, type WorkingLine } from "#core/words";
import { dateWords } from "./date-words.ts";
import type { OutlookAsked } from "./outlook-asked.ts";
import type { OutlookSheetInput } from "./outlook-sheet.ts";
import { peopleWords } from "./price-amounts.ts";
import { missing, type SheetPart, saidOn, type SheetWorking } from "./sheet-part.ts";

export type EveningChoicePart = SheetPart<{
  /** ISO date of the evening, and the people it was worked out with */
  readonly date: string;
  readonly expected: number;
}>;

/** Run the next session, have somebody cover it, or cancel: only what can still be avoided counts. */
export function eveningChoicePart(input: OutlookSheetInput, asked: OutlookAsked): EveningChoicePart {
  const stated = input.document.outlook?.evening;
  if (stated === undefined) {
    return missing(
      "Nothing is asked about the next session.",
      "Tick the box below to weigh running it, having it covered and cancelling it.",
    );
  }
  if (asked.kind !== "ready") return asked;
  if (asked.priced.kind !== "priced") return asked.priced;
  const { evening } = asked.priced;
  const question = questionOf(stated, evening, expectedOf(stated, asked));
  const run = runTonight(question);
  const cover = question.fee === null ? null : coverOrCancel({ ...question, fee: question.fee });
  const date = evening.date.toString();
  const says = [
    leadSentence(input, { date, run, cover }, question),
    ...(question.hallPastNotice
      ? ["The hall is charged either way, so it decides nothing; only what can still be avoided does."]
      : ["The hall can still be given back, so its price counts against running it."]),
    ...(cover === null
      ? []
      : [`Ask the hall whether somebody else may teach under your ${word("hire", input.practice.locale)}.`]),
  ];
  return {
    ...saidOn(
      input,
      guessesBehind(input.document, "break-even"),
      says,
      workingsOf(input, question, { run, cover }),
    ),
    date,
    expected: question.expected,
  };
}

type Stated = NonNullable<NonNullable<OutlookSheetInput["document"]["outlook"]>["evening"]>;
type Question = Evening & {
  readonly avoidable: number;
  readonly fee: number | null;
  readonly booked: number | null;
};

/** Who is expected: as stated, else as the record foretells for the next session. */
function expectedOf(stated: Stated, asked: Extract<OutlookAsked, { kind: "ready" }>): number {
  const foretold = asked.json.sessions[0]?.heads.mean ?? 0;
  return stated.expected ?? Math.max(0, Number(foretold.toFixed(1)));
}

function questionOf(stated: Stated, evening: EveningAnswer, expected: number): Question {
  const amount = (text: string): number => amountOf(text, evening.currency);
  return {
    expected,
    margin: evening.yield.sub(evening.costPerHead).valueOf(),
    hall: evening.hire,
    hallPastNotice: stated.hallPastNotice ?? true,
    cancelling: amount(stated.cancelling ?? "0"),
    avoidable: stated.avoidable === undefined ? evening.cost - evening.hire : amount(stated.avoidable),
    fee: stated.fee === undefined ? null : amount(stated.fee),
    booked: stated.booked ?? null,
  };
}

/** What cannot be read is told at its field and counts for nothing here. */
function amountOf(text: string, currency: CurrencyCode): number {
  const read = readAmount(text, currency, "");
  return read.ok ? read.value : 0;
}

type Choices = { readonly run: Choice; readonly cover: Choice | null };

function leadSentence(
  { money, practice }: OutlookSheetInput,
  { date, run, cover }: Choices & { readonly date: string },
  { expected, booked }: Question,
): string {
  const write = (minor: number): string => money(exactNumber(Number(minor.toFixed(4))));
  const best = Math.max(run.does, run.cancels, cover?.does ?? Number.NEGATIVE_INFINITY);
  const lead = best === run.does ? "Run it yourself" : best === run.cancels ? "Cancel it" : "Have it covered";
  const who = booked === null ? "" : `${booked} booked, `;
  const covered = cover === null ? "" : ` having it covered ${write(cover.does)},`;
  return `${lead} on ${dateWords(date, practice.locale)} (${who}${peopleWords(expected)} expected): running it leaves ${write(run.does)},${covered} cancelling ${write(run.cancels)}.`;
}

function workingsOf(
  { money }: OutlookSheetInput,
  question: Question,
  { run, cover }: Choices,
): readonly SheetWorking[] {
  const write = (minor: number): string => money(exactNumber(Number(minor.toFixed(4))));
  const { expected, margin, hall, avoidable, fee, cancelling, hallPastNotice } = question;
  const bring: WorkingLine = {
    label: "People leave",
    sum: `${expected} × ${write(margin)}`,
    amount: write(expected * margin),
  };
  const room: WorkingLine = { label: "The hall", sum: "", amount: write(0 - hall) };
  const total = (label: string, amount: number): WorkingLine => ({
    label,
    sum: "",
    amount: write(amount),
    total: true,
  });
  return [
    {
      title: "Running it yourself",
      lines: [
        bring,
        room,
        { label: "What can be avoided", sum: "travel and your evening", amount: write(0 - avoidable) },
        total("Running it", run.does),
      ],
    },
    ...(cover === null || fee === null
      ? []
      : [
          {
            title: "Having it covered",
            lines: [
              bring,
              room,
              { label: "The fee", sum: "", amount: write(0 - fee) },
              total("Cover", cover.does),
            ],
          },
        ]),
    {
      title: "Cancelling it",
      lines: [
        {
          ...room,
          sum: hallPastNotice ? "past its notice" : "given back in time",
          amount: write(hallPastNotice ? 0 - hall : 0),
        },
        { label: "Refunds and goodwill", sum: "as you feel it", amount: write(0 - cancelling) },
        total("Cancelling", run.cancels),
      ],
    },
  ];
}
