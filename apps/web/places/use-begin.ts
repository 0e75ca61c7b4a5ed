import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useNavigate } from "@tanstack/react-router";
import type { PracticeDocument, Problem } from "#core/words";
import { beginPractice, type Start } from "../api/practices.ts";

/** Begins a practice and goes there, or says why it could not. */
export function useBegin() {
  const queries = useQueryClient();
  const go = useNavigate();
  const beginning = useMutation({
    mutationFn: (asked: { readonly start: Start; readonly document?: PracticeDocument }) =>
      beginPractice(asked.start, asked.document),
    onSuccess: async (begun) => {
      if (!begun.ok) return;
      await queries.invalidateQueries({ queryKey: ["practices"] });
      await go({ to: "/practice/$practice/classes", params: { practice: begun.value } });
    },
  });
  const problems: readonly Problem[] =
    beginning.data !== undefined && !beginning.data.ok ? beginning.data.problems : [];
  return {
    begin: (start: Start, document?: PracticeDocument) =>
      beginning.mutate({ start, ...(document === undefined ? {} : { document }) }),
    busy: beginning.isPending,
    problems,
  };
}
