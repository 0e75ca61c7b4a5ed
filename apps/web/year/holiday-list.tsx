import type { YearCalendarJson } from "#core/year";
import type { Locale } from "#core/words";
import { Show } from "../parts/show.tsx";
import { dateWords } from "../words/dates.ts";

type Props = { readonly json: YearCalendarJson; readonly locale: Locale };

/** The public holidays that are counted, with those that are kept on another day. */
export function HolidayList({ json, locale }: Props) {
  const { holidays } = json;
  if (holidays.length === 0) return null;
  return (
    <Show summary={`The ${holidays.length} days that count as public holidays`}>
      <ul className="list-plain">
        {holidays.map(({ date, name, standsFor, movedTo }) => (
          <li key={`${date} ${name}`}>
            {dateWords(date, locale)}: {name}
            {standsFor === null ? "" : `, in place of ${dateWords(standsFor, locale)}`}
            {movedTo === null ? "" : `, kept on ${dateWords(movedTo, locale)}`}
          </li>
        ))}
      </ul>
    </Show>
  );
}
