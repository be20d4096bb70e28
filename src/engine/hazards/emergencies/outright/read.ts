import { flawWords } from '../../../flaws/reading/concepts.ts';
import { PLAIN_WORDS } from '../../../flaws/reading/lexicon/plain.ts';
import { lexiconReader } from '../../../flaws/reading/lexicon-reader.ts';
import { compileOver, matches } from '../../../flaws/reading/pattern.ts';
import type { Reading } from '../../../flaws/reading/polarity.ts';
import { groupedBy } from '../../../grouped.ts';
import type { Token } from '../../../text/tokens.ts';
import { whenAsked } from '../../../when-asked.ts';
import type { EmergencyId } from '../emergency.ts';
import { EVERYDAY_WORDS } from '../plain.ts';
import { OUTRIGHT_WORDS, type OutrightWord } from './lexicon.ts';
import { OUTRIGHT_PATTERNS, type OutrightScene } from './patterns.ts';

const reader = lexiconReader<OutrightWord>(OUTRIGHT_WORDS, {
  plain: () => [...PLAIN_WORDS, ...flawWords(), ...EVERYDAY_WORDS],
  open: /^(?!harmless$|notdeny$)/,
  // A slip of the thumb is put right only where hardly another word is near.
  spelt: /^(swell|allergy|seizure|outcold)$/,
});
const patterns = whenAsked(() =>
  compileOver<OutrightScene>(
    Object.fromEntries(
      Object.entries(OUTRIGHT_PATTERNS).map(([scene, all]) => [scene, all.join('; ')]),
    ) as Record<OutrightScene, string>,
    reader.isConcept,
  ),
);

const EMERGENCY_OF: { readonly [One in OutrightScene]: EmergencyId } = {
  anaphylaxis: 'skin-reaction',
  swallowed: 'lye-swallowed',
  eye: 'lye-eye',
  skin: 'lye-skin',
  unconscious: 'fumes-inhaled',
  spill: 'lye-eruption',
  metal: 'hydrogen-from-metal',
  'toxic-gas': 'toxic-gas',
  fire: 'fire',
  powder: 'fumes-inhaled',
};
/** Before anything else that the same words tell of. */
const FIRST: ReadonlySet<OutrightScene> = new Set(['anaphylaxis', 'fire', 'toxic-gas']);

/** An emergency told outright, by the tokens that tell of it; `first` stands before all others. */
export type Outright = {
  readonly id: EmergencyId;
  readonly first: boolean;
  /** A reaction that closes the airway. */
  readonly airway: boolean;
  readonly from: number;
  readonly to: number;
};

/** The emergencies that `tokens`, meant as `reading` says, tell of outright; each once, in no order. */
export function outrightIn(tokens: readonly Token[], reading: Reading): readonly Outright[] {
  const places = new Map<string, { from: number; to: number }[]>();
  const put = (name: string, from: number, to: number) => {
    places.set(name, [...(places.get(name) ?? []), { from, to }]);
  };
  tokens.forEach((token, at) => {
    put(`'${reader.keyOf(token)}`, at, at + 1);
  });
  const mentions = reader.mentions(tokens);
  const spouts = mentions.filter(({ concept }) => concept === 'spout');
  for (const { concept, from, to } of mentions) {
    // The throat of a funnel is nobody's.
    if (concept === 'airway' && spouts.some(spout => spout.from <= from && spout.to >= to)) continue;
    put(concept, from, to);
  }
  const held = matches(patterns(), places, reading).filter(({ present }) => present);
  const scenes = groupedBy(held, ({ finding }) => finding);
  // Where lye or raw soap is named, what it swells is its burn.
  const burns = places.has('caustic') || places.has('rawsoap');
  return [...scenes].map(([scene, [one]]) => ({
    id: EMERGENCY_OF[scene],
    first: FIRST.has(scene) && !(scene === 'anaphylaxis' && burns),
    airway: scene === 'anaphylaxis' && !burns,
    from: one!.from,
    to: one!.to,
  }));
}
