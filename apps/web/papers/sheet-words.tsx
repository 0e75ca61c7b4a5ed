import { boundFigures, type HallSheet, type Paper, type SheetSection } from "#core/papers";
import { useId } from "react";
import { PaperFigure } from "./paper-figure.tsx";

/** The answer: the posted number, the mats, and how many of them to lay where that is fewer. */
export function SheetLead({ sheet }: { readonly sheet: HallSheet }) {
  const [posted, ...others] = sheet.lead;
  return (
    <div className="stack-close">
      <p className="answer">{posted}</p>
      {others.map((says, index) => (
        <p key={says}>{index === 0 ? boundFigures(says) : <strong>{says}</strong>}</p>
      ))}
    </div>
  );
}

type Props = { readonly sheet: HallSheet; readonly paper: Paper };

/** What else the sheet says, to be read on a phone in the hall: the drawing and the lists. */
export function SheetWords({ sheet, paper }: Props) {
  const figure = paper.pages.flatMap((it) => it.parts).find((it) => it.role === "figure");
  return (
    <div className="sheet-words">
      <div className="sheet-drawn">
        {figure === undefined ? null : <PaperFigure part={figure} />}
        <div className="sheet-lists">
          {sheet.sections.map((section) => (
            <SectionWords key={section.title} section={section} />
          ))}
        </div>
      </div>
      <p className="small soft">{sheet.foot}</p>
    </div>
  );
}

function SectionWords({ section: { title, items, blanks = [] } }: { readonly section: SheetSection }) {
  const id = useId();
  return (
    <section className="stack-close" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      <ul className="list-plain sheet-items">
        {items.map((says) => (
          <li key={says}>{boundFigures(says)}</li>
        ))}
        {blanks.map((says) => (
          <li key={says} className="sheet-blank">
            {says}
          </li>
        ))}
      </ul>
    </section>
  );
}
