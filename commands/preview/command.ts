import { action, command, type Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { text, yesNo } from '../../src/conversation/option.ts';
import { suggestBases, suggestMix } from '../../src/presenting/colour/suggest.ts';
import { phrases } from '../../src/words/declared.ts';
import { previewNamesJar, previewReply } from './answer.ts';

const says = phrases('preview');

const bases = (typed: string, { say }: Context): readonly Suggestion[] => suggestBases(typed, say);

export default command(
  'preview',
  action({
    purpose: says.purpose,
    anywhere: true,
    seenBy: 'group',
    pace: 'slow',
    options: {
      mix: text(says.mix, { most: 400 }),
      portion: text(says.portion, { reads: 'portion' }).optional(),
      base: text(says.base, { most: 400 }).optional(),
      gel: yesNo(says.gel).optional(),
    },
    completes: { mix: suggestMix, base: bases },
    namesJar: previewNamesJar,
    answer: previewReply,
  }),
);
