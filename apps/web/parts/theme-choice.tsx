import { useState } from "react";
import { chooseTheme, chosenTheme, type Theme } from "../look/theme.ts";

const choices: readonly { readonly value: Theme; readonly label: string }[] = [
  { value: "device", label: "as the device" },
  { value: "light", label: "light" },
  { value: "dark", label: "dark" },
];

/** Light or dark paper. */
export function ThemeChoice() {
  const [theme, setTheme] = useState(chosenTheme);
  return (
    <label className="row">
      Light or dark page
      <select
        className="field-box"
        value={theme}
        onChange={(event) => {
          const chosen = choices.find((it) => it.value === event.target.value)?.value ?? "device";
          chooseTheme(chosen);
          setTheme(chosen);
        }}
      >
        {choices.map((it) => (
          <option key={it.value} value={it.value}>
            {it.label}
          </option>
        ))}
      </select>
    </label>
  );
}
