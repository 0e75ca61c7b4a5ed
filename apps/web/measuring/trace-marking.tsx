import type { Trace } from "./measuring.ts";
import type { Marking } from "./trace-steps.ts";

type Props = {
  readonly trace: Trace;
  readonly marking: Marking;
  readonly choose: (marking: Marking) => void;
};

/** What the next mark is for. */
export function TraceMarking({ trace, marking, choose }: Props) {
  const choices: readonly { readonly of: Marking; readonly label: string }[] = [
    { of: "known", label: `a distance that you know (${ends(trace.known)} of 2 ends)` },
    { of: "corners", label: `the corners of the hall (${trace.corners.length} so far)` },
    { of: "check", label: `a second distance, to check it (${ends(trace.check)} of 2 ends)` },
  ];
  return (
    <fieldset className="fields">
      <legend>Mark</legend>
      <div className="tape-turns trace-marking">
        {choices.map(({ of, label }) => (
          <label key={of} className="tape-turn" data-chosen={marking === of || undefined}>
            <input type="radio" name="marking" checked={marking === of} onChange={() => choose(of)} />
            {label}
          </label>
        ))}
      </div>
    </fieldset>
  );
}

function ends({ from, to }: Trace["known"]): number {
  return [from, to].filter((it) => it !== null).length;
}
