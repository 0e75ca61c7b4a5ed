import {
  type ExactMinor,
  exactNumberText,
  exactText,
  moneyText,
  roundToMinor,
  type WorkingLine,
} from "#core/words";
import type { EveningAnswer } from "./evening-types.ts";
import { breakEvenSentence } from "./evening-sentences.ts";

/** The answer for other programs: amounts are decimal strings in the currency, times whole minutes. */
export type EveningJson = {
  readonly format: "hallful/evening-answer@1";
  readonly currency: string;
  readonly date: string;
  readonly neededMinutes: number;
  readonly chargedMinutes: number;
  readonly hire: string;
  readonly cost: string;
  readonly costPerHead: string;
  /** with up to two decimals more than the currency has */
  readonly yield: string;
  readonly breakEven: number | null;
  readonly breakEvenSentence: string;
  readonly heads: number;
  /** to the coin; the working has it exactly */
  readonly contribution: string;
  readonly doorToDoorMinutes: number;
  readonly otherMinutes: number;
  readonly perDoorToDoorHour: string | null;
  readonly trueHourly: string | null;
  readonly table: readonly {
    readonly heads: number;
    readonly takings: string;
    readonly contribution: string;
  }[];
  readonly working: readonly (WorkingLine & { readonly part: keyof EveningAnswer["working"] })[];
};

export function eveningJson(answer: EveningAnswer): EveningJson {
  const { currency } = answer;
  const coin = (exact: ExactMinor): string => moneyText(roundToMinor(exact), currency);
  const spoken = (exact: ExactMinor): string => `${coin(exact)} ${currency}`;
  return {
    format: "hallful/evening-answer@1",
    currency,
    date: answer.date.toString(),
    neededMinutes: answer.neededMinutes,
    chargedMinutes: answer.chargedMinutes,
    hire: moneyText(answer.hire, currency),
    cost: moneyText(answer.cost, currency),
    costPerHead: moneyText(answer.costPerHead, currency),
    yield: exactText(answer.yield, currency),
    breakEven: answer.breakEven,
    breakEvenSentence: breakEvenSentence(answer, spoken),
    heads: Number(exactNumberText(answer.heads)),
    contribution: coin(answer.contribution),
    doorToDoorMinutes: answer.doorToDoorMinutes,
    otherMinutes: answer.otherMinutes,
    perDoorToDoorHour: answer.perDoorToDoorHour === null ? null : coin(answer.perDoorToDoorHour),
    trueHourly: answer.trueHourly === null ? null : coin(answer.trueHourly),
    table: answer.table.map(({ heads, takings, contribution }) => ({
      heads,
      takings: coin(takings),
      contribution: coin(contribution),
    })),
    working: workingLines(answer.working),
  };
}

function workingLines(working: EveningAnswer["working"]): EveningJson["working"] {
  const parts = ["hire", "cost", "yield", "breakEven", "hourly"] as const;
  return parts.flatMap((part) => working[part].map((line) => ({ part, ...line })));
}
