import type { PriceSheet } from "#app/views";
import type { Planning } from "#core/class";
import type { PracticeDocument } from "#core/words";
import { useMemo } from "react";
import type { ClassPart } from "../class-sheet/class-part.ts";
import { PartWorking } from "../class-sheet/part-working.tsx";
import { SheetSection } from "../class-sheet/sheet-section.tsx";
import type { Draft } from "../drafts/draft.ts";
import { useFormField } from "../fields/form.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { Rows } from "../fields/rows.tsx";
import { WordsField } from "../fields/words-field.tsx";
import { wholeMoney } from "../words/money-words.ts";
import { AskedAnswer } from "./asked-answer.tsx";
import { CurvePlot } from "./curve-plot.tsx";
import { surveyProblem } from "./survey-problem.ts";
import type { WorkerAnswer } from "./use-worker-answer.ts";

type Props = ClassPart & {
  readonly practice: PracticeDocument;
  readonly asked: WorkerAnswer<PriceSheet>;
  readonly typed: Draft<unknown>["typed"];
};

/** Which single price leaves most, by what she believes and what is asked nearby. */
export function CurveSection({ document, change, practice, asked, typed }: Props) {
  const part = asked.answer?.curve;
  const { currency, locale } = practice;
  const ready = part?.kind === "ready" && part.curves.length > 0 ? part : null;
  const plot = useMemo(
    () =>
      ready === null ? null : (
        <CurvePlot part={ready} money={(major) => wholeMoney(major, currency, locale)} />
      ),
    [ready, currency, locale],
  );
  return (
    <SheetSection
      id="curve"
      title="Which price"
      answer={<AskedAnswer asked={asked} part={part} typed={typed} fields={["planning.beliefs"]} />}
      picture={plot}
      working={part === undefined ? null : <PartWorking parts={[part]} />}
      inputs={
        <>
          <Beliefs document={document} change={change} />
          <Survey
            document={document}
            change={change}
            problem={part?.kind === "unsound" ? surveyProblem(part.problems) : null}
          />
        </>
      }
    />
  );
}

function Beliefs({ document, change }: ClassPart) {
  const { planning } = document;
  const beliefs = planning?.beliefs ?? [];
  const list = useFormField("planning.beliefs");
  const put = (rows: NonNullable<Planning["beliefs"]>) => {
    const { beliefs: _, ...others } = planning ?? {};
    change({ planning: rows.length === 0 ? others : { ...others, beliefs: rows } });
  };
  return (
    <>
      <Rows
        title="What you believe"
        path="planning.beliefs"
        compact
        rows={beliefs}
        fresh={() => freshBelief(document, beliefs.length)}
        add="Add a price and how many would come"
        named={(index) => `the belief of ${beliefs[index]?.price ?? ""}`}
        put={(rows) => put([...rows])}
        renderRow={(belief, putBelief, path) => (
          <>
            <MoneyField
              path={`${path}.price`}
              label="At a single of"
              per="a class"
              value={belief.price}
              put={(price) => putBelief({ ...belief, price })}
            />
            <NumberField
              path={`${path}.heads`}
              label="would like to come"
              unit="people"
              range={{ least: 0.1, most: 1000 }}
              value={belief.heads}
              put={(heads) => putBelief({ ...belief, heads })}
            />
          </>
        )}
      />
      {list.problem === null ? null : (
        <p className="field-problem" role="alert">
          {list.problem.says} {list.problem.next}
        </p>
      )}
    </>
  );
}

/** The first belief is the price and the people of now; the next is there to be overwritten. */
function freshBelief({ prices, heads }: ClassPart["document"], count: number) {
  return { price: prices.single ?? "0.00", heads: Math.max(1, Math.round(heads) - count * 2) };
}

function Survey({ document, change, problem }: ClassPart & { readonly problem: string | null }) {
  const { planning } = document;
  return (
    <WordsField
      label="Prices nearby"
      help="A line for each, or pasted from a table: where; price; how many come, if you counted"
      long
      value={planning?.survey ?? ""}
      problem={problem}
      onChange={(survey) => {
        const { survey: _, ...others } = planning ?? {};
        change({ planning: survey === "" ? others : { ...others, survey } });
      }}
    />
  );
}
