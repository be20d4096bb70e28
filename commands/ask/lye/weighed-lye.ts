import type { Context } from '../../../src/conversation/context.ts';
import { isNoSingleAlkali } from '../../../src/engine/questions/lye/amounts/alkali.ts';
import type { LyeQuestion } from '../../../src/engine/questions/lye/question.ts';
import {
  checkLye,
  lyeForAnyOil,
  slippedTo,
  waterForLye,
} from '../../../src/engine/questions/lye/sums/check.ts';
import type { OilsForLye } from '../../../src/engine/questions/lye/sums/inverse.ts';
import { type LyeMissing, lyeMissing } from '../../../src/engine/questions/lye/sums/missing.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { oneText } from '../../../src/words/sentence.ts';
import type { AskReply } from '../understood.ts';
import { stopped } from './lye-stopped.ts';
import { cautions, type LyeView } from './matter.ts';

/** How much oil takes lye that is weighed already. */
export function oilsReply(inverse: OilsForLye, context: Context): AskReply {
  const words = context.say.lyeQuestions;
  return {
    kind: 'reply',
    headline: words.oilsFor(inverse),
    data: { oilsForLye: inverse },
    understood: { kind: 'lye', lye: 'oils-for-lye' },
    blocks: [{ kind: 'text', text: words.oilsForWhy(inverse), firm: true }],
    cautions: cautions(context),
  };
}

/** Percent; more is a slip or a soap of another kind, and is not reckoned with. */
const MOST_WISHED = 30;

/** The superfat that was told beside weighed lye, percent, so that what it would take is told of that. */
const wishedIn = (superfat: number | undefined): number | undefined =>
  superfat !== undefined && superfat >= 0 && superfat <= MOST_WISHED ? superfat : undefined;

type Words = Context['say']['lyeQuestions'];
type Check = ReturnType<typeof checkLye>;
/** What is said of lye that was weighed. */
/** Lye that was weighed: what it does in these oils, how much water it wants, or which oils it is for. */
export async function weighedReply(
  asked: LyeQuestion,
  question: string,
  context: Context,
): Promise<AskReply> {
  const { given, weighed, oilGrams } = asked;
  const words = context.say.lyeQuestions;
  if (weighed === undefined || isNoSingleAlkali(asked.lye))
    return stopped(words.nameOils, { question, weighed: true, problem: 'lye-mixed' }, context);
  const { oils, additives } = given;
  const superfat = wishedIn(given.superfat);
  const check =
    oils === undefined ? undefined : checkLye(weighed, { oils, additives, sizeGrams: oilGrams, superfat });
  const view = viewOf({ ...asked, weighed }, check, { words, question });
  if (!view)
    return stopped(
      context.say.refusal(new Refusal('oils-empty', {})),
      { question, weighed: true, problem: 'oils-empty' },
      context,
    );
  const { headline, texts, data } = view;
  return {
    kind: 'reply',
    headline,
    data,
    understood: {
      kind: 'lye',
      lye: 'weighed',
      job: 'lye',
      weighed,
      given: {
        ...(oils !== undefined && { oils }),
        ...(superfat !== undefined && { superfat: String(superfat) }),
      },
    },
    blocks: texts.map(text => ({ kind: 'text', text })),
    cautions: cautions(context),
  };
}

type Weighed = LyeQuestion & { readonly weighed: NonNullable<LyeQuestion['weighed']> };

/** Undefined where neither oils nor water are told beside the lye. */
function viewOf(
  asked: Weighed,
  check: Check | undefined,
  { words, question }: { readonly words: Words; readonly question: string },
): LyeView | undefined {
  const { weighed, oilGrams, waterGrams } = asked;
  if (asked.asksWater) return viewOfWater(asked, check, words);
  const rest = check && lyeMissing(question, check);
  if (check && rest) return viewOfMissing(asked, rest, words);
  if (check) return viewOfCheck(asked, check, words);
  const beside = waterBeside(asked, words);
  if (oilGrams === undefined)
    return beside === undefined
      ? undefined
      : { headline: beside, texts: [words.nameOils], data: { waterGrams } };
  const told = { lye: weighed.grams, oils: oilGrams };
  const verdict = lyeForAnyOil(weighed, oilGrams);
  const headline = verdict === 'too-much-for-all' ? words.tooMuchForAll(told) : words.hangsOnOils(told);
  return { headline, texts: [words.nameOils], data: { verdict } };
}

const waterBeside = ({ weighed, waterGrams }: Weighed, words: Words): string | undefined =>
  waterGrams === undefined ? undefined : words.waterBeside({ water: waterGrams, lye: weighed.grams });

/** Too little water is the first line, unless the lye itself burns. */
const isDry = ({ weighed, waterGrams }: Weighed, check: Check): boolean =>
  waterGrams !== undefined && waterGrams < weighed.grams && check.verdict !== 'lye-heavy';

/** What a check brings to light, and what of the question it stands on. */
function textsOf(asked: Weighed, check: Check, words: Words): readonly string[] {
  const { left, respelt = [], beside: said = [] } = asked;
  const beside = isDry(asked, check) ? undefined : waterBeside(asked, words);
  return [
    ...(beside === undefined ? [] : [beside]),
    words.checkedWhy(check),
    words.remedy[check.verdict],
    ...(respelt.length > 0 ? [words.respelt({ respelt })] : []),
    ...(left.length > 0 ? [words.passedBy({ left })] : []),
    ...(said.length > 0 ? [words.saidBeside({ beside: said })] : []),
  ];
}

/** How much water the lye wants; lye that burns is told before its water. */
function viewOfWater(asked: Weighed, check: Check | undefined, words: Words): LyeView {
  const { weighed, given, oilGrams } = asked;
  const water = waterForLye(weighed.grams, given.water, check?.oilGrams ?? oilGrams);
  const said = { water: water.grams, lye: weighed.grams, percent: water.percent };
  const checked = check ? textsOf(asked, check, words) : [];
  if (check?.verdict === 'lye-heavy')
    return { headline: words.checked(check), texts: checked, data: { check } };
  return {
    headline: words.water(said),
    texts: [words.waterWhy(said), ...(check ? [words.checked(check)] : []), ...checked],
    data: { water, ...(check && { check }) },
  };
}

/** What is missing of lye that is in already; what was passed by and said beside it is told as for any check. */
function viewOfMissing(asked: Weighed, rest: LyeMissing, words: Words): LyeView {
  const { check } = rest;
  const told = textsOf(asked, check, words).filter(text => text !== words.remedy[check.verdict]);
  return {
    headline: words.missing(rest),
    texts: [words.missingWhy(rest), ...told],
    data: { check, missing: rest.missing },
  };
}

/** What the lye does in these oils. */
function viewOfCheck(asked: Weighed, check: Check, words: Words): LyeView {
  const { weighed, waterGrams } = asked;
  const checked = textsOf(asked, check, words);
  const beside = waterBeside(asked, words);
  if (beside !== undefined && isDry(asked, check))
    return {
      headline: beside,
      texts: [oneText(words.topics['too-little-water'].why), words.checked(check), ...checked],
      data: { check, waterGrams },
    };
  const likely = slippedTo(check);
  if (likely === undefined) return { headline: words.checked(check), texts: checked, data: { check } };
  return {
    headline: words.sums.slippedDecimal({ told: weighed.grams, likely }),
    texts: [words.checked(check), words.sums.slippedDecimalWhy, ...checked],
    data: { check, likely },
  };
}
