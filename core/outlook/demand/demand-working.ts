import type { WorkingLine } from "#core/words";
import { counted, shortDecimal } from "../opening/opening-words.ts";
import type { DemandBehind } from "./demand-behind.ts";

/** The balance that the likeliest mean strikes: what was seen, and what a full session stands for. */
export function demandWorking({
  sessions,
  uncounted,
  meanHeads,
  mean,
  seen,
}: DemandBehind): readonly WorkingLine[] {
  const exact = seen.filter(({ kind }) => kind === "exact").reduce((sum, { count }) => sum + count, 0);
  const each = uncounted === 0 ? 0 : (mean * sessions - exact) / uncounted;
  const open = sessions - uncounted;
  return [
    { label: "Heads", sum: `${counted(sessions, "session")} on average`, amount: shortDecimal(meanHeads) },
    ...(open === 0
      ? []
      : [{ label: "Known", sum: `${counted(open, "session")} together`, amount: String(exact) }]),
    ...(uncounted === 0
      ? []
      : [
          {
            label: "Full",
            sum: `${counted(uncounted, "session")}, each standing for ${shortDecimal(each)} who wanted to come`,
            amount: shortDecimal(each * uncounted),
          },
        ]),
    {
      label: "Who want to come",
      sum: `${shortDecimal(mean * sessions)} ÷ ${sessions}`,
      amount: shortDecimal(mean),
      total: true,
    },
  ];
}
