import { knownAdditive } from '../../../../batch/additives/additives.ts';
import { unbroken } from '../../../../over-lines.ts';
import { unaccented } from '../../../../text/unaccented.ts';
import type { QuestionRead } from '../../../read.ts';
import { lyeAskedIn } from '../../question.ts';
import { toldAmounts, wordsOfBatch } from '../../slips/told-amounts.ts';
import { GENERAL_TOPIC_ORIGINS } from '../general-topic.ts';
import { isLyeMatter, type LyeMatter } from '../lye-matter.ts';
import type { LyeTopic } from '../topic.ts';
import { tellsOfHurt } from './hurt.ts';
import type { NearMatter } from './read.ts';

/** Lye, its reckoning, and what it is for. */
const NEAR_LYE =
  /\b(?:lye|naoh|koh|caustic\w*|hydroxide|potash|saponif\w*|super ?fat\w*|sosa|soda|lejia|potasa|(?:sobre|super) ?engras\w*|sobre ?grasa|hidroxido|alcali)\b/u;
const OF_SOAP = new RegExp(
  unbroken`
    \b(?:soaps?|soaping|bars?|batch|batter|trace|cur(?:e|ed|ing)|castile|lard|tallow|oils?|fats?|grease|
    bubbles|lather|water|scales?|ph|jabon(?:es)?|pastillas?|barras?|lote|masa|traza|cura\w*|castilla|
    manteca|sebo|aceites?|grasas?|espuma|agua|bascula|balanza|leche|milk|stout|beer|cerveza|goggles|gloves|
    gafas|guantes|antiparras)\b
  `,
  'u',
);
const OF_COLOUR =
  /\b(?:mica|pigment\w*|oxide|dye|lake|colou?r\w*|swirl\w*|tono|tinte|colorante\w*|color(?:es|ear)?|oxidos?(?= de)|ultramar\w*|clay|arcilla)\b/u;

/** Scents and spirits have an answer of their own. */
const OF_SCENT: ReadonlySet<LyeTopic> = new Set(['hot-oils-of-scent', 'household-scent', 'candle-scent']);
const SPIRIT =
  /\b(?:vodka|rum|ron|tequila|mezcal|whisk\w+|gin|ginebra|brandy|cognac|alcohol|spirits?|aguardiente|orujo|pisco)\b/u;

/** Said in general, though figures stand in the question: an amount of one's own is never answered by a matter. */
const OF_AMOUNTS: ReadonlySet<LyeTopic> = new Set([
  'lye-roughly',
  'liquid-lye',
  'liquid-amount',
  'acid-lye',
  'water-amount',
  'strength-and-ratio',
  'sap-to-naoh',
  'koh-and-naoh',
  'koh-for-naoh',
  'old-oil',
  'scale',
  'hot-lye',
  'after-pour',
  'more-water',
]);
const IN_GENERAL =
  /\b(?:rough\w*|in general|general\w*|usual\w*|normal\w*|typical\w*|rule of thumb|ballpark|about how|mas o menos|en general|suele\w*|regla)\b/u;

/** Where words of several matters meet, what is learned is better than the first pattern that fits. */
const LEARNED_BETTER: ReadonlySet<LyeTopic> = new Set(['storing', 'scale', 'washing-up', 'lye-into-water']);
/** What was found is about harm, or told by its own figures: nothing that is learned stands before it. */
const isPlain = (found: LyeTopic): boolean => PLAIN.has(found);
const PLAIN: ReadonlySet<LyeTopic> = new Set([
  'lye-and-water-swapped',
  'amounts-swapped',
  'drink-bottle',
  'glass-jug',
  'liquid-instead',
  'old-oil',
  'vessel',
  'extra-lye',
  'purity-unknown',
  'mixing-temperature',
  'scale-batch',
]);
const SURELY = 0.85;
const PLAINLY = 0.9;
const ELSEWHERE: ReadonlySet<string> = new Set(['other', 'food', 'business']);

/**
 * A matter of lye or of soap in general that a question is surely about, before it is taken for a recipe or for another
 * command's: none where a colour, a recipe or somebody hurt is told. `found`: what patterns find.
 */
export async function generalMatter(
  question: string,
  { found, read }: { readonly found: LyeTopic | undefined; readonly read: QuestionRead },
): Promise<NearMatter | undefined> {
  const plain = unaccented(question);
  const isNearLye = NEAR_LYE.test(plain);
  if (question.startsWith('/') || (found !== undefined && !isPlain(found))) return undefined;
  if (!(isNearLye || OF_SOAP.test(plain)) || OF_COLOUR.test(plain) || tellsOfHurt(question)) return undefined;
  const { facts, outside } = read;
  if (facts.named.some(name => knownAdditive(name) === undefined)) return undefined;
  if (outside !== undefined && !(ELSEWHERE.has(outside) && isNearLye)) return undefined;
  if (facts.findings > 0 && !isNearLye) return undefined;
  const amounts = toldAmounts(wordsOfBatch(question));
  if (amounts.some(({ role }) => role === 'oil')) return undefined;
  // Most questions never come this far, and the weights are large.
  const { nearestMatters } = await import('./read.ts');
  const { sure, likely } = nearestMatters(question);
  const near = sure ?? (isNearLye || (likely?.chance ?? 0) >= PLAINLY ? likely : undefined);
  if (!near || !fits(near.topic, { plain, question })) return undefined;
  // "Maple" is a colour too, and what is wished in a colour is no matter of lye.
  if (facts.target !== undefined && !(isNearLye && near.chance >= SURELY)) return undefined;
  return found === undefined || isBetter(near, found) ? near : undefined;
}

const isBetter = ({ topic, chance }: NearMatter, found: LyeTopic): boolean =>
  topic !== found &&
  chance >= SURELY &&
  (Object.hasOwn(GENERAL_TOPIC_ORIGINS, topic) || LEARNED_BETTER.has(topic));

/** How much lye, though no figure is told. */
const HOW_MUCH_LYE =
  /\b(?:how (?:much|many)|cuant[oa]s?) (?:\w+ ){0,2}(?:lye|naoh|koh|caustic|sosa|soda|potasa|potash)\b/u;
const CHANGES = /\b(?:chang\w+|same|differen\w+|cambia\w*|misma|distint\w+)\b/u;

/** Whether a matter may answer a question that asks an amount, or weighs something. */
function fits(topic: LyeMatter, { plain, question }: { readonly plain: string; readonly question: string }) {
  const { amount, weighed } = lyeAskedIn(question);
  if (OF_SCENT.has(topic) || SPIRIT.test(plain)) return false;
  if (topic === 'lye-roughly') return IN_GENERAL.test(plain);
  if (HOW_MUCH_LYE.test(plain) && topic !== 'acid-lye' && !CHANGES.test(plain)) return false;
  if (isLyeMatter(topic) && OF_AMOUNTS.has(topic)) return true;
  return !(amount || weighed);
}

/** An amount of lye, though no figure is told. */
const AMOUNT_OF_LYE =
  /\b(?:how (?:much|many)|cu[aá]nt[oa]s?) (?:\p{L}+ ){0,2}(?:lye|naoh|koh|caustic|sosa|soda|potasa|potash)\b/iu;
/** Whether how much lye is asked for, in so many words. Pure. */
export const asksAmountOfLye = (question: string): boolean => AMOUNT_OF_LYE.test(question);
