import type { StoreMeasured } from "./register-store.ts";

/** A paragraph for each store, and the aim beside what was measured. */
export function registerInWords(stores: readonly StoreMeasured[]): string {
  return `${stores.map(storeInWords).join("\n\n")}\n`;
}

function storeInWords({ store, past, actions, bare, share }: StoreMeasured): string {
  const aim =
    share >= 0.5 ? "at least half of it, which is the aim" : "less than half of it, which was the aim";
  return `${store}, with ${past} past places:
  ${actions.perSecond} actions a second, median ${actions.median} ms, 99th percentile ${actions.p99} ms
  ${bare.perSecond} bare transactions a second, median ${bare.median} ms, 99th percentile ${bare.p99} ms
  ${share.toFixed(2)} of the bare store: ${aim}`;
}
