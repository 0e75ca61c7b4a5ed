import "./people.css";
import { useQuery } from "@tanstack/react-query";
import { Link, useParams } from "@tanstack/react-router";
import type { PersonState } from "#core/roll";
import type { PracticeDocument } from "#core/words";
import { usePractice } from "../drafts/use-practice.ts";
import { PageTitle } from "../parts/page-title.tsx";
import { ConsentsPart } from "./consents-part.tsx";
import { ContactPart } from "./contact-part.tsx";
import { CoverPart } from "./cover-part.tsx";
import { ErasePart } from "./erase-part.tsx";
import { HealthPart } from "./health-part.tsx";
import { lateWords } from "./late-words.ts";
import { NotRead } from "./not-read.tsx";
import { PassesPart } from "./passes-part.tsx";
import { SpeakToMe } from "./people-list.tsx";
import { peopleQuery, seenQuery } from "./record-reads.ts";
import { SEEN_WEEKS, seenWords } from "./seen-words.ts";
import { todayHere, weeksBefore } from "./today-here.ts";

/** What a part of the page about one person is given. */
export type PersonAt = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly id: string;
  readonly person: PersonState;
};

/** One person: how to reach her, her passes, what she agreed to, health, cover, and all that is kept. */
export function PersonPage() {
  const { practice: practiceId, person: id } = useParams({ from: "/practice/$practice/people/$person" });
  const { practice, classes } = usePractice(practiceId);
  const people = useQuery(peopleQuery(practiceId));
  const person = people.data?.find((it) => it.id === id)?.person;
  if (people.isPending) return <output className="page-head">Reading …</output>;
  if (person === undefined)
    return <Nobody practiceId={practiceId} error={people.error} again={people.refetch} />;
  const at: PersonAt = { practiceId, practice, id, person };
  return (
    <>
      <PersonHead {...at} />
      {people.isError ? <NotRead error={people.error} again={people.refetch} /> : null}
      <PassesPart at={at} classes={classes} people={people.data ?? []} />
      <ContactPart key={id} {...at} />
      <ConsentsPart {...at} />
      <HealthPart {...at} />
      <CoverPart {...at} />
      <ErasePart {...at} />
    </>
  );
}

function PersonHead({ practiceId, practice, id, person }: PersonAt) {
  const today = todayHere(practice.zone);
  const seen = useQuery(seenQuery(practiceId, weeksBefore(today, SEEN_WEEKS), today));
  const last = seen.data?.find((it) => it.person === id);
  return (
    <div className="page-head">
      <p className="small">
        <Link to="/practice/$practice/people" params={{ practice: practiceId }}>
          Everybody
        </Link>
      </p>
      <PageTitle tab={person.contact.name}>{person.contact.name}</PageTitle>
      {person.healthForm?.speak === true ? (
        <p>
          <SpeakToMe />
        </p>
      ) : null}
      {seen.data === undefined ? null : <p>{seenWords(last, today, practice.locale)}</p>}
      <p>{lateWords(person.late, practice.locale)}</p>
    </div>
  );
}

type NobodyProps = {
  readonly practiceId: string;
  readonly error: Error | null;
  readonly again: () => unknown;
};

function Nobody({ practiceId, error, again }: NobodyProps) {
  return (
    <div className="page-head">
      <PageTitle tab="People">{error === null ? "Nobody here" : "This person cannot be read"}</PageTitle>
      {error === null ? (
        <p>There is no such person in the record, or she was erased.</p>
      ) : (
        <NotRead error={error} again={again} />
      )}
      <p>
        <Link to="/practice/$practice/people" params={{ practice: practiceId }}>
          Everybody
        </Link>
      </p>
    </div>
  );
}
