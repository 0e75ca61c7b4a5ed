import { useQuery } from "@tanstack/react-query";
import { Link, Outlet, useParams } from "@tanstack/react-router";
import { practiceQuery, ProblemsError } from "../api/practices.ts";
import { useDelivery } from "../drafts/use-delivery.ts";
import { useRecordDelivery } from "../record/use-record-delivery.ts";
import { Foot } from "../parts/foot.tsx";
import { Head } from "../parts/head.tsx";
import { PageTitle } from "../parts/page-title.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { PlaceLinks } from "./place-links.tsx";

/** A practice: its places at the top and the chosen place below. */
export function PracticeShell() {
  const { practice } = useParams({ from: "/practice/$practice" });
  const asked = useQuery(practiceQuery(practice));
  useDelivery(practice);
  useRecordDelivery(practice);
  return (
    <div className="sheet">
      <Head>
        <PlaceLinks practice={practice} />
        <p className="head-end">{asked.data?.value.practice.document.name}</p>
      </Head>
      {asked.data?.silent ? <ProblemList problems={[asked.data.silent]} /> : null}
      <main id="main">
        {asked.data ? <Outlet /> : asked.isError ? <Unread error={asked.error} /> : <Reading />}
      </main>
      <Foot />
    </div>
  );
}

function Reading() {
  return (
    <p className="page-head">
      <output>Fetching this practice …</output>
    </p>
  );
}

function Unread({ error }: { readonly error: Error }) {
  return (
    <div className="stack">
      <div className="page-head">
        <PageTitle tab="Practice not read">This practice cannot be read</PageTitle>
      </div>
      <ProblemList problems={error instanceof ProblemsError ? error.problems : []} />
      <p className="row">
        <button type="button" className="button" onClick={() => location.reload()}>
          Try again
        </button>
        <Link to="/">Go to your practices</Link>
      </p>
    </div>
  );
}
