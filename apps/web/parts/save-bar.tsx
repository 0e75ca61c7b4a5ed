import { useState } from "react";
import type { Problem } from "#core/words";
import type { Draft } from "../drafts/draft.ts";
import type { Keeper } from "../drafts/keeper.ts";
import { isTrouble, saveWords } from "../drafts/save-words.ts";
import { ProblemList } from "./problem-list.tsx";

type Props<Document> = {
  readonly what: string;
  readonly draft: Draft<Document>;
  readonly keeper: Keeper<Document>;
};

/** The line at the top that says whether her work is saved, with the way out when it is not. */
export function SaveBar<Document>({ what, draft, keeper }: Props<Document>) {
  const words = saveWords(draft.state, Object.keys(draft.typed).length > 0, keeper.onDevice());
  const trouble = isTrouble(draft.state);
  return (
    <div className="save-bar" data-trouble={trouble || undefined}>
      <p className="row">
        <strong>{what}</strong>
        <span className="save-words">{words}</span>
        {trouble && draft.state.kind !== "clash" ? (
          <button type="button" className="link-button" onClick={() => void keeper.flush()}>
            Try again now
          </button>
        ) : null}
      </p>
      {/* heard only when something is wrong: "Saved" after every key would be noise */}
      <output className="unseen">{trouble ? words : ""}</output>
      {draft.state.kind === "clash" ? <Clash keeper={keeper} /> : null}
      {trouble && draft.state.kind === "refused" ? (
        <ProblemList problems={draft.state.problems} announce={false} />
      ) : null}
    </div>
  );
}

function Clash<Document>({ keeper }: { readonly keeper: Keeper<Document> }) {
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const choose = (mine: boolean) => {
    void keeper.resolve(mine).then(setProblems);
  };
  return (
    <div className="stack-close">
      <p>
        Since you opened this page it was changed in another window or by somebody else. Choose which one
        stays; the other is not kept.
      </p>
      <p className="row">
        <button type="button" className="button" onClick={() => choose(true)}>
          Keep what is on this page
        </button>
        <button type="button" className="button" onClick={() => choose(false)}>
          Take the other one
        </button>
      </p>
      <ProblemList problems={problems} />
    </div>
  );
}
