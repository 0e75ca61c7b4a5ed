import type { ArrangementRow } from "#core/hall";
import type { LengthUnits } from "#core/words";
import { arrangementFigures, figureKeys, figureNames } from "./arrangement-figures.ts";
import { ChooseButton } from "./choose-button.tsx";
import { PlanThumb } from "./plan-thumb.tsx";
import type { Hall } from "#core/hall";
import type { Arrangement } from "#core/hall";

export type ArrangementsShown = {
  readonly hall: Hall;
  readonly rows: readonly ArrangementRow[];
  readonly chosen: Arrangement;
  readonly choose: (arrangement: Arrangement) => void;
  readonly units: LengthUnits;
  readonly caption: string;
};

/** Ways to lay the mats side by side, a row each, on a page that is wide enough. */
export function ArrangementTable({ hall, rows, chosen, choose, units, caption }: ArrangementsShown) {
  return (
    <table className="figures arrangements">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">The mats lie</th>
          {figureKeys.map((key) => (
            <th key={key} scope="col">
              {figureNames[key]}
            </th>
          ))}
          <th scope="col">
            <span className="unseen">Choose</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => {
          const figures = arrangementFigures(row, units);
          return (
            <tr key={row.arrangement} data-marked={row.arrangement === chosen ? true : undefined}>
              <th scope="row">
                <span className="arrangement-name">
                  <PlanThumb hall={hall} plan={row.plan} width={96} />
                  {figures.name}
                </span>
              </th>
              {figureKeys.map((key) => (
                <td key={key}>{figures[key]}</td>
              ))}
              <td>
                <ChooseButton name={figures.name} row={row} chosen={chosen} choose={choose} />
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
