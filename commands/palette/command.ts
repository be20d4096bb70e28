import { action, commandGroup } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { choice, text, yesNo } from '../../src/conversation/option.ts';
import { suggestBases } from '../../src/presenting/colour/suggest.ts';
import { phrases } from '../../src/words/declared.ts';
import { buyReply } from './buy.ts';
import { makeReply } from './make.ts';
import { todayReply } from './today.ts';

const says = phrases('palette');

const colours = text(says.options.colours, { most: 400 });
const soap = {
  portion: text(says.options.portion, { reads: 'portion' }).optional(),
  base: text(says.options.base, { most: 400 }).optional(),
  gel: yesNo(says.options.gel).optional(),
};
const base = (typed: string, { say }: Context) => suggestBases(typed, say);

export default commandGroup('palette', says.purpose, {
  today: action({
    purpose: says.today.purpose,
    seenBy: 'asker',
    pace: 'slow',
    options: {
      scheme: choice(says.today.scheme).optional(),
      ...soap,
    },
    completes: { base },
    answer: todayReply,
  }),
  make: action({
    purpose: says.make.purpose,
    seenBy: 'asker',
    pace: 'slow',
    options: { colours, ...soap },
    completes: { base },
    answer: makeReply,
  }),
  buy: action({
    purpose: says.buy.purpose,
    seenBy: 'asker',
    pace: 'slow',
    options: { colours, ...soap },
    completes: { base },
    answer: buyReply,
  }),
});
