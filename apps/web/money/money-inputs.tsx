import type { PlanDocument } from "#app/ports";
import type { MoneyPlan } from "#core/cash";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { PracticeDocument } from "#core/words";
import type { Listed } from "../drafts/use-practice.ts";
import { ExportButton } from "../parts/files.tsx";
import { BankFields } from "./bank-fields.tsx";
import type { MoneyWords } from "./money-words-of.ts";
import { MoveList } from "./move-list.tsx";
import { OwnList } from "./own-list.tsx";
import { PathFields } from "./path-fields.tsx";
import type { ChangePlan } from "./plan-edit.ts";
import { TaxFields } from "./tax-fields.tsx";
import type { UsedMoney } from "./use-money.ts";
import { WorkList } from "./work-list.tsx";

type Props = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly classes: readonly Listed<ClassDocument>[];
  readonly halls: readonly Listed<HallDocument>[];
  readonly plan: MoneyPlan;
  readonly money: UsedMoney;
  readonly change: ChangePlan;
  readonly week: PlanDocument;
  readonly words: MoneyWords;
};

/** All that the money rests on. */
export function MoneyInputs({
  practiceId,
  practice,
  classes,
  halls,
  plan,
  money,
  change,
  week,
  words,
}: Props) {
  const { document, own } = money;
  const { from } = document;
  return (
    <>
      <section className="part money-part" aria-labelledby="comes">
        <h2 id="comes" className="part-title">
          What comes and what goes
        </h2>
        <div className="holds-fields stack money-fields">
          <BankFields plan={plan} from={from} change={change} />
          <OwnList
            practiceId={practiceId}
            practice={practice}
            classes={classes}
            halls={halls}
            rows={own}
            plan={plan}
            change={change}
            from={from}
            words={words}
          />
          <WorkList plan={plan} change={change} from={from} week={week} words={words} />
          <MoveList plan={plan} change={change} from={from} currency={practice.currency} words={words} />
        </div>
      </section>
      <section className="part money-part" aria-labelledby="tax-and-need">
        <h2 id="tax-and-need" className="part-title">
          Tax and what you need
        </h2>
        <div className="holds-fields stack money-fields">
          <TaxFields plan={plan} tax={document.tax ?? null} change={change} />
          <PathFields plan={plan} change={change} />
        </div>
      </section>
      <section className="part no-print" aria-label="Keep">
        <p className="row">
          <ExportButton
            label="Save to a file"
            name="year.json"
            document={{ format: "hallful/year@1", money: { ...document, format: "hallful/money@1" } }}
          />
          <button type="button" className="button" onClick={() => print()}>
            Print this page
          </button>
        </p>
        <p className="small soft">The file is what the command line answers: hallful year year.json.</p>
      </section>
    </>
  );
}
