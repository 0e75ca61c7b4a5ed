import type { By, ComparedFigure, ComparedRow } from "#app/views";
import { Fragment, useId, useState } from "react";
import { Working } from "../parts/working.tsx";

type Props = {
  readonly caption: string;
  readonly rows: readonly ComparedRow[];
};

type Opened = { readonly hall: string; readonly by: By };

const headings = { session: "A session", year: "A year", hour: "An hour" } as const;

/** What each hall leaves, three ways; a figure opens into its sum. The most of a column is bold and marked. */
export function CompareTable({ caption, rows }: Props) {
  const [opened, setOpened] = useState<Opened | null>(null);
  const id = useId();
  return (
    <table className="figures compare">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Hall</th>
          {Object.entries(headings).map(([by, heading]) => (
            <th key={by} scope="col">
              {heading}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, at) => {
          const open = opened?.hall === row.hall ? row.figures.find((it) => it.by === opened.by) : undefined;
          const place = `${id}-${at}`;
          return (
            <Fragment key={row.hall}>
              <tr>
                <th scope="row">
                  {row.hall}
                  <span className="compare-about">{row.about}</span>
                </th>
                {row.figures.map((figure) => (
                  <td key={figure.by}>
                    <FigureButton
                      figure={figure}
                      hall={row.hall}
                      place={place}
                      open={open === figure}
                      press={() => setOpened(open === figure ? null : { hall: row.hall, by: figure.by })}
                    />
                  </td>
                ))}
              </tr>
              {open === undefined ? null : (
                <tr className="compare-working">
                  <td colSpan={4} id={place}>
                    <Working caption={`${headings[open.by]} in ${row.hall}`} lines={open.working} />
                  </td>
                </tr>
              )}
            </Fragment>
          );
        })}
      </tbody>
    </table>
  );
}

type FigureProps = {
  readonly figure: ComparedFigure;
  readonly hall: string;
  readonly place: string;
  readonly open: boolean;
  readonly press: () => void;
};

function FigureButton({ figure, hall, place, open, press }: FigureProps) {
  return (
    <button
      type="button"
      className="link-button"
      data-most={figure.most || undefined}
      aria-expanded={open}
      aria-controls={open ? place : undefined}
      aria-label={`${figure.says}, ${headings[figure.by].toLowerCase()} in ${hall}${figure.most ? ", the most" : ""}: show the working`}
      onClick={press}
    >
      {figure.says}
      {figure.most ? <span aria-hidden="true"> ▲</span> : null}
    </button>
  );
}
