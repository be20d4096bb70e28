import { type Model, scoresOf } from '../../../text/learned/model.ts';
import { modelOf } from '../../../text/learned/written.ts';
import type { EmergencyId } from '../emergency.ts';
import type { Grounds } from '../grounds.ts';
import { CLASSES } from './classes.ts';
import { featuresOf } from './features.ts';
import WRITTEN from './weights.json' with { type: 'json' };

let unpacked: Model | undefined;

/** What was learned from every text; unpacked when first asked for. */
const learned = (): Model => {
  unpacked ??= modelOf(WRITTEN);
  return unpacked;
};

/** `odds`: natural logarithm of the odds that a text tells of any emergency; each with its score, the likeliest first. */
export type LearnedReading = {
  readonly odds: number;
  readonly likeliest: readonly { readonly id: EmergencyId; readonly score: number }[];
};

/** What was learned from other texts says of this one. Pure, but that the weights are unpacked once. */
export function readLearned(
  told: Pick<Grounds, 'tokens' | 'mentions' | 'reading' | 'isPast'>,
  model: Model = learned(),
): LearnedReading {
  const scores = scoresOf(featuresOf(told), model);
  const likeliest = CLASSES.flatMap((id, at) => (id === 'none' ? [] : [{ id, score: scores[at]! }])).toSorted(
    (a, b) => b.score - a.score,
  );
  const most = likeliest[0]!.score;
  const any = most + Math.log(likeliest.reduce((sum, { score }) => sum + Math.exp(score - most), 0));
  return { odds: any - scores[CLASSES.indexOf('none')]!, likeliest };
}
