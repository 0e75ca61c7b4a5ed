import { arrangementFigures, figureKeys, figureNames } from "./arrangement-figures.ts";
import type { ArrangementsShown } from "./arrangement-table.tsx";
import { ChooseButton } from "./choose-button.tsx";
import { PlanThumb } from "./plan-thumb.tsx";

/** The same one below the other, on a phone. */
export function ArrangementList({ hall, rows, chosen, choose, units, caption }: ArrangementsShown) {
  return (
    <ul className="list-plain ledger" aria-label={caption}>
      {rows.map((row) => {
        const figures = arrangementFigures(row, units);
        return (
          <li key={row.arrangement} className="stack-close">
            <strong>{figures.name}</strong>
            <div className="arrangement-beside">
              <PlanThumb hall={hall} plan={row.plan} width={120} />
              <dl className="arrangement-figures">
                {figureKeys.map((key) => (
                  <div key={key}>
                    <dt>{figureNames[key]}</dt>
                    <dd>{figures[key]}</dd>
                  </div>
                ))}
              </dl>
            </div>
            <ChooseButton name={figures.name} row={row} chosen={chosen} choose={choose} />
          </li>
        );
      })}
    </ul>
  );
}
