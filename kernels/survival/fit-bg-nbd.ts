import { type BgNbd, mustBeRepeats, type Repeats } from "./bg-nbd.ts";
import { type Fitted, mostLikely } from "./fitted.ts";
import { risingLogs } from "./rising-logs.ts";

/** People who were seen alike, counted together: the likelihood needs no more of them. */
export type RepeatsAlike = Repeats & { readonly people: number };

/**
 * The four that fit best. People who are alike are worked out once. Where everybody is alike some of the four
 * run to the end of what is looked at and the fit is not settled. Throws for nobody, or when no time went by.
 */
export function fitBgNbd(people: readonly Repeats[]): Fitted<BgNbd> {
  const alike = alikeOf(people);
  const visits = alike.reduce((sum, it) => sum + it.people * it.repeats, 0);
  const time = alike.reduce((sum, it) => sum + it.people * it.span, 0);
  if (!(time > 0)) throw new RangeError(`time watched: ${time}`);
  const mean = time / (visits + 1);
  const found = mostLikely(
    ([r = 0, alpha = 0, a = 0, b = 0]) => logLikelihoodAlike({ r, alpha, a, b }, alike),
    [
      [1, mean, 1, 2],
      [0.3, mean * 0.3, 0.3, 6],
    ],
  );
  const [r = 0, alpha = 0, a = 0, b = 0] = found.parameters;
  return { ...found, parameters: { r, alpha, a, b } };
}

/** ln L, the visits' own order and times included, as the paper has it. */
export function bgNbdLogLikelihood(parameters: BgNbd, people: readonly Repeats[]): number {
  return logLikelihoodAlike(parameters, alikeOf(people));
}

function alikeOf(people: readonly Repeats[]): readonly RepeatsAlike[] {
  const groups = new Map<string, { repeats: number; last: number; span: number; people: number }>();
  for (const seen of people) {
    const { repeats, last, span } = mustBeRepeats(seen);
    const key = `${repeats} ${last} ${span}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { repeats, last, span, people: 1 });
    else group.people += 1;
  }
  return [...groups.values()];
}

function logLikelihoodAlike({ r, alpha, a, b }: BgNbd, alike: readonly RepeatsAlike[]): number {
  const most = alike.reduce((highest, it) => Math.max(highest, it.repeats), 0);
  // the parts that depend on the number of visits alone, once for each number
  const rate = risingLogs(r, most);
  const stays = risingLogs(b, most);
  const all = risingLogs(a + b, most);
  const base = Math.log(alpha);
  const before = rate.map((each, count) => each + (stays[count] ?? 0) - (all[count] ?? 0) - count * base);
  const stops = before.map((_, count) => (count === 0 ? 0 : Math.log(a / (b + count - 1))));
  let sum = 0;
  for (const { repeats, last, span, people } of alike) {
    const shape = r + repeats;
    // α^r ÷ (α + T)^(r + x) as a power of 1 + T ÷ α, which keeps its digits where α is 100,000
    let ends = -shape * Math.log1p(span / alpha);
    if (repeats > 0) {
      const gone = (stops[repeats] ?? 0) + shape * Math.log1p((span - last) / (alpha + last));
      ends += gone > 0 ? gone + Math.log1p(Math.exp(-gone)) : Math.log1p(Math.exp(gone));
    }
    sum += people * ((before[repeats] ?? 0) + ends);
  }
  return sum;
}
