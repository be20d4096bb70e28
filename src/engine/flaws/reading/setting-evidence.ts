import { unbroken } from '../../over-lines.ts';
import { celsius } from '../../quantities/units.ts';
import type { Token } from '../../text/tokens.ts';
import type { FindingId } from '../findings.ts';
import type { NumberSays } from './dose-evidence.ts';
import { type Measured, numeralAt } from './measured.ts';

const NEAR = 5;

/** True where one of the words stands within reach of a token, inside the same sentence. */
function near(tokens: readonly Token[], at: number, words: RegExp, reach = NEAR): boolean {
  for (const step of [1, -1])
    for (let i = at; i >= 0 && i < tokens.length && Math.abs(i - at) <= reach; i += step) {
      if (tokens[i]!.kind === 'mark' && /^[.;!?\n]/.test(tokens[i]!.text)) break;
      if (words.test(tokens[i]!.text)) return true;
    }
  return false;
}

const HARD =
  /^(coconut|palm|cocoa|tallow|lard|kernel|babassu|stearic|beeswax|butter|butters|shea|coco|palma|cacao|manteca|sebo|cera)$/;
const HARDEST = /^(cocoa|stearic|beeswax|cacao|cera|estearico)$/;

/** What a percentage says, by the word it stands beside. Limits are common practice. */
function percent(tokens: readonly Token[], at: number, value: number): readonly [FindingId, number][] {
  if (near(tokens, at, /^(superfat|sf|sobreengrasado)$/, 4))
    return value <= 2
      ? [['low-superfat', 0.95]]
      : value >= 10
        ? [['high-superfat', 0.95]]
        : [
            ['low-superfat', 0.05],
            ['high-superfat', 0.05],
          ];
  if (near(tokens, at, /^(vanillin|vanilla|vainillina|vainilla)$/, 3))
    return value > 0.5
      ? [['fragrance-vanilla', 0.95]]
      : [
          ['fragrance-vanilla', 0.05],
          ['fragrance-no-vanilla', 0.95],
        ];
  if (near(tokens, at, /^(lye|concentration|sosa|concentracion)$/, 3))
    return value <= 29 ? [['much-water', 0.95]] : value >= 32 ? [['much-water', 0.05]] : [];
  if (near(tokens, at, /^(water|agua)$/, 3))
    return value >= 36 ? [['much-water', 0.95]] : value <= 30 ? [['much-water', 0.1]] : [];
  if (near(tokens, at, HARDEST, 3) && value >= 8) return [['hard-oils', 0.95]];
  if (near(tokens, at, HARD, 3) && value >= 45) return [['hard-oils', 0.95]];
  return [];
}

/** What a temperature or an acidity says. Limits are common practice. */
function degrees(
  tokens: readonly Token[],
  at: number,
  value: number,
  unit: string,
): readonly [FindingId, number][] {
  if (/^(ph)$/.test(tokens[at - 1]?.text ?? '') || near(tokens, at, /^(ph|strip|strips|tira)$/, 3))
    if (value >= 7 && value <= 14) return [['high-ph', value >= 11 ? 0.95 : 0.07]];
  const warm =
    /^(f|fahrenheit|degrees|deg|grados)$/.test(unit) && value >= 50
      ? celsius(value)
      : /^(c|celsius|centigrade|degrees|grados)$/.test(unit)
        ? value
        : undefined;
  if (warm === undefined || warm > 110) return [];
  return warm >= 52 ? [['ran-hot', 0.92]] : warm <= 30 ? [['ran-cool', 0.92]] : [];
}

const SPANS: readonly (readonly [RegExp, (n: number) => readonly [FindingId, number][]])[] = [
  [/^(second|seconds|sec|secs|segundo|segundos|min|mins|minute|minutes|minutos?)$/, () => [['at-once', 0.7]]],
  [/^(hour|hours|hr|hrs|h|horas?)$/, n => [[n <= 48 ? 'next-day' : 'after-days', 0.85]]],
  [/^(day|days|dias?)$/, n => [[n <= 1 ? 'next-day' : n <= 8 ? 'after-days' : 'after-weeks', 0.85]]],
  [/^(week|weeks|wk|wks|semanas?)$/, n => [[n <= 10 ? 'after-weeks' : 'after-months', 0.9]]],
  [/^(month|months|mo|mos|mes|meses)$/, n => [[n <= 1 ? 'after-weeks' : 'after-months', 0.9]]],
  [/^(year|years|yr|yrs|anos?)$/, () => [['after-months', 0.92]]],
];

/** Numbers of the recipe and the calendar: superfat, water, hard oils, heat, pH, time since. */
export function settingEvidence(tokens: readonly Token[]): NumberSays[] {
  return tokens.flatMap((_, at) => {
    const numeral = numeralAt(tokens, at);
    if (!numeral) return [];
    const unit = tokens[numeral.to]?.text ?? '';
    const said =
      unit === '%' || unit === 'percent' || unit === 'pct' || unit === 'por'
        ? percent(tokens, numeral.to, numeral.value)
        : (SPANS.find(([words]) => words.test(unit))?.[1](numeral.value) ??
          degrees(tokens, at, numeral.value, unit));
    return said.map(([finding, probability]) => ({
      finding,
      probability,
      from: at,
      to: Math.min(tokens.length, numeral.to + 1),
    }));
  });
}

/** Two tablespoons of oil, water or glycerin for a colour are enough to soften a cup or two. Common practice. */
const MUCH_CARRIER_ML = 28;

/** A spoonful count of liquid that the text says went in with the colour. */
export function carrierEvidence(tokens: readonly Token[], amounts: readonly Measured[]): NumberSays[] {
  return amounts.flatMap(amount => {
    if (amount.measure !== 'volume' || amount.value < MUCH_CARRIER_ML || amount.value > 240) return [];
    const liquid = near(tokens, amount.to, /^(oil|glycerin|glicerina|water|aceite|agua)$/, 3);
    const forColour = near(tokens, amount.to, COLOUR_WORK, 14);
    return liquid && forColour
      ? [
          {
            finding: 'much-carrier',
            probability: 0.92,
            from: amount.from,
            to: Math.min(tokens.length, amount.to + 2),
          },
        ]
      : [];
  });
}

const COLOUR_WORK = new RegExp(
  unbroken`
    ^(mica|micas|oxide|colour|colours|coloured|colourant|pigment|neon|dispers\w*|wet|mix|mixed|thin\w*|
    loosen\w*|dissolv\w*|disolver|pigmento|colorante|slurry|paste|powder|pink|blue|red|green|purple|yellow|
    black|rosa|azul|rojo|verde)$
  `,
  '',
);
