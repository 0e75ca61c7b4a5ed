import type { PriceSheet } from "#app/views";
import type { Planning } from "#core/class";
import { PartWorking } from "../class-sheet/part-working.tsx";
import type { ClassPart } from "../class-sheet/class-part.ts";
import { SheetSection } from "../class-sheet/sheet-section.tsx";
import type { Draft } from "../drafts/draft.ts";
import { OptionalMoneyField } from "../fields/money-field.tsx";
import { PercentField } from "../fields/percent-field.tsx";
import { AskedAnswer } from "./asked-answer.tsx";
import type { WorkerAnswer } from "./use-worker-answer.ts";

type Props = ClassPart & {
  readonly asked: WorkerAnswer<PriceSheet>;
  readonly typed: Draft<unknown>["typed"];
};

/** What a higher price may lose, and the price for a pay that she wants. */
export function HigherSection({ document, change, asked, typed }: Props) {
  const part = asked.answer?.higher;
  return (
    <SheetSection
      id="higher"
      title="A higher price"
      answer={
        <AskedAnswer
          asked={asked}
          part={part}
          typed={typed}
          fields={["planning.rise", "planning.target", "prices", "mix", "heads"]}
        />
      }
      working={part === undefined ? null : <PartWorking parts={[part]} />}
      inputs={<HigherFields document={document} change={change} />}
    />
  );
}

// a fifth stands there to be overwritten, as a guess
const USUAL_TAX = 0.2;

function HigherFields({ document, change }: ClassPart) {
  const { rise: _, ...withoutRise } = document.planning ?? {};
  const { target, ...withoutTarget } = document.planning ?? {};
  const put = (planning: Planning) => change({ planning });
  const wantPay = (perHour: string | undefined) => {
    const guesses = document.guesses.filter((it) => !it.startsWith("planning.target"));
    if (perHour === undefined) return change({ planning: withoutTarget, guesses });
    if (target !== undefined) return put({ ...withoutTarget, target: { ...target, perHour } });
    return change({
      planning: { ...withoutTarget, target: { perHour, taxShare: USUAL_TAX } },
      guesses: [...guesses, "planning.target.taxShare"],
    });
  };
  return (
    <div>
      <OptionalMoneyField
        path="planning.rise"
        label="Put the single up by"
        help="Empty while you do not think of it"
        per="a class"
        value={document.planning?.rise}
        put={(rise) => put(rise === undefined ? withoutRise : { ...withoutRise, rise })}
      />
      <OptionalMoneyField
        path="planning.target.perHour"
        label="What you want for an hour"
        help="From door to door and after tax; preparation is not counted in it"
        per="an hour"
        value={target?.perHour}
        put={wantPay}
      />
      {target === undefined ? null : (
        <PercentField
          path="planning.target.taxShare"
          label="Of 100 that you earn, tax takes"
          help="What you put aside for it; the tax authority or an adviser can tell you"
          least={0}
          most={95}
          guessable
          value={target.taxShare}
          put={(taxShare) => put({ ...withoutTarget, target: { ...target, taxShare } })}
        />
      )}
    </div>
  );
}
