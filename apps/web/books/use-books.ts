import { useQuery } from "@tanstack/react-query";
import type { BooksInput, BooksNames } from "#app/views";
import type { HallDocument } from "#core/hall";
import type { PracticeDocument } from "#core/words";
import { useMemo } from "react";
import type { Listed } from "../drafts/use-practice.ts";
import {
  passesQuery,
  peopleQuery,
  type PersonHere,
  type SessionHere,
  sessionsQuery,
} from "../people/record-reads.ts";
import { weeksBefore } from "../people/today-here.ts";
import { screenWriter } from "../record/screen-writer.ts";
import { booksQuery } from "./books-reads.ts";

export type Stretch = { readonly from: string; readonly until: string };

type Here = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly halls: readonly Listed<HallDocument>[];
};

// what is paid ahead, or late, stands in the books some weeks away from its session
const WEEKS_AROUND = 10;

/** The books of a stretch of days with the names that the record still has; names come when they are read. */
export function useBooks({ practiceId, practice, halls }: Here, { from, until }: Stretch) {
  const books = useQuery(booksQuery(practiceId, from, until));
  const people = useQuery(peopleQuery(practiceId));
  const passes = useQuery(passesQuery(practiceId));
  // what is unpaid from before is of a session before
  const first = (books.data?.earlier ?? []).reduce((least, { date }) => (date < least ? date : least), from);
  const around = [weeksBefore(first, WEEKS_AROUND), weeksBefore(until, -WEEKS_AROUND)] as const;
  const sessions = useQuery({ ...sessionsQuery(practiceId, ...around), enabled: books.data !== undefined });
  const names = useMemo(
    () => namesOf(people.data ?? [], passes.data ?? [], sessions.data ?? [], halls),
    [people.data, passes.data, sessions.data, halls],
  );
  const { currency, locale } = practice;
  const input = useMemo(
    (): BooksInput | null =>
      books.data === undefined
        ? null
        : { ...books.data, currency, locale, from, until, names, writer: screenWriter(locale) },
    [books.data, currency, locale, from, until, names],
  );
  return { input, error: books.error, again: books.refetch };
}

function namesOf(
  people: readonly PersonHere[],
  passes: readonly { readonly pass: string; readonly name: string; readonly holder: string }[],
  sessions: readonly SessionHere[],
  halls: Here["halls"],
): BooksNames {
  const persons = new Map(people.map(({ id, person }) => [id, person.contact.name]));
  const sold = new Map(passes.map((it) => [it.pass, it]));
  const held = new Map(sessions.map(({ id, session }) => [id, session]));
  const rooms = new Map(halls.map(({ id, document }) => [id, document.name]));
  return {
    pass: (id) => {
      const found = sold.get(id);
      return found === undefined
        ? undefined
        : { name: found.name, holder: persons.get(found.holder) ?? null };
    },
    place: (session, id) => {
      const person = held.get(session)?.places.find((it) => it.id === id)?.person;
      return person === undefined ? null : (persons.get(person) ?? null);
    },
    session: (id) => held.get(id),
    payee: (id) => rooms.get(id) ?? persons.get(id),
  };
}
