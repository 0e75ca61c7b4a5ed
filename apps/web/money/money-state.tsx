import { NotAnswered } from "../parts/not-answered.tsx";
import type { MoneyWords } from "./money-words-of.ts";
import type { UsedMoney } from "./use-money.ts";

type Props = { readonly money: UsedMoney; readonly words: MoneyWords };

/** The answer in sentences, or what keeps it from being given. */
export function MoneyState({ money, words }: Props) {
  const { json, problems, nothing, failure } = money;
  if (nothing)
    return (
      <NotAnswered
        why={{
          kind: "missing",
          says: "There is nothing yet that brings or costs money.",
          next: "Begin a class with a hall, or add below what else you teach or what comes and goes.",
        }}
      />
    );
  if (failure !== null)
    return <NotAnswered why={{ kind: "missing", says: failure, next: "Change a figure to try again." }} />;
  if (problems.length > 0) return <NotAnswered why={{ kind: "unsound", problems }} />;
  if (json === null)
    return (
      <p className="answer" data-withheld>
        Working it out …
      </p>
    );
  const [first = "", ...others] = json.says.cash;
  return (
    <div className="stack-close">
      <output className="answer">{words.says(first)}</output>
      {others.map((it) => (
        <p key={it}>{words.says(it)}</p>
      ))}
      {json.says.caution.map((it) => (
        <p key={it} className="caution">
          {it}
        </p>
      ))}
    </div>
  );
}
