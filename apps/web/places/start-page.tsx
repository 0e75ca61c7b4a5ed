import { useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { practicesQuery, ProblemsError } from "../api/practices.ts";
import { Foot } from "../parts/foot.tsx";
import { Head } from "../parts/head.tsx";
import { PageTitle } from "../parts/page-title.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { DemoChoice } from "./demo-choice.tsx";
import { NewPractice } from "./new-practice.tsx";

/** The first page: the practices there are, the demo, and a fresh start. */
export function StartPage() {
  return (
    <div className="sheet">
      <Head />
      <main id="main">
        <div className="page-head">
          <PageTitle tab="">From the floor to a class that pays</PageTitle>
          <p className="answer">
            Draw the hall’s floor and see how many mats fit; enter what the hall charges and what you would
            ask; read what an evening costs, how many people pay for the room, and what a year leaves.
          </p>
        </div>
        <Practices />
        <section className="part part-beside" aria-labelledby="begin">
          <NewPractice />
          <DemoChoice />
        </section>
      </main>
      <Foot />
    </div>
  );
}

function Practices() {
  const asked = useQuery(practicesQuery);
  const problems = asked.error instanceof ProblemsError ? asked.error.problems : [];
  const practices = asked.data?.value.practices ?? [];
  return (
    <section className="part" aria-labelledby="practices">
      <h2 id="practices">Your practices</h2>
      {asked.isPending ? <output>Looking for practices …</output> : null}
      <ProblemList problems={asked.data?.silent ? [asked.data.silent] : problems} />
      {asked.isSuccess && practices.length === 0 ? (
        <p>There are none yet. Begin one below, or look round the demo first.</p>
      ) : null}
      {practices.length > 0 ? (
        <ul className="list-plain ledger">
          {practices.map(({ id, document }) => (
            <li key={id} className="row">
              <Link to="/practice/$practice" params={{ practice: id }}>
                {document.name}
              </Link>
              <span className="small soft">
                {document.currency}, {document.zone.replaceAll("_", " ")}
              </span>
            </li>
          ))}
        </ul>
      ) : null}
    </section>
  );
}
