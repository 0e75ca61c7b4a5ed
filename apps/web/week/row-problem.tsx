import { useFormField } from "../fields/form.tsx";

/** What is wrong with a row as a whole, or with a box of it that cannot tell it itself. */
export function RowProblem({ path }: { readonly path: string }) {
  const { problem } = useFormField(path);
  if (problem === null) return null;
  return (
    <p className="field-problem">
      {problem.says} {problem.next}
    </p>
  );
}
