import { unaccented } from '../../text/unaccented.ts';
import type { LyeTopic } from '../lye/topics/topic.ts';
import type { QuestionRead } from '../read.ts';
import { isPotGoingThick } from './pot-going-thick.ts';
import type { NearMatter } from './read.ts';
import { IN_THE_POT, isOurPot, LIKELY, leastBeside } from './stands-before.ts';
import type { Matter } from './topic.ts';

/** From here on what patterns found by a word of another meaning gives way. */
const SURELY = 0.75;

const URGENT =
  /(?<!\p{L})(?:now|help|quick|hurry|do i do|to do|can i do|ahora|ayuda|rapido|urgente?|que hago|hago ya|auxilio|still in the|todavia en)(?!\p{L})/u;

/** Matters near lye whose words are those of working with batter too; every other one that its patterns find stands first. */
const OF_BATTER: ReadonlySet<LyeTopic> = new Set([
  'trace-signs',
  'mixing-temperature',
  'no-trace',
  'lye-roughly',
  'mould-stuff',
  'puree',
  'takes-no-lye',
]);
/** Found by a word that means something else here: mustard is a yellow, used oil a base, lye that clumps was just mixed. */
const MISTAKEN: Readonly<Partial<Record<Matter, readonly LyeTopic[]>>> = {
  'lye-cloudy': ['clumped'],
  'shine-sparkle': ['kitchen-spice'],
  'yellow-base': ['old-oil'],
};

/** Whether a matter stands before what patterns find near lye. */
export const standsOver = ({ matter, chance }: NearMatter, topic: LyeTopic): boolean =>
  OF_BATTER.has(topic) || (chance >= SURELY && (MISTAKEN[matter]?.includes(topic) ?? false));

const CRY: NearMatter = { matter: 'thick-now', chance: 1 };

async function nearestTo(question: string): Promise<readonly NearMatter[]> {
  // The weights are large, and nobody needs them before a question in words is asked.
  const { mattersOf } = await import('./read.ts');
  return mattersOf(question).near;
}

/** The matters that a question may be about, the likeliest first; none where it is surely about something else. */
export async function likeliestIn(question: string, read: QuestionRead): Promise<readonly NearMatter[]> {
  const isCry = isPotGoingThick(question) && isOurPot(read);
  const near = isCry ? [CRY] : await nearestTo(question);
  const [first] = near;
  if (!first || first.chance < LIKELY) return [];
  const isUrgent = IN_THE_POT.has(first.matter) && URGENT.test(unaccented(question));
  const least = leastBeside(first.matter, read, question);
  return isCry || (isUrgent && Number.isFinite(least)) || first.chance >= least ? near : [];
}
