/**
 * The tax year in which an ISO date lies: from 6 April until 5 April where the books are in pounds, else the calendar
 * year. A first answer, which she may change.
 */
export function taxYearAround(
  date: string,
  currency: string,
): { readonly from: string; readonly until: string } {
  const year = Number(date.slice(0, 4));
  if (currency !== "GBP") return { from: `${date.slice(0, 4)}-01-01`, until: `${date.slice(0, 4)}-12-31` };
  const start = date.slice(5) >= "04-06" ? year : year - 1;
  return { from: `${start}-04-06`, until: `${start + 1}-04-05` };
}
