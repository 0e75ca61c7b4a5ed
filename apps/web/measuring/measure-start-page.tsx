import "./measuring.css";
import { Link, useNavigate, useParams } from "@tanstack/react-router";
import { useState } from "react";
import { newId } from "../api/new-id.ts";
import { usePractice } from "../drafts/use-practice.ts";
import { PageTitle } from "../parts/page-title.tsx";
import { nameOr } from "../places/hall-name.ts";
import { dayWords, today } from "../words/dates.ts";
import { dropPicture } from "./kept-picture.ts";
import { dropMeasuring, type KeptMeasuring, keepMeasuring, keptMeasurings } from "./kept-measurings.ts";
import { type Measuring, newMeasuring } from "./measuring.ts";
import { measuringWords } from "./measuring-words.ts";

/** Begin to measure a hall, or go on with one that is half measured. */
export function MeasureStartPage() {
  const { practice: id = "", id: hall } = useParams({ strict: false });
  const { practice, halls } = usePractice(id);
  const go = useNavigate();
  const [kept, setKept] = useState(() => keptMeasurings(id));
  const nameOfHall = (which: string | null): string | null => {
    const found = halls.find((it) => it.id === which);
    return found === undefined ? null : nameOr(found.document.name, "a hall without a name");
  };
  const again = hall === undefined ? null : nameOfHall(hall);
  const begin = (way: Measuring["way"]) => {
    const fresh = newId();
    const start = { way, hall: again === null ? null : (hall ?? null), name: "", units: practice.units };
    keepMeasuring(id, fresh, newMeasuring({ ...start, begun: today() }));
    void go({ to: "/practice/$practice/measure/$id", params: { practice: id, id: fresh } });
  };
  const letGo = (which: string) => {
    dropMeasuring(id, which);
    void dropPicture(which);
    setKept(keptMeasurings(id));
  };
  return (
    <>
      <div className="page-head">
        <PageTitle tab="Measure a hall">
          {again === null ? "Measure a hall" : `Measure ${again} again`}
        </PageTitle>
        <p>
          It works with no signal: every figure is kept on this device as you type it, and the hall goes to
          your records when the signal is back.
        </p>
      </div>
      <section className="part tape-ways" aria-label="How to measure">
        <div className="stack-close">
          <button type="button" className="button button-main tape-wide" onClick={() => begin("tape")}>
            Wall by wall with a tape
          </button>
          <p className="small soft">
            Once round the hall, then a diagonal. It says how far off the tape was.
          </p>
        </div>
        <div className="stack-close">
          <button type="button" className="button tape-wide" onClick={() => begin("picture")}>
            Trace over a picture of its plan
          </button>
          <p className="small soft">
            Where the plan hangs on a wall. Less exact than a tape; the picture stays on this device.
          </p>
        </div>
      </section>
      {kept.length === 0 ? null : (
        <section className="part" aria-labelledby="kept">
          <h2 id="kept">Measured on this device</h2>
          <ul className="list-plain ledger">
            {kept.map((it) => (
              <KeptRow
                key={it.id}
                practice={id}
                kept={it}
                hall={nameOfHall(it.measuring.hall)}
                begun={dayWords(it.measuring.begun, practice.locale)}
                letGo={() => letGo(it.id)}
              />
            ))}
          </ul>
        </section>
      )}
      <p>
        <Link to="/practice/$practice/halls" params={{ practice: id }}>
          All halls
        </Link>
      </p>
    </>
  );
}

type RowProps = {
  readonly practice: string;
  readonly kept: KeptMeasuring;
  readonly hall: string | null;
  readonly begun: string;
  readonly letGo: () => void;
};

function KeptRow({ practice, kept: { id, measuring }, hall, begun, letGo }: RowProps) {
  const [asked, setAsked] = useState(false);
  const name = hall ?? nameOr(measuring.name, "A new hall");
  return (
    <li className="row">
      <Link to="/practice/$practice/measure/$id" params={{ practice, id }}>
        {name}
      </Link>
      <span className="small soft">
        {measuringWords(measuring)}, begun {begun}
      </span>
      {asked ? (
        <span className="row">
          <button type="button" className="button" onClick={() => setAsked(false)}>
            Keep the figures
          </button>
          <button type="button" className="button" onClick={letGo}>
            Let go of the figures of {name}
          </button>
        </span>
      ) : (
        <button type="button" className="link-button tape-row-button" onClick={() => setAsked(true)}>
          Let go …<span className="unseen"> of {name}</span>
        </button>
      )}
    </li>
  );
}
