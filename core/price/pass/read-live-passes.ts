import {
  bad,
  type CurrencyCode,
  good,
  problem,
  type Result,
  readAmount,
  readCurrency,
  together,
  togetherInOrder,
} from "#core/words";
import type { LivePass } from "./owed-classes.ts";
import type { LivePassDocument, PassDocument } from "./pass-document.ts";
import { readPassSize } from "./pass-use-by.ts";

export type LivePasses = { readonly currency: CurrencyCode; readonly passes: readonly LivePass[] };

/** Problems besides those of the passes: "live-currency-missing". */
export function readLivePasses({
  live,
  currency,
}: Partial<Pick<PassDocument, "live" | "currency">>): Result<LivePasses | null> {
  if (live === undefined) return good(null);
  if (currency === undefined) {
    const says = "The live passes have prices, but no currency.";
    return bad(problem("live-currency-missing", "currency", says, "Add the currency, like GBP."));
  }
  const code = readCurrency(currency);
  if (!code.ok) return code;
  const passes = togetherInOrder(live.map((pass, index) => readLivePass(pass, code.value, `live[${index}]`)));
  return passes.ok ? good({ currency: code.value, passes: passes.value }) : passes;
}

const MOST_PASSES = 1000;

/** Problems besides those of an amount and of a pass: "pass-count", "pass-left-out-of-range". */
function readLivePass(pass: LivePassDocument, currency: CurrencyCode, place: string): Result<LivePass> {
  const read = together({
    price: readAmount(pass.price, currency, `${place}.price`),
    classes: readPassSize(pass.classes, `${place}.classes`),
    passes: readCount(pass.passes, `${place}.passes`),
  });
  if (!read.ok) return read;
  const { left } = pass;
  const most = pass.classes * pass.passes;
  if (Number.isInteger(left) && left >= 0 && left <= most) return good({ ...read.value, left });
  const says =
    pass.passes === 1
      ? `A pass of ${pass.classes} cannot have ${left} classes left.`
      : `${pass.passes} passes of ${pass.classes} cannot have ${left} classes left.`;
  const next = `Give a whole number from 0 to ${most}.`;
  return bad(problem("pass-left-out-of-range", `${place}.left`, says, next));
}

function readCount(passes: number, place: string): Result<number> {
  if (Number.isInteger(passes) && passes >= 1 && passes <= MOST_PASSES) return good(passes);
  const next = `Give a whole number from 1 to ${MOST_PASSES}, or take them away.`;
  return bad(problem("pass-count", place, `${passes} passes cannot be out.`, next));
}
