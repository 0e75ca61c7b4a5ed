import "./people.css";
import { useQuery } from "@tanstack/react-query";
import { Link, useParams } from "@tanstack/react-router";
import { usePractice } from "../drafts/use-practice.ts";
import { PageTitle } from "../parts/page-title.tsx";
import { NewPerson } from "./new-person.tsx";
import { NotRead } from "./not-read.tsx";
import { PeopleList } from "./people-list.tsx";
import { peopleQuery } from "./record-reads.ts";
import { SoonList } from "./soon-list.tsx";

/** Everybody in the record, who can be added, and whose pass runs out soon. */
export function PeoplePage() {
  const { practice: id } = useParams({ from: "/practice/$practice/people" });
  const { practice, classes } = usePractice(id);
  const people = useQuery(peopleQuery(id));
  const count = people.data?.length ?? 0;
  return (
    <>
      <div className="page-head">
        <PageTitle tab={`People of ${practice.name}`}>People</PageTitle>
        {people.data !== undefined && count === 0 ? (
          <p className="answer">
            Nobody is written down yet. Whoever is written down here, or comes to the door as a walk-in,
            stands in this list.
          </p>
        ) : null}
        <p className="row">
          <Link to="/practice/$practice/people/coming" params={{ practice: id }}>
            Who is still coming
          </Link>
          <span className="small soft">From a list of visits, which stays on this device.</span>
        </p>
        {count === 0 ? null : (
          <p className="contents">
            <a href="#soon">Passes that run out soon</a>
          </p>
        )}
      </div>
      {people.isError ? <NotRead error={people.error} again={people.refetch} /> : null}
      {people.isPending ? <output>Reading who is there …</output> : null}
      {people.isPending ? null : (
        <NewPerson practiceId={id} locale={practice.locale} people={people.data ?? []} />
      )}
      {count === 0 ? null : <PeopleList practiceId={id} practice={practice} people={people.data ?? []} />}
      <SoonList practiceId={id} practice={practice} classes={classes} people={people.data ?? []} />
    </>
  );
}
