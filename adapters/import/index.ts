export type { Encoding } from "./decode-text.ts";
export { readTable, type TableFile } from "./read-table.ts";
export type { Separator } from "./sniff-separator.ts";
