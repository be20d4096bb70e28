import { flawWords } from '../../flaws/reading/concepts.ts';
import { PLAIN_WORDS } from '../../flaws/reading/lexicon/plain.ts';
import { lexiconReader, type Mentioned } from '../../flaws/reading/lexicon-reader.ts';
import { compileOver, type Match, matches } from '../../flaws/reading/pattern.ts';
import { polarity, type Reading } from '../../flaws/reading/polarity.ts';
import { groupedBy } from '../../grouped.ts';
import { type Token, tokenise } from '../../text/tokens.ts';
import { whenAsked } from '../../when-asked.ts';
import { ABOUT_WORDS } from './evidence/lexicon-about.ts';
import { WHAT_WORDS } from './evidence/lexicon-what.ts';
import { WHO_WORDS } from './evidence/lexicon-who.ts';
import { EMERGENCY_GRAMMAR } from './lexicon/grammar.ts';
import { HARM_WORDS } from './lexicon/harm.ts';
import { GOODS, QUIET_WORDS } from './lexicon/quiet.ts';
import { SCENE_WORDS } from './lexicon/scene.ts';
import { SCENES, type Scene } from './patterns.ts';
import { EVERYDAY_WORDS } from './plain.ts';
import { withoutSpokenOf } from './spoken-of.ts';
import { withoutTide } from './tide.ts';

const LEXICON = {
  ...HARM_WORDS,
  ...SCENE_WORDS,
  ...WHO_WORDS,
  ...WHAT_WORDS,
  ...ABOUT_WORDS,
  ...EMERGENCY_GRAMMAR,
  ...QUIET_WORDS,
};
export type Concept = keyof typeof LEXICON;
type Mention = Mentioned<Concept>;

/** Only these shut out what their words mean alone. */
const reader = lexiconReader<Concept>(LEXICON, {
  plain: () => [...PLAIN_WORDS, ...flawWords(), ...EVERYDAY_WORDS],
  open: /^(?!harmless$|noscene$|noharm$|notdeny$)/,
  spelt: /^(eye|mouth|swallow|drool|breathe|cough|caustic|fume|alu|rotten|erupt|contact|rash|help)$/,
});
/**
 * Every word of the lexicon of emergencies.
 * @internal For those who write the plain words of flaws.
 */
export const emergencyWords: () => ReadonlySet<string> = reader.words;

const patterns = whenAsked(() => compileOver<Scene>(SCENES, reader.isConcept));

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

/** The name of a product, "... crystals", is no slip of the thumb for a verb. */
function withoutNames(tokens: readonly Token[], all: readonly Mention[]): readonly Mention[] {
  const isName = ({ concept, from, to }: Mention) =>
    concept === 'swallow' &&
    to - from === 1 &&
    !reader.words().has(tokens[from]!.text) &&
    GOODS.test(tokens[to]?.text ?? '');
  return all.filter(mention => !isName(mention));
}

/** A year long gone: "in 1931". */
const OLD_YEAR = /^(1[89]\d\d|200\d)$/;
const ENDS = /^(\.{1,}|[;!?\n]|→)$/;

/** Which tokens stand in a sentence about long ago, up to a word that leads back to today. */
function pastIn(tokens: readonly Token[], all: readonly Mention[]): readonly boolean[] {
  const isPast = tokens.map(() => false);
  const back = new Set(all.filter(({ concept }) => concept === 'today').map(({ from }) => from));
  const ends = (at: number) => tokens[at]?.kind === 'mark' && ENDS.test(tokens[at].text);
  const years = tokens.flatMap(({ kind, text }, from) =>
    kind === 'number' &&
    OLD_YEAR.test(text) &&
    /^(in|en|de|about|since|desde|por)$/.test(tokens[from - 1]?.text ?? '')
      ? [{ from, to: from + 1 }]
      : [],
  );
  for (const past of [...all.filter(({ concept }) => concept === 'past'), ...years]) {
    for (let at = past.to; at < tokens.length && !ends(at) && !back.has(at); at += 1) isPast[at] = true;
    for (let at = past.from - 1; at >= 0 && !ends(at); at -= 1) {
      if (back.has(at)) break;
      isPast[at] = true;
    }
  }
  return isPast;
}

/** What is long past is no emergency. */
const putPast = ({ standing, ...rest }: Reading, isPast: readonly boolean[]): Reading => ({
  standing: standing.map((one, at) => (isPast[at] ? 'no' : one)),
  ...rest,
});

/** What was read in a text: its words, its ideas, how each is meant, and the scenes that hold. */
export type Found = {
  readonly tokens: readonly Token[];
  readonly mentions: readonly Mention[];
  readonly reading: Reading;
  readonly isPast: readonly boolean[];
  readonly scenes: ReadonlyMap<Scene, readonly Match<Scene>[]>;
};

/** The scenes in a text, with all that they were read from. */
export function scenesIn(text: string): Found {
  const tokens = tokenise(withoutTide(text));
  const all = withoutSwallowedDenials(withoutNames(tokens, reader.mentions(tokens)));
  const mentions = withoutSpokenOf(all, tokens);
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
  const isPast = pastIn(tokens, mentions);
  const reading = putPast(polarity(tokens, mentions), isPast);
  const held = matches(patterns(), places, reading).filter(({ present }) => present);
  return { tokens, mentions, reading, isPast, scenes: groupedBy(held, ({ finding }) => finding) };
}
