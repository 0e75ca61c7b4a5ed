import type { ClassDocument } from "#core/class";
import type { StudioDocument } from "#core/price";
import { type CurrencyCode, currencyDigits, minor, moneyText } from "#core/words";

type Form = StudioDocument["pay"]["form"];

/** The offer that is there to be overwritten: a flat pay for the same people and the same minutes of class. */
export function studioOffer({ minutes, heads }: ClassDocument, currency: CurrencyCode): StudioDocument {
  return {
    name: "the studio",
    pay: payOf("flat", currency),
    heads,
    capacity: 100,
    dispersion: 1,
    travelCost: plain(0, currency),
    minutes: minutes.class + minutes.travel + 20,
  };
}

/** Each form of pay with figures that are common practice and no more. */
export function payOf(form: Form, currency: CurrencyCode): StudioDocument["pay"] {
  const money = (pounds: number) => plain(pounds, currency);
  switch (form) {
    case "flat":
      return { form, pay: money(30) };
    case "tiered":
      return { form, base: money(25), perHead: money(2), above: 8 };
    case "per head":
      return { form, perHead: money(4), minimum: money(20) };
    case "share of takings":
      return { form, share: 0.5, takingsPerHead: money(9), minimum: money(0) };
  }
}

/** A currency without small coins has a hundred times as many of its own. */
function plain(pounds: number, currency: CurrencyCode): string {
  const digits = currencyDigits(currency);
  return moneyText(minor(pounds * (digits === 0 ? 100 : 10 ** digits)), currency);
}
