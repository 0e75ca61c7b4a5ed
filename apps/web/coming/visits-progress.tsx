import type { VisitsState } from "./use-visits.ts";
import type { VisitsStage } from "./visits-job.ts";

type Props = {
  /** what is worked out */
  readonly source: string;
  /** whether an answer to an earlier question stands below */
  readonly before: boolean;
  readonly now: VisitsState["now"];
  readonly stop: () => void;
  readonly again: () => void;
};

/** How far the work is, a way to stop it, and what became of it. */
export function VisitsProgress({ source, before, now, stop, again }: Props) {
  return (
    <div className="visits-progress">
      <span className="small soft">{source}</span>
      <output>{now.kind === "rest" ? "" : `${words(now)}${before ? BEFORE : ""}`}</output>
      {now.kind === "busy" ? (
        <>
          <progress aria-label="How far it is" max={3} value={STEP[now.stage.doing]} />
          <button type="button" className="button" onClick={stop}>
            Stop
          </button>
        </>
      ) : null}
      {now.kind === "stopped" || now.kind === "failed" ? (
        <button type="button" className="button" onClick={again}>
          Work it out again
        </button>
      ) : null}
    </div>
  );
}

const BEFORE = " The answer below is to the question before.";

const STEP: Readonly<Record<VisitsStage["doing"], number>> = { reading: 0, sorting: 1, "working out": 2 };

/** ten thousand people with eight visits each took a busy machine thirteen seconds */
const MANY = 20_000;

function words(now: Exclude<VisitsState["now"], { kind: "rest" }>): string {
  switch (now.kind) {
    case "busy":
      return stageWords(now.stage);
    case "stopped":
      return "Stopped before it was worked out.";
    case "failed":
      return `It could not be worked out on this device. ${now.says}`;
  }
}

function stageWords(stage: VisitsStage): string {
  switch (stage.doing) {
    case "reading":
      return "Reading the file …";
    case "sorting":
      return `Sorting ${stage.rows} rows …`;
    case "working out":
      return `Working out ${stage.visits} visits${stage.visits > MANY ? ", which takes some seconds" : ""} …`;
  }
}
