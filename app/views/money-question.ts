import type { MoneyPlan, YearMoneyDocument } from "#core/cash";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { MoneyWriter } from "#core/price";
import { isCurrency, type PracticeDocument, type Problem, readMoney } from "#core/words";
import { Fraction } from "fraction.js";
import { dateWords } from "./date-words.ts";
import { type OwnMoney, ownMoney } from "./own-money.ts";

type Listed<Document> = { readonly id: string; readonly document: Document };

/** The plan of the money with the practice around it. */
export type MoneyQuestionInput = {
  readonly practice: Pick<PracticeDocument, "currency" | "locale">;
  readonly plan: MoneyPlan;
  readonly classes: readonly Listed<ClassDocument>[];
  readonly halls: readonly Listed<HallDocument>[];
  /** YYYY-MM-DD */
  readonly today: string;
  readonly money: MoneyWriter;
};

/** A class of the practice as the money sees it. */
export type OwnMoneyRow = {
  readonly id: string;
  readonly name: string;
  readonly out: boolean;
  /** "39 sessions, £85.00 takings each, £28.00 hall" */
  readonly says: string;
  /** why it cannot be counted yet; null where it is */
  readonly why: string | null;
  readonly figures: OwnMoney | null;
};

export type MoneyQuestion = {
  readonly document: YearMoneyDocument;
  readonly own: readonly OwnMoneyRow[];
  /** neither a class nor other money: nothing to ask */
  readonly nothing: boolean;
};

type Work = YearMoneyDocument["work"][number];

/** The money document of a plan: the classes of the practice come in by themselves, after the other work. */
export function moneyQuestion(input: MoneyQuestionInput): MoneyQuestion {
  const { practice, plan, today } = input;
  const rows = input.classes.map((it) => ownRow(input, it));
  const own = rows.flatMap(({ work }) => (work === null ? [] : [work]));
  const { own: _own, format: _format, tax, from, guesses, ...rest } = plan;
  const taxed = tax === undefined ? usualTax(practice.currency) : (tax ?? undefined);
  const { path, ...others } = rest;
  const known = new Set([...plan.work, ...own].map(({ id }) => id));
  const document: YearMoneyDocument = {
    ...others,
    currency: practice.currency,
    from: from ?? `${today.slice(0, 7)}-01`,
    work: [...plan.work, ...own],
    ...(taxed === undefined ? {} : { tax: taxed }),
    // a need of nought is one that nobody has given yet: the rest is answered without the path
    ...(path === undefined || Number(path.need) === 0
      ? {}
      : { path: { ...path, mayDrop: path.mayDrop.filter(({ id }) => known.has(id)) } }),
    guesses: [...guesses, ...rows.flatMap(({ guessed }) => guessed)],
  };
  const nothing = document.work.length === 0 && document.moves.length === 0;
  return { document, own: rows.map(({ row }) => row), nothing };
}

/** By the currency, until she says otherwise: a guess that is told on the page. */
function usualTax(currency: string): YearMoneyDocument["tax"] {
  const place = currency === "GBP" ? "uk" : currency === "USD" ? "us" : null;
  if (place === null) return undefined;
  return {
    place,
    filing: "single",
    other: "0",
    stateRate: 0,
    registered: false,
    soFar: { income: "0", costs: "0" },
    paidSoFar: "0",
    tables: [],
  };
}

function ownRow(input: MoneyQuestionInput, { id, document }: Listed<ClassDocument>) {
  const { practice, plan, halls } = input;
  const said = plan.own.find((it) => it.class === id);
  const hall = halls.find((it) => it.id === document.hall)?.document ?? null;
  const found = isCurrency(practice.currency) ? ownMoney(document, hall, practice.currency) : null;
  const figures = found?.kind === "ready" ? found : null;
  const name = document.name.trim() === "" ? "A class without a name" : document.name;
  const out = said?.out ?? false;
  const row: OwnMoneyRow = {
    id,
    name,
    out,
    figures,
    says: figures === null ? "" : saysOf(input, figures),
    why: figures === null ? whyNot(found) : null,
  };
  if (figures === null || out) return { row, work: null, guessed: [] };
  return {
    row,
    work: workOf(id, name, figures, said),
    guessed: [
      ...(said?.hallPaid === undefined && Number(figures.hall) > 0 ? [`own.${id}.hallPaid`] : []),
      ...(said?.perSession === undefined && figures.takings.low !== figures.takings.high
        ? [`own.${id}.perSession`]
        : []),
    ],
  };
}

// a hall's invoice for a month is paid within two weeks: common practice, no source
const HALL_PAID = { when: "after-month", days: 14 } as const;

function workOf(
  id: string,
  name: string,
  figures: OwnMoney,
  said: MoneyPlan["own"][number] | undefined,
): Work {
  const { takings, hall, travel, other, passes } = figures;
  const known = takings.low === takings.high;
  const sold = said?.passes ?? (passes === null ? undefined : { ...passes, owed: "0" });
  return {
    id,
    name,
    kind: "own",
    dates: [...figures.dates],
    perSession: said?.perSession ?? (known ? takings.middle : takings),
    changes: said?.changes ?? [],
    ...(sold === undefined ? {} : { passes: sold }),
    costs: [
      { name: "hall", perSession: hall, paid: said?.hallPaid ?? HALL_PAID, business: true },
      { name: "travel", perSession: travel, business: true },
      { name: "other", perSession: other, business: true },
    ].filter(({ perSession }) => Number(perSession) > 0),
  };
}

function whyNot(found: ReturnType<typeof ownMoney> | null): string {
  if (found?.kind === "missing") return `${found.says} ${found.next}`;
  const first = found?.kind === "unsound" ? found.problems[0] : undefined;
  return first === undefined ? "Its takings are not known yet." : `${first.says} ${first.next}`;
}

function saysOf({ practice, money }: MoneyQuestionInput, { dates, takings, hall }: OwnMoney): string {
  const { currency } = practice;
  if (!isCurrency(currency)) return "";
  const words = (text: string) => {
    const read = readMoney(text, currency, "");
    return money(new Fraction(read.ok ? read.value : 0));
  };
  const count = dates.length === 1 ? "1 session" : `${dates.length} sessions`;
  const range =
    takings.low === takings.high
      ? words(takings.middle)
      : `${words(takings.middle)} (${words(takings.low)} to ${words(takings.high)}, how many come being a guess)`;
  const last = dateWords(dates.at(-1) ?? "", practice.locale);
  return `${count}, the last on ${last}; ${range} taken at each, ${words(hall)} for the hall`;
}

/**
 * Problems of the money document by ids instead of positions: "work.plum.paid.days", "own.tuesday.perSession",
 * "moves.insurance.amount".
 */
export function atMoneyPlan(
  problems: readonly Problem[],
  plan: MoneyPlan,
  { work, moves }: Pick<YearMoneyDocument, "work" | "moves">,
): readonly Problem[] {
  const theirs = new Set(plan.work.map(({ id }) => id));
  return problems.map((problem) => {
    const [, list = "", at = "", rest = ""] = /^(work|moves)\[(\d+)\](.*)$/.exec(problem.place) ?? [];
    const id = list === "moves" ? moves[Number(at)]?.id : list === "work" ? work[Number(at)]?.id : undefined;
    if (id === undefined) return problem;
    const start = list === "work" && !theirs.has(id) ? "own" : list;
    return { ...problem, place: `${start}.${id}${rest}` };
  });
}
