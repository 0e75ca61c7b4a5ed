import type { ClassOutlook } from "#core/class";
import type { ClassPart } from "../class-sheet/class-part.ts";
import { useDropTyped } from "../fields/form.tsx";
import { MoneyField } from "../fields/money-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { PercentField } from "../fields/percent-field.tsx";
import { TickField } from "../fields/tick-field.tsx";
import { putOutlook } from "./outlook-part.ts";

type Full = NonNullable<ClassOutlook["full"]>;
type Props = { readonly full: Full; readonly put: (full: Full) => void };

const PLACES = { least: 0, most: 1000, whole: true };

/** What might be done about full evenings, the cheaper things first. */
export function FullFields({ document, change }: ClassPart) {
  const full = document.outlook?.full ?? {};
  const put = (next: Full) =>
    putOutlook({ document, change }, "full", Object.keys(next).length === 0 ? undefined : next);
  return (
    <fieldset className="fields">
      <legend>When evenings are full</legend>
      <NumberField
        path="outlook.full.extraMats"
        label="Mats that a tighter plan would add"
        unit="mats"
        range={PLACES}
        value={full.extraMats ?? 0}
        put={(extraMats) => put({ ...full, extraMats })}
      />
      <NumberField
        path="outlook.full.absences"
        label="Paid places known to stay empty"
        help="Which could be given to the waiting list"
        unit="a session"
        range={PLACES}
        value={full.absences ?? 0}
        put={(absences) => put({ ...full, absences })}
      />
      <MoneyField
        path="outlook.full.rise"
        label="A small rise"
        help="Of what one person brings"
        per="a person"
        value={full.rise ?? "0"}
        put={(rise) => put({ ...full, rise })}
      />
      <PercentField
        path="outlook.full.riseLoses"
        label="Of 100 people, so many would leave because of it"
        value={full.riseLoses ?? 0.05}
        put={(riseLoses) => put({ ...full, riseLoses })}
      />
      <BiggerHall full={full} put={put} />
      <SecondClass full={full} put={put} />
    </fieldset>
  );
}

function BiggerHall({ full, put }: Props) {
  const dropTyped = useDropTyped();
  const { biggerHall, ...others } = full;
  return (
    <>
      <TickField
        label="Weigh a bigger hall"
        checked={biggerHall !== undefined}
        put={(weigh) => {
          dropTyped("outlook.full.biggerHall");
          put(weigh ? { ...others, biggerHall: { capacity: 30, extraCost: "10" } } : others);
        }}
      />
      {biggerHall === undefined ? null : (
        <>
          <NumberField
            path="outlook.full.biggerHall.capacity"
            label="It has"
            unit="places"
            range={{ least: 1, most: 1000, whole: true }}
            value={biggerHall.capacity}
            put={(capacity) => put({ ...full, biggerHall: { ...biggerHall, capacity } })}
          />
          <MoneyField
            path="outlook.full.biggerHall.extraCost"
            label="It costs more by"
            per="a session"
            value={biggerHall.extraCost}
            put={(extraCost) => put({ ...full, biggerHall: { ...biggerHall, extraCost } })}
          />
        </>
      )}
    </>
  );
}

function SecondClass({ full, put }: Props) {
  const dropTyped = useDropTyped();
  const { secondClass, ...others } = full;
  return (
    <>
      <TickField
        label="Weigh a second class"
        checked={secondClass !== undefined}
        put={(weigh) => {
          dropTyped("outlook.full.secondClass");
          const fresh = { cost: "30", shareWhoWouldCome: 0.5, ownPeople: 0 };
          put(weigh ? { ...others, secondClass: fresh } : others);
        }}
      />
      {secondClass === undefined ? null : (
        <>
          <MoneyField
            path="outlook.full.secondClass.cost"
            label="It would cost"
            per="a session"
            value={secondClass.cost}
            put={(cost) => put({ ...full, secondClass: { ...secondClass, cost } })}
          />
          <PercentField
            path="outlook.full.secondClass.shareWhoWouldCome"
            label="Of 100 turned away, so many would come then"
            value={secondClass.shareWhoWouldCome}
            put={(shareWhoWouldCome) => put({ ...full, secondClass: { ...secondClass, shareWhoWouldCome } })}
          />
          <NumberField
            path="outlook.full.secondClass.ownPeople"
            label="People who could only come then"
            unit="a session"
            range={{ least: 0, most: 1000 }}
            value={secondClass.ownPeople}
            put={(ownPeople) => put({ ...full, secondClass: { ...secondClass, ownPeople } })}
          />
        </>
      )}
    </>
  );
}
