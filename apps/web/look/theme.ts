import { dropOnDevice } from "../drafts/on-device.ts";

export type Theme = "device" | "light" | "dark";

/** The choice that public/theme.js reads before the first paint; "device" follows the device's setting. */
export function chosenTheme(): Theme {
  const chosen = document.documentElement.dataset["theme"];
  return chosen === "light" || chosen === "dark" ? chosen : "device";
}

export function chooseTheme(theme: Theme): void {
  if (theme === "device") {
    delete document.documentElement.dataset["theme"];
    dropOnDevice("theme");
    return;
  }
  document.documentElement.dataset["theme"] = theme;
  try {
    localStorage.setItem("hallful:theme", theme);
  } catch {
    // the choice lasts for this visit only
  }
}
