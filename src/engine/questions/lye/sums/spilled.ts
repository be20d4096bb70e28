import { unbroken } from '../../../over-lines.ts';
import { superfatIn } from '../amounts/amounts.ts';
import { Remaining } from '../amounts/words.ts';
import { ofLye, ofRole, one } from '../slips/reckoned.ts';
import { toldAmounts, wordsOfBatch } from '../slips/told-amounts.ts';
import { CAUSTIC } from '../topics/care-words.ts';
import { USUAL_SUPERFAT } from './check.ts';

/** Lye water that was lost before it met the oils: its share of all, and the superfat that the rest leaves, percent. */
export type LyeSpilled = {
  readonly grams: number;
  readonly ofGrams: number;
  readonly percent: number;
  readonly superfat: number;
  readonly meantSuperfat: number;
};

const SPILLED =
  /(?<!\p{L})(?:spilled|spilt|spill|lost|se me (?:derramo|cayo|volco|fue|salio)|derrame|perdi|tire)(?!\p{L})/u;
const LYE_WATER = new RegExp(
  unbroken`
    (?<!\p{L})(?:(?:${CAUSTIC}) ?(?:water|solution)|(?:agua|disolucion|solucion) (?:de|
    con) (?:la )?${CAUSTIC}|${CAUSTIC} (?:con|en|y) (?:el )?agua|lejia)(?!\p{L})
  `,
  'u',
);
/** Lye that may be on somebody is first of all that. */
const BODY = new RegExp(
  unbroken`
    (?<!\p{L})(?:hands?|arms?|legs?|feet|foot|skin|eyes?|face|me|him|her|cat|dog|manos?|brazos?|piernas?|
    pies?|piel|ojos?|cara|encima|perr[oa]|gat[oa])(?!\p{L})
  `,
  'u',
);
const MY = /(?<!\p{L})se me(?!\p{L})/gu;

/** What spilt lye water changes; undefined where its share cannot be told, or more than half is gone. Pure. */
export function lyeSpilledIn(question: string): LyeSpilled | undefined {
  const plain = wordsOfBatch(question);
  const cue = SPILLED.exec(plain);
  if (!cue || !LYE_WATER.test(plain) || BODY.test(plain.replace(MY, ' '))) return undefined;
  const amounts = toldAmounts(plain);
  const [first] = amounts;
  if (!first || first.at < cue.index) return undefined;
  const rest = amounts.slice(1);
  const lye = one(ofLye(rest));
  const water = one(ofRole(rest, 'water'));
  const whole = /^ ?(?:g|gr|grams?|gramos?|oz|ml)?\.? ?(?:de|of|out of|from)(?: the| los| las)? \d/u.test(
    plain.slice(first.at).replace(/^[\d.,/ ]+/u, ''),
  )
    ? rest[0]?.grams
    : undefined;
  const ofGrams = whole ?? (lye !== undefined && water !== undefined ? lye + water : undefined);
  if (ofGrams === undefined || !(first.grams < ofGrams / 2)) return undefined;
  const meantSuperfat = superfatIn(new Remaining(plain)).superfat ?? USUAL_SUPERFAT;
  const share = first.grams / ofGrams;
  return {
    grams: first.grams,
    ofGrams,
    percent: 100 * share,
    superfat: 100 - (100 - meantSuperfat) * (1 - share),
    meantSuperfat,
  };
}
