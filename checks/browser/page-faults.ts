import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { wordsOn } from "./chromium.ts";

// Words that belong to other people's products or hide what a thing is: the glossary has a plain one for each.
const unwanted =
  /\b(check-?in|memberships?|credits|points|packages?|leads|funnel|churn|utili[sz]ation|upsell|dashboard|NaN|undefined|Infinity|null)\b/i;

/** What is wrong with a page as it stands: axe, wider than the screen, a word that is not ours. */
export async function faultsOf(page: Page): Promise<readonly string[]> {
  const seen = await new AxeBuilder({ page })
    .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"])
    .analyze();
  const axe = seen.violations.flatMap((it) =>
    it.nodes.map((node) => `${it.id}: ${node.target.join(" ")}: ${node.failureSummary ?? ""}`),
  );
  const spill = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  const word = unwanted.exec(await wordsOn(page))?.[0];
  return [
    ...axe,
    ...(spill > 0 ? [`the page is ${spill} px wider than the screen`] : []),
    ...(word === undefined ? [] : [`says “${word}”`]),
  ];
}
