import { type ClassOutlook, outlookFigure } from "#core/class";
import type { ClassPart } from "../class-sheet/class-part.ts";
import { DateField } from "../fields/date-field.tsx";
import { useFormField } from "../fields/form.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { Rows } from "../fields/rows.tsx";
import { today } from "../words/dates.ts";
import { putOutlook } from "./outlook-part.ts";

type Notice = NonNullable<ClassOutlook["notice"]>;

/** When the hall can be given notice, and what ending the class would cost and free. */
export function NoticeFields({ document, change }: ClassPart) {
  const notice = document.outlook?.notice ?? {};
  const put = (next: Notice) => putOutlook({ document, change }, "notice", next);
  return (
    <fieldset className="fields">
      <legend>Notice to the hall</legend>
      <NumberField
        path="outlook.notice.days"
        label="The hall wants notice of"
        unit="days"
        range={{ least: 0, most: 730, whole: true }}
        guessable
        value={outlookFigure(document, "notice.days")}
        put={(days) => put({ ...notice, days })}
      />
      <NumberField
        path="outlook.notice.term"
        label="The term after it has"
        unit="sessions"
        range={{ least: 1, most: 60, whole: true }}
        guessable
        value={outlookFigure(document, "notice.term")}
        put={(term) => put({ ...notice, term })}
      />
      <MoneyField
        path="outlook.notice.otherUse"
        label="The best other use of the evening would leave"
        help="A studio class, another class of yours; nothing if you would rest"
        per="a session"
        value={notice.otherUse ?? "0"}
        put={(otherUse) => put({ ...notice, otherUse })}
      />
      <MoneyField
        path="outlook.notice.exitCost"
        label="Ending it would cost once"
        help="Refunds of passes, a deposit lost"
        value={notice.exitCost ?? "0"}
        put={(exitCost) => put({ ...notice, exitCost })}
      />
      <Rows
        title="Days on which notice can be given"
        path="outlook.notice.dates"
        compact
        rows={notice.dates ?? []}
        fresh={today}
        add="Add a day, if it is not any day"
        named={(index) => notice.dates?.[index] ?? "this day"}
        put={(dates) => {
          const { dates: _, ...others } = notice;
          put(dates.length === 0 ? others : { ...others, dates: [...dates] });
        }}
        renderRow={(date, putDate, path) => <NoticeDay date={date} put={putDate} path={path} />}
      />
    </fieldset>
  );
}

type DayProps = { readonly date: string; readonly put: (date: string) => void; readonly path: string };

function NoticeDay({ date, put, path }: DayProps) {
  const { problem } = useFormField(path);
  return <DateField label="Day" value={date} put={put} problem={problem?.says ?? null} />;
}
