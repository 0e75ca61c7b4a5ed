import { type Minor, minor } from "#core/words";
import type { PayerKind } from "./payer-key.ts";

/** A price with the key by which somebody pays it: "pass-10" is 85.00 at once for 10 classes. */
export type PricedRung = {
  /** the key of the mix */
  readonly key: string;
  readonly kind: PayerKind;
  /** where it stands in the document */
  readonly place: string;
  /** paid at once, and for how many classes */
  readonly price: Minor;
  readonly classes: number;
  /** the least that somebody may give, where people choose themselves */
  readonly floor?: Minor;
};

/** Nobody has to state what a free place costs. */
export const freeRung: PricedRung = {
  key: "free",
  kind: "free",
  place: "mix.free",
  price: minor(0),
  classes: 1,
};

/** A price that is paid for each class; none when it is not stated. */
export function oneClass(
  kind: Exclude<PayerKind, "pass" | "course">,
  price: Minor | null,
): readonly PricedRung[] {
  return price === null ? [] : [{ key: kind, kind, place: `prices.${kind}`, price, classes: 1 }];
}

/** A price that is paid at once for several classes. */
export function sizedRung(kind: "pass" | "course", size: number, price: Minor, place: string): PricedRung {
  return { key: `${kind}-${size}`, kind, place, price, classes: size };
}
