import { chanceText, type PartLine, partLines } from "#core/price";
import type { WorkingLine } from "#core/words";
import type { NightOutlook } from "./cost-view.ts";
import type { Opening, OpeningFound } from "./opening-types.ts";
import { shortDecimal } from "./opening-words.ts";
import type { Together } from "./turn-up.ts";

/** The number that is still within the risk, the one that is not, and the worth of a stayer. */
export function openingWorking(opening: Opening, found: OpeningFound): readonly PartLine[] {
  return [
    ...partLines("accept", acceptLines(opening, found)),
    ...partLines("stayer", stayerLines(opening, found)),
  ];
}

function acceptLines({ accepting }: Opening, { accept, night, next }: OpeningFound): readonly WorkingLine[] {
  const { room, turnUp, risk, together } = accepting;
  const over = (it: NightOutlook): WorkingLine => ({
    label: `${it.accepted} accepted`,
    sum: `more than ${room} of ${it.accepted}, each with ${turnUp}${alikeWords(together)}`,
    amount: chanceText(it.chanceOver),
  });
  return [
    over(night),
    ...(accepting.paid || accept === accepting.hardStop ? [] : [over(next)]),
    {
      label: "Accept",
      sum: `the most with ${chanceText(risk)} or less`,
      amount: String(accept),
      total: true,
    },
  ];
}

function alikeWords(together: Together): string {
  if (together.kind === "alone") return "";
  return together.kind === "alike"
    ? `, alike by ${together.correlation}`
    : `, ${together.pairs} pairs among them`;
}

function stayerLines({ stayer }: Opening, { worth }: OpeningFound): readonly WorkingLine[] {
  if (stayer === null || worth === null) return [];
  const { attendance, leaving, sessions } = stayer;
  const weeks = attendance === 0 ? 0 : worth.visits / attendance;
  return [
    {
      label: "Weeks that she is still there",
      sum: `${sessions} weeks, ${leaving} stop each week`,
      amount: shortDecimal(weeks),
    },
    {
      label: "Visits",
      sum: `${shortDecimal(weeks)} × ${attendance}`,
      amount: shortDecimal(worth.visits),
      total: true,
    },
  ];
}
