import type { Result } from "#core/words";

/** Closes and opens the short notes about health, under a key that lies beside the data and in no backup. */
export type Sealer = {
  /** the note as text that says nothing; bound to the person, so that it opens for nobody else */
  readonly seal: (practice: string, person: string, text: string) => string;
  /** Problem: "note-sealed" when the key is another one or the text was changed */
  readonly open: (practice: string, person: string, sealed: string) => Result<string>;
};
