import type { ClassDocument } from "#core/class";
import { GuessAt } from "../fields/guess-at.tsx";
import { MoneyField, OptionalMoneyField } from "../fields/money-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { Rows } from "../fields/rows.tsx";
import { Show } from "../parts/show.tsx";
import type { ClassPart } from "./class-part.ts";
import { mixAfterSizes } from "./mix-after-sizes.ts";

/** Courses, pay what you can, and a year paid by the month. */
export function OtherPriceFields({ document, change }: ClassPart) {
  const { courses = [], payWhatYouCan, monthly } = document.prices;
  const some = courses.length > 0 || payWhatYouCan !== undefined || monthly !== undefined;
  return (
    <Show summary="Courses, pay what you can, by the month" open={some}>
      <div>
        <CourseRows document={document} change={change} />
        <ChosenFields document={document} change={change} />
        <OptionalMoneyField
          path="prices.monthly.perSession"
          label="Paid by the month"
          help="A year’s sessions in twelve equal payments; empty for none"
          per="a session"
          guessable
          value={monthly?.perSession}
          put={(perSession) => {
            const { monthly: before, ...others } = document.prices;
            change({
              prices: perSession === undefined ? others : { ...others, monthly: { ...before, perSession } },
            });
          }}
        />
      </div>
    </Show>
  );
}

type Courses = NonNullable<ClassDocument["prices"]["courses"]>;

/** Blocks of sessions that are paid for at once. */
function CourseRows({ document, change }: ClassPart) {
  const { courses = [], ...others } = document.prices;
  const put = (rows: Courses) => {
    const mix = mixAfterSizes(document.mix, "course", sizesOf(courses), sizesOf(rows));
    change({ prices: rows.length === 0 ? others : { ...others, courses: rows }, mix });
  };
  return (
    <Rows
      title="Courses"
      path="prices.courses"
      compact
      rows={courses}
      fresh={() => ({ sessions: freeSize(courses), price: others.single ?? "0.00" })}
      add="Add a course"
      named={(index) => `course of ${courses[index]?.sessions ?? ""} sessions`}
      put={(rows) => put([...rows])}
      before={courses.length === 0 ? null : <GuessAt path="prices.courses" label="Courses" />}
      renderRow={(course, putCourse, path) => (
        <>
          <NumberField
            path={`${path}.sessions`}
            label="A course of"
            unit="sessions"
            range={{ least: 1, most: 200, whole: true }}
            value={course.sessions}
            put={(sessions) => putCourse({ ...course, sessions })}
          />
          <MoneyField
            path={`${path}.price`}
            label="Price of the course"
            per="a course"
            value={course.price}
            put={(price) => putCourse({ ...course, price })}
          />
        </>
      )}
    />
  );
}

/** What people choose themselves: the least she takes, and what they give on average. */
function ChosenFields({ document, change }: ClassPart) {
  const { payWhatYouCan: chosen, ...others } = document.prices;
  return (
    <>
      <OptionalMoneyField
        path="prices.payWhatYouCan.floor"
        label="Pay what you can, at least"
        help="Empty for none"
        per="a class"
        guessable
        value={chosen?.floor}
        put={(floor) =>
          change({
            prices: floor === undefined ? others : { ...others, payWhatYouCan: { ...chosen, floor } },
          })
        }
      />
      {chosen === undefined ? null : (
        <OptionalMoneyField
          path="prices.payWhatYouCan.average"
          label="People then give"
          help="On average; empty if nobody knows yet: the least counts"
          per="a class"
          guessable
          value={chosen.average}
          put={(average) => {
            const { floor } = chosen;
            const given = average === undefined ? { floor } : { floor, average };
            change({ prices: { ...others, payWhatYouCan: given } });
          }}
        />
      )}
    </>
  );
}

function sizesOf(courses: Courses): readonly number[] {
  return courses.map(({ sessions }) => sessions);
}

/** The first usual length that no course has yet. */
function freeSize(courses: Courses): number {
  const taken = new Set(sizesOf(courses));
  return [6, 5, 8, 10, 12].find((size) => !taken.has(size)) ?? Math.max(...taken) + 1;
}
