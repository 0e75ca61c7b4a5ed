import type { Start } from "../api/practices.ts";
import { ProblemList } from "../parts/problem-list.tsx";
import { useBegin } from "./use-begin.ts";

const demos: readonly { readonly start: Start; readonly label: string; readonly about: string }[] = [
  {
    start: "demo-marlsford",
    label: "Open Marlsford, in pounds",
    about: "Oriel Tamsett teaches in three halls around an English town. Metres, UK words.",
  },
  {
    start: "demo-cedar-fork",
    label: "Open Cedar Fork, in dollars",
    about: "Ines Okafor rents Grange Hall in a town in the US Midwest. Feet and inches, US words.",
  },
];

/** Two invented practices to look round in; each opening makes a fresh one. */
export function DemoChoice() {
  const { begin, busy, problems } = useBegin();
  return (
    <div className="stack">
      <h2>Look round the demo</h2>
      <p>Everything in it is invented: the teachers, the towns, the halls and the figures.</p>
      <ul className="list-plain ledger">
        {demos.map(({ start, label, about }) => (
          <li key={start} className="stack-close">
            <p className="small soft">{about}</p>
            <button type="button" className="button" disabled={busy} onClick={() => begin(start)}>
              {label}
            </button>
          </li>
        ))}
      </ul>
      <ProblemList problems={problems} />
    </div>
  );
}
