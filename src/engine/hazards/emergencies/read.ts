import { cut } from '../../text/excerpt.ts';
import type { Model } from '../../text/learned/model.ts';
import { LONGEST_WORDS } from '../../text/tokens.ts';
import { isAskedBefore } from './asked-before.ts';
import { criesFire } from './cried.ts';
import { EMERGENCY_IDS, type Emergency, type EmergencyId, isEyeBeforeJug } from './emergency.ts';
import { accountsOf, type Weighed, type Weights, weighAll } from './evidence/weigh.ts';
import WEIGHTS from './evidence/weights.json' with { type: 'json' };
import { explainedIn } from './explained.ts';
import { isTakenBack, toldAfterAlarm } from './false-alarm.ts';
import { withoutNoHarm } from './figures-of-speech.ts';
import type { Grounds } from './grounds.ts';
import { joined } from './join.ts';
import { readLearned } from './learned/read.ts';
import { isNearOnly } from './near-only.ts';
import { outrightIn } from './outright/read.ts';
import type { Scene } from './patterns.ts';
import { type Concept, type Found, scenesIn } from './scenes.ts';
import { isIdle, isOnlyNamed } from './spoken-of.ts';
import { isStoryOnly } from './story-only.ts';

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

/** Log odds from which evidence alone shows the first aid: one in four is enough where somebody may be hurt. */
const IN_DOUBT = -1;
/** Where the words speak of a bar, and of nobody who is hurt or asks for help, only what is likelier than not. */
const OF_A_BAR = 0;
const BAR = ['looks', 'finished'];
const SOMEBODY = ['kin', 'animal', 'pets', 'body', 'limb', 'plea', 'help', 'call', 'flee'];
/** So much likelier, in log odds, stands before the more urgent. */
const CLEARLY = 1;

/**
 * The emergencies that a member's words tell of; none where nothing of the kind is told. English and Spanish, with
 * typos, without punctuation; what is denied or long past is left out, what is only asked about ("what do I do if ...")
 * is not: in doubt the first aid is shown. What patterns tell comes most urgent first, behind what all the evidence
 * makes much likelier; where no pattern holds, what the evidence, or what was learned from other texts, makes likely
 * enough, marked `inDoubt`. A bare "false alarm" takes it all back. Never throws; reads the first 5,000 characters.
 * `model`: what was learned, if from other texts than all.
 * @example readEmergencies('lye splashed in my eye')[0].id // 'lye-eye'
 */
export function readEmergencies(words: string, model?: Model): readonly Emergency[] {
  const read = readAsTold(words, model);
  if (read.length === 0) return read;
  const explained = explainedIn(words);
  return read.filter(({ id }) => !explained.has(id));
}

function readAsTold(words: string, model: Model | undefined): readonly Emergency[] {
  const text = withoutNoHarm(words.slice(0, LONGEST_WORDS));
  if (isTakenBack(text)) return stillTold(text, model);
  if (isAskedBefore(text) || isNearOnly(text) || isStoryOnly(text)) return [];
  if (criesFire(text)) return [{ id: 'fire', from: cut(text.trim(), 120), inDoubt: false }];
  const found = scenesIn(text);
  // What is only spoken of is silent; what is told outright is not.
  if (isIdle(found)) return withOutright(text, found, []);
  return joined(readLexically(text, found), readLearned(found, model), {
    words: found.tokens.filter(({ kind }, at) => kind === 'word' && !found.isPast[at]).length,
    from: cut(text.trim(), 120),
    isOver: isFinished(found),
  });
}

/** What may cost a life, and is told for sure behind a "false alarm", is not taken back by it. */
const NOT_TAKEN_BACK: ReadonlySet<EmergencyId> = new Set(['lye-swallowed']);

function stillTold(text: string, model: Model | undefined): readonly Emergency[] {
  const told = toldAfterAlarm(text);
  if (told === undefined || told === '') return [];
  const read = readEmergencies(told, model);
  return read.some(({ id, inDoubt }) => !inDoubt && NOT_TAKEN_BACK.has(id)) ? read : [];
}

/** By the lexicon: patterns, and the evidence weighed; nothing that was learned has a part in it. `found` is what {@link scenesIn} reads in the text. */
export function readLexically(text: string, found: Found): readonly Emergency[] {
  const told = toldIn(text, found);
  const weighed = weigh(found);
  const scenes = told.length > 0 ? likeliestFirst(told, weighed) : [];
  const both = withOutright(text, found, scenes);
  if (both.length > 0) return both;
  const [best, next] = weighed.filter(isLikely);
  if (!best || (best.id === 'animal-exposed' && isOnlyNamed(best, found))) return [];
  const likely = next && next.score > 0 && next.score > best.score - CLEARLY ? [best, next] : [best];
  return likely.map(({ id, at }) => ({ id, from: quote(text, found, at, at + 1), inDoubt: true }));
}

