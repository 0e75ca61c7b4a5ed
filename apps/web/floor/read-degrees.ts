/** 0 to 180 degrees, a decimal comma allowed; null for anything else. */
export function readDegrees(text: string): number | null {
  const tidy = text.trim().replace(",", ".").replace("°", "");
  if (!/^\d{1,3}(\.\d+)?$/.test(tidy)) return null;
  const degrees = Number(tidy);
  return degrees <= 180 ? degrees : null;
}
