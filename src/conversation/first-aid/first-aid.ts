import { z } from 'zod';
import {
  clearLanguageOf,
  EMERGENCY_IDS,
  type Emergency,
  type EmergencyId,
  helpFor,
  isBareEggSmell,
  isRisingInMould,
  isUltramarineWhiff,
  readEmergencies,
} from '../../engine/hazards/index.ts';
import { LANGUAGES } from '../../engine/language.ts';
import { plainAmount } from '../../engine/quantities/plain-amount.ts';
import { asksCalmly } from '../../engine/questions/asking/asks-calmly.ts';
import { isAskedGenerally } from '../../engine/questions/lye/asked-generally.ts';
import { asksOfKeeping } from '../../engine/questions/lye/asks-of-keeping.ts';
import { isOilLostBeforeLye } from '../../engine/questions/lye/recipe-line/oil-lost.ts';
import { isPlainRecipe } from '../../engine/questions/lye/recipe-line/plain-recipe.ts';
import { valuesOn } from '../../engine/values-on.ts';
import { type Words, wordsIn } from '../../words/index.ts';
import type { Language } from '../../words/sentence.ts';
import { followUp } from '../command.ts';
import type { Origin, Question } from '../question.ts';
import type { CommandRegistry } from '../registry/registry.ts';
import type { Block, Reply } from '../reply.ts';

/** More than this at once is no help to anybody in a hurry. */
const MOST_SHOWN = 3;

/** What the steps of an emergency already say, so that it is not said again beside them. */
const CONTAINED: { readonly [Id in EmergencyId]?: readonly EmergencyId[] } = {
  'hydrogen-sulfide': ['fumes-inhaled'],
  'hydrogen-from-metal': ['lye-eruption'],
  'lye-eruption': ['lye-skin'],
  'lye-skin': ['skin-reaction'],
};

/** What a question was given, whatever is added to the question on its way. */
const givenIn = (question: Question): object =>
  question.kind === 'follow'
    ? question.fields
    : question.kind === 'point'
      ? question.message
      : question.given;
const textsOf = valuesOn<object, readonly string[]>();

/**
 * Every free text of a question, each once: what a member typed into options, form fields and lines, and the message
 * that a menu entry was used on. Ids that buttons and menus send back read as nothing.
 */
export function freeTexts(question: Question): readonly string[] {
  const given = givenIn(question);
  const known = textsOf.get(given);
  if (known) return known;
  const texts = [...new Set(typedIn(question))];
  textsOf.set(given, texts);
  return texts;
}

function typedIn(question: Question): readonly string[] {
  const texts = (given: Readonly<Record<string, unknown>>) =>
    Object.values(given).filter(value => typeof value === 'string');
  switch (question.kind) {
    case 'command':
      // Who is in a panic types the words where the command stands.
      return [question.path.join(' '), ...texts(question.given)];
    case 'follow':
      return [...question.values, ...texts(question.fields)];
    case 'point':
      return [question.message.text];
    case 'typing':
      return [];
  }
}

/** Aluminium that is no metal any more: lye makes no hydrogen of its hydroxide, its oxide or its salts. */
const ALUMINIUM_COMPOUND =
  /\balumini?um\s+(?:hydrox[iy]de|oxide|silicate|stearate|distearate|tristearate)\b|\b(?:hidr[oó]xido|[oó]xido|silicato|estearato)\s+de\s+aluminio\b/giu;

/** A fat by its animal, which met no lye: "manteca de chancho", "goose fat". */
const ANIMAL_FAT =
  /(?<!\p{L})(manteca|grasa|sebo|unto)\s+de\s+(?:chancho|cerdo|puerco|cochino|marrano|pato|ganso|oca|pollo|gallina|cordero|oveja|cabra|vaca|res)(?!\p{L})|(?<!\p{L})(?:goose|duck|chicken|pig|hog|horse|goat|sheep|lamb|cow)\s+(fat|grease|lard|tallow|suet)(?!\p{L})/giu;

/** Short texts that tell of nothing: names, amounts and commands come again and again. */
const quiet = new Set<string>();
const MOST_QUIET = 1_000;
/** Longer ones are hardly ever typed twice, characters. */
const LONGEST_QUIET = 48;

