import type { LyeTopic } from '../../lye/topics/topic.ts';
import type { Technique } from '../../technique/topic.ts';
import type { Before } from '../before.ts';
import type { Danger } from './danger-kind.ts';

/*
 * What may hurt somebody in what a talk is about. Later turns rarely say it again: "can I just let it cure longer" after an oil was left out
 * is asked of a loaf that burns, and has no answer that holds for sound soap.
 */

/** A soap of which these were told has too much lye, or may have it until it is reckoned. */
const LYE_HEAVY: ReadonlySet<LyeTopic> = new Set([
  'oil-forgotten',
  'too-much-in',
  'lye-twice',
  'amounts-swapped',
  'wrong-unit',
  'cure-lye-heavy',
  'rebatch-lye-heavy',
  'zap-use',
  'ph-high',
  'lye-heavy-laundry',
]);
/** Lye water that is out of hand, or not all dissolved. */
const LYE_WATER: ReadonlySet<LyeTopic> = new Set([
  'water-was-put-on',
  'undissolved-lye',
  'cloudy-lye',
  'honey-in-lye',
  'alcohol-in-lye',
  'water-onto-lye',
]);
const LYE_METAL: ReadonlySet<LyeTopic> = new Set(['metal-in-lye']);

function dangerOf(last: Before): Danger | undefined {
  if (last.kind === 'emergency') {
    if (last.ids.includes('hydrogen-from-metal')) return 'lye-metal';
    return last.ids.includes('lye-eruption') ? 'lye-water' : undefined;
  }
  if (last.kind === 'command' && last.burns) return 'lye-heavy';
  if (last.kind !== 'matter') return undefined;
  if (LYE_METAL.has(last.id)) return 'lye-metal';
  return LYE_HEAVY.has(last.id) ? 'lye-heavy' : LYE_WATER.has(last.id) ? 'lye-water' : undefined;
}

/** Asked plainly of something else: a command is, but for what is told of a flaw. */
const isOfElse = (last: Before): boolean =>
  last.kind === 'contest' || (last.kind === 'command' && last.command !== 'diagnose');

/** The danger that a talk is in after a turn: what the turn was of, else that of before until something else is plainly asked. Pure. */
export function dangerAfter(earlier: Danger | undefined, last: Before): Danger | undefined {
  const told = dangerOf(last);
  // Lye that met metal stays so, whatever lies at the bottom of its jug.
  if (earlier === 'lye-metal' && told === 'lye-water') return earlier;
  return told ?? (isOfElse(last) ? undefined : earlier);
}

/** What is said of curing, using, giving and selling sound soap, and holds for none that has too much lye. */
const OF_SOUND_SOAP: ReadonlySet<Technique | LyeTopic> = new Set<Technique | LyeTopic>([
  'cure-time',
  'colour-in-cure',
  'label-selling',
  'demould-cut',
  'after-pour',
  'cosmetic-grade',
  'when-safe',
  'safe-test',
  'used-early',
  'soap-ph',
  'soap-at-large',
  'selling',
  'why-cure',
  'wrapping',
  'children-cured',
  'hot-process-cure',
]);
/** Whether an answer speaks of curing or using soap as of one that is sound. Pure. */
export const isOfSoundSoap = (id: string): boolean => (OF_SOUND_SOAP as ReadonlySet<string>).has(id);
