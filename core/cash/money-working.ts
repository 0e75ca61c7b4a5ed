import { coinText, type PartLine } from "#core/price";
import { exactNumber, exactNumberText } from "#core/words";
import type { FlowKind } from "./flow.ts";
import { flowKinds } from "./flow.ts";
import type { MoneyCase, MoneyFound } from "./money-found.ts";
import type { MoneyYear } from "./money-types.ts";
import { pathWorking } from "./path-working.ts";
import { setAside } from "./set-aside.ts";
import type { BillLine } from "./tax/tax-bill.ts";
import type { TaxYear } from "./tax/tax-years.ts";

type Text = (coins: number) => string;

/** The sums behind the answer: the year of the bank account, the reserve, each tax year, and the path. */
export function moneyWorking(year: MoneyYear, found: MoneyFound): readonly PartLine[] {
  const text: Text = (coins) => coinText(exactNumber(coins), year.currency);
  const { middle } = found.cases;
  return [
    ...bankLines(year, middle, text),
    ...reserveLines(year, middle, text),
    ...middle.taxYears.flatMap((it) => taxLines(it, text)),
    ...(year.path === null || found.path === null ? [] : pathWorking(year, year.path, found.path, text)),
  ];
}

const labels: Readonly<Record<FlowKind, string>> = {
  takings: "takings paid at the class",
  passes: "passes and blocks sold",
  pay: "pay for studio and other work",
  "session costs": "halls, travel and what else a session costs",
  "other in": "other money in",
  "other out": "other costs",
  "private in": "money in that is not of the business",
  "private out": "what she lives on and other private money",
  tax: "tax",
};

function bankLines(year: MoneyYear, { flows, book }: MoneyCase, text: Text): readonly PartLine[] {
  const part = "bank";
  const lines = flowKinds.flatMap((kind) => {
    const here = flows.filter((flow) => flow.kind === kind);
    if (here.length === 0) return [];
    const sum = here.reduce((total, { coins }) => total + coins, 0);
    const count = here.length === 1 ? "once" : `${here.length} times`;
    return [{ part, label: labels[kind], sum: count, amount: text(sum) }];
  });
  return [
    { part, label: `in the bank on ${year.from.toString()}`, sum: "", amount: text(year.opening) },
    ...lines,
    { part, label: `in the bank on ${year.until.toString()}`, sum: "", amount: text(book.end), total: true },
  ];
}

function reserveLines(year: MoneyYear, { book, reserve }: MoneyCase, text: Text): readonly PartLine[] {
  const part = "reserve";
  const out = book.months.reduce((sum, month) => sum + month.out, 0);
  return [
    {
      part,
      label: "how far the balance falls",
      sum: reserve.fall === 0 ? "" : `${text(year.opening)} − ${text(book.lowest)} on ${book.lowestOn}`,
      amount: text(reserve.fall),
    },
    {
      part,
      label: "a month of what goes out",
      sum: `${text(out)} ÷ ${book.months.length}`,
      amount: text(reserve.month),
    },
    { part, label: "to have in the bank", sum: "", amount: text(reserve.advised), total: true },
  ];
}

function taxLines(year: TaxYear, text: Text): readonly PartLine[] {
  const part = `tax ${year.from.toString()}`;
  const { exact, percent } = setAside(year);
  return [
    ...year.bill.lines.map((line) => ({ part, ...billLine(line, text) })),
    {
      part,
      label: "of each receipt",
      sum:
        percent === 0
          ? ""
          : `${text(year.bill.bill)} ÷ ${text(year.trading.income)} = ${exactNumberText(exact.mul(100))} %, rounded up`,
      amount: `${percent} %`,
    },
  ];
}

function billLine({ label, coins, of, total }: BillLine, text: Text) {
  const sum = of === undefined ? "" : `${text(of.coins)} × ${exactNumberText(of.rate.mul(100))} %`;
  return { label, sum, amount: text(coins), ...(total === undefined ? {} : { total }) };
}
