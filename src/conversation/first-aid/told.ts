import {
  clearLanguageOf,
  EMERGENCY_IDS,
  type Emergency,
  type EmergencyId,
  isUltramarineWhiff,
  readEmergencies,
} from '../../engine/hazards/index.ts';
import { unbroken } from '../../engine/over-lines.ts';
import { plainAmount } from '../../engine/quantities/plain-amount.ts';
import { asksCalmly } from '../../engine/questions/asking/asks-calmly.ts';
import { asksWhetherLye } from '../../engine/questions/leaning/danger/objects.ts';
import { isOilLostBeforeLye } from '../../engine/questions/lye/recipe-line/doubts/oil-lost.ts';
import { isPlainRecipe } from '../../engine/questions/lye/recipe-line/plain-recipe.ts';
import { isAskedGenerally } from '../../engine/questions/lye/topics/asked-generally.ts';
import { asksOfKeeping } from '../../engine/questions/lye/topics/asks-of-keeping.ts';
import { valuesOn } from '../../engine/values-on.ts';
import type { Language } from '../../words/sentence.ts';
import type { Question } from '../question.ts';

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
const ANIMAL_FAT = new RegExp(
  unbroken`
    (?<!\p{L})(manteca|grasa|sebo|unto)\s+de\s+(?:chancho|cerdo|puerco|cochino|marrano|pato|ganso|oca|pollo|
    gallina|cordero|oveja|cabra|vaca|res)(?!\p{L})|(?<!\p{L})(?:goose|duck|chicken|pig|hog|horse|goat|sheep|
    lamb|cow)\s+(fat|grease|lard|tallow|suet)(?!\p{L})
  `,
  'giu',
);

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
      asksWhetherLye(text) ||
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
export function emergenciesTold(texts: readonly string[]): readonly Emergency[] {
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
  return emergenciesTold(texts).map(({ id }) => id);
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
