import {
  bad,
  type CurrencyCode,
  good,
  problem,
  type Result,
  readAmount,
  readExact,
  together,
} from "#core/words";
import { readCapacity, readDemand } from "../heads/read-demand.ts";
import type { StudioClass } from "./own-or-studio.ts";
import type { StudioDocument } from "./studio-document.ts";
import type { StudioPay } from "./studio-pay.ts";

/** A studio's class as a document states it. Problems: "minutes-out-of-range", "studio-threshold", "share-out-of-range". */
export function readStudio(
  studio: StudioDocument | undefined,
  currency: CurrencyCode,
  place = "studio",
): Result<(StudioClass & { readonly name: string }) | null> {
  if (studio === undefined) return good(null);
  const read = together({
    pay: readPay(studio.pay, currency, `${place}.pay`),
    demand: readDemand(studio.heads, studio.dispersion, place),
    capacity: readCapacity(studio.capacity, `${place}.capacity`),
    travelCost: readAmount(studio.travelCost, currency, `${place}.travelCost`),
    minutes: readDoor(studio.minutes, `${place}.minutes`),
  });
  return read.ok ? good({ name: studio.name, ...read.value }) : read;
}

function readPay(pay: StudioDocument["pay"], currency: CurrencyCode, place: string): Result<StudioPay> {
  const amount = (text: string, field: string) => readAmount(text, currency, `${place}.${field}`);
  switch (pay.form) {
    case "flat":
      return formed("flat", { pay: amount(pay.pay, "pay") });
    case "tiered":
      return formed("tiered", {
        base: amount(pay.base, "base"),
        perHead: amount(pay.perHead, "perHead"),
        above: readThreshold(pay.above, `${place}.above`),
        cap: pay.cap === undefined ? good(null) : amount(pay.cap, "cap"),
      });
    case "per head":
      return formed("per head", {
        perHead: amount(pay.perHead, "perHead"),
        minimum: amount(pay.minimum, "minimum"),
      });
    case "share of takings":
      return formed("share of takings", {
        share: readPart(pay.share, `${place}.share`),
        takingsPerHead: amount(pay.takingsPerHead, "takingsPerHead"),
        minimum: amount(pay.minimum, "minimum"),
      });
  }
}

function formed<Form extends string, const Parts extends Readonly<Record<string, Result<unknown>>>>(
  form: Form,
  parts: Parts,
) {
  const read = together(parts);
  return read.ok ? good({ form, ...read.value }) : read;
}

function readThreshold(above: number, place: string): Result<number> {
  if (above >= 0 && above <= 1000) return good(above);
  const says = `${above} people cannot be the number from which more is paid.`;
  return bad(problem("studio-threshold", place, says, "Give the heads that the base covers, 0 to 1000."));
}

function readPart(share: number, place: string) {
  const says = `A share of ${share} cannot be meant.`;
  const next = "Give a share from 0 to 1: 0.6 is 60 % of the takings.";
  return readExact(share, place, { least: 0, most: 1 }, { code: "share-out-of-range", says, next });
}

function readDoor(minutes: number, place: string): Result<number> {
  if (Number.isInteger(minutes) && minutes >= 1 && minutes <= 1440) return good(minutes);
  const says = `${minutes} minutes cannot be meant.`;
  return bad(
    problem("minutes-out-of-range", place, says, "Give whole minutes from 1 to 1440, from door to door."),
  );
}
