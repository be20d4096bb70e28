import type { HeatProcess } from '../../heat/setting.ts';
import type { Amount } from '../../quantities/amount.ts';
import { plainText } from '../../quantities/number.ts';
import type { Measures } from '../../quantities/units.ts';
import { refuse } from '../../refusal.ts';
import { leadingAmount } from '../../text/amounts/leading-amount.ts';
import { excerpt } from '../../text/excerpt.ts';

declare module '../../refusal.ts' {
  interface Reasons {
    /** `colours` are those the batch has, as they are called. */
    'batch-change-unclear': { readonly text: string; readonly colours: readonly string[] };
    'batch-changes-many': { readonly most: number };
  }
}

/** One thing that was done otherwise than planned, as it was written. */
export type Change =
  | {
      readonly kind: 'amount';
      readonly text: string;
      /** Empty where no colour is named. */
      readonly name: string;
      readonly now: Amount;
      /** What was planned, where that is said instead of a name. */
      readonly before: Amount | undefined;
    }
  | { readonly kind: 'without'; readonly text: string; readonly name: string }
  | { readonly kind: 'gel'; readonly text: string; readonly gelled: boolean }
  | { readonly kind: 'process'; readonly text: string; readonly process: HeatProcess }
  | { readonly kind: 'note'; readonly text: string };

const MOST_CHANGES = 20;
const SPLIT = /\s*(?:[;\n]|,(?!\d))\s*/u;
const INSTEAD = /^(.+?)\s*,?\s+(?:instead of|rather than|in place of|en vez de|en lugar de)\s+(.+)$/iu;
const NO_GEL =
  /^(?:it |has )?(?:no|not|did ?n.?t|did not|without|sin|no hubo)\s+(?:\p{L}+\s+)?(?:gel|gelif)/iu;
const GEL =
  /^(?:it |has |with |went through |full |con |hubo |se )?\s*(?:gel(?:l?ed)?(?: phase)?|gelific\w*|gelificó)$/iu;
const WITHOUT = /^(?:no|without|left out|skipped|sin|omit[ií])\s+(?:the |el |la )?(.+)$/iu;
const NUMBER_FIRST = /^[-\u2212\u2013]?\s*[\d.,½¼¾⅛⅓⅔]/u;

const PLACES: readonly (readonly [RegExp, HeatProcess])[] = [
  [/\b(?:fridge|refrigerator|freezer|nevera|frigor[ií]fico|refrigerador|congelador|heladera)\b/iu, 'fridge'],
  [/\b(?:oven|horno)\b/iu, 'oven'],
  [/\b(?:wrapped|insulated|towels?|blankets?|abrigad[oa]|mantas?|toallas?)\b/iu, 'insulated'],
  [/\b(?:bench|counter|left open|mesa|encimera)\b/iu, 'ambient'],
];

/**
 * Reads what was done otherwise, pieces apart by `,` or `;`: `2 tsp instead of 1`, `1/2 tsp violet`, `no violet`,
 * `no gel`, `fridge`. What is none of these is a note. English and Spanish; spoons are those of `measures`.
 * Throws a Refusal: `batch-changes-many`, `batch-change-unclear` (less than nothing), or one of the amounts' own.
 */
export function parseChanges(text: string, measures: Measures): readonly Change[] {
  const pieces = text
    .slice(0, 1000)
    .split(SPLIT)
    .map(piece => piece.trim())
    .filter(piece => piece !== '');
  if (pieces.length > MOST_CHANGES) refuse('batch-changes-many', { most: MOST_CHANGES });
  return pieces.map(piece => readChange(piece, measures));
}

function readChange(text: string, measures: Measures): Change {
  if (/^[-\u2212\u2013]\s*\d/u.test(text))
    refuse('batch-change-unclear', { text: excerpt(text), colours: [] });
  if (NO_GEL.test(text)) return { kind: 'gel', text, gelled: false };
  if (GEL.test(text)) return { kind: 'gel', text, gelled: true };
  const swapped = INSTEAD.exec(text);
  if (swapped) return instead(text, swapped[1]!, swapped[2]!, measures);
  const dose = amountAndName(text, measures);
  if (dose) return { kind: 'amount', text, ...dose, before: undefined };
  const place = PLACES.find(([pattern]) => pattern.test(text));
  if (place && text.split(/\s+/u).length <= 4) return { kind: 'process', text, process: place[1] };
  const without = WITHOUT.exec(text);
  return without ? { kind: 'without', text, name: without[1]! } : { kind: 'note', text };
}

/** `2 tsp (violet) instead of 1 (tsp)`: where the second has no unit it has the first's. */
function instead(text: string, first: string, second: string, measures: Measures): Change {
  const now = amountAndName(first, measures);
  if (!now || !NUMBER_FIRST.test(second)) return { kind: 'note', text };
  const unit = /^[\s\d.,/½¼¾⅛⅓⅔]*(\p{L}+)/u.exec(plainText(first))?.[1] ?? '';
  const before = amountAndName(second, measures) ?? amountAndName(`${second} ${unit}`, measures);
  if (!before) return refuse('batch-change-unclear', { text: excerpt(text), colours: [] });
  return {
    kind: 'amount',
    text,
    name: now.name === '' ? before.name : now.name,
    now: now.now,
    before: before.now,
  };
}

type Dosed = { readonly name: string; readonly now: Amount };

/** `2 tsp violet`, `2 tsp of violet`, `violet 2 tsp`, `violet: 2 tsp`. */
function amountAndName(text: string, measures: Measures): Dosed | undefined {
  const head = leadingAmount(text, measures);
  if (head) return { name: head.rest.replace(/^(?:of|de)\s+/iu, '').trim(), now: head.amount };
  for (const { index } of text.matchAll(/(?<=[\s:=])[\d.,½¼¾⅛⅓⅔]/gu)) {
    const tail = leadingAmount(text.slice(index), measures);
    const name = text.slice(0, index).replace(/[\s:=@]+$/u, '');
    if (tail && tail.rest === '' && /\p{L}/u.test(name)) return { name, now: tail.amount };
  }
  return undefined;
}
