/** 1110 minutes from midnight is "18:30"; what begins before midnight is told as the hour of the day before. */
export function clockText(minutes: number): string {
  // a hall may be had until the end of the day
  if (minutes === 1440) return "24:00";
  const ofDay = (minutes + 1440) % 1440;
  return `${twoDigits(Math.floor(ofDay / 60))}:${twoDigits(ofDay % 60)}`;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, "0");
}
