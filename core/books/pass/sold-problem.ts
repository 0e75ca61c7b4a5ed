import { isCurrency, type Problem, problem } from "#core/words";
import type { PassSold } from "./pass-event.ts";
import type { PassState } from "./pass-state.ts";

// 200 classes are four a week for a year; 10,000,000 coins are 100,000.00 of most currencies
const MOST_CLASSES = 200;
const MOST_PRICE = 10_000_000;

/** Why a pass cannot be sold like this. */
export function soldProblem(state: PassState | null, event: PassSold): Problem | null {
  if (state !== null)
    return problem(
      "pass-sold-twice",
      "pass",
      "This pass is sold already.",
      "Start a new one for a new sale.",
    );
  return sizeProblem(event) ?? priceProblem(event) ?? useByProblem(event);
}

function sizeProblem({ size, form, sessions }: PassSold): Problem | null {
  if (!Number.isInteger(size) || size < 1 || size > MOST_CLASSES) {
    const says = `A pass of ${size} classes cannot be meant.`;
    return problem("pass-size-unlikely", "size", says, `Give whole classes from 1 to ${MOST_CLASSES}.`);
  }
  const distinct = new Set(sessions).size;
  if (form === "pass" || (distinct === size && sessions.length === size)) return null;
  const says = `The block is of ${size} sessions and names ${distinct} different ones.`;
  return problem("pass-block-uneven", "sessions", says, "Name each session of the block once.");
}

function priceProblem({ price, currency }: PassSold): Problem | null {
  if (!isCurrency(currency)) {
    const says = `“${currency.slice(0, 10)}” is not a currency.`;
    return problem(
      "pass-currency-unknown",
      "currency",
      says,
      "Give the three letters of a currency, like GBP.",
    );
  }
  if (Number.isInteger(price) && price >= 0 && price <= MOST_PRICE) return null;
  const says = `A pass cannot be sold for ${price} of the smallest coins.`;
  return problem(
    "pass-price-unlikely",
    "price",
    says,
    `Give a whole number of coins from 0 to ${MOST_PRICE}.`,
  );
}

function useByProblem({ on, useBy }: PassSold): Problem | null {
  if (useBy >= on) return null;
  const says = `The pass would run out on ${useBy}, before it is sold on ${on}.`;
  return problem("pass-use-by-before-sale", "useBy", says, "Give a last day after the sale.");
}
