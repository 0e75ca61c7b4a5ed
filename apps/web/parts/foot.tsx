import { ThemeChoice } from "./theme-choice.tsx";

/** What stands under every page: who decides, and the paper. */
export function Foot() {
  return (
    <footer className="foot">
      <p>
        Hallful works out estimates and is no adviser. How many people may be in a room is decided by the
        hall, its fire risk assessment and the local fire service; money and law by your insurer, your
        accountant and the tax office.
      </p>
      <ThemeChoice />
    </footer>
  );
}
