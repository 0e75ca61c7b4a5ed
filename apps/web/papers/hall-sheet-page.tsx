import "./papers.css";
import type { SheetClass } from "#app/views";
import type { HallDocument } from "#core/hall";
import { type PaperSize, usualPaper } from "#core/papers";
import type { PracticeDocument } from "#core/words";
import { Link, useParams } from "@tanstack/react-router";
import { useState } from "react";
import { type Opened, useDraft } from "../drafts/use-draft.ts";
import { usePractice } from "../drafts/use-practice.ts";
import { PageTitle } from "../parts/page-title.tsx";
import { ProblemList } from "../parts/problem-list.tsx";
import { nameOr } from "../places/hall-name.ts";
import { NothingHere } from "../places/nothing-here.tsx";
import { PaperPages } from "./paper-pages.tsx";
import { SheetButtons } from "./sheet-buttons.tsx";
import { SheetLead, SheetWords } from "./sheet-words.tsx";
import { type HallSheetState, useHallSheet } from "./use-hall-sheet.ts";

/** The hall sheet of a hall: to read, to print and to take away. */
export function HallSheetPage() {
  const { practice: id, id: hall } = useParams({ from: "/practice/$practice/halls/$id/hall-sheet" });
  const here = usePractice(id);
  const opened = useDraft(id, "halls", hall);
  if (opened === null) return <NothingHere what="hall" practice={id} />;
  const back = (
    <Link to="/practice/$practice/halls/$id" params={{ practice: id, id: hall }}>
      Back to the hall
    </Link>
  );
  return <Sheet practiceId={id} practice={here.practice} hallId={hall} opened={opened} back={back} />;
}

/** The hall sheet of a class: the same hall with the class’s own mats and caps. */
export function ClassHallSheetPage() {
  const { practice: id, id: one } = useParams({ from: "/practice/$practice/classes/$id/hall-sheet" });
  const here = usePractice(id);
  const opened = useDraft(id, "classes", one);
  const document = opened?.draft.document ?? null;
  const hall = useDraft(id, "halls", document?.hall ?? null);
  if (document === null) return <NothingHere what="class" practice={id} />;
  const back = (
    <Link to="/practice/$practice/classes/$id" params={{ practice: id, id: one }}>
      Back to the class
    </Link>
  );
  if (hall === null || document.hall === null)
    return (
      <div className="page-head">
        <PageTitle tab="Hall sheet">No hall is chosen yet</PageTitle>
        <p>Choose the hall of this class first. {back}</p>
      </div>
    );
  return (
    <Sheet
      practiceId={id}
      practice={here.practice}
      hallId={document.hall}
      opened={hall}
      forClass={document}
      classId={one}
      back={back}
    />
  );
}

type SheetProps = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly hallId: string;
  readonly opened: Opened<HallDocument>;
  readonly forClass?: SheetClass;
  readonly classId?: string;
  readonly back: React.ReactNode;
};

function Sheet({ practiceId, practice, hallId, opened, forClass = null, classId, back }: SheetProps) {
  const [size, setSize] = useState<PaperSize>(usualPaper(practice.locale));
  const { document, from, unsent } = opened.draft;
  const madeFrom = unsent ? "measures that are not saved yet" : `version ${from} of its measures`;
  const state = useHallSheet({ practice, hall: document, forClass, madeFrom, size });
  const name = nameOr(document.name, "A hall without a name");
  const paper = state.kind === "ready" ? state.view.paper : null;
  return (
    <div className="hall-sheet">
      <div className="no-print stack">
        <div className="page-head">
          <PageTitle tab={`Hall sheet: ${name}`}>Hall sheet: {name}</PageTitle>
          <p className="soft">{[forClass?.name, document.address].filter(Boolean).join(" · ")}</p>
        </div>
        <Answer state={state} />
        {state.kind === "problems" || state.kind === "failed" ? null : (
          <SheetButtons
            paper={paper}
            searched={state.kind === "ready" && state.view.sheet.plan.arrangement === "most"}
            size={size}
            choose={setSize}
            // the server knows nothing of a hall that was never sent
            address={from === 0 ? null : pdfAddress(practiceId, hallId, size, classId)}
            saved={!unsent}
          />
        )}
        {state.kind === "ready" ? <SheetWords sheet={state.view.sheet} paper={state.view.paper} /> : null}
        {paper === null ? null : <h2>The page as it prints</h2>}
      </div>
      {paper === null ? null : <PaperPages paper={paper} />}
      <p className="no-print">{back}</p>
    </div>
  );
}

function Answer({ state }: { readonly state: HallSheetState }) {
  switch (state.kind) {
    case "working":
      return (
        <p className="answer">
          <output>Laying the mats and the page …</output>
        </p>
      );
    case "failed":
      return <p className="answer">The sheet could not be made: {state.says}</p>;
    case "problems":
      return <ProblemList problems={state.problems} announce={false} />;
    case "ready":
      return <SheetLead sheet={state.view.sheet} />;
  }
}

function pdfAddress(practice: string, hall: string, size: PaperSize, forClass: string | undefined): string {
  const asked = new URLSearchParams({ paper: size, ...(forClass === undefined ? {} : { class: forClass }) });
  return `/api/practices/${practice}/halls/${hall}/hall-sheet.pdf?${asked.toString()}`;
}
