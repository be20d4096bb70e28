import { FLAW_WORDS } from '../../flaws/reading/concepts.ts';
import { PLAIN_WORDS } from '../../flaws/reading/lexicon/plain.ts';
import { lexiconReader, type Mentioned } from '../../flaws/reading/lexicon-reader.ts';
import { compileOver, type Match, matches } from '../../flaws/reading/pattern.ts';
import { polarity, type Reading } from '../../flaws/reading/polarity.ts';
import { LONGEST_WORDS, type Token, tokenise } from '../../flaws/reading/tokens.ts';
import { EMERGENCY_IDS, type Emergency, type EmergencyId } from './emergency.ts';
import { EMERGENCY_GRAMMAR } from './lexicon-grammar.ts';
import { HARM_WORDS } from './lexicon-harm.ts';
import { SCENE_WORDS } from './lexicon-scene.ts';
import { SCENES, type Scene } from './patterns.ts';
import { EVERYDAY_WORDS } from './plain.ts';

const LEXICON = { ...HARM_WORDS, ...SCENE_WORDS, ...EMERGENCY_GRAMMAR };
type Concept = keyof typeof LEXICON;
type Mention = Mentioned<Concept>;

/** Only these shut out what their words mean alone. */
const reader = lexiconReader<Concept>(LEXICON, {
  plain: [...PLAIN_WORDS, ...FLAW_WORDS, ...EVERYDAY_WORDS],
  open: /^(?!harmless$|noscene$|notdeny$)/,
  spelt: /^(eye|mouth|swallow|drool|breathe|cough|caustic|fume|alu|rotten|erupt|contact|rash|help)$/,
});
const PATTERNS = compileOver<Scene>(SCENES, reader.isConcept);

const GRAMMAR = new Set<string>(Object.keys(EMERGENCY_GRAMMAR));

/** Denials inside a phrase that tells of harm ("can't see", "no puede respirar") deny nothing. */
function withoutSwallowedDenials(all: readonly Mention[]): readonly Mention[] {
  const inside = (deny: Mention) =>
    all.some(
      ({ concept, from, to }) =>
        !GRAMMAR.has(concept) && from <= deny.from && to >= deny.to && to - from > deny.to - deny.from,
    );
  return all.filter(mention => mention.concept !== 'deny' || !inside(mention));
}

const ENDS = /^(\.{1,}|[;!?\n]|→)$/;

/** What stands in a sentence about long ago is no emergency, up to a word that leads back to today. */
function putPast(tokens: readonly Token[], all: readonly Mention[], { standing, ...rest }: Reading): Reading {
  const marked = [...standing];
  const back = new Set(all.filter(({ concept }) => concept === 'today').map(({ from }) => from));
  const ends = (at: number) => tokens[at]?.kind === 'mark' && ENDS.test(tokens[at].text);
  for (const past of all.filter(({ concept }) => concept === 'past')) {
    for (let at = past.to; at < tokens.length && !ends(at) && !back.has(at); at += 1) marked[at] = 'no';
    for (let at = past.from - 1; at >= 0 && !ends(at); at -= 1) {
      if (back.has(at)) break;
      marked[at] = 'no';
    }
  }
  return { standing: marked, ...rest };
}

type Found = {
  readonly tokens: readonly Token[];
  readonly mentions: readonly Mention[];
  readonly reading: Reading;
  readonly scenes: ReadonlyMap<Scene, readonly Match<Scene>[]>;
};

function scenesIn(text: string): Found {
  const tokens = tokenise(text);
  const mentions = withoutSwallowedDenials(reader.mentions(tokens));
  const places = new Map<string, { from: number; to: number }[]>();
  const put = (name: string, from: number, to: number) => {
    const all = places.get(name);
    if (all) all.push({ from, to });
    else places.set(name, [{ from, to }]);
  };
  tokens.forEach((token, at) => {
    put(`'${reader.keyOf(token)}`, at, at + 1);
  });
  for (const { concept, from, to } of mentions) put(concept, from, to);
  const reading = putPast(tokens, mentions, polarity(tokens, mentions));
  const held = matches(PATTERNS, places, reading).filter(({ present }) => present);
  return { tokens, mentions, reading, scenes: Map.groupBy(held, ({ finding }) => finding) };
}

/** The scenes that are an emergency of their own. */
const EMERGENCY_OF: { readonly [One in Scene]: EmergencyId } = {
  swallowed: 'lye-swallowed',
  eye: 'lye-eye',
  fumes: 'fumes-inhaled',
  sulphide: 'hydrogen-sulfide',
  metal: 'hydrogen-from-metal',
  eruption: 'lye-eruption',
  skin: 'lye-skin',
  animal: 'animal-exposed',
  rash: 'skin-reaction',
};

/**
 * The emergencies that a member's words tell of, the most urgent first; none where nothing of the kind is told. English
 * and Spanish, with typos, without punctuation; what is denied or long past is left out, what is only asked about ("what
 * do I do if ...") is not: in doubt the first aid is shown. "False alarm" takes it all back. Never throws; reads the first 5,000 characters.
 */
export function readEmergencies(words: string): readonly Emergency[] {
  const text = words.slice(0, LONGEST_WORDS);
  const found = scenesIn(text);
  const { scenes, tokens, mentions } = found;
  if (mentions.some(({ concept }) => concept === 'falsealarm')) return [];
  const told = [...scenes.keys()].filter(scene => !isOvershadowed(scene, found));
  const quoteOf = (scene: Scene) => {
    const [first] = scenes.get(scene) ?? [];
    return first ? text.slice(tokens[first.from]!.start, tokens[first.to - 1]!.end).slice(0, 120) : '';
  };
  return told
    .map(scene => ({ id: EMERGENCY_OF[scene], from: quoteOf(scene) }))
    .toSorted((a, b) => EMERGENCY_IDS.indexOf(a.id) - EMERGENCY_IDS.indexOf(b.id));
}

/** The scenes of a person, which an animal's own story is not. */
const OF_PEOPLE: ReadonlySet<Scene> = new Set(['swallowed', 'eye', 'fumes', 'skin', 'rash']);

/** True where another scene explains the words of this one. */
function isOvershadowed(scene: Scene, { scenes, mentions, reading }: Found): boolean {
  const near = (concept: Concept, from: number, to: number, by: number) =>
    mentions.some(one => one.concept === concept && one.to > from - by && one.from < to + by);
  const all = scenes.get(scene) ?? [];
  if (OF_PEOPLE.has(scene) && scenes.has('animal'))
    return !all.some(({ from, to }) => near('mine', from, to, 2));
  // Hydrogen sulfide makes eyes run and throats sore; its first aid says what to do for them.
  if (scenes.has('sulphide') && (scene === 'eye' || scene === 'fumes' || scene === 'rash')) return true;
  if (scene === 'swallowed' && (scenes.has('fumes') || scenes.has('rash') || scenes.has('metal')))
    return !mentions.some(
      ({ concept, from, to }) =>
        (concept === 'swallow' || (concept === 'taste' && !scenes.has('metal'))) &&
        reading.standing[to - 1] === 'yes' &&
        !near('fume', from, to, 4),
    );
  if (scene === 'metal') return mentions.some(({ concept }) => concept === 'finished');
  if (scene === 'eruption') return scenes.has('metal');
  return false;
}
