import { useQueryClient } from "@tanstack/react-query";
import { Link, useNavigate, useParams } from "@tanstack/react-router";
import { type ClassDocument, classDocumentSchema, emptyClass } from "#core/class";
import type { HallDocument } from "#core/hall";
import { good, readDocument, type Result } from "#core/words";
import { classInShort } from "../class-sheet/class-in-short.ts";
import { beginDocument } from "../drafts/keepers.ts";
import { type PracticeHere, usePractice } from "../drafts/use-practice.ts";
import { ImportFile } from "../parts/files.tsx";
import { PageTitle } from "../parts/page-title.tsx";
import { timeWords } from "#app/views";
import { today, weekdayName } from "../words/dates.ts";
import { nameOr } from "./hall-name.ts";
import { ThisPractice } from "./this-practice.tsx";

/** The classes of a practice. */
export function ClassesPage() {
  const { practice: id } = useParams({ from: "/practice/$practice/classes" });
  const here = usePractice(id);
  const { practice, classes } = here;
  const queries = useQueryClient();
  const go = useNavigate();
  const open = (document: ClassDocument) => {
    const opened = beginDocument(queries, id, "classes", document);
    void go({ to: "/practice/$practice/classes/$id", params: { practice: id, id: opened } });
  };
  const [onlyHall] = here.halls.length === 1 ? here.halls : [];
  return (
    <>
      <div className="page-head">
        <PageTitle tab={`Classes of ${practice.name}`}>Classes</PageTitle>
        {classes.length === 0 ? <NoClass hasHalls={here.halls.length > 0} practice={id} /> : null}
      </div>
      <ul className="list-plain ledger">
        {classes.map(({ id: one, document }) => (
          <li key={one} className="listed">
            <p className="row">
              <Link to="/practice/$practice/classes/$id" params={{ practice: id, id: one }}>
                {nameOr(document.name, "A class without a name")}
              </Link>
              <span className="small soft">{whenAndWhere(document, here)}</span>
            </p>
            <p className="small">{classInShort(document, hallOf(document, here), practice)}</p>
          </li>
        ))}
      </ul>
      <section className="part" aria-labelledby="another">
        <h2 id="another">{classes.length === 0 ? "The first class" : "Another class"}</h2>
        <p className="row">
          <button
            type="button"
            className="button button-main"
            onClick={() =>
              open(
                emptyClass({
                  practice,
                  today: today(),
                  ...(onlyHall === undefined ? {} : { hall: onlyHall.id }),
                }),
              )
            }
          >
            Begin a class
          </button>
          <span className="small soft">It begins with guesses, marked as guesses, for you to put right.</span>
        </p>
        <ImportFile
          label="Or bring in a class from a file"
          read={(content) => readClassFile(content, here)}
          put={open}
        />
      </section>
      <ThisPractice practice={id} />
    </>
  );
}

function NoClass({ hasHalls, practice }: { readonly hasHalls: boolean; readonly practice: string }) {
  return (
    <p className="answer">
      No class is written down yet.{" "}
      {hasHalls ? (
        "Begin one, and read at once what an evening of it costs and how many people pay for the room."
      ) : (
        <>
          You may{" "}
          <Link to="/practice/$practice/halls" params={{ practice }}>
            draw its hall
          </Link>{" "}
          first, or begin with the class and choose the hall later.
        </>
      )}
    </p>
  );
}

function hallOf({ hall }: ClassDocument, { halls }: PracticeHere): HallDocument | null {
  return halls.find((it) => it.id === hall)?.document ?? null;
}

function whenAndWhere(document: ClassDocument, here: PracticeHere): string {
  const { weekday, start } = document;
  const where = hallOf(document, here)?.name ?? "no hall yet";
  const day = weekday >= 1 && weekday <= 7 ? `${weekdayName(weekday)}s ` : "";
  return `${day}${timeWords(start, here.practice.locale)} · ${where}`;
}

/** A class from a file keeps its hall only where this practice has that hall. */
function readClassFile(content: unknown, { halls }: PracticeHere): Result<ClassDocument> {
  const read = readDocument(classDocumentSchema, content);
  if (!read.ok) return read;
  const document = read.value.value;
  const known = halls.some((it) => it.id === document.hall);
  return good({ ...document, hall: known ? document.hall : null });
}
