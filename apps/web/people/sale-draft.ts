import type { PassSold } from "#core/books";
import type { PassOffer } from "./pass-offers.ts";

/** A sale as it is typed. Money is a decimal string; what is null is worked out. */
export type SaleDraft = {
  readonly form: "pass" | "block";
  readonly size: number;
  readonly price: string;
  readonly paid: PassSold["paid"];
  readonly valid: "all" | readonly string[];
  readonly weeks: number | null;
  /** a day of her own instead of the one that is worked out */
  readonly useBy: string | null;
  readonly perClass: string | undefined;
  readonly transferable: boolean;
  readonly pauses: number | null;
  /** of a block: its class, and the sessions chosen */
  readonly class: string;
  readonly sessions: readonly string[];
};

export function freshSale(offers: readonly PassOffer[], firstClass: string): SaleDraft {
  const fresh: SaleDraft = {
    form: "pass",
    size: 10,
    price: "0.00",
    paid: "cash",
    valid: "all",
    weeks: null,
    useBy: null,
    perClass: undefined,
    transferable: true,
    pauses: null,
    class: firstClass,
    sessions: [],
  };
  const [first] = offers;
  return first === undefined ? fresh : offered(fresh, first);
}

/** The sale with what one of the prices says; who pays, and how, stays. */
export function offered(draft: SaleDraft, offer: PassOffer): SaleDraft {
  return {
    ...draft,
    form: offer.form,
    size: offer.size,
    price: offer.price,
    valid: [offer.class],
    class: offer.class,
    perClass: offer.single,
    weeks: null,
    useBy: null,
    sessions: [],
  };
}
