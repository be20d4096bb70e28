import type { Context } from '../../../src/conversation/context.ts';
import type { Reply } from '../../../src/conversation/reply.ts';
import { isNoSingleAlkali } from '../../../src/engine/questions/lye/asked-plainly.ts';
import type { LyeQuestion } from '../../../src/engine/questions/lye/question.ts';
import {
  checkLye,
  lyeForAnyOil,
  slippedTo,
  waterForLye,
} from '../../../src/engine/questions/lye/sums/check.ts';
import type { OilsForLye } from '../../../src/engine/questions/lye/sums/inverse.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import { stopped } from './lye-stopped.ts';
import { cautions } from './matter.ts';

/** How much oil takes lye that is weighed already. */
export function oilsReply(inverse: OilsForLye, context: Context): Reply {
  const words = context.say.lyeQuestions;
  return {
    kind: 'reply',
    headline: words.oilsFor(inverse),
    data: { understood: { lye: 'oils-for-lye' }, oilsForLye: inverse },
    blocks: [{ kind: 'text', text: words.oilsForWhy(inverse), firm: true }],
    cautions: cautions(context),
  };
}

/** Percent; more is a slip or a soap of another kind, and is not reckoned with. */
const MOST_WISHED = 30;

/** The superfat that was told beside weighed lye, percent, so that what it would take is told of that. */
function wishedIn(superfat: string | number | undefined): number | undefined {
  const percent = superfat === undefined ? Number.NaN : Number.parseFloat(String(superfat).replace(',', '.'));
  return percent >= 0 && percent <= MOST_WISHED ? percent : undefined;
}

/** Lye that was weighed: what it does in these oils, how much water it wants, or which oils it is for. */
export async function weighedReply(
  { given, weighed, oilGrams, waterGrams, asksWater, left, respelt = [], beside: said = [] }: LyeQuestion,
  question: string,
  context: Context,
): Promise<Reply> {
  const { say } = context;
  const words = say.lyeQuestions;
  if (weighed === undefined || (given.lye !== undefined && isNoSingleAlkali(given.lye)))
    return stopped(words.nameOils, { question, weighed: true, problem: 'lye-mixed' }, context);
  const { oils, additives } = given;
  const wished = wishedIn(given.superfat);
  const check =
    oils === undefined
      ? undefined
      : checkLye(weighed, { oils, additives, sizeGrams: oilGrams, superfat: wished });
  const beside =
    waterGrams === undefined ? undefined : words.waterBeside({ water: waterGrams, lye: weighed.grams });
  // Too little water is the first line, unless the lye itself burns.
  const isDry =
    waterGrams !== undefined &&
    waterGrams < weighed.grams &&
    check !== undefined &&
    check.verdict !== 'lye-heavy';
  const checked = check && [
    ...(beside === undefined || isDry ? [] : [beside]),
    words.checkedWhy(check),
    words.remedy[check.verdict],
    ...(respelt.length > 0 ? [words.respelt({ respelt })] : []),
    ...(left.length > 0 ? [words.passedBy({ left })] : []),
    ...(said.length > 0 ? [words.saidBeside({ beside: said })] : []),
  ];
  const reply = (headline: string, texts: readonly string[], data: object): Reply => ({
    kind: 'reply',
    headline,
    data: {
      understood: {
        lye: 'weighed',
        job: 'lye',
        weighed,
        given: {
          ...(oils !== undefined && { oils }),
          ...(wished !== undefined && { superfat: String(wished) }),
        },
      },
      ...data,
    },
    blocks: texts.map(text => ({ kind: 'text', text })),
    cautions: cautions(context),
  });
  if (asksWater) {
    const water = waterForLye(weighed.grams, given.water, check?.oilGrams ?? oilGrams);
    const said = { water: water.grams, lye: weighed.grams, percent: water.percent };
    // Lye that burns is told before its water.
    if (check?.verdict === 'lye-heavy') return reply(words.checked(check), checked ?? [], { check });
    return reply(
      words.water(said),
      [words.waterWhy(said), ...(check ? [words.checked(check), ...(checked ?? [])] : [])],
      {
        water,
        ...(check && { check }),
      },
    );
  }
  if (isDry && beside !== undefined)
    return reply(beside, [words.topics['too-little-water'].why, words.checked(check), ...(checked ?? [])], {
      check,
      waterGrams,
    });
  const likely = check && slippedTo(check);
  if (check && likely !== undefined)
    return reply(
      words.sums.slippedDecimal({ told: weighed.grams, likely }),
      [words.checked(check), words.sums.slippedDecimalWhy, ...(checked ?? [])],
      { check, likely },
    );
  if (check) return reply(words.checked(check), checked ?? [], { check });
  if (oilGrams === undefined && beside !== undefined) return reply(beside, [words.nameOils], { waterGrams });
  if (oilGrams === undefined)
    return stopped(
      say.refusal(new Refusal('oils-empty', {})),
      { question, weighed: true, problem: 'oils-empty' },
      context,
    );
  const told = { lye: weighed.grams, oils: oilGrams };
  const verdict = lyeForAnyOil(weighed, oilGrams);
  return reply(
    verdict === 'too-much-for-all' ? words.tooMuchForAll(told) : words.hangsOnOils(told),
    [words.nameOils],
    {
      verdict,
    },
  );
}
