import { chanceText, type PriceJson, priceAnswer } from "#core/price";
import { good } from "#core/words";
import { amountWriter } from "../amount-writer.ts";
import { answerSheet, partsOf } from "../answer-sheet.ts";
import type { Command } from "../command.ts";
import { readInput } from "../read-input.ts";
import { textTable } from "../text-table.ts";

export const price: Command = {
  name: "price",
  summary: "whether prices hold, how surely they pay, and what would change that",
  words: ["PRICE.json"],
  options: {},
  details: `
PRICE.json has the prices of a class, how people pay and how many would like to
come, as hallful schema price describes it; - reads standard input. Beliefs of
two or three prices in it give the price curve, a studio's offer compares its
hour with one of your own. In the JSON chances lie between 0 and 1.`,
  run: async ({ words: [name = "-"] }, world) => {
    const input = await readInput(name, world);
    if (!input.ok) return input;
    const read = priceAnswer(input.value, amountWriter);
    if (!read.ok) return read;
    const { json, unused } = read.value;
    return good({ text: priceText(json), json, unused });
  },
};

const headings: Readonly<Record<string, string>> = {
  yield: "What one person brings",
  heads: "How many come, and what an evening leaves",
  rise: "What a price rise can lose and still be level",
  target: "The price for the pay you want",
  studio: "An hour from door to door",
};

function priceText(answer: PriceJson): string {
  const { sentences, working, currency } = answer;
  const sheet = answerSheet(
    sentences,
    partsOf(working, (part) => headings[part] ?? part),
  );
  return `${sheet}
The ladder of prices, in ${currency}
${ladderTable(answer)}
People on the mats, how often, and what an evening leaves, in ${currency}
${headsTable(answer)}${curveTables(answer)}${courseTables(answer)}
What would change whether an evening pays, the nearest first
${lines(answer.changes.evening)}${studioChanges(answer)}`;
}

function ladderTable({ ladder }: PriceJson): string {
  const rows = ladder.tiers.map((it) => [it.name, it.price, it.perClass, chanceText(it.share)]);
  return textTable([["", "price", "a class", "of the people"], ...rows]);
}

function headsTable({ heads }: PriceJson): string {
  return textTable(
    heads.chances.map((it) => [String(it.heads).padStart(3), chanceText(it.chance), it.contribution]),
  );
}

const curveNames = {
  "constant elasticity": "If each per cent more loses the same share of the people",
  linear: "If each coin more loses the same number of people",
} as const;

// More lines than this nobody compares by eye; the JSON has them all.
const MOST_PRICES = 16;

function curveTables({ curve, currency }: PriceJson): string {
  if (curve === null) return "";
  return curve.curves
    .map(({ kind, points }) => {
      const every = Math.ceil(points.length / MOST_PRICES);
      const some = points.filter((_, at) => at % every === 0);
      const rows = some.map((it) => [it.price, it.heads.toFixed(1), it.contribution]);
      const table = textTable([["price", "people", "an evening leaves"], ...rows]);
      return `\n${curveNames[kind]}, in ${currency}\n${table}`;
    })
    .join("");
}

function courseTables({ courses, currency }: PriceJson): string {
  return courses
    .map(({ key, perSession, lateJoiner, refunds }) => {
      const joining = lateJoiner.map((it) => [
        it.remaining === 1 ? "1 session left" : `${it.remaining} sessions left`,
        it.price,
      ]);
      const back = refunds.map((amount, at) => [`session ${at + 1} is cancelled`, amount]);
      const size = key.replace("course-", "");
      return `\nA course of ${size}, ${perSession} a session, in ${currency}: joining late, and what comes back\n${textTable([...joining, ...back])}`;
    })
    .join("");
}

function studioChanges({ changes }: PriceJson): string {
  if (changes.studio === null) return "";
  return `\nWhat would change which hour is the better one, the nearest first\n${lines(changes.studio)}`;
}

function lines(changes: PriceJson["changes"]["evening"]): string {
  return changes.map(({ says }) => `  ${says}\n`).join("");
}
