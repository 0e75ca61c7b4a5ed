import type { Balance, BookLine } from "#core/books";
import type { Locale, Writer } from "#core/words";

/** A line of the books with the stream it came from: "session/tuesday.2026-12-01", "pass/p-7", or "books". */
export type BooksLine = BookLine & { readonly about: string };

/** The books of a stretch of days as a screen has read them. */
export type BooksInput = {
  readonly currency: string;
  /** ISO dates, both included */
  readonly from: string;
  readonly until: string;
  /** the lines of these days, in the order of date, action, line */
  readonly lines: readonly BooksLine[];
  /** what lay in each account at the end of the day before */
  readonly before: readonly Balance[];
  /** older lines of places that are unpaid still, which tell of what session they are */
  readonly earlier: readonly BooksLine[];
  readonly names: BooksNames;
  readonly locale: Locale;
  readonly writer: Writer;
};

/** What the record still knows by name; undefined or null where it does not, as for somebody who was erased. */
export type BooksNames = {
  readonly pass: (id: string) => { readonly name: string; readonly holder: string | null } | undefined;
  readonly place: (session: string, place: string) => string | null;
  readonly session: (id: string) => { readonly name: string; readonly date: string } | undefined;
  /** a hall, or a person who is paid */
  readonly payee: (id: string) => string | undefined;
};

/** "session/tuesday.2026-12-01" as "tuesday.2026-12-01"; undefined for what is about something else. */
export function sessionOf(about: string): string | undefined {
  return about.startsWith("session/") ? about.slice("session/".length) : undefined;
}
