import { countOf, partOf } from '../../quantities/number.ts';
import { unitOfWord, unitSize } from '../../quantities/unit-words.ts';
import { MEASURES } from '../../quantities/units.ts';
import type { Token } from '../../text/tokens.ts';

/** A number written in the text: `value`, and the tokens it stands in. */
export type Numeral = { readonly value: number; readonly from: number; readonly to: number };

/** A number with its unit: millilitres of a volume, grams of a mass. */
export type Measured = Numeral & {
  readonly measure: 'volume' | 'mass';
  readonly per: boolean;
  readonly cups: boolean;
};

const VULGAR: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};
const LOOSE: Readonly<Record<string, number>> = {
  couple: 2,
  few: 3,
  several: 4,
  single: 1,
  par: 2,
  unas: 3,
  unos: 3,
  fifteen: 15,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  double: 2,
};
/** Words that may stand between a number and its unit. */
const BETWEEN = new Set([
  'heaped',
  'heaping',
  'level',
  'full',
  'big',
  'small',
  'little',
  'rounded',
  'scant',
  'of',
  'a',
  'whole',
  'colmadas',
  'colmada',
  'llena',
  'llenas',
  'metric',
]);

function simple(token: Token | undefined): number | undefined {
  if (token === undefined) return undefined;
  if (token.kind === 'number') return VULGAR[token.text] ?? Number(token.text.replace(',', '.'));
  if (token.kind !== 'word') return undefined;
  return countOf(token.text) ?? partOf(token.text) ?? LOOSE[token.text];
}

/** Reads the number that starts at a token: 2, 0.5, 1/4, 1 1/2, ½, "two", "half a", "one and a half". */
export function numeralAt(tokens: readonly Token[], from: number): Numeral | undefined {
  const first = simple(tokens[from]);
  if (first === undefined || !Number.isFinite(first)) return undefined;
  if (tokens[from + 1]?.text === '/' && tokens[from + 2]?.kind === 'number') {
    const below = Number(tokens[from + 2]!.text);
    return below > 0 ? { value: first / below, from, to: from + 3 } : undefined;
  }
  let [value, to] = [first, from + 1];
  if (tokens[to]?.text === 'and' || tokens[to]?.text === 'y') {
    const skip = tokens[to + 1]?.text === 'a' ? 2 : 1;
    const part =
      tokens[to + skip]?.kind === 'word'
        ? partOf(tokens[to + skip]!.text)
        : VULGAR[tokens[to + skip]?.text ?? ''];
    if (part !== undefined) [value, to] = [value + part, to + skip + 1];
  } else if (tokens[from]!.kind === 'number' && Number.isInteger(first)) {
    const next = VULGAR[tokens[to]?.text ?? ''];
    if (next !== undefined) [value, to] = [value + next, to + 1];
    else if (
      tokens[to]?.kind === 'number' &&
      tokens[to + 1]?.text === '/' &&
      Number(tokens[to + 2]?.text) > 0
    )
      [value, to] = [value + Number(tokens[to]!.text) / Number(tokens[to + 2]!.text), to + 3];
  } else if (partOf(tokens[from]!.text) === undefined) {
    const part = tokens[to]?.kind === 'word' ? partOf(tokens[to]!.text) : undefined;
    if (part !== undefined) [value, to] = [value * part, to + 1];
  }
  return { value, from, to };
}

const PER = new Set(['per', 'each', 'every', 'por', 'cada', 'to', 'in', 'into', 'for', 'en', 'para', 'of']);
const DIVIDES = new Set(['per', 'por', 'cada', 'each', 'every', 'ppo', 'pp']);

/** Finds every measured amount; "per cup" counts as one cup. US kitchen measures. */
export function measuredIn(tokens: readonly Token[]): Measured[] {
  const found: Measured[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const before = tokens[at - 1]?.text ?? '';
    const numeral = numeralAt(tokens, at);
    let unitAt = numeral?.to ?? at;
    while (numeral && unitAt < numeral.to + 2 && BETWEEN.has(tokens[unitAt]?.text ?? '')) unitAt += 1;
    const token = tokens[unitAt];
    if (token?.text === 'ppo') {
      found.push({ value: 453.6, from: unitAt, to: unitAt + 1, measure: 'mass', per: true, cups: false });
      continue;
    }
    const unit = token?.kind === 'word' ? unitOfWord(token.text) : undefined;
    const bare = !numeral && (PER.has(before) || tokens[at - 1]?.text === '/');
    if (unit === undefined || (!numeral && !bare)) continue;
    const { measure, size } = unitSize(unit, MEASURES.us);
    const per = DIVIDES.has(before) || bare;
    found.push({
      value: (numeral?.value ?? 1) * size,
      from: at,
      to: unitAt + 1,
      measure,
      per,
      cups: unit === 'cup',
    });
    at = unitAt;
  }
  return found;
}
