export { chooseColumns, type ColumnChoice, headsShape, type Shape, visitsShape } from "./choose-columns.ts";
export type { ColumnUse, HeadsColumn, VisitColumn } from "./column-use.ts";
export type { DateOrder, DateStyle } from "./date-order.ts";
export { type HeadsRead, type HeadsRow, readHeads } from "./read-heads.ts";
export { readVisits, type VisitRow, type VisitsRead } from "./read-visits.ts";
export { columnList, columnName, type NotUsed, type Table, type TableRow } from "./table.ts";
export { type NamesRow, tableOf } from "./table-of.ts";
