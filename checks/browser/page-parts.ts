import type { Locator, Page } from "playwright-core";

/** A part of a page by its title. */
export function part(page: Page, title: string): Locator {
  return page.getByRole("region", { name: title, exact: true });
}

/** Types into a field and leaves it, as a reader of the answer would. */
export async function fill(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press("Tab");
}
