import { hasHappened } from '../../hazards/index.ts';
import type { LyeTopic } from './topic.ts';
import { lyeTopicIn } from './topics.ts';

/** Longer texts tell a story, and a story may hold somebody who is hurt. */
const LONGEST = 160;

/** What is asked out of care, in the words of an accident. */
const IN_ITS_WORDS: ReadonlySet<LyeTopic> = new Set([
  'zap-test',
  'water-onto-lye',
  'drink-bottle',
  'lye-on-skin',
  'lye-fumes',
  'lye-and-water-swapped',
  'baby',
  'children',
  'storing',
  'disposal',
  'when-safe',
  'milk-at-once',
  'more-lye',
  'acid-on-soap',
  'acid-in-batter',
]);

const OPENS =
  /^\W*(?:(?:hi|hello|hey|hola|oye|so|and|y|please|por favor|just asking|una duda|una pregunta|quick question)\W+)*(?:can|could|should|shall|may|must|do|does|is|are|how|when|what (?:happens|would|ph)|will|would|why|which|puedo|puede|pueden|podr[ií]a|debo|se puede|es|son|c[oó]mo|cu[aá]ndo|cu[aá]nto|qu[eé] pasa|por qu[eé]|hay que)\b/iu;
const NOT_NOW =
  /\bjust (?:asking|curious|wondering|in case|want to know)\b|\bmixed up\b|\bswapped\b|\bno longer\b|\b(?:inhale|breathe)\b.{0,12}\bsteam\b|\bsteam\b(?= (?:of|from))/giu;

/**
 * True where a short question asks in general about handling lye or about its harm, and nothing in it says that anything
 * has happened: it is answered, and first aid would only frighten. Asking what to do if it happens is not meant.
 */
export function isAskedGenerally(words: string): boolean {
  if (words.length > LONGEST) return false;
  const topic = lyeTopicIn(words);
  if (topic === undefined || !IN_ITS_WORDS.has(topic)) return false;
  if (!OPENS.test(words) && topic !== 'lye-and-water-swapped') return false;
  return !hasHappened(words.replace(NOT_NOW, ' '));
}
