import type { Concept, Mention } from './concepts.ts';
import type { Match } from './pattern.ts';
import type { Reading } from './polarity.ts';

const HUES: ReadonlySet<Concept> = new Set([
  'red',
  'pink',
  'purple',
  'blue',
  'green',
  'teal',
  'orange',
  'yellow',
]);
const ENDS: ReadonlySet<Concept> = new Set([
  ...HUES,
  'brown',
  'grey',
  'muddy',
  'cream',
  'peach',
  'black',
  'vanish',
]);
/** Shifts that a yellow base alone explains: they are read as a cast of the base, not as a colour gone in lye. */
const CAST = new Set([
  'blue green',
  'blue teal',
  'teal green',
  'pink peach',
  'pink orange',
  'red orange',
  'red pink',
  'purple muddy',
]);
const REACH = 6;

/**
 * "My purple went grey": a hue before a word of change and another after it.
 * Needs the order of the words, which patterns do not look at.
 */
export function colourChanges(mentions: readonly Mention[], { ruler, standing }: Reading): Match[] {
  const near = (at: Mention, step: 1 | -1, wanted: ReadonlySet<Concept>): Mention | undefined => {
    const start = mentions.indexOf(at);
    for (let i = start + step; i >= 0 && i < mentions.length; i += step) {
      const other = mentions[i]!;
      if (Math.abs(ruler[other.from]! - ruler[at.from]!) > REACH) return undefined;
      if (wanted.has(other.concept) && (step < 0 ? other.to <= at.from : other.from >= at.to)) return other;
    }
    return undefined;
  };
  return mentions.flatMap(turn => {
    if (turn.concept !== 'turn' || standing[turn.from] !== 'yes') return [];
    const before = near(turn, -1, HUES);
    const after = near(turn, 1, ENDS);
    if (!before || !after || before.concept === after.concept) return [];
    if (standing[after.from] !== 'yes' || standing[before.from] === 'no') return [];
    if (CAST.has(`${before.concept} ${after.concept}`)) return [];
    return [
      { finding: 'colour-changed-in-lye', present: true, guessed: false, from: before.from, to: after.to },
    ];
  });
}