const NOTHING: readonly Emergency[] = [];

function readOne(text: string): readonly Emergency[] {
  // "500 ml" tells of nothing, and hardly comes twice.
  if (quiet.has(text) || plainAmount(text)) return NOTHING;
  const told = readEmergencies(text.replace(ALUMINIUM_COMPOUND, 'mineral').replace(ANIMAL_FAT, '$1$2'));
  if (told.length > 0)
    return isAskedGenerally(text) ||
      isPlainRecipe(text) ||
      isOilLostBeforeLye(text) ||
      asksOfKeeping(text) ||
      isOnlyWhiff(text, told) ||
      (told.every(({ inDoubt }) => inDoubt) && asksCalmly(text))
      ? []
      : told;
  if (text.length > LONGEST_QUIET) return [];
  if (quiet.size >= MOST_QUIET) quiet.clear();
  quiet.add(text);
  return [];
}

/** A smell of ultramarine that is asked about, and nothing else told; the answer tells what to look out for. */
const isOnlyWhiff = (text: string, told: readonly Emergency[]): boolean =>
  told.every(({ id }) => id === 'hydrogen-sulfide') && isUltramarineWhiff(text);

const readings = valuesOn<readonly string[], readonly (readonly Emergency[])[]>();

/** What each text tells. A question is looked at more than once on its way; it is read once. */
function readEach(texts: readonly string[]): readonly (readonly Emergency[])[] {
  const known = readings.get(texts);
  if (known) return known;
  const read = texts.map(readOne);
  readings.set(texts, read);
  return read;
}

/** The emergencies told in any of the texts, each once: those told outright before those only in doubt. */
function readAll(texts: readonly string[]): readonly Emergency[] {
  const all = readEach(texts);
  if (all.every(read => read.length === 0)) return NOTHING;
  const outright = all.filter(([first]) => first?.inDoubt === false);
  // One text keeps its own order, by what is likeliest; several are put together by urgency.
  const [only, ...others] = outright.length > 0 ? outright : all.filter(read => read.length > 0);
  if (others.length === 0) return only ?? [];
  const told = [only ?? [], ...others].flat();
  return EMERGENCY_IDS.flatMap(id => told.find(one => one.id === id) ?? []);
}

/** The ids of the emergencies told in any of the texts, in the order in which they are shown. */
export function emergenciesIn(texts: readonly string[]): readonly EmergencyId[] {
  return readAll(texts).map(({ id }) => id);
}

/** The first, which is shown whole, and those of the others that its steps do not cover. */
function shownOf([first, ...others]: readonly EmergencyId[]): readonly EmergencyId[] {
  if (first === undefined) return [];
  return [first, ...others.filter(id => !CONTAINED[first]?.includes(id))].slice(0, MOST_SHOWN);
}

/**
 * The language that texts telling of an emergency are clearly written in, else the one given: whoever is in a panic
 * reads the language they type. Texts that tell of none change nothing.
 */
export function languageOfHelp(texts: readonly string[], language: Language): Language {
  const told = readEach(texts);
  if (told.every(read => read.length === 0)) return language;
  const telling = texts.filter((_, at) => (told[at]?.length ?? 0) > 0);
  return telling.length === 0 ? language : (clearLanguageOf(telling.join('\n')) ?? language);
}

/** What to do, in steps, with the numbers of the member's country where it is known. Shown whole: nothing folds. Only the first of
 * the emergencies has its steps (`inMould`: those of soap that rises in its mould); the others are a line each, for two lists are none to somebody in a panic. */
