import type { PassState } from "#core/books";
import type { Writer } from "#core/words";
import { type Classes, validClasses } from "./pass-dates.ts";

/** How a pass stands, the answer first: what is left and until when, or where it went; then what is still to pay. */
export function passWords(pass: PassState, today: string, { day, money }: Writer): readonly string[] {
  const unpaid =
    pass.unpaid === 0 ? [] : [`${money(pass.unpaid, pass.currency)} is still to be paid for it.`];
  return [leftWords(pass, today, day), ...pauseWords(pass, day), ...unpaid];
}

function leftWords(pass: PassState, today: string, day: Writer["day"]): string {
  const { left, size, useBy, form, pausedFrom } = pass;
  if (left === 0) return `Nothing is left of ${size} ${unit(form, size)}: ${goneWords(pass)}.`;
  const main = `${left} of ${size} ${unit(form, size)} left`;
  if (pausedFrom !== null) return `${main}.`;
  return useBy < today ? `${main}, but its last day was ${day(useBy)}.` : `${main}, to use by ${day(useBy)}.`;
}

function pauseWords({ pausedFrom, useBy, left }: PassState, day: Writer["day"]): readonly string[] {
  if (pausedFrom === null || left === 0) return [];
  return [
    `Paused from ${day(pausedFrom)}. Its use-by, ${day(useBy)}, moves by the teaching dates in the pause.`,
  ];
}

function goneWords({ used, refunded, expired }: PassState): string {
  const parts = [
    used.length > 0 ? `${used.length} used` : "",
    refunded > 0 ? `${refunded} given back` : "",
    expired > 0 ? `${expired} ran out` : "",
  ].filter((it) => it !== "");
  return parts.join(", ");
}

/** The terms it was sold under, a sentence each. */
export function termsWords(pass: PassState, classes: Classes, writer: Writer): readonly string[] {
  const { terms, valid, currency, price, soldOn, form } = pass;
  const names = validClasses(valid, classes).map(({ document }) => document.name);
  const good = valid === "all" ? "all classes" : names.length > 0 ? names.join(", ") : valid.join(", ");
  const back =
    terms.perClassOnRefund === null
      ? "Given back by equal shares of its price."
      : `Given back as its price less ${writer.money(terms.perClassOnRefund, currency)} for each ${form === "block" ? "session" : "class"} taken.`;
  return [
    `Sold on ${writer.day(soldOn)} for ${writer.money(price, currency)}; good for ${good}.`,
    back,
    `${terms.transferable ? "It can be handed on to somebody else." : "It cannot be handed on."} ${pausesWords(terms.pauses)}`,
  ];
}

function pausesWords(pauses: number | null): string {
  if (pauses === null) return "It can be paused as often as asked.";
  if (pauses === 0) return "It cannot be paused.";
  return `It can be paused ${pauses === 1 ? "once" : `${pauses} times`}.`;
}

function unit(form: PassState["form"], count: number): string {
  if (form === "block") return count === 1 ? "session" : "sessions";
  return count === 1 ? "class" : "classes";
}
