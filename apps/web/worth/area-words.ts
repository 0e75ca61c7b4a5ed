import type { LengthUnits } from "#core/words";

/** 0.09290304 m² to the square foot, exact. */
const SQUARE_METRES_PER_SQUARE_FOOT = 0.092_903_04;

/** "109.9 m²", "1183 square feet", from square millimetres. */
export function areaWords(squareMillimetres: number, units: LengthUnits): string {
  const squareMetres = squareMillimetres / 1e6;
  return units === "metric"
    ? `${squareMetres.toFixed(1)} m²`
    : `${Math.round(squareMetres / SQUARE_METRES_PER_SQUARE_FOOT)} square feet`;
}

/** What one person takes by a table: "4.65 m²", "50 ft²". */
export function eachWords(squareMetres: number, units: LengthUnits): string {
  if (units === "metric") return `${squareMetres} m²`;
  // tables of square feet print whole ones: 4.65 m² are 50.05
  return `${Math.round((squareMetres / SQUARE_METRES_PER_SQUARE_FOOT) * 2) / 2} ft²`;
}
