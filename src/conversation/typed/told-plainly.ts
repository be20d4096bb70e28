import { type SaidAmount, saidAmount } from '../../engine/quantities/told/said-amount.ts';
import type { ReadAs } from '../../engine/questions/options/in-plain-words.ts';
import { isOfWording } from '../../engine/questions/options/of-wording.ts';
import { type Refusal, refuse } from '../../engine/refusal.ts';
import { excerpt } from '../../engine/text/excerpt.ts';
import type { Given } from '../question.ts';

declare module '../../engine/refusal.ts' {
  interface Reasons {
    /** An amount with more figures in it than one; `candidates` are what it may mean. */
    'amount-several': { text: string; candidates: readonly ToldAmount[] };
  }
}

/** An amount that may be meant: as its reader takes it, and as it is said. */
export type ToldAmount = { readonly text: string; readonly said: SaidAmount };
const toldAmount = (text: string): ToldAmount => ({ text, said: saidAmount(text) });

/** What was given with the amounts in it in words that their readers take, and those amounts. */
export type ToldPlainly = { readonly given: Given; readonly told: readonly SaidAmount[] };

/**
 * What was given, where its amounts are only refused for how they are worded and the grammar of plain questions reads them: the one
 * place for every command, form and front. `reads` tells what each option is read as. Undefined where nothing is read otherwise.
 * Throws a Refusal `amount-several` where a figure in it may be meant instead.
 */
export async function toldPlainly(
  refusal: Refusal,
  given: Given,
  reads: Readonly<Record<string, ReadAs | undefined>>,
): Promise<ToldPlainly | undefined> {
  if (!isOfWording(refusal)) return undefined;
  // Most amounts are read by their own reader: the grammar of questions is loaded for the first that is not.
  const { inPlainWords } = await import('../../engine/questions/options/in-plain-words.ts');
  const told: SaidAmount[] = [];
  const meant = Object.entries(given).map(([name, value]): [string, Given[string]] => {
    const readAs = reads[name];
    if (readAs === undefined || typeof value !== 'string') return [name, value];
    const said = inPlainWords(readAs, value);
    if (said === undefined) return [name, value];
    if ('unclear' in said)
      refuse('amount-several', { text: excerpt(value), candidates: said.unclear.map(toldAmount) });
    told.push(saidAmount(said.text));
    return [name, said.text];
  });
  return told.length === 0 ? undefined : { given: Object.fromEntries(meant), told };
}
