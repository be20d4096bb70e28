import type { Origin } from '../../origin.ts';

/** A trade rule that nobody has published. */
export const practice = (rule: string): Origin => ({ trust: 'common practice', source: rule });
/** Believed to stand in the source named, unchecked. */
export const remembered = (source: string): Origin => ({ trust: 'from memory', source });
/** Read in the source named. */
export const published = (source: string): Origin => ({ trust: 'published', source });

/** Gettens and Stout's table of the physical properties of pigments (specific gravity). */
export const gettensStout = published(
  'Gettens and Stout, Painting Materials, physical properties of pigments',
);
/** Loose bulk densities are typical values; jars differ twofold. */
export const typicalBulk = remembered('typical loose powder; weigh one level spoon of yours');
/** Doses and ceilings of the trade. */
export const tradeDose = practice('level US teaspoons per US cup of raw batter, full saturated colour');
/** A colour that is stronger than its kind, of which nobody has published a dose. */
export const lessOf = (part: 'half' | 'a quarter', what: string): Origin =>
  remembered(`no trade rule known: stronger than ${what}, so ${part} of that dose to begin with`);
/** Which liquid wets which kind. */
export const tradeCarrier = practice('what wets this kind of powder');
