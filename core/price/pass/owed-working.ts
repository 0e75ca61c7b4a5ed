import { type CurrencyCode, exactText, moneyText, type WorkingLine } from "#core/words";
import { type LivePass, owedClasses, owedOn } from "./owed-classes.ts";

/** Price × left ÷ classes for each kind of pass that is out, and all of it together. */
export function owedWorking(passes: readonly LivePass[], currency: CurrencyCode): readonly WorkingLine[] {
  const { amount } = owedClasses(passes);
  return [
    ...passes.map((pass) => ({
      label: `${countWords(pass)}, ${pass.left === 1 ? "1 class" : `${pass.left} classes`} left`,
      sum: `${moneyText(pass.price, currency)} ÷ ${pass.classes} × ${pass.left}`,
      amount: exactText(owedOn(pass), currency),
    })),
    { label: "Owed in classes", sum: "", amount: exactText(amount, currency), total: true },
  ];
}

function countWords({ passes = 1, classes }: LivePass): string {
  return passes === 1 ? `A pass of ${classes}` : `${passes} passes of ${classes}`;
}
