/** The name of the format in the first line of a file of everything; docs/everything.md describes it. */
export const FORMAT = "hallful/everything@1";
