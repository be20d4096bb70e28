import { parseSize } from '../../batch/batch-size.ts';
import { oilsOfBatch } from '../../batch/oils/lists/bare-grams.ts';
import { parsePortionRange } from '../../quantities/told/portion.ts';
import { Refusal } from '../../refusal.ts';
import { respelt } from '../../text/spelling/trade/respelt.ts';
import { isOfWording } from './of-wording.ts';
import { oilsTold } from './oils-told.ts';
import { portionTold, sizeTold } from './portion-told.ts';
import { isRead, type OptionTold } from './told.ts';

/** What an option is read as: how much to colour, how large a batch is, which oils it has. */
export type ReadAs = 'portion' | 'size' | 'oils';

const READERS: Readonly<
  Record<
    ReadAs,
    { readonly strict: (text: string) => object; readonly told: (text: string) => OptionTold | undefined }
  >
> = {
  portion: { strict: parsePortionRange, told: portionTold },
  size: { strict: parseSize, told: sizeTold },
  oils: { strict: oilsOfBatch, told: oilsTold },
};

/** Why an option's own reader does not take a text; undefined where it does. */
function refusalOf(strict: (text: string) => unknown, text: string): Refusal | undefined {
  try {
    strict(text);
    return undefined;
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal;
    throw refusal;
  }
}

/**
 * What an option says, in the words that its own reader takes, where that does not take it as it stands or with its slips put right: the
 * grammar of plain questions reads it, and every figure in it has to have its place. `unclear` are the two and more that it may mean.
 * Undefined where the option's own reader takes it, refuses it for what it says, or neither grammar reads it. Pure.
 * @example inPlainWords('portion', 'entre todos los aceites suman 900') // { text: '900 g oils' }
 */
export function inPlainWords(readAs: ReadAs, text: string): OptionTold | undefined {
  const { strict, told } = READERS[readAs];
  const refusal = refusalOf(strict, text);
  if (refusal === undefined || !isOfWording(refusal) || isRead(strict, respelt(text).text)) return undefined;
  return told(text);
}
