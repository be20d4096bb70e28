import { z } from 'zod';
import { followUp } from '../../../src/conversation/command.ts';
import type { Attachment } from '../../../src/conversation/question.ts';
import { validSent } from '../../../src/conversation/typed/validate.ts';
import { refuse } from '../../../src/engine/refusal.ts';
import { asOf, requireChallenge } from '../../../src/records/challenges/index.ts';
import { scopeOf } from '../lookup.ts';
import { enter } from './enter.ts';

const sentBar = z.object({
  title: z.string(),
  photo: z.custom<Attachment>(value => typeof value === 'object' && value !== null && 'read' in value),
  colourants: z.string(),
  note: z.string().optional(),
  made: z.string().optional(),
});

/** What a member filled in. */
export const enterFilled = followUp({
  seenBy: 'asker',
  pace: 'slow',
  args: { challenge: z.string() },
  answer: ({ challenge }, context, { fields }) =>
    enter({ challenge, ...validSent(sentBar, fields) }, context),
});

/** The platform's room for the title of a form, characters. */
const MOST_TITLE = 45;

/** The button under the announcement: asks for the bar. */
export const enterButton = followUp({
  for: 'group',
  hours: 24 * 370,
  seenBy: 'asker',
  opensForm: true,
  args: { challenge: z.string() },
  async answer({ challenge: id }, context) {
    const { phase, terms } = asOf(await requireChallenge(scopeOf(context), id), context.at);
    if (phase !== 'entering') refuse('challenge-not-now', { phase, needs: 'entering' });
    const { challengeSteps: steps } = context.say;
    return {
      kind: 'form',
      // A name that the head of a form has no room for stands on the message behind it.
      title: Array.from(terms.title).length <= MOST_TITLE ? terms.title : steps.enterBar,
      fields: [
        {
          kind: 'picture',
          name: 'photo',
          label: terms.decides === 'votes' ? steps.fields.photo : steps.fields.photoOnWhite,
          required: true,
        },
        { kind: 'line', name: 'title', label: steps.fields.bar, required: true, most: 80 },
        {
          kind: 'line',
          name: 'colourants',
          label: steps.fields.colourants,
          hint: steps.hints.colourants,
          required: true,
        },
        {
          kind: 'line',
          name: 'made',
          label: steps.fields.made,
          hint: steps.hints.made,
          required: terms.madeFrom !== undefined || (terms.leastCureDays ?? 0) > 0,
        },
        {
          kind: 'paragraph',
          name: 'note',
          label: terms.class === 'technique' ? steps.fields.technique : steps.fields.note,
          required: terms.class === 'technique',
          most: 1000,
        },
      ],
      follow: enterFilled.with({ challenge: id }),
    };
  },
});
