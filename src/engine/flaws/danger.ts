import { unbroken } from '../over-lines.ts';
import { deaccented } from '../text/unaccented.ts';
import { CAUSE_IDS, CAUSES } from './causes.ts';
import type { Evidence } from './diagnosis.ts';
import type { FindingId } from './findings.ts';
import { chanceOfAny, type Posterior } from './inference.ts';
import type { RemedyId } from './remedies.ts';

/** Causes that may leave free lye in the soap. */
export const LYE_CAUSES = CAUSE_IDS.filter(id => CAUSES[id].doNotUse);

/** From this chance of free lye on nobody is told to use, cut or mend the soap. Chosen for caution, not measured. */
const LEAST_LYE = 0.15;

/** As much once "do not use it" was said and until a strip or a tongue has told. Chosen for caution. */
const LEAST_LYE_ONCE_WARNED = 0.04;
const TOLD_BY_TEST: ReadonlySet<FindingId> = new Set(['zaps', 'high-ph']);

/** Signs that are enough alone, whatever else explains the bar. */
const BITES: ReadonlySet<FindingId> = new Set(['burns-skin', 'zaps', 'zaps-in-spots', 'high-ph']);

const EYES = /\b(eyes?|ojos?)\b/i;
const IN_EYE =
  /\b(in(to)?|en)\s+(my|his|her|the|their|one|both|an|el|los|mi|mis|un)\s+(left\s+|right\s+)?(eyes?|ojos?)\b/i;
const ON_SKIN = new RegExp(
  unbroken`
    \b(splash|splashed|spilled|spilt|got|salpic\w+|cayo|derram\w+)\b[^.!?\n]{0,40}\b(on|onto|over|en|
    sobre)\s+(my|his|her|the|their|la|el|mi|mis|las|los)\s+(bare\s+)?(skin|hands?|arms?|face|fingers?|legs?|
    feet|foot|piel|manos?|brazos?|cara|dedos?|piernas?|pies?)\b
  `,
  'i',
);
const CAUSTIC = /\b(lye|batter|caustic|raw soap|fresh soap|sosa|lejia|masa)\b/i;

/** Whether somebody hurts, or caustic stuff got where it hurts, so that first aid comes before any cause. */
export function hurt(evidence: readonly Evidence[], words: string): 'skin' | 'eye' | undefined {
  const plain = deaccented(words);
  const burning = evidence.some(item => item.finding === 'burns-skin' && item.probability > 0.5);
  if (IN_EYE.test(plain) || (burning && EYES.test(plain))) return 'eye';
  return burning || (CAUSTIC.test(plain) && ON_SKIN.test(plain)) ? 'skin' : undefined;
}

/** The chance, 0 to 1, that a cause is at work which leaves free lye. */
export const freeLye = (posterior: Posterior): number => chanceOfAny(posterior, LYE_CAUSES);

/** Whether the soap may hold free lye: it bites somebody, or such a cause is likely enough; `warned` where that was said before. */
export function mayHoldLye(
  evidence: readonly Evidence[],
  posterior: Posterior,
  { warned }: { readonly warned: boolean },
): boolean {
  const there = evidence.filter(item => item.probability > 0.5);
  if (there.some(item => BITES.has(item.finding))) return true;
  const isUntested = warned && !evidence.some(item => TOLD_BY_TEST.has(item.finding));
  return there.length > 0 && freeLye(posterior) >= (isUntested ? LEAST_LYE_ONCE_WARNED : LEAST_LYE);
}

/** What comes first where the soap may hold free lye. */
export const HANDS_OFF: readonly RemedyId[] = ['do-not-use', 'keep-gloves-on', 'no-guessed-repair'];

/** What may still be done with such soap: nothing that has hands on it or ends in a bath. */
const STILL_FINE: ReadonlySet<RemedyId> = new Set(['discard-safely', 'discard-mouldy', 'cool-loaf-now']);

/** Split batter that hurt nobody can be brought back in its pot: its oils and lye were weighed. */
const FOR_SPLIT_BATTER: ReadonlySet<RemedyId> = new Set([
  'stick-blend-back-together',
  'hot-process-now',
  'reabsorb-then-test-strip',
]);

/** A cause's advice for this batch where the soap may hold free lye. */
export function guarded(
  advice: readonly RemedyId[],
  { split }: { readonly split: boolean },
): readonly RemedyId[] {
  const kept = advice.filter(id => STILL_FINE.has(id) || (split && FOR_SPLIT_BATTER.has(id)));
  return [...HANDS_OFF, ...kept];
}

/** White dots may be fat, powder or ash, and may be lye that did not dissolve: nobody is told to use them before one was tested. */
export const areUntestedSpecks = (evidence: readonly Evidence[]): boolean =>
  evidence.some(({ finding, probability }) => finding === 'white-specks' && probability > 0.5) &&
  !evidence.some(({ finding }) => finding === 'zaps-in-spots' || TOLD_BY_TEST.has(finding));

/** A cause's advice for this batch where white dots were not tested yet. */
export const testedFirst = (advice: readonly RemedyId[]): readonly RemedyId[] => [
  'test-white-specks',
  ...advice.filter(id => id !== 'use-as-it-is' && id !== 'only-looks'),
];
