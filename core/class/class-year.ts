import type { HireTermsDocument } from "#core/hall";
import { contributionOf, type Evening, readEvening, sessionCosts, yieldOf } from "#core/price";
import { type CurrencyCode, type ExactMinor, good, minor, type Result } from "#core/words";
import { monthKey } from "#kernels/calendar";
import { Fraction } from "fraction.js";
import type { ClassDocument } from "./class-document.ts";
import { classYearWorking } from "./class-year-working.ts";
import type { ClassYear, SessionsAtCost, YearMonth } from "./class-year-types.ts";
import { eveningDocument, type SoundClass, soundClass } from "./evening-of.ts";
import type { YearSession } from "./year-session.ts";

/**
 * A year of one class by its real dates, at its ordinary heads: what it leaves after fixed costs.
 * Problems: those of the class, and of the hire terms at "hire". Method: methods 2 and 3, trade F5.
 */
export function classYear(
  document: ClassDocument,
  hire: HireTermsDocument,
  currency: CurrencyCode,
): Result<ClassYear> {
  const sound = soundClass(document, hire, currency);
  if (!sound.ok) return sound;
  const evening = readEvening(eveningDocument(sound.value, document.year.from));
  return evening.ok ? good(yearOf(sound.value, evening.value.evening)) : evening;
}

function yearOf({ parts, dates }: SoundClass, evening: Evening): ClassYear {
  const margin = yieldOf(evening.payers).sub(evening.perHead);
  const sessions = dates.teaching.map((date): YearSession => {
    const { hire, cost } = sessionCosts({ ...evening, date });
    const contribution = contributionOf(evening.heads, margin, cost);
    return { date: date.toString(), month: monthKey(date), hire, cost, contribution };
  });
  const contribution = sum(sessions);
  const costs = sessionsAtCosts(sessions);
  return {
    from: parts.year.from.toString(),
    until: parts.year.until.toString(),
    dates: sessions.map(({ date }) => date),
    lost: dates.lost.map(({ date, why }) => ({ date: date.toString(), why })),
    months: months(sessions),
    costs,
    contribution,
    fixed: parts.fixedPerYear,
    margin,
    leaves: contribution.sub(parts.fixedPerYear),
    working: classYearWorking(evening, margin, costs, dates.lost.length, parts.fixedPerYear),
  };
}

function sessionsAtCosts(sessions: readonly YearSession[]): readonly SessionsAtCost[] {
  return [...new Set(sessions.map(({ cost }) => cost))].map((cost) => ({
    cost,
    sessions: sessions.filter((session) => session.cost === cost).length,
  }));
}

/** The months in which the class runs, in their order. */
function months(sessions: readonly YearSession[]): readonly YearMonth[] {
  return [...new Set(sessions.map(({ month }) => month))].map((month) => {
    const within = sessions.filter((session) => session.month === month);
    return {
      month,
      sessions: within.length,
      hire: minor(within.reduce((total, { hire }) => total + hire, 0)),
      contribution: sum(within),
    };
  });
}

function sum(sessions: readonly YearSession[]): ExactMinor {
  return sessions.reduce((total, { contribution }) => total.add(contribution), new Fraction(0));
}
