import type { Context } from '../../../src/conversation/context.ts';
import { lyeAmissIn } from '../../../src/engine/questions/lye/slips/amiss.ts';
import { lyeAndOilsAlone } from '../../../src/engine/questions/lye/slips/told-amounts.ts';
import { acidTakesIn } from '../../../src/engine/questions/lye/sums/acid-takes.ts';
import { lyeForAnyOil } from '../../../src/engine/questions/lye/sums/check.ts';
import { impureLyeIn, readyLyeIn, waterForLyeIn } from '../../../src/engine/questions/lye/sums/ready-lye.ts';
import { scaledIn } from '../../../src/engine/questions/lye/sums/scaled.ts';
import { lyeSpilledIn } from '../../../src/engine/questions/lye/sums/spilled.ts';
import type { AskReply } from '../understood.ts';
import { cautions, type LyeView } from './matter.ts';

/**
 * Weights of lye that went wrong, or are to be turned into others by their own figures: what was over and what that leaves, lye
 * for an acid, for lye water of known strength, for another size. Undefined where a question asks nothing of the kind.
 */
export function lyeSumsReply(question: string, context: Context): AskReply | undefined {
  const view = viewOf(question, context.say.lyeQuestions);
  return (
    view && {
      kind: 'reply',
      headline: view.headline,
      data: view.data,
      understood: { kind: 'lye', lye: 'sums' },
      blocks: view.texts.map(text => ({ kind: 'text', text, firm: true })),
      cautions: cautions(context),
    }
  );
}

function viewOf(question: string, words: Context['say']['lyeQuestions']): LyeView | undefined {
  const { sums } = words;
  const spilled = lyeSpilledIn(question);
  if (spilled)
    return { headline: sums.spilled(spilled), texts: [sums.spilledWhy(spilled)], data: { spilled } };
  const ready = readyLyeIn(question);
  if (ready) return { headline: sums.ready(ready), texts: [sums.readyWhy(ready)], data: { ready } };
  const amiss = lyeAmissIn(question);
  if (amiss) {
    const isOil = amiss.isOilShort;
    return {
      headline: sums.amiss(amiss, isOil),
      texts: [sums.amissWhy(amiss, isOil), sums.amissRemedy(amiss, isOil)],
      data: { amiss },
    };
  }
  const acid = acidTakesIn(question);
  if (acid) return { headline: sums.acid(acid), texts: [sums.acidWhy(acid)], data: { acid } };
  const impure = impureLyeIn(question);
  if (impure) return { headline: sums.impure(impure), texts: [sums.impureWhy(impure)], data: { impure } };
  const water = waterForLyeIn(question);
  if (water) return { headline: sums.waterFor(water), texts: [words.waterWhy(water)], data: { water } };
  const scaled = scaledIn(question);
  if (scaled) return { headline: sums.scaled(scaled), texts: [sums.scaledWhy], data: { scaled } };
  const alone = lyeAndOilsAlone(question);
  if (
    alone &&
    lyeForAnyOil({ alkali: 'NaOH', grams: alone.lye, purity: 1 }, alone.oils) === 'too-much-for-all'
  )
    return {
      headline: words.tooMuchForAll(alone),
      texts: [sums.tooMuchWhy, words.nameOils],
      data: { alone },
    };
  return undefined;
}
