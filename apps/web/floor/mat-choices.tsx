import {
  type GapPreset,
  gapPresetNames,
  gapPresets,
  type MatGaps,
  type MatPreset,
  matPresetNames,
  matPresetOf,
  matPresets,
  presetOf,
} from "#core/hall";
import { formatLength, type LengthUnits } from "#core/words";
import { AxisChoice } from "./axis-choice.tsx";
import type { FloorPart } from "./floor-part.ts";
import { LengthChoice } from "./length-choice.tsx";
import { freeLength } from "./length-ways.ts";
import { LengthField } from "./length-field.tsx";
import type { FloorHistory } from "./use-floor-history.ts";

type Props = { readonly floor: FloorHistory; readonly units: LengthUnits };

const gapWords: Readonly<Record<keyof MatGaps, string>> = {
  side: "Beside a mat",
  end: "Between head and foot",
  wall: "From walls and fixtures",
};

/** The mat, the gaps and the direction, each by a name or by figures of her own. */
export function MatChoices({ floor, units }: Props) {
  const part = floor.shown;
  const set = (change: Partial<FloorPart>, key?: string) => {
    floor.settle({ ...part, ...change }, key);
    return null;
  };
  return (
    <div className="floor-choices">
      <fieldset className="fields">
        <legend>Mat</legend>
        <NamedChoice
          label="Size"
          names={matPresetNames}
          chosen={matPresetOf(part.mat)}
          words={(name) => matWords(name, units)}
          onChoose={(name) => set({ mat: matPresets[name] })}
        />
        <LengthField
          label="Length"
          length={part.mat.length}
          units={units}
          onSet={(length) => set({ mat: { ...part.mat, length } })}
        />
        <LengthField
          label="Width"
          length={part.mat.width}
          units={units}
          onSet={(width) => set({ mat: { ...part.mat, width } })}
        />
      </fieldset>
      <fieldset className="fields">
        <legend>Gaps</legend>
        <NamedChoice
          label="Spacing"
          names={gapPresetNames}
          chosen={presetOf(part.gaps)}
          words={(name) => spacingWords[name]}
          onChoose={(name) => set({ gaps: gapPresets[name] })}
        />
        {(["side", "end", "wall"] as const).map((gap) => (
          <LengthField
            key={gap}
            label={gapWords[gap]}
            length={part.gaps[gap]}
            units={units}
            onSet={(length) => set({ gaps: { ...part.gaps, [gap]: length } })}
          />
        ))}
      </fieldset>
      <AxisChoice axis={part.axis} onChoose={(axis) => floor.settle({ ...freeLength(part), axis }, "axis")} />
      <LengthChoice part={part} onChoose={(next) => floor.settle(next)} />
    </div>
  );
}

const spacingWords: Readonly<Record<GapPreset, string>> = {
  close: "close",
  usual: "usual",
  roomy: "roomy",
  chairs: "wide, for chairs",
};

function matWords(name: MatPreset, units: LengthUnits): string {
  const { length, width } = matPresets[name];
  return `${name}, ${formatLength(length, units)} × ${formatLength(width, units)}`;
}

/** A choice among names, with "own figures" for what has none. */
function NamedChoice<Name extends string>(props: {
  readonly label: string;
  readonly names: readonly Name[];
  readonly chosen: Name | undefined;
  readonly words: (name: Name) => string;
  readonly onChoose: (name: Name) => void;
}) {
  const { label, names, chosen, words, onChoose } = props;
  return (
    <label className="floor-length">
      <span className="field-label">{label}</span>
      <select
        className="field-box"
        value={chosen ?? ""}
        onChange={(event) => {
          const name = names.find((it) => it === event.target.value);
          if (name !== undefined) onChoose(name);
        }}
      >
        {chosen === undefined && <option value="">own figures</option>}
        {names.map((name) => (
          <option key={name} value={name}>
            {words(name)}
          </option>
        ))}
      </select>
    </label>
  );
}
