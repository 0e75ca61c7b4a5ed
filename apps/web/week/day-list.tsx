import { type DrawnDay, timeWords, type WeekDrawing } from "#app/views";
import type { Locale } from "#core/words";

type Props = {
  readonly drawing: WeekDrawing;
  readonly locale: Locale;
  /** for whoever hears the list */
  readonly called: string;
};

/** The same as the picture in words, a day a row. */
export function DayList({ drawing, locale, called }: Props) {
  const told = drawing.days.filter(({ classes, busy }) => classes.length + busy.length > 0);
  const free = drawing.days.filter((day) => !told.includes(day)).map(({ name }) => name);
  return (
    <ol className="list-plain ledger" aria-label={called}>
      {told.map((day) => (
        <Day key={day.weekday} day={day} locale={locale} />
      ))}
      {free.length === 0 ? null : <li className="soft">Free: {free.join(", ")}.</li>}
    </ol>
  );
}

function Day({ day, locale }: { readonly day: DrawnDay; readonly locale: Locale }) {
  const at = (minutes: number) => clock(minutes, locale);
  return (
    <li>
      <strong>{day.name}</strong>{" "}
      <span className="soft">
        {day.leaves === null || day.home === null ? "" : `from ${at(day.leaves)} to ${at(day.home)}`}
      </span>
      <ol className="list-plain week-stops">
        {day.classes.map((it) => (
          <li key={it.id}>
            <span className="week-number">{it.number}</span> {it.name}, {at(it.from)} to {at(it.until)},{" "}
            {it.place} <span className="soft">({it.way})</span>
          </li>
        ))}
        {day.busy.map((it) => (
          <li key={`${it.name} ${it.from}`} className="soft">
            {it.name}, {at(it.from)} to {at(it.until)}
          </li>
        ))}
      </ol>
    </li>
  );
}

/** Minutes since midnight as a time of day, before and after midnight too. */
function clock(minutes: number, locale: Locale): string {
  const ofDay = (minutes + 1440) % 1440;
  const text = [Math.floor(ofDay / 60), ofDay % 60].map((it) => String(it).padStart(2, "0")).join(":");
  return timeWords(text, locale);
}
