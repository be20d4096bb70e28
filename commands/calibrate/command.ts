import { action, commandGroup, type Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { number, picture, several, text, yesNo } from '../../src/conversation/option.ts';
import { suggestBases } from '../../src/presenting/colour/suggest.ts';
import { nearestNames } from '../../src/records/shelf/index.ts';
import { phrases } from '../../src/words/declared.ts';
import { calibrateReply } from './answer.ts';
import { barPlanReply } from './bar-plan.ts';

const says = phrases('calibrate');

const suggestItems = async (typed: string, { shelf }: Context): Promise<readonly Suggestion[]> =>
  (await nearestNames(shelf, typed, 25)).map(name => ({ name, value: name }));

export default commandGroup('calibrate', says.purpose, {
  bars: action({
    purpose: says.bars.purpose,
    seenBy: 'asker',
    pace: 'slow',
    options: {
      item: text(says.bars.item).optional(),
      bar: several(says.bars.bar, { most: 6 }),
      photo: picture(says.bars.photo).optional(),
      dose: text(says.bars.dose).optional(),
      base: text(says.bars.base, { most: 400 }).optional(),
      gel: yesNo(says.bars.gel).optional(),
      share: yesNo(says.bars.share).optional(),
      afresh: yesNo(says.bars.afresh).optional(),
    },
    completes: {
      item: suggestItems,
      base: (typed: string, { say }: Context) => suggestBases(typed, say),
    },
    answer: calibrateReply,
  }),
  plan: action({
    purpose: says.plan.purpose,
    seenBy: 'asker',
    pace: 'slow',
    options: {
      jars: text(says.plan.jars).optional(),
      portion: text(says.plan.portion, { reads: 'portion' }).optional(),
      within: number(says.plan.within, { least: 4, most: 12 }).optional(),
      mixes: yesNo(says.plan.mixes).optional(),
      base: text(says.plan.base, { most: 400 }).optional(),
      gel: yesNo(says.plan.gel).optional(),
    },
    completes: {
      jars: suggestItems,
      base: (typed: string, { say }: Context) => suggestBases(typed, say),
    },
    answer: barPlanReply,
  }),
});