export function firstAidReply(
  ids: readonly EmergencyId[],
  {
    say,
    locale,
    airway = false,
    inMould = false,
  }: {
    readonly say: Words;
    readonly locale?: string | undefined;
    readonly airway?: boolean;
    readonly inMould?: boolean;
  },
): Reply {
  const { firstAid } = say;
  const help = helpFor(locale);
  const call = help
    ? firstAid.number({ number: help.emergency, country: help.country })
    : firstAid.yourNumber;
  const poison = help?.poison
    ? firstAid.poison({ number: help.poison, country: help.country })
    : firstAid.anyPoison;
  const [first = 'lye-skin', ...more] = shownOf(ids);
  const isLoaf = inMould && first === 'lye-eruption';
  const rows = (isLoaf ? firstAid.inMould.steps : firstAid.steps[first])({ call, poison });
  const steps: Block = { kind: 'rows', numbered: true, rows };
  const usual = isLoaf ? firstAid.inMould.headline : firstAid.headlines[first];
  return {
    kind: 'reply',
    headline: airway && first === 'skin-reaction' ? firstAid.airway({ call }) : usual,
    data: {
      emergency: {
        id: first,
        also: more,
        ...(airway && { airway }),
        ...(isLoaf && { inMould }),
        ...(help && { country: help.country }),
      },
    },
    blocks: [
      steps,
      ...more.map((id): Block => ({ kind: 'text', text: firstAid.also({ what: firstAid.short[id] }) })),
    ],
    cautions: [],
  };
}

/** Emergencies as they travel in a signed id: their places in the list, parted by `-`; an `m` behind them for soap that rises in its mould. */
const sealedIds = (ids: readonly EmergencyId[], inMould: boolean) =>
  `${ids.map(id => EMERGENCY_IDS.indexOf(id)).join('-')}${inMould ? IN_MOULD : ''}`;
const IN_MOULD = 'm';

/** Shows a first aid that one member was given to everyone there. */
export const shareFirstAid = followUp({
  seenBy: 'group',
  args: { ids: z.string().regex(/^\d{1,2}(-\d{1,2}){0,10}m?$/), spoken: z.enum(LANGUAGES) },
  answer: ({ ids, spoken }, { locale }) =>
    firstAidReply(
      ids
        .replace(IN_MOULD, '')
        .split('-')
        .flatMap(at => EMERGENCY_IDS[Number(at)] ?? []),
      { say: wordsIn(spoken), locale, inMould: ids.endsWith(IN_MOULD) },
    ),
});

/**
 * The first aid that a question needs before anything else; undefined where its texts tell of no emergency. Where others
 * may be there to help, one button shows it to them.
 */
export async function firstAidFor(
  texts: readonly string[],
  origin: Origin,
  { say, registry }: { readonly say: Words; readonly registry: CommandRegistry },
): Promise<Reply | undefined> {
  const told = readAll(texts);
  if (told.length === 0) return undefined;
  const inMould = texts.some(isRisingInMould);
  const isAllInDoubt = told.every(one => one.inDoubt);
  // The words of a loaf that rises tell of nothing else where no sentence does.
  const ids = inMould && isAllInDoubt ? (['lye-eruption'] as const) : told.map(({ id }) => id);
  const inDoubt = isAllInDoubt && !inMould;
  const { channel, locale } = origin;
  if (channel !== undefined) await loadSharing(origin, registry);
  const airway = told.some(one => one.airway === true);
  const reply = firstAidReply(ids, { say, locale, airway, inMould });
  const misread: Block = { kind: 'text', text: say.firstAid.misread };
  // What the smell usually is where soap is made, behind what to do where it is more.
  const usual: readonly Block[] =
    ids[0] === 'hydrogen-sulfide' && texts.some(isBareEggSmell)
      ? [{ kind: 'text', text: say.firstAid.ultramarineWhiff }]
      : [];
  const canShare = channel !== undefined && registry.nameOf.has(shareFirstAid);
  return {
    ...reply,
    ...(inDoubt && { headline: `${say.firstAid.ifHurt} ${reply.headline}` }),
    blocks: inDoubt ? [misread, ...reply.blocks, ...usual] : [...reply.blocks, ...usual, misread],
    ...(canShare && {
      choices: [
        {
          kind: 'button',
          label: say.firstAid.share,
          follow: shareFirstAid.with({ ids: sealedIds(shownOf(ids), inMould), spoken: say.language }),
        },
      ],
    }),
  };
}

/** Loads the command that the button leads to, and no other. Where it cannot be loaded, help comes without the button. */
async function loadSharing(origin: Origin, registry: CommandRegistry): Promise<void> {
  try {
    await registry.prepare?.({ ...origin, kind: 'command', path: ['first-aid'], given: {} });
  } catch {
    // What to do matters more than who else is shown it.
  }
}
