import type { Paper } from "#core/papers";

/** Makes files of papers. */
export type Papers = {
  /** the bytes of a PDF; the same paper gives the same bytes */
  pdf(paper: Paper): Promise<Uint8Array>;
};
