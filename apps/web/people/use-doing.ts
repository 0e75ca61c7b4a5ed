import { useQueryClient } from "@tanstack/react-query";
import type { DoAskInput, Told } from "#app/record";
import type { Locale, Problem, Result } from "#core/words";
import { useRef, useState } from "react";
import { ask } from "../api/ask.ts";
import { newId } from "../api/new-id.ts";
import { withSignalWords } from "./no-signal.ts";
import { recordKey } from "./record-reads.ts";

export type Doing = {
  readonly busy: boolean;
  readonly problems: readonly Problem[];
  /** what was done, in the record's own sentences */
  readonly says: readonly string[];
  /** does these in order, each only after the one before, and answers whether all were done */
  readonly run: (...whats: readonly DoAskInput[]) => Promise<boolean>;
  readonly clear: () => void;
};

/**
 * Does something with the record of a practice. The same thing sent again because nobody answered has the same id, so
 * that it is done once even where only the answer was lost.
 */
export function useDoing(practice: string, locale: Locale): Doing {
  const queries = useQueryClient();
  const actions = useRef(new Map<string, string>());
  const [busy, setBusy] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [says, setSays] = useState<readonly string[]>([]);
  const one = async (what: DoAskInput) => {
    const asked = JSON.stringify(what);
    const action = actions.current.get(asked) ?? newId();
    actions.current.set(asked, action);
    const answer = await send(practice, { action, locale, do: what });
    // what was refused may be asked anew; what was not heard of is asked again under its id
    if (!answer.ok && !isSilence(answer.problems)) actions.current.delete(asked);
    return answer;
  };
  const run = async (...whats: readonly DoAskInput[]): Promise<boolean> => {
    setBusy(true);
    const done = await inOrder(whats, one);
    const all = done.problems.length === 0;
    if (all) actions.current.clear();
    // first the page as it is now, then the words for it
    if (done.says.length > 0) {
      // the register keeps a record of its own on this device
      window.dispatchEvent(new Event("hallful-record-changed"));
      await queries.invalidateQueries({ queryKey: recordKey(practice) });
    }
    setBusy(false);
    setProblems(withSignalWords(done.problems));
    setSays(done.says);
    return all;
  };
  const clear = () => {
    setProblems([]);
    setSays([]);
  };
  return { busy, problems, says, run, clear };
}

async function inOrder(
  whats: readonly DoAskInput[],
  one: (what: DoAskInput) => Promise<Result<Told>>,
): Promise<{ readonly says: readonly string[]; readonly problems: readonly Problem[] }> {
  const says: string[] = [];
  for (const what of whats) {
    // oxlint-disable-next-line no-await-in-loop -- each only after the one before
    const answer = await one(what);
    if (!answer.ok) return { says, problems: answer.problems };
    says.push(...answer.value.says);
  }
  return { says, problems: [] };
}

function isSilence(problems: readonly Problem[]): boolean {
  return problems.some(({ code }) => code === "server-silent");
}

type Sending = { readonly action: string; readonly locale: Locale; readonly do: DoAskInput };

async function send(practice: string, body: Sending): Promise<Result<Told>> {
  const path = `/api/practices/${encodeURIComponent(practice)}/record`;
  const answer = await ask(path, { method: "POST", body: { ...body, by: "teacher" } });
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- our own server, same contract
  return answer as Result<Told>;
}
