import { clockText } from "./clock-text.ts";
import type { ComparedHall, Slot } from "./compare-types.ts";

/**
 * Why a hall cannot be had from letting in to locking up, in minutes of the day; null when it can, or when nobody
 * has said when it is free.
 */
export function whyNotFree(
  free: ComparedHall["free"],
  { weekday, said }: Slot,
  opens: number,
  closes: number,
): string | null {
  if (free === null) return null;
  const that = free.filter((span) => span.weekday === weekday);
  // one free span must hold the whole of it: two that only touch may have another group's door between them
  if (that.some((span) => span.from <= opens && span.until >= closes)) return null;
  const asked = `it is not free on ${said} from ${clockText(opens)}, when it must be let in, to ${clockText(closes)}`;
  const day = said.replace(/ .*$/, "");
  if (that.length === 0) return `${asked}: it is never free on a ${day}`;
  const spans = that
    .toSorted((a, b) => a.from - b.from)
    .map((span) => `${clockText(span.from)} to ${clockText(span.until)}`);
  return `${asked}: on a ${day} it is free from ${spans.join(" and from ")}`;
}
