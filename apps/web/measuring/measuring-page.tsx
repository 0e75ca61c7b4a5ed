import "../floor/floor.css";
import "./measuring.css";
import { Link, useParams } from "@tanstack/react-router";
import { usePractice } from "../drafts/use-practice.ts";
import { PageTitle } from "../parts/page-title.tsx";
import { nameOr } from "../places/hall-name.ts";
import { KeptLine } from "./kept-line.tsx";
import { TapeSheet } from "./tape-sheet.tsx";
import { TraceSheet } from "./trace-sheet.tsx";
import { useMeasuring } from "./use-measuring.ts";

/** One hall that is being measured. */
export function MeasuringPage() {
  const { practice, id } = useParams({ from: "/practice/$practice/measure/$id" });
  return <MeasuringOf key={id} practice={practice} id={id} />;
}

function MeasuringOf({ practice, id }: { readonly practice: string; readonly id: string }) {
  const opened = useMeasuring(practice, id);
  const { halls } = usePractice(practice);
  if (opened === null) return <NotOnThisDevice practice={practice} />;
  const { measuring, onDevice } = opened;
  const hall = halls.find((it) => it.id === measuring.hall)?.document.name;
  const name = nameOr(hall ?? measuring.name, "A new hall");
  return (
    <>
      <KeptLine what={name} onDevice={onDevice} />
      <div className="page-head tape-head">
        <PageTitle tab={`Measuring ${name}`}>
          {measuring.way === "tape" ? "Wall by wall with a tape" : "Trace over a picture"}
        </PageTitle>
      </div>
      {measuring.way === "tape" ? (
        <TapeSheet practice={practice} opened={opened} />
      ) : (
        <TraceSheet practice={practice} id={id} opened={opened} />
      )}
      <p className="tape-others">
        <Link to="/practice/$practice/measure" params={{ practice }}>
          All that is measured on this device
        </Link>
      </p>
    </>
  );
}

function NotOnThisDevice({ practice }: { readonly practice: string }) {
  return (
    <div className="page-head">
      <PageTitle tab="Not on this device">There are no such figures on this device</PageTitle>
      <p>Figures stay on the device on which they were typed until they become a hall.</p>
      <p>
        <Link to="/practice/$practice/measure" params={{ practice }}>
          Measure a hall
        </Link>
      </p>
    </div>
  );
}
