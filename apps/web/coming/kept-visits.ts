/*
 * A file of visits, in this browser's own database on this device and only when she asked for it. Nothing here, and
 * nothing else, sends one anywhere: the names belong to the people who come.
 */
import type { VisitColumn } from "#core/table";
import { deviceShelf } from "../drafts/device-shelf.ts";
import type { TableAsk } from "../import/table-ask.ts";
import type { Source } from "../import/table-source.tsx";

const shelf = deviceShelf("hallful-visits", "visits");

/** A file with what she said of its columns. */
export type KeptVisits = { readonly source: Source; readonly ask: TableAsk<VisitColumn> };

/** False where the device refuses to keep it. */
export async function keepVisits(practice: string, visits: KeptVisits): Promise<boolean> {
  return (await shelf("readwrite", (it) => it.put(visits, practice))) !== null;
}

/** Null where this device has none of this practice. */
export async function keptVisits(practice: string): Promise<KeptVisits | null> {
  const read = await shelf("readonly", (it) => it.get(practice));
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- written by keepVisits
  return isKept(read?.value) ? (read?.value as KeptVisits) : null;
}

/** False where the device did not do so. */
export async function forgetVisits(practice: string): Promise<boolean> {
  return (await shelf("readwrite", (it) => it.delete(practice))) !== null;
}

function isKept(it: unknown): boolean {
  return typeof it === "object" && it !== null && "source" in it && "ask" in it;
}
