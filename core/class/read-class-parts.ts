import { type EveningMinutes, readHeads, readPayers } from "#core/price";
import {
  type CurrencyCode,
  good,
  type Minor,
  minor,
  minutes,
  type Result,
  readAmount,
  readMinutes,
  together,
} from "#core/words";
import type { ClassDocument } from "./class-document.ts";
import type { ClassParts } from "./class-parts.ts";
import { readClassOutlook } from "./read-class-outlook.ts";
import { readPlanning } from "./read-planning.ts";
import { readClassYear } from "./read-class-year.ts";
import { readMats, readName, readPlaces, readStart, readWeekday } from "./read-class-fields.ts";

/** Every field of a class document that a sum or a plan rests on. */
export function readClassParts(document: ClassDocument, currency: CurrencyCode): Result<ClassParts> {
  const read = together({
    name: readName(document.name),
    weekday: readWeekday(document.weekday),
    start: readStart(document.start),
    minutes: readClassMinutes(document.minutes),
    mats: readMats(document.mats),
    matsOwned: readPlaces(document.matsOwned, "matsOwned"),
    ownCap: readPlaces(document.ownCap, "ownCap"),
    insurerCap: readPlaces(document.insurerCap, "insurerCap"),
    costs: readCosts(document.costs, currency),
    payers: readPayers(document.prices, document.mix, currency),
    heads: readHeads(document.heads),
    year: readClassYear(document.year, currency),
    planning: readPlanning(document.planning, currency),
    outlook: readClassOutlook(document, currency),
  });
  if (!read.ok) return read;
  const { weekday, minutes: times, costs, payers, heads, year } = read.value;
  return good({ weekday, minutes: times, payers, heads, ...costs, ...year });
}

function readClassMinutes(document: ClassDocument["minutes"]): Result<EveningMinutes> {
  const read = together({
    setUp: readMinutes(document.setUp, "minutes.setUp"),
    class: readMinutes(document.class, "minutes.class", { least: 1, most: 1440 }),
    packDown: readMinutes(document.packDown, "minutes.packDown"),
    travel: readMinutes(document.travel, "minutes.travel"),
    preparation: readMinutes(document.preparation, "minutes.preparation"),
    admin: readMinutes(document.admin, "minutes.admin"),
  });
  if (!read.ok) return read;
  const { preparation, admin, ...slot } = read.value;
  return good({ ...slot, other: minutes(preparation + admin) });
}

type Costs = Pick<ClassParts, "travelCost" | "otherCost" | "perHead">;

function readCosts(costs: ClassDocument["costs"], currency: CurrencyCode): Result<Costs> {
  const cost = (field: keyof typeof costs): Result<Minor> =>
    readAmount(costs[field], currency, `costs.${field}`);
  const read = together({
    travel: cost("travel"),
    music: cost("music"),
    cover: cost("cover"),
    other: cost("other"),
    perHead: cost("perHead"),
  });
  if (!read.ok) return read;
  const { travel, music, cover, other, perHead } = read.value;
  return good({ travelCost: travel, otherCost: minor(music + cover + other), perHead });
}
