import type { ClassGrowth } from "#app/views";
import type { ClassDocument } from "#core/class";
import type { HallDocument } from "#core/hall";
import type { PracticeDocument } from "#core/words";
import { useMemo, useState } from "react";
import { useDraft } from "../drafts/use-draft.ts";
import { NotAnswered } from "../parts/not-answered.tsx";
import { useWorkerAnswer } from "../prices/use-worker-answer.ts";
import { today } from "../words/dates.ts";
import type { GrowthJob } from "./growth-worker.ts";
import type { MoneyWords } from "./money-words-of.ts";
import type { Work } from "./plan-edit.ts";

type Props = {
  readonly practiceId: string;
  readonly practice: PracticeDocument;
  readonly id: string;
  readonly name: string;
  readonly document: ClassDocument;
  readonly hall: HallDocument | null;
  readonly words: MoneyWords;
  readonly put: (changes: Work["changes"]) => void;
};

/** What a class will bring month by month, asked of its outlook when she presses, and taken over when she says so. */
export function GrowthOffer(props: Props) {
  const [asked, setAsked] = useState(false);
  if (!asked)
    return (
      <p>
        <button type="button" className="button" onClick={() => setAsked(true)}>
          Ask the outlook of {props.name} what it will bring
        </button>
      </p>
    );
  return <AskedGrowth {...props} />;
}

function AskedGrowth({ practiceId, practice, id, name, document, hall, words, put }: Props) {
  const opened = useDraft(practiceId, "happened", id);
  const happened = opened?.draft.document ?? null;
  const job = useMemo((): GrowthJob | null => {
    const { currency, locale } = practice;
    if (happened === null) return null;
    return { practice: { currency, locale }, document, hall, happened, today: today() };
  }, [practice, document, hall, happened]);
  const { answer, failure } = useWorkerAnswer<ClassGrowth>(startGrowthWorker, job);
  if (failure !== null)
    return <NotAnswered why={{ kind: "missing", says: failure, next: "Look at its record." }} />;
  if (answer === null) return <output>Learning from its record …</output>;
  if (answer.kind !== "ready") return <NotAnswered why={answer} />;
  const { changes, sessionsHeld } = answer;
  return (
    <div className="stack-close">
      <output>
        {sessionsHeld === 0
          ? "Nothing was held yet: this rests on the guesses of its class sheet alone."
          : `Learned from ${sessionsHeld} sessions and the guesses of its class sheet.`}
      </output>
      <ul>
        {changes.map(({ from, perSession }) =>
          typeof perSession === "string" ? null : (
            <li key={from}>
              {words.says(`From ${from}`)}: {words.amount(perSession.middle)} a session (
              {words.amount(perSession.low ?? perSession.middle)} to{" "}
              {words.amount(perSession.high ?? perSession.middle)})
            </li>
          ),
        )}
      </ul>
      <button type="button" className="button" onClick={() => put([...changes])}>
        Take this over for {name}
      </button>
    </div>
  );
}

function startGrowthWorker(): Worker {
  return new Worker(new URL("./growth-worker.ts", import.meta.url), { type: "module" });
}
