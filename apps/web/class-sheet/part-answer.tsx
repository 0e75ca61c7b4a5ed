import type { SheetPart } from "#app/views";
import type { Draft } from "../drafts/draft.ts";
import type { ClassDocument } from "#core/class";
import { guessWords } from "./guess-words.ts";
import { NotAnswered } from "../parts/not-answered.tsx";

type Props = {
  readonly part: SheetPart;
  readonly typed: Draft<ClassDocument>["typed"];
  /** the fields of this part, by how their paths begin */
  readonly fields: readonly string[];
};

/** The answer of a part: the sentence first and large, what belongs to it, and how much of it is guessed. */
export function PartAnswer({ part, typed, fields }: Props) {
  switch (part.kind) {
    case "missing":
    case "unsound":
      return <NotAnswered why={part} />;
    case "ready":
      return (
        <Ready part={part} old={Object.keys(typed).some((it) => fields.some((at) => it.startsWith(at)))} />
      );
  }
}

type ReadyProps = { readonly part: Extract<SheetPart, { kind: "ready" }>; readonly old: boolean };

function Ready({ part, old }: ReadyProps) {
  const [first = "", ...others] = part.says;
  return (
    <div className="stack-close">
      <p className="answer">{first}</p>
      {others.map((says) => (
        <p key={says}>{says}</p>
      ))}
      {old ? (
        <p className="problem-note">
          A field below cannot be read; this still rests on its last good figure.
        </p>
      ) : null}
      {part.restsOn === "" ? null : <p className="rests-on">{guessWords(part.restsOn, part.guessNames)}</p>}
    </div>
  );
}
