import { action, commandGroup } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { picture, text, yesNo } from '../../src/conversation/option.ts';
import { suggestBases } from '../../src/presenting/colour/suggest.ts';
import { nearestRecipes } from '../../src/records/recipes/index.ts';
import { nearestNames } from '../../src/records/shelf/index.ts';
import { phrases } from '../../src/words/declared.ts';
import { curedReply } from './cured.ts';
import { batchActs } from './deadlines.ts';
import { exportReply } from './export.ts';
import { batchFollowUps } from './follow-ups.ts';
import { datesReply, listReply, notedReply, shownReply } from './keeping.ts';
import { batch, completes, on, weights } from './options.ts';
import { pouredReply } from './poured.ts';
import { removedReply, sharedReply, unsharedReply } from './sharing.ts';
import { weighedReply, weighingFollowUps } from './weighing.ts';

const says = phrases('batch');

export default commandGroup(
  'batch',
  says.purpose,
  {
    poured: action({
      purpose: says.poured.purpose,
      anywhere: true,
      seenBy: 'asker',
      pace: 'slow',
      options: {
        recipe: text(says.poured.recipe, { most: 100 }).optional(),
        changes: text(says.poured.changes, { most: 1000 }).optional(),
        made: text(says.poured.made, { most: 1500 }).optional(),
        oils: text(says.poured.oils, { most: 1500, reads: 'oils' }).optional(),
        size: text(says.poured.size, { reads: 'size' }).optional(),
        base: text(says.poured.base, { most: 400 }).optional(),
        name: text(says.poured.name, { most: 60 }).optional(),
        on,
        photo: picture(says.poured.photo).optional(),
      },
      completes: {
        recipe: async (typed: string, context: Context) =>
          (await nearestRecipes(context.recipes, typed, 25)).map(name => ({ name, value: name })),
        base: (typed: string, { say }: Context) => suggestBases(typed, say),
      },
      answer: pouredReply,
    }),
    cut: action({
      purpose: says.cut.purpose,
      anywhere: true,
      seenBy: 'asker',
      options: { batch: batch.optional(), weights: weights.optional(), on },
      completes,
      answer: (asked, context) => weighedReply('cut', asked, context),
    }),
    weigh: action({
      purpose: says.weigh.purpose,
      anywhere: true,
      seenBy: 'asker',
      options: { weights, batch: batch.optional(), on },
      completes,
      answer: (asked, context) => weighedReply('weighed', asked, context),
    }),
    cured: action({
      purpose: says.cured.purpose,
      anywhere: true,
      seenBy: 'asker',
      pace: 'slow',
      options: {
        batch: batch.optional(),
        photo: picture(says.cured.photo).optional(),
        colours: text(says.cured.colours, { most: 500 }).optional(),
        weights: weights.optional(),
        on,
      },
      completes,
      answer: curedReply,
    }),
    show: action({
      purpose: says.show.purpose,
      anywhere: true,
      seenBy: 'asker',
      options: { batch: batch.optional() },
      completes,
      answer: shownReply,
    }),
    list: action({
      purpose: says.list.purpose,
      anywhere: true,
      seenBy: 'asker',
      options: {
        colour: text(says.list.colour, { most: 60 }).optional(),
        jar: text(says.list.jar, { most: 100 }).optional(),
        since: text(says.list.since, { most: 20 }).optional(),
        shared: yesNo(says.list.shared).optional(),
      },
      completes: {
        jar: async (typed: string, { shelf }: Context) =>
          (await nearestNames(shelf, typed, 25)).map(name => ({ name, value: name })),
      },
      answer: listReply,
    }),
    dates: action({
      purpose: says.dates.purpose,
      anywhere: true,
      seenBy: 'asker',
      options: {
        batch: batch.optional(),
        remind: yesNo(says.dates.remind).optional(),
      },
      completes,
      answer: datesReply,
    }),
    note: action({
      purpose: says.note.purpose,
      anywhere: true,
      seenBy: 'asker',
      options: {
        text: text(says.note.text, { most: 1000 }),
        batch: batch.optional(),
        on,
      },
      completes,
      answer: notedReply,
    }),
    share: action({
      purpose: says.share.purpose,
      seenBy: 'group',
      options: { batch: batch.optional() },
      completes,
      answer: sharedReply,
    }),
    unshare: action({
      purpose: says.unshare.purpose,
      seenBy: 'asker',
      options: { batch: batch.optional() },
      completes,
      answer: unsharedReply,
    }),
    remove: action({
      purpose: says.remove.purpose,
      anywhere: true,
      seenBy: 'asker',
      options: { batch },
      completes,
      answer: removedReply,
    }),
    export: action({
      purpose: says.export.purpose,
      anywhere: true,
      seenBy: 'asker',
      options: {},
      answer: (_, context) => exportReply(context),
    }),
  },
  { followUps: { ...batchFollowUps, ...weighingFollowUps }, deadlines: batchActs },
);
