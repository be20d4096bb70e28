import { logChances, type Model } from '../../../../text/learned/model.ts';
import { modelOf } from '../../../../text/learned/written.ts';
import { isLyeMatter, type LyeMatter } from '../lye-matter.ts';
import { featuresOf, shareKnown } from './features.ts';
import WRITTEN from './weights.json' with { type: 'json' };

/** A matter that a question may be about, and how likely it is, 0 to 1. */
export type NearMatter = { readonly topic: LyeMatter; readonly chance: number };

/**
 * The matter that a question is about, where that is sure, and others that it may be about, the likeliest first; `nothing`:
 * how likely it is about none of them, 0 to 1.
 */
export type Nearest = {
  readonly sure: NearMatter | undefined;
  /** The likeliest matter where few of the words are known, but those tell it plainly: enough where lye itself is named. */
  readonly likely: NearMatter | undefined;
  readonly offered: readonly LyeMatter[];
  readonly nothing: number;
};

/**
 * From this chance on, and with so many of its words known, a question's matter is the right one 19 times in 20, with each
 * writer in turn left out of the fit. What is told in words never heard is sure of itself by the few that are known.
 */
const SURE = { chance: 0.55, known: 0.5 };
/** Chatted beside it, more words are strange: then a matter has to be told the more plainly by the rest. */
const LIKELY = { chance: 0.8, known: 0.2 };
/** More than three to choose from are not read on a phone. */
export const MOST_OFFERED = 3;
/** A matter less likely than this is seldom the one that is meant. */
const LEAST_OFFERED = 0.04;
/** Where it is likelier than this that none of the matters is meant, none is offered. */
const NOTHING = 0.9;

/** What a model that scores `classes`, one of which is `none`, tells of a question. Pure. */
export function nearestBy(question: string, model: Model, classes: readonly string[]): Nearest {
  const chances = logChances(featuresOf(question), model).map(Math.exp);
  const matters = classes
    .map((topic, at) => ({ topic, chance: chances[at]! }))
    .filter((one): one is NearMatter => isLyeMatter(one.topic))
    .toSorted((a, b) => b.chance - a.chance);
  const [first] = matters;
  const known = shareKnown(question, model);
  const isOver = (least: typeof SURE) =>
    first !== undefined && first.chance >= least.chance && known >= least.known;
  const sure = isOver(SURE) ? first : undefined;
  const likely = isOver(LIKELY) ? first : undefined;
  const nothing = chances[classes.indexOf('none')]!;
  if (nothing > NOTHING) return { sure, likely, offered: [], nothing };
  const offered = matters.filter(one => one !== sure && one.chance >= LEAST_OFFERED).slice(0, MOST_OFFERED);
  return { sure, likely, offered: offered.map(({ topic }) => topic), nothing };
}

let model: Model | undefined;

/**
 * Which matter of handling lye a question is nearest to, for one that no pattern finds. Learned from questions of several
 * makers: a multinomial logistic regression over words, their pieces and what they stand for in English and Spanish. Pure,
 * but that the weights are unpacked once.
 */
export function nearestMatters(question: string): Nearest {
  model ??= modelOf(WRITTEN);
  return nearestBy(question, model, WRITTEN.classes);
}
