import type { CostHeading, Heading } from "../posting/account.ts";
import type { Entry } from "../posting/entry.ts";

/** A line of the books as it is kept: what a view reads. `action` holds together what was done at once. */
export type BookLine = {
  readonly date: string;
  readonly action: string;
  readonly account: string;
  readonly commodity: string;
  readonly amount: number;
};

/** The lines of entries that are not kept yet, each entry as an action of its own. */
export function bookLines(entries: readonly Entry[]): readonly BookLine[] {
  return entries.flatMap(({ date, lines }, index) =>
    lines.map((line) => ({ date, action: String(index), ...line })),
  );
}

/**
 * What an account is for. Every line that is not money in her hand belongs to one heading, and what is owed,
 * earned, kept or still unpaid moves only within its heading: so over any time the lines of a heading add up to
 * the money that came in for it or went out for it, with their sign turned.
 */
export type Side =
  | { readonly side: "means"; readonly means: "cash" | "bank" | "card" }
  | { readonly side: "income"; readonly part: IncomePart; readonly heading: Heading; readonly id: string }
  | {
      readonly side: "cost";
      readonly part: "cost" | "due";
      readonly heading: CostHeading;
      readonly id: string;
    }
  | { readonly side: "own" }
  | { readonly side: "difference" }
  | { readonly side: "classes" };

export type IncomePart = "owed" | "unpaid" | "earned" | "expired" | "kept" | "goodwill";

/** Reads an account of the closed list; throws on any other. */
export function sideOf(account: string): Side {
  const [first = "", heading = "", id = ""] = account.split(":");
  switch (first) {
    case "cash":
    case "bank":
    case "card":
      return { side: "means", means: first };
    case "owed":
    case "unpaid":
    case "earned":
    case "expired":
    case "kept":
    case "goodwill":
      // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- an entry is made with these headings only
      return { side: "income", part: first, heading: heading as Heading, id };
    case "cost":
    case "due":
      // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- as above
      return { side: "cost", part: first, heading: heading as CostHeading, id };
    case "own":
      return { side: "own" };
    case "difference":
      return { side: "difference" };
    case "issued":
    case "taken":
    case "lapsed":
    case "given-back":
    case "left":
      return { side: "classes" };
    default:
      throw new RangeError(`not an account: ${account}`);
  }
}
