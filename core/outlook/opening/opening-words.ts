import type { Together } from "./turn-up.ts";

/** 11.4 is "11.4", 12.0 is "12". */
export function shortDecimal(value: number): string {
  return String(Number(value.toFixed(1)));
}

/** "1 teaching week", "40 teaching weeks". */
export function counted(count: number, one: string): string {
  return count === 1 ? `1 ${one}` : `${count} ${one}s`;
}

export function togetherWords(together: Together): string {
  switch (together.kind) {
    case "alone":
      return "each decides alone";
    case "alike":
      return "people come in pairs, or all stay away in the rain";
    case "pairs":
      return `${counted(together.pairs, "pair")} ${together.pairs === 1 ? "comes or stays" : "come or stay"} away as one`;
  }
}
