import type { Mentioned } from '../../flaws/reading/lexicon-reader.ts';
import type { Reading } from '../../flaws/reading/polarity.ts';
import type { Token } from '../../text/tokens.ts';
import type { Weighed } from './evidence/weigh.ts';

/** What is only spoken of, and happens to nobody: dictated words, shapes and names, questions out of curiosity. */
type Read = { readonly mentions: readonly Mentioned[]; readonly reading: Reading };

const PRONOUN_BEFORE =
  /^(my|his|her|its|their|your|the|an?|in|into|one|each|both|left|right|to|near|around|under|red|of)$/;
const PRONOUN_AFTER =
  /^(always|usually|use|used|mean|made|make|bought|buy|like|love|thought|know|guess|tried|am|added)$/;

const REACHES: ReadonlySet<string> = new Set(['caustic', 'contact', 'reached', 'raw', 'hurts']);

/** "Eye always use": dictated, the pronoun "I" comes out as an eye. */
function withoutPronouns<M extends Mentioned>(all: readonly M[], tokens: readonly Token[]): readonly M[] {
  const word = (at: number) => tokens[at]?.text.toLowerCase() ?? '';
  return all.filter(
    ({ concept, from, to }) =>
      concept !== 'eye' ||
      to - from > 1 ||
      !/^(eye|aye)$/.test(word(from)) ||
      PRONOUN_BEFORE.test(word(from - 1)) ||
      all.some(one => one.to === from && REACHES.has(one.concept)) ||
      !PRONOUN_AFTER.test(word(to)),
  );
}

/** So many words after "in the shape of" are of the shape. */
const LIKENESS_REACH = 6;
const SHAPES: ReadonlySet<string> = new Set(['eye', 'sight', 'body', 'limb', 'mouth', 'animal', 'pets']);

/** Eyes, hands and animals that a soap is shaped like, stamped with or named after are none. */
function withoutLikenesses<M extends Mentioned>(all: readonly M[], tokens: readonly Token[]): readonly M[] {
  const likenesses = all.filter(({ concept }) => concept === 'likeness');
  const isShape = (at: number) =>
    likenesses.some(
      ({ to }) =>
        at >= to &&
        at - to < LIKENESS_REACH &&
        !tokens.slice(to, at).some(({ kind, text }) => kind === 'mark' && /[.,;!?\n]/.test(text)),
    );
  return all.filter(({ concept, from }) => !SHAPES.has(concept) || !isShape(from));
}

/** The mentions that may be of something that happens: no dictated pronouns, no eyes, hands or animals of a shape. */
export const withoutSpokenOf = <M extends Mentioned>(
  all: readonly M[],
  tokens: readonly Token[],
): readonly M[] => withoutLikenesses(withoutPronouns(all, tokens), tokens);

/** What somebody, or a pot, would show if it were happening. */
const HARM: ReadonlySet<string> = new Set([
  ...([
    'hurts',
    'drool',
    'cough',
    'blind',
    'swallow',
    'contact',
    'itch',
    'rash',
    'sore',
    'lyeburn',
    'help',
  ] as const),
  ...(['eye', 'mouth', 'taste', 'erupt', 'seethe', 'flee', 'call'] as const),
]);

/** True where the words say that nothing is going on, and nothing in them shows harm. */
export function isIdle({ mentions, reading }: Read): boolean {
  const idle = mentions.filter(({ concept }) => concept === 'idle');
  const isInside = ({ from, to }: Mentioned) => idle.some(one => one.from <= from && one.to >= to);
  const shows = (one: Mentioned) =>
    HARM.has(one.concept) && reading.standing[one.to - 1] === 'yes' && !isInside(one);
  return idle.length > 0 && !mentions.some(shows);
}

/** What an animal that met lye would be told with; without any of it, it is only spoken of. */
const EXPOSURE = [
  'caustic',
  'raw',
  'drool',
  'hurts',
  'signs',
  'reached',
  'contact',
  'pawed',
  'unwell',
  'plea',
  'help',
];

/** True where an animal is in a name, a picture or a price, and nothing that lye does stands near it. */
export const isOnlyNamed = ({ names }: Weighed, { mentions }: Read) =>
  mentions.some(({ concept }) => concept === 'likeness' || concept === 'trade' || concept === 'idle') &&
  !EXPOSURE.some(name => names.has(name));
