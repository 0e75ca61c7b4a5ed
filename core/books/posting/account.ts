/**
 * Where money or classes lie, as a small closed grammar of plain text.
 *
 * Examples: "cash", "owed:pass:p7", "earned:single", "due:hall:tithe-barn", "left:person-3".
 * Invariant: every account is of exactly one kind, and its kind says whether it holds money or classes.
 */
export type Means = "cash" | "bank" | "card";

/** What the money is taken for. */
export type Heading =
  | "single"
  | "concession"
  | "pass"
  | "block"
  | "workshop"
  | "private"
  | "studio"
  | "other";

/** What the money is spent on. */
export const costHeadings = [
  "hall",
  "cover",
  "travel",
  "music",
  "insurance",
  "kit",
  "training",
  "fees",
  "other",
] as const;
export type CostHeading = (typeof costHeadings)[number];

export type MoneyAccount =
  | Means
  /** paid ahead and not yet taught: a debt in classes or places, one account for each pass or place */
  | `owed:${Heading}:${string}`
  /** promised to her and not yet paid, one account for each pass, place or invoice */
  | `unpaid:${Heading}:${string}`
  /** what she has yet to pay, to a hall or a cover teacher */
  | `due:${CostHeading}:${string}`
  /** taught */
  | `earned:${Heading}`
  /** classes that ran out unused: income on a line of its own */
  | `expired:${Heading}`
  /** what a refund by the written rule kept back beyond what was taught */
  | `kept:${Heading}`
  /** what she gave back beyond what was left */
  | `goodwill:${Heading}`
  | `cost:${CostHeading}`
  /** her own money: put into the practice, or taken out for herself */
  | "own:put-in"
  | "own:taken-out"
  /** the box held more or less than the books */
  | "difference:cash";

export type ClassAccount = "issued" | "taken" | "lapsed" | "given-back" | `left:${string}`;

export type Account = MoneyAccount | ClassAccount;

const MEANS = "cash|bank|card";
const HEADINGS = "single|concession|pass|block|workshop|private|studio|other";
const COSTS = costHeadings.join("|");
const ID = "[^:\\s]+";

const money = new RegExp(
  `^(?:${MEANS}|(?:owed|unpaid):(?:${HEADINGS}):${ID}|due:(?:${COSTS}):${ID}|` +
    `(?:earned|expired|kept|goodwill):(?:${HEADINGS})|cost:(?:${COSTS})|own:put-in|own:taken-out|difference:cash)$`,
);
const classes = new RegExp(`^(?:issued|taken|lapsed|given-back|left:${ID})$`);

export function isMoneyAccount(account: string): account is MoneyAccount {
  return money.test(account);
}

export function isClassAccount(account: string): account is ClassAccount {
  return classes.test(account);
}
