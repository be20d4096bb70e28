import { action, commandGroup, type Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { text } from '../../src/conversation/option.ts';
import { nearestRecipes } from '../../src/records/recipes/index.ts';
import { phrases } from '../../src/words/declared.ts';
import {
  copyReply,
  listReply,
  removeReply,
  rescaleReply,
  saveReply,
  shareReply,
  showReply,
  unshareReply,
} from './answer.ts';

const says = phrases('recipe');

const recipe = text(says.options.recipe, { most: 100 });
const saveAs = text(says.options.saveAs, { most: 100 });

const suggest = async (typed: string, context: Context): Promise<readonly Suggestion[]> =>
  (await nearestRecipes(context.recipes, typed, 25)).map(one => ({ name: one, value: one }));

export default commandGroup('recipe', says.purpose, {
  list: action({
    purpose: says.list.purpose,
    seenBy: 'asker',
    options: {},
    answer: (_asked, context) => listReply(context),
  }),
  show: action({
    purpose: says.show.purpose,
    seenBy: 'asker',
    options: { recipe },
    completes: { recipe: suggest },
    answer: showReply,
  }),
  save: action({
    purpose: says.save.purpose,
    seenBy: 'asker',
    options: { 'save-as': saveAs },
    formerly: { name: 'save-as' },
    answer: saveReply,
  }),
  copy: action({
    purpose: says.copy.purpose,
    seenBy: 'asker',
    options: { recipe, 'save-as': saveAs.optional() },
    formerly: { name: 'save-as' },
    completes: { recipe: suggest },
    answer: copyReply,
  }),
  rescale: action({
    purpose: says.rescale.purpose,
    seenBy: 'asker',
    options: {
      recipe,
      size: text(says.rescale.size, { reads: 'size' }),
      'save-as': saveAs.optional(),
    },
    formerly: { to: 'size' },
    completes: { recipe: suggest },
    answer: rescaleReply,
  }),
  share: action({
    purpose: says.share.purpose,
    seenBy: 'group',
    options: { recipe },
    completes: { recipe: suggest },
    answer: shareReply,
  }),
  unshare: action({
    purpose: says.unshare.purpose,
    seenBy: 'asker',
    options: { recipe },
    completes: { recipe: suggest },
    answer: unshareReply,
  }),
  remove: action({
    purpose: says.remove.purpose,
    seenBy: 'asker',
    options: { recipe },
    completes: { recipe: suggest },
    answer: removeReply,
  }),
});
