import { type AmountWriter, coinText, type PartLine } from "#core/price";
import { exactNumber } from "#core/words";
import type { CostView, NightOutlook } from "./cost-view.ts";
import type { LearnedShare } from "./learned-shares.ts";
import { openingSentences } from "./opening-sentences.ts";
import type { Limit, Opening, OpeningFound } from "./opening-types.ts";
import { openingWorking } from "./opening-working.ts";

/** The answer for other programs; chances and shares lie between 0 and 1, amounts are decimal strings. */
export type OpeningJson = {
  readonly format: "hallful/opening-answer@1";
  readonly sentences: readonly string[];
  readonly accept: number;
  readonly room: number;
  readonly limitedBy: Limit;
  /** the most whom the posted number allows on mats; null when none is stated */
  readonly hardStop: number | null;
  readonly acceptIfAlone: number;
  readonly risk: number;
  readonly chanceOver: number;
  readonly expected: number;
  readonly table: readonly NightOutlook[];
  /** the chance of a mat for each of the waiting list who comes to the door */
  readonly waitingList: readonly number[];
  readonly byCost: { readonly accept: number; readonly cost: string; readonly currency: string } | null;
  readonly learned: {
    readonly turnUp: LearnedShare;
    readonly returns: LearnedShare | null;
    readonly acceptNext: number;
  } | null;
  readonly stayer: { readonly visits: number; readonly worth: string; readonly currency: string } | null;
  readonly working: readonly PartLine[];
};

export function openingJson(opening: Opening, found: OpeningFound, write: AmountWriter): OpeningJson {
  const { accepting, limit, costs, stayer } = opening;
  return {
    format: "hallful/opening-answer@1",
    sentences: openingSentences(opening, found, write),
    accept: found.accept,
    room: accepting.room,
    limitedBy: limit,
    hardStop: accepting.hardStop,
    acceptIfAlone: found.alone,
    risk: accepting.risk,
    chanceOver: found.night.chanceOver,
    expected: found.night.expected,
    table: found.nights,
    waitingList: found.waiting,
    byCost:
      costs === null || found.byCost === null
        ? null
        : { accept: found.byCost.accept, cost: costText(found.byCost, costs), currency: costs.currency },
    learned: found.learned,
    stayer:
      stayer === null || found.worth === null
        ? null
        : {
            visits: found.worth.visits,
            worth: coinText(found.worth.worth, stayer.currency),
            currency: stayer.currency,
          },
    working: openingWorking(opening, found),
  };
}

function costText({ cost }: CostView, { currency }: NonNullable<Opening["costs"]>): string {
  return coinText(exactNumber(Number(cost.toFixed(4))), currency);
}
