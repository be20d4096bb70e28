const NUMBER_AND_UNIT =
  /(?<=\d) (?=(?:g|oz|ml|l|tsp|Tbsp|cdtas?|cdas?|cups?|tazas?|cm|mm|h|min|%|°C|°F|\(\d)(?![\p{L}]))/gu;

/** A number and its unit on one line, wherever they stand in the card. */
export function unbroken<T>(value: T): T {
  if (typeof value === 'string') return value.replaceAll(NUMBER_AND_UNIT, '\u00a0') as T;
  if (Array.isArray(value)) return value.map(unbroken) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, unbroken(one)])) as T;
}