/** What further patterns tell: what kills within minutes before the rest, all else behind it. */
function withOutright(text: string, found: Found, told: readonly Emergency[]): readonly Emergency[] {
  const all = outrightIn(found.tokens, found.reading)
    .map(({ id, first, airway, from, to }) => ({
      id,
      first,
      ...(airway && ({ airway } as const)),
      from: quote(text, found, from, to),
      inDoubt: false,
    }))
    .toSorted((a, b) => EMERGENCY_IDS.indexOf(a.id) - EMERGENCY_IDS.indexOf(b.id));
  const ordered: readonly (Emergency & { readonly first?: boolean })[] = [
    ...all.filter(({ first }) => first),
    ...told,
    ...all.filter(({ first }) => !first),
  ];
  return ordered
    .filter(({ id }, at) => ordered.findIndex(one => one.id === id) === at)
    .map(({ id, from, inDoubt, airway }) => ({ id, from, inDoubt, ...(airway && { airway }) }));
}

function isLikely({ score, names }: Weighed): boolean {
  const isOfBar = BAR.some(name => names.has(name)) && !SOMEBODY.some(name => names.has(name));
  return score > (isOfBar ? OF_A_BAR : IN_DOUBT);
}

const quote = (text: string, { tokens }: Found, from: number, to: number) =>
  cut(text.slice(tokens[from]!.start, tokens[to - 1]!.end), 120);

/** What patterns tell outright, most urgent first, but for scenes that another explains. `found` as for {@link readLexically}. */
export function toldIn(text: string, found: Found): readonly Emergency[] {
  return [...found.scenes]
    .filter(([scene]) => !isOvershadowed(scene, found))
    .map(([scene, [first]]) => ({
      id: EMERGENCY_OF[scene],
      from: first ? quote(text, found, first.from, first.to) : '',
      inDoubt: false,
    }))
    .toSorted((a, b) => EMERGENCY_IDS.indexOf(a.id) - EMERGENCY_IDS.indexOf(b.id));
}

const isFinished = ({ mentions }: Found) => mentions.some(({ concept }) => concept === 'finished');

/** By all the evidence, the likeliest first; metal that has left its marks on a finished bar is no danger any more. */
function weigh(found: Found): readonly Weighed[] {
  const { mentions, reading, told } = groundsOf(found);
  const isOver = isFinished(found);
  return weighAll(accountsOf(mentions, reading, told), WEIGHTS.weights as Weights).filter(
    ({ id }) => !(isOver && id === 'hydrogen-from-metal'),
  );
}

function likeliestFirst(told: readonly Emergency[], weighed: readonly Weighed[]): readonly Emergency[] {
  const [best] = weighed;
  const first = told[0];
  const scoreOfFirst = weighed.find(({ id }) => id === first?.id)?.score;
  // Metal in lye foams over too, and an animal coughs and burns as people do; their own first aid says so.
  const isTold = told.some(({ id }) => id === best?.id);
  if (best?.id === 'lye-eruption' && first?.id === 'hydrogen-from-metal') return told;
  if (best && first && isEyeBeforeJug(first, best)) return told;
  if (first?.id === 'animal-exposed' && !isTold) return told;
  if (!best || !first || scoreOfFirst === undefined || best.score <= scoreOfFirst + CLEARLY) return told;
  const known = told.find(({ id }) => id === best.id);
  return [known ?? { ...first, id: best.id }, ...told.filter(({ id }) => id !== best.id)];
}

/** The scenes of a person, which an animal's own story is not. */
const OF_PEOPLE: ReadonlySet<Scene> = new Set(['swallowed', 'eye', 'fumes', 'skin', 'rash']);

/** True where another scene explains the words of this one. */
function isOvershadowed(scene: Scene, { scenes, mentions, reading }: Found): boolean {
  const near = (concept: Concept, from: number, to: number, by: number) =>
    mentions.some(one => one.concept === concept && one.to > from - by && one.from < to + by);
  const all = scenes.get(scene) ?? [];
  const isHeld = (concept: Concept) =>
    mentions.some(one => one.concept === concept && reading.standing[one.to - 1] === 'yes');
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
  // A finished soap that somebody washed with gives a reaction, not a burn by lye.
  if (scene === 'skin' && scenes.has('rash') && isHeld('used') && isHeld('finished'))
    return !isHeld('caustic') && !isHeld('raw');
  if (scene === 'metal') return mentions.some(({ concept }) => concept === 'finished');
  if (scene === 'eruption') return scenes.has('metal');
  return false;
}

const groundsOf = ({ tokens, mentions, reading, isPast, scenes }: Found): Grounds => ({
  tokens,
  mentions,
  reading,
  isPast,
  told: [...scenes].flatMap(([scene, all]) => all.map(({ from }) => ({ id: EMERGENCY_OF[scene], from }))),
});

/**
 * What was read in a text, for weighing: its ideas, how they are meant, and where patterns held.
 * @internal For those who fit the weights.
 */
export function groundsIn(words: string): Grounds {
  return groundsOf(scenesIn(words.slice(0, LONGEST_WORDS)));
}
