import { expect, test } from "vitest";
import { csvText } from "./csv-text.ts";

test("a cell with a comma or a quote stands in quotes, and every line ends as a spreadsheet expects", () => {
  const rows = [
    ["what", "amount"],
    ['hall, the "Barn"', "27.00"],
  ];
  expect(csvText(rows)).toBe('\uFEFFwhat,amount\r\n"hall, the ""Barn""",27.00\r\n');
});
