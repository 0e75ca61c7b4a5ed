import type { By, CompareSheet } from "#app/views";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { PracticeDocument, Problem } from "#core/words";
import { useDeferredValue, useMemo, useState } from "react";
import { useClassForm } from "../class-sheet/class-form.ts";
import type { Opened } from "../drafts/use-draft.ts";
import type { Listed } from "../drafts/use-practice.ts";
import { ChoiceField } from "../fields/choice-field.tsx";
import { FormOf } from "../fields/form.tsx";
import { currencyOf } from "../hall/hall-form.ts";
import { NotAnswered } from "../parts/not-answered.tsx";
import { nameOr } from "../places/hall-name.ts";
import { ChangeList } from "../prices/change-list.tsx";
import { CompareTable } from "./compare-table.tsx";
import { HallFields } from "./hall-fields.tsx";
import { HallOrders } from "./hall-orders.tsx";
import { WhatIsCompared } from "./what-is-compared.tsx";
import { WhichAreFree } from "./which-are-free.tsx";
import { useCompareSheet } from "./use-compare-sheet.ts";

type Props = {
  readonly practice: PracticeDocument;
  readonly opened: Opened<ClassDocument>;
  readonly halls: readonly Listed<HallDocument>[];
};

const none: readonly Problem[] = [];
const measures: readonly { readonly value: By; readonly label: string }[] = [
  { value: "year", label: "a year" },
  { value: "session", label: "a session" },
  { value: "hour", label: "an hour from door to door" },
];

/** One class in each of the halls: the answer, the figures, the orders, what would change them, the inputs. */
export function CompareHalls({ practice, opened, halls }: Props) {
  const { keeper, draft } = opened;
  const [by, setBy] = useState<By>("year");
  const document = useDeferredValue(draft.document);
  const { currency, locale } = practice;
  const asked = useCompareSheet(
    useMemo(
      () => ({ practice: { currency, locale }, document, halls, by }),
      [currency, locale, document, halls, by],
    ),
  );
  const sheet = asked.answer;
  const problems = sheet?.kind === "unsound" ? sheet.problems : none;
  const form = useClassForm(opened, currencyOf(currency), problems);
  const change = (part: Partial<ClassDocument>) => keeper.change((before) => ({ ...before, ...part }));
  return (
    <FormOf form={form}>
      <section className="part holds-fields" aria-labelledby="answer">
        <h2 id="answer" className="part-title">
          Which hall
        </h2>
        {asked.failure === null ? null : <p className="problem-note">{asked.failure}</p>}
        <CompareAnswer sheet={sheet} />
        {/* its line is always there, so that nothing moves when it is filled */}
        <p className="small soft">{asked.old ? "Working it out again …" : "\u00a0"}</p>
        <WhatIsCompared document={draft.document} change={change} />
        <ChoiceField
          label="In the order of what is left by"
          value={by}
          choices={measures}
          onChange={(value) => setBy(measures.find((it) => it.value === value)?.value ?? "year")}
        />
      </section>
      {sheet?.kind === "ready" ? <Compared sheet={sheet} /> : null}
      <WhichAreFree practice={practice} document={draft.document} halls={halls} />
      <section className="part holds-fields" aria-labelledby="ways">
        <h2 id="ways" className="part-title">
          The way to each, and when it can be had
        </h2>
        {halls.map((hall) => (
          <HallFields
            key={hall.id}
            document={draft.document}
            change={change}
            hall={hall}
            name={nameOr(hall.document.name, "A hall without a name")}
          />
        ))}
      </section>
    </FormOf>
  );
}

function CompareAnswer({ sheet }: { readonly sheet: CompareSheet | null }) {
  if (sheet === null) {
    return (
      <p className="answer" data-withheld>
        Working it out …
      </p>
    );
  }
  switch (sheet.kind) {
    case "missing":
    case "unsound":
      return <NotAnswered why={sheet} />;
    case "ready":
      return <Sentences says={sheet.says} />;
  }
}

function Sentences({ says }: { readonly says: readonly string[] }) {
  const [first = "", ...others] = says;
  return (
    <div className="stack-close">
      <output className="answer">{first}</output>
      {others.map((it) => (
        <p key={it}>{it}</p>
      ))}
    </div>
  );
}

function Compared({ sheet }: { readonly sheet: Extract<CompareSheet, { kind: "ready" }> }) {
  return (
    <>
      <section className="part" aria-labelledby="figures">
        <h2 id="figures" className="part-title">
          What each leaves
        </h2>
        <p className="small soft">Press a figure to see its sum; ▲ marks the most of a column.</p>
        <CompareTable caption="With the same people who would like to come" rows={sheet.expected} />
        <CompareTable caption="With every place taken" rows={sheet.full} />
      </section>
      <section className="part" aria-labelledby="orders">
        <h2 id="orders" className="part-title">
          Three orders
        </h2>
        <HallOrders orders={sheet.orders} />
      </section>
      <section className="part" aria-labelledby="changes">
        <h2 id="changes" className="part-title">
          What would change which comes first
        </h2>
        <ChangeList title="The nearest first" rows={sheet.changes} />
      </section>
    </>
  );
}
