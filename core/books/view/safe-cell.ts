/**
 * A text cell that no spreadsheet takes for a formula: one that begins with =, +, −, @ or a tab gets an apostrophe
 * before it. Amounts are written by us and stay numbers, "-45.00" included. Common practice, no source.
 */
export function safeCell(text: string): string {
  return /^[=+\-@\t\r\n]/.test(text) ? `'${text}` : text;
}
