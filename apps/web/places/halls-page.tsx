import { useQueryClient } from "@tanstack/react-query";
import { Link, useNavigate, useParams } from "@tanstack/react-router";
import { type HallDocument, hallDocumentSchema } from "#core/hall";
import { good, readDocument, type Result, word } from "#core/words";
import { beginDocument } from "../drafts/keepers.ts";
import { usePractice } from "../drafts/use-practice.ts";
import { ImportFile } from "../parts/files.tsx";
import { PageTitle } from "../parts/page-title.tsx";
import { ratePerWhat } from "../words/rate-per-what.ts";
import { nameOr } from "./hall-name.ts";
import { newHall } from "./new-hall.ts";
import { ThisPractice } from "./this-practice.tsx";

/** The halls of a practice. */
export function HallsPage() {
  const { practice: id } = useParams({ from: "/practice/$practice/halls" });
  const { practice, halls } = usePractice(id);
  const queries = useQueryClient();
  const go = useNavigate();
  const open = (document: HallDocument) => {
    const hall = beginDocument(queries, id, "halls", document);
    void go({ to: "/practice/$practice/halls/$id", params: { practice: id, id: hall } });
  };
  return (
    <>
      <div className="page-head">
        <PageTitle tab={`Halls of ${practice.name}`}>Halls</PageTitle>
        {halls.length === 0 ? (
          <p className="answer">
            No hall is drawn yet. Measure one with a tape, wall by wall, and draw its floor: you will see at
            once how many mats it takes.
          </p>
        ) : null}
      </div>
      <ul className="list-plain ledger">
        {halls.map(({ id: hall, document }) => (
          <li key={hall} className="row">
            <Link to="/practice/$practice/halls/$id" params={{ practice: id, id: hall }}>
              {nameOr(document.name, "A hall without a name")}
            </Link>
            <span className="small soft">
              {[
                document.address,
                ratePerWhat(document.hire, document.currency ?? practice.currency, practice.locale),
              ]
                .filter((it) => it !== undefined && it !== "")
                .join(" · ")}
            </span>
          </li>
        ))}
      </ul>
      {halls.length < 2 ? null : (
        <p className="row">
          <Link to="/practice/$practice/compare" params={{ practice: id }}>
            Compare halls for a class
          </Link>
          <span className="small soft">Which of them leaves most, a session, a year and an hour.</span>
        </p>
      )}
      <section className="part" aria-labelledby="another">
        <h2 id="another">{halls.length === 0 ? "The first hall" : "Another hall"}</h2>
        <p className="row">
          <button
            type="button"
            className="button button-main"
            onClick={() => open(newHall(practice.currency, { name: "New hall" }))}
          >
            Draw a hall
          </button>
          <span className="small soft">
            Its floor, its way in, and what its {word("hire", practice.locale)} costs.
          </span>
        </p>
        <p className="row">
          <Link to="/practice/$practice/measure" params={{ practice: id }}>
            Measure a hall
          </Link>
          <span className="small soft">
            In the hall, with a tape or over a picture of its plan; no signal needed.
          </span>
        </p>
        <ImportFile label="Or bring in a hall from a file" read={readHallFile} put={open} />
      </section>
      <ThisPractice practice={id} />
    </>
  );
}

function readHallFile(content: unknown): Result<HallDocument> {
  const read = readDocument(hallDocumentSchema, content);
  return read.ok ? good(read.value.value) : read;
}
