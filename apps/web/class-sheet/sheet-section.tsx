import type { ReactNode } from "react";

type Props = {
  readonly id: string;
  readonly title: string;
  readonly answer: ReactNode;
  readonly picture?: ReactNode;
  readonly working?: ReactNode;
  readonly inputs: ReactNode;
};

/** One part of the sheet: answer, picture, working, inputs; on a wide sheet the working stands beside. */
export function SheetSection({ id, title, answer, picture, working, inputs }: Props) {
  return (
    <section className="part job" aria-labelledby={id}>
      <div className="job-answer stack-close">
        <h2 id={id} className="part-title">
          {title}
        </h2>
        {answer}
      </div>
      {picture ? <div className="job-picture">{picture}</div> : null}
      {working ? <div className="job-working">{working}</div> : null}
      {inputs ? <div className="job-inputs holds-fields stack">{inputs}</div> : null}
    </section>
  );
}
