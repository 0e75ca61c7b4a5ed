import { NotAnswered } from "../parts/not-answered.tsx";
import type { UsedWeek } from "./use-week.ts";

type Props = { readonly week: UsedWeek; readonly says: (text: string) => string };

/** The week in sentences, the answer first; or what keeps it from being answered. */
export function WeekAnswer({ week, says }: Props) {
  const { problems, found, old } = week;
  if (problems.length > 0)
    return problems.some(({ code }) => code === "candidates-none") ? (
      <NotAnswered
        why={{
          kind: "missing",
          says: "There is nothing yet that could be taught.",
          next: "Begin a class of your own, or add below what else you could teach.",
        }}
      />
    ) : (
      <NotAnswered why={{ kind: "unsound", problems }} />
    );
  if (found.problem !== null && !old)
    return (
      <NotAnswered why={{ kind: "missing", says: says(found.problem.says), next: found.problem.next }} />
    );
  const { week: head } = found;
  if (head === null)
    return (
      <p className="answer" data-withheld>
        Working it out …
      </p>
    );
  const [first = "", ...others] = head.sentences;
  return (
    <div className="stack-close">
      <output className="answer">{says(first)}</output>
      {others.map((it) => (
        <p key={it}>{says(it)}</p>
      ))}
      <GuessedParts week={week} />
      <p className="caution">
        The limits are yours to set; those that you left as they stood are common practice. Your voice, your
        body and a doctor know better. What is earned is before tax and fixed costs.
      </p>
    </div>
  );
}

/** What of it is guessed, by name. */
function GuessedParts({ week }: { readonly week: UsedWeek }) {
  const { own, document, found } = week;
  const sheets = own.filter(
    ({ id, guesses }) => guesses > 0 && document.candidates.some((it) => it.id === id),
  );
  const ways = found.week?.guessedWays ?? [];
  const figures = document.guesses.length;
  const parts = [
    ...(ways.length === 0 ? [] : [`the ways ${ways.join(", ")}, guessed from the map`]),
    ...(sheets.length === 0 ? [] : [`the class sheets of ${sheets.map(({ name }) => name).join(", ")}`]),
    ...(figures === 0 ? [] : [figures === 1 ? "1 figure marked below" : `${figures} figures marked below`]),
  ];
  if (parts.length === 0) return null;
  return <p className="rests-on">Rests on guesses: {parts.join("; ")}.</p>;
}
