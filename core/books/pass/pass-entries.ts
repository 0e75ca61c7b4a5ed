import type { Account, MoneyAccount } from "../posting/account.ts";
import { type About, classesOf, type Entry, entry, type Posting } from "../posting/entry.ts";
import { splitRefund } from "./apply-pass-event.ts";
import type { PassEvent, PassRefunded, PassSold } from "./pass-event.ts";
import { goneOf, type PassState } from "./pass-state.ts";
import { sharesUpTo } from "./share-of.ts";

/**
 * What an event writes into the books, from the pass as it stood before: none for a pause, and none for a new
 * use-by unless it brings classes back that had run out.
 * A class that goes, in whatever way, takes the next share of the price with it; one that comes back brings
 * the last one back. So the debt on a pass is always its price less the shares of the classes that are gone.
 */
export function passEntries(before: PassState | null, event: PassEvent): readonly Entry[] {
  if (event.kind === "sold") return [soldEntry(event)];
  if (before === null) throw new RangeError(`${event.kind} before the sale`);
  const made = entry(event.on, linesOf(before, event), aboutOf(before, event));
  return made.lines.length === 0 ? [] : [made];
}

function soldEntry(event: PassSold): Entry {
  const { pass, form, holder, size, price, currency, paid, on } = event;
  const into: MoneyAccount = paid === "later" ? `unpaid:${form}:${pass}` : paid;
  return entry(
    on,
    [
      { account: into, commodity: currency, amount: price },
      { account: `owed:${form}:${pass}`, commodity: currency, amount: -price },
      ...classLines(pass, "issued", `left:${holder}`, size),
    ],
    { what: `${form} sold`, pass, person: holder },
  );
}

function linesOf(before: PassState, event: Exclude<PassEvent, PassSold>): readonly Posting[] {
  const { pass, form, holder } = before;
  const left: Account = `left:${holder}`;
  switch (event.kind) {
    case "used":
      return [...gone(before, 1, `earned:${form}`), ...classLines(pass, left, "taken", 1)];
    case "returned":
      return [...gone(before, -1, `earned:${form}`), ...classLines(pass, "taken", left, 1)];
    case "expired":
      return [
        ...gone(before, event.classes, `expired:${form}`),
        ...classLines(pass, left, "lapsed", event.classes),
      ];
    case "refunded":
      return [...refundLines(before, event), ...classLines(pass, left, "given-back", event.classes)];
    case "transferred":
      return classLines(pass, left, `left:${event.to}`, before.left);
    case "paid":
      return moved(before.currency, `unpaid:${form}:${pass}`, event.how, event.amount);
    case "extended":
      return [
        ...gone(before, -before.expired, `expired:${form}`),
        ...classLines(pass, "lapsed", left, before.expired),
      ];
    case "promised":
    case "freed":
    case "swapped":
    case "paused":
    case "resumed":
      return [];
  }
}

/** The shares of the next so many classes leave the debt; below nought, the last ones come back to it. */
function gone(before: PassState, classes: number, into: MoneyAccount): readonly Posting[] {
  const { form, pass, currency } = before;
  return moved(currency, into, `owed:${form}:${pass}`, shareOfNext(before, classes));
}

/** In minor units: what is owed on the next so many classes. */
export function shareOfNext({ price, size, ...rest }: PassState, classes: number): number {
  const taken = goneOf({ price, size, ...rest });
  return sharesUpTo(price, size, taken + classes) - sharesUpTo(price, size, taken);
}

/** The debt goes; what is paid out or let go, and what is kept or given on top, make up for it. */
function refundLines(before: PassState, { classes, amount, how }: PassRefunded): readonly Posting[] {
  const { form, pass, currency, unpaid } = before;
  const owed = shareOfNext(before, classes);
  const { letGo, paidOut } = splitRefund(unpaid, amount);
  const money = (account: MoneyAccount, value: number) => ({ account, commodity: currency, amount: value });
  return [
    money(`owed:${form}:${pass}`, owed),
    money(`unpaid:${form}:${pass}`, -letGo),
    money(how, -paidOut),
    amount < owed ? money(`kept:${form}`, amount - owed) : money(`goodwill:${form}`, amount - owed),
  ];
}

function moved(
  commodity: string,
  from: MoneyAccount,
  into: MoneyAccount,
  amount: number,
): readonly Posting[] {
  return [
    { account: from, commodity, amount: -amount },
    { account: into, commodity, amount },
  ];
}

function classLines(pass: string, from: Account, into: Account, count: number): readonly Posting[] {
  const commodity = classesOf(pass);
  return [
    { account: from, commodity, amount: -count },
    { account: into, commodity, amount: count },
  ];
}

function aboutOf({ pass, form, holder }: PassState, event: Exclude<PassEvent, PassSold>): About {
  const session = "session" in event && event.session !== undefined ? { session: event.session } : {};
  return { what: `${form} ${event.kind}`, pass, person: holder, ...session };
}
