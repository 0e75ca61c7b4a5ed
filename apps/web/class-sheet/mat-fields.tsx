import {
  arrangements,
  arrangementWords,
  type GapPreset,
  gapPresetNames,
  gapPresets,
  type HallDocument,
  matPresets,
  presetOf,
} from "#core/hall";
import { metresFromMillimetres, millimetresFromMetres, type LengthUnits } from "#core/words";
import { ChoiceField } from "../fields/choice-field.tsx";
import { LengthField } from "../fields/length-field.tsx";
import { OptionalNumberField } from "../fields/number-field.tsx";
import type { ClassPart } from "./class-part.ts";

type Props = ClassPart & { readonly hall: HallDocument | null; readonly units: LengthUnits };

const PEOPLE = { least: 0, most: 1000, whole: true };
const presetNames: Readonly<Record<GapPreset, string>> = {
  close: "close",
  usual: "usual",
  roomy: "roomy",
  chairs: "with chairs",
};

/** How far apart the mats lie for this class, and what else limits their number. */
export function MatFields({ document, change, hall, units }: Props) {
  return (
    <div>
      <ArrangementField document={document} change={change} hall={hall} />
      <SpacingFields document={document} change={change} hall={hall} units={units} />
      <OptionalNumberField
        path="matsOwned"
        label="Mats you have, or people bring"
        help="Empty if there are enough"
        unit="mats"
        range={PEOPLE}
        guessable={document.matsOwned !== null}
        value={document.matsOwned}
        none={null}
        put={(matsOwned) => change({ matsOwned })}
      />
      <OptionalNumberField
        path="ownCap"
        label="The most you want to teach"
        help="Empty for no limit of your own"
        unit="people"
        range={PEOPLE}
        guessable={document.ownCap !== null}
        value={document.ownCap}
        none={null}
        put={(ownCap) => change({ ownCap })}
      />
      <OptionalNumberField
        path="insurerCap"
        label="The most your insurer covers"
        help="Empty if your policy names none"
        unit="people"
        range={PEOPLE}
        guessable={document.insurerCap !== null}
        value={document.insurerCap}
        none={null}
        put={(insurerCap) => change({ insurerCap })}
      />
    </div>
  );
}

/** How the mats stand for this class where that is not as chosen for the hall. */
function ArrangementField({ document, change, hall }: Omit<Props, "units">) {
  const own = arrangementWords[hall?.arrangement ?? "lines"];
  return (
    <ChoiceField
      label="How the mats lie"
      value={document.arrangement ?? "hall"}
      choices={[
        { value: "hall", label: `as chosen for the hall, ${own}` },
        ...arrangements.map((it) => ({ value: it, label: arrangementWords[it] })),
      ]}
      onChange={(chosen) => change({ arrangement: arrangements.find((it) => it === chosen) })}
    />
  );
}

type Mats = NonNullable<ClassPart["document"]["mats"]>;

function SpacingFields({ document, change, hall, units }: Props) {
  const { mats } = document;
  const own = mats === null ? "hall" : (presetName(mats) ?? "own");
  return (
    <>
      <ChoiceField
        label="Space between the mats"
        value={own}
        choices={[
          { value: "hall", label: "as drawn for the hall" },
          ...gapPresetNames.map((name) => ({ value: name, label: presetNames[name] })),
          { value: "own", label: "of this class’s own" },
        ]}
        onChange={(chosen) => change({ mats: chosenMats(chosen, mats, hall) })}
      />
      {mats === null ? null : <MatLengths mats={mats} put={(next) => change({ mats: next })} units={units} />}
    </>
  );
}

function MatLengths({
  mats,
  put,
  units,
}: {
  readonly mats: Mats;
  readonly put: (mats: Mats) => void;
  readonly units: LengthUnits;
}) {
  const gap = (key: keyof Mats["gaps"], label: string) => (
    <LengthField
      path={`mats.gaps.${key}`}
      label={label}
      units={units}
      value={mats.gaps[key]}
      put={(metres) => put({ ...mats, gaps: { ...mats.gaps, [key]: metres } })}
    />
  );
  const side = (key: keyof Mats["mat"], label: string) => (
    <LengthField
      path={`mats.mat.${key}`}
      label={label}
      units={units}
      value={mats.mat[key]}
      put={(metres) => put({ ...mats, mat: { ...mats.mat, [key]: metres } })}
    />
  );
  return (
    <>
      {side("length", "Length of a mat")}
      {side("width", "Width of a mat")}
      {gap("side", "Gap beside a mat")}
      {gap("end", "Gap between head and foot")}
      {gap("wall", "Gap from the walls")}
    </>
  );
}

function presetName({ gaps }: Mats): GapPreset | undefined {
  return presetOf({
    side: millimetresFromMetres(gaps.side),
    end: millimetresFromMetres(gaps.end),
    wall: millimetresFromMetres(gaps.wall),
  });
}

function chosenMats(chosen: string, mats: Mats | null, hall: HallDocument | null): Mats | null {
  if (chosen === "hall") return null;
  const mat = mats?.mat ?? hall?.mat ?? inMetres(matPresets.standard);
  const preset = gapPresetNames.find((name) => name === chosen);
  if (preset !== undefined) return { mat, gaps: inMetres(gapPresets[preset]) };
  // her own begins a centimetre off the present, so that it is no longer a named one
  const gaps = mats?.gaps ?? hall?.gaps ?? inMetres(gapPresets.usual);
  return { mat, gaps: { ...gaps, side: Number((gaps.side + 0.01).toFixed(3)) } };
}

function inMetres<Lengths extends Readonly<Record<string, number>>>(lengths: Lengths) {
  const entries = Object.entries(lengths).map(([key, value]) => [key, metresFromMillimetres(value)]);
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the keys are those that went in
  return Object.fromEntries(entries) as { [Key in keyof Lengths]: number };
}
