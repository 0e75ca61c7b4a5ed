import { freeOf } from "#core/books";
import type { PassAt } from "./pass-item.tsx";

/** What is left of a pass whose last day is over is written off; the holder may be given longer instead. */
export function RunOut({ pass, doing, today }: PassAt) {
  const classes = freeOf(pass);
  const run = () => {
    const change = { kind: "expired", on: today, classes } as const;
    void doing.run({ kind: "change pass", pass: pass.pass, change });
  };
  return (
    <p className="row">
      <button type="button" className="button" disabled={doing.busy} onClick={run}>
        Let {classes === 1 ? "the last class" : `the last ${classes} classes`} run out
      </button>
      <span className="small soft">
        Nobody has to: two weeks more, or money back for what is left, is often kinder.
      </span>
    </p>
  );
}
