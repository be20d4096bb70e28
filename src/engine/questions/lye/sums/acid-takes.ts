import {
  ACETIC_MOLES_PER_GRAM,
  CITRIC_MOLES_PER_GRAM,
  CITRIC_MONOHYDRATE_MOLES_PER_GRAM,
  LACTIC_MOLES_PER_GRAM,
} from '../../../batch/additives/additive.ts';
import { KOH_MOLAR_MASS, NAOH_MOLAR_MASS } from '../../../batch/oils/fatty-acids.ts';
import { unbroken } from '../../../over-lines.ts';
import { decimal, MASS } from '../amounts/words.ts';
import { gramsOrMillilitres, VOLUME, wordsOfBatch } from '../slips/told-amounts.ts';
import { CAUSTIC } from '../topics/care-words.ts';

/** Lye that an acid takes for itself: grams for a gram of the pure acid, and for the weight that is told. */
export type AcidTakes = {
  readonly acid: 'citric' | 'citric-monohydrate' | 'vinegar' | 'lactic';
  /** Of what is told: 1 for a pure acid, 0.05 for vinegar of 5 %. */
  readonly strength: number;
  readonly perGram: { readonly naoh: number; readonly koh: number };
  readonly told: { readonly grams: number; readonly naoh: number; readonly koh: number } | undefined;
};

const ACIDS = [
  [
    'citric-monohydrate',
    /citric acid monohydrate|monohydrate citric|acido citrico monohidrat/u,
    CITRIC_MONOHYDRATE_MOLES_PER_GRAM,
  ],
  ['citric', /citric(?: acid)?|(?:acido )?citrico/u, CITRIC_MOLES_PER_GRAM],
  ['lactic', /lactic acid|acido lactico/u, LACTIC_MOLES_PER_GRAM],
  ['vinegar', /vinegar|vinagre/u, ACETIC_MOLES_PER_GRAM],
] as const;
/** Vinegar for the table, as its label says. */
const USUAL_VINEGAR = 0.05;
const ASKS = /(?<!\p{L})(?:how (?:much|many)|per gram|a gram|cuant[oa]s?|por gramo)(?!\p{L})/u;
const TAKES = new RegExp(`(?<!\\p{L})${CAUSTIC}(?!\\p{L})`, 'u');
const OF_LYE = new RegExp(
  unbroken`
    (?<!\p{L})(?:more|extra|eats?|takes?|uses?|neutrali[sz]\w+|add|need|de mas|mas|come|gasta|consume|
    neutraliza|lleva|necesit\w+|anad\w+|agreg\w+|per gram|por gramo)(?!\p{L})
  `,
  'u',
);
/** An acid after the fact mends no bar, and is asked about as such. */
const TO_MEND = /(?<!\p{L})(?:lye heavy|caustic soap|fix|save|arregl\p{L}+|salvar)(?!\p{L})/u;
const OILS_TOLD =
  /\d ?(?:g|kg|oz|lb)?\.? ?(?:of |de )?(?:the )?(?:oils?|olive|coconut|aceites?|oliva|coco)(?!\p{L})/u;

/** Lye that an acid takes, where that is asked; undefined where it is not, or a recipe stands beside it. Pure. */
export function acidTakesIn(question: string): AcidTakes | undefined {
  const plain = wordsOfBatch(question);
  if (
    !ASKS.test(plain) ||
    !TAKES.test(plain) ||
    !OF_LYE.test(plain) ||
    TO_MEND.test(plain) ||
    OILS_TOLD.test(plain)
  )
    return undefined;
  const found = ACIDS.find(([, name]) => name.test(plain));
  if (!found) return undefined;
  const [acid, name, moles] = found;
  const strength = acid === 'vinegar' ? (strengthIn(plain) ?? USUAL_VINEGAR) : 1;
  const perGram = { naoh: moles * NAOH_MOLAR_MASS, koh: moles * KOH_MOLAR_MASS };
  const grams = gramsOf(plain, name.source);
  const of = (one: number) => grams! * strength * one;
  return {
    acid,
    strength,
    perGram,
    told: grams === undefined ? undefined : { grams, naoh: of(perGram.naoh), koh: of(perGram.koh) },
  };
}

function strengthIn(plain: string): number | undefined {
  const percent = /(\d+(?:\.\d+)?) ?(?:%|percent|por ciento)/u.exec(plain.replaceAll(',', '.'))?.[1];
  const share = percent === undefined ? undefined : decimal(percent) / 100;
  return share !== undefined && share > 0 && share <= 0.3 ? share : undefined;
}

function gramsOf(plain: string, name: string): number | undefined {
  const amount = `(${MASS}|${VOLUME})`;
  const near =
    new RegExp(
      `${amount}(?: (?:of|de))?(?: \\d+(?:[.,]\\d+)? ?(?:%|percent|por ciento))?(?: (?:of|de))? (?:${name})`,
      'u',
    ).exec(plain)?.[1] ??
    new RegExp(`(?:${name})[ ,]+(?:(?:i|le|put|puse|used|use) )*${amount}`, 'u').exec(plain)?.[1];
  return near === undefined ? undefined : gramsOrMillilitres(near);
}
