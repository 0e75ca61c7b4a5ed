export { readPlainDate } from "./plain-date.ts";
