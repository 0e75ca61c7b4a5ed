import { emptyClass } from "#core/class";
import { readStudio } from "#core/price";
import { currencyCodes } from "#core/words";
import { expect, test } from "vitest";
import { payOf, studioOffer } from "./studio-offer.ts";

const forms = ["flat", "tiered", "per head", "share of takings"] as const;

test("the offer that stands there first is sound in every currency and every form of pay", () => {
  for (const currency of currencyCodes()) {
    const begun = emptyClass({ practice: { currency, locale: "en-GB" }, today: "2026-11-25" });
    for (const form of forms) {
      const offer = { ...studioOffer(begun, currency), pay: payOf(form, currency) };
      expect([currency, form, readStudio(offer, currency).ok]).toEqual([currency, form, true]);
    }
  }
});
