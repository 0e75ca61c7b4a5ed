import { bad, good, problem, readAmount, type Result, together } from "#core/words";
import type { Remedies } from "../decide/second-class.ts";
import { readCount, readMean, readShare } from "../read-count.ts";
import { readCurrencyFor } from "../read-currency-for.ts";
import type { OutlookDocument } from "./outlook-document.ts";

const PEOPLE = { least: 0, most: 1000 };

/** Problems: "evening-without-money", "bigger-hall-smaller", those of counts, shares and amounts. */
export function readFull(document: OutlookDocument): Result<Remedies | null> {
  const { full, money, currency, capacity } = document;
  if (full === undefined) return good(null);
  if (money === undefined) return bad(withoutMoney());
  const known = readCurrencyFor(currency, "full");
  // a currency that is missing is told with the money
  if (!known.ok) return good(null);
  const { biggerHall, secondClass } = full;
  const amount = (text: string, field: string) => readAmount(text, known.value, `full.${field}`);
  return together({
    extraMats: readCount(full.extraMats, "full.extraMats", "mats", PEOPLE),
    absences: readCount(full.absences, "full.absences", "places", PEOPLE),
    rise: amount(full.rise, "rise"),
    riseLoses: readShare(full.riseLoses, "full.riseLoses", "A share who would go"),
    biggerHall:
      biggerHall === undefined
        ? good(null)
        : together({
            capacity: readBigger(biggerHall.capacity, capacity),
            extraCost: amount(biggerHall.extraCost, "biggerHall.extraCost"),
          }),
    secondClass:
      secondClass === undefined
        ? good(null)
        : together({
            cost: amount(secondClass.cost, "secondClass.cost"),
            shareWhoWouldCome: readShare(
              secondClass.shareWhoWouldCome,
              "full.secondClass.shareWhoWouldCome",
              "A share who would come",
            ),
            ownPeople: readMean(secondClass.ownPeople, "full.secondClass.ownPeople", "people", PEOPLE),
          }),
  });
}

function readBigger(places: number, now: number): Result<number> {
  const read = readCount(places, "full.biggerHall.capacity", "places", { least: 1, most: 5000 });
  if (!read.ok || read.value > now) return read;
  const says = `A hall of ${places} places is no bigger than the one of ${now}.`;
  return bad(problem("bigger-hall-smaller", "full.biggerHall.capacity", says, "Give its places again."));
}

function withoutMoney() {
  const says = "What a remedy is worth cannot be said without what a person brings.";
  return problem(
    "evening-without-money",
    "full",
    says,
    "Give the yield and the cost of a session in “money”.",
  );
}
