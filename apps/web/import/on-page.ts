import type { Problem } from "#core/words";

/** A problem of a table in the words of a page, where columns and orders are chosen from lists and not typed. */
export function onPage(it: Problem): Problem {
  if (it.code.startsWith("date-order-"))
    return { ...it, next: "Say below which comes first; rows that do not fit are then listed." };
  if (it.code === "column-unclear") return { ...it, next: "Choose it below." };
  if (it.code === "column-twice") return { ...it, next: "Choose another below, or that one is not in it." };
  return it;
}
