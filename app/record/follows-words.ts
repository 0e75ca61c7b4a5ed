import type { CancelReason, MeansOfPaying } from "#core/roll";
import type { Writer } from "#core/words";
import type { Follows } from "./what-follows.ts";

const BECAUSE: Readonly<Record<CancelReason, string>> = {
  "hall shut": "the hall is shut",
  teacher: "I cannot teach",
  "too few": "too few of us would be there",
  weather: "the weather does not let us",
  other: "of something that came up",
};

const BACK: Readonly<Record<MeansOfPaying, string>> = {
  cash: "in cash",
  card: "to your card",
  bank: "to your bank",
};

/** What becomes of what was paid for the date alone: it goes back, or it stays for another date. */
type Singles = "give back" | "keep";

/** What follows, a line for each kind of consequence, for the teacher to read before it is done. */
export function followsSentences(
  follows: Follows,
  writer: Writer,
  singles: Singles = "give back",
): readonly string[] {
  const { session, passes, blocks, back, nothingPaid, waiting } = follows;
  const money = (amount: number) => writer.money(amount, session.currency);
  const held = passes.filter((it) => it.held);
  const others = passes.filter((it) => !it.held);
  const total = back.reduce((sum, { amount }) => sum + amount, 0);
  const shares = new Set(blocks.map(({ share }) => share));
  return [
    `${session.name} on ${writer.day(session.date)} does not take place.`,
    ...line(held.length, "on a pass: nothing is taken off, and the use-by moves by one teaching date"),
    ...line(
      others.length,
      "more with a pass that is good for this class: the use-by moves by one teaching date",
    ),
    ...line(blocks.length, `on a block: offered another date or ${[...shares].map(money).join(" or ")} each`),
    ...line(
      back.length,
      singles === "give back"
        ? `paid for this date: ${money(total)} goes back`
        : `paid for this date: ${money(total)} stays with you for another date`,
    ),
    ...line(nothingPaid.length, "with a place and nothing paid: told, and nothing is due"),
    ...line(waiting.length, `on the ${writer.word("waiting list")}: told, and taken off it`),
    ...coverSentence(session, writer),
  ];
}

/** A fee that was agreed is no consequence of the cancelling, so nothing takes it out of the books by itself. */
function coverSentence({ cover, currency }: Follows["session"], writer: Writer): readonly string[] {
  if (cover === null || cover.fee === 0) return [];
  const who = writer.word("cover teacher");
  return [
    `The ${who} is told too; the fee of ${writer.money(cover.fee, currency)} stays in the books as due until you settle it.`,
  ];
}

function line(count: number, what: string): readonly string[] {
  return count === 0 ? [] : [`${count} ${what}.`];
}

export type Draft = { readonly person: string; readonly text: string };

/** A message to each of those it concerns and to nobody else, with what happens to their money in it. */
export function followsDrafts(
  follows: Follows,
  why: CancelReason,
  writer: Writer,
  singles: Singles = "give back",
): readonly Draft[] {
  const { session, passes, blocks, back, nothingPaid, waiting } = follows;
  const main = `${session.name} on ${writer.day(session.date)} does not take place, because ${BECAUSE[why]}.`;
  const to = (person: string, rest: string): Draft => ({ person, text: `${main} ${rest}` });
  return [
    ...passes
      .filter(({ held }) => held)
      .map((it) =>
        to(
          it.person,
          `Nothing is taken off your pass, and its use-by moves to ${writer.day(it.to)}. You need not answer.`,
        ),
      ),
    ...blocks.map(({ person, share }) =>
      to(
        person,
        `It was part of your block: you can come on another date instead, or have ${writer.money(share, session.currency)} back. Tell me which you prefer.`,
      ),
    ),
    ...back.map(({ person, amount, by }) =>
      to(
        person,
        singles === "give back"
          ? `Your ${writer.money(amount, session.currency)} comes back ${BACK[by]}. You need not answer.`
          : `Your ${writer.money(amount, session.currency)} stays good for another date: tell me which, or that you would rather have it back.`,
      ),
    ),
    ...nothingPaid.map((person) => to(person, "Nothing is due. You need not answer.")),
    ...waiting.map((person) =>
      to(person, `You were on the ${writer.word("waiting list")}; nothing was charged.`),
    ),
  ];
}

/** What hangs on the door. */
export function doorNotice(follows: Follows, why: CancelReason, writer: Writer): string {
  const { session } = follows;
  return `${session.name}: no class on ${writer.day(session.date)}, because ${BECAUSE[why]}. Everybody who had a place was told. Sorry!`;
}
