import { isSteward } from '../../src/conversation/answering/access.ts';
import { action, commandGroup, type Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { text } from '../../src/conversation/option.ts';
import type { Block, Reply } from '../../src/conversation/reply.ts';
import { cut } from '../../src/engine/text/cut.ts';
import * as recipes from '../../src/records/recipes/index.ts';
import { UNDO_MINUTES } from '../../src/records/undo/index.ts';
import { phrases } from '../../src/words/declared.ts';
import { answerPlan } from '../plan/follow-ups.ts';
import { undoChoice } from '../shelf/follow-ups.ts';
import { rescaled } from './rescaled.ts';

const says = phrases('recipe');

const recipe = text(says.options.recipe, { most: 100 });
const saveAs = text(says.options.saveAs, { most: 100 });

const suggest = async (typed: string, context: Context): Promise<readonly Suggestion[]> =>
  (await recipes.nearestRecipes(context.recipes, typed, 25)).map(one => ({ name: one, value: one }));

/** What a change did, with a word when it was done before. */
function told(
  headline: string,
  data: { readonly repeated: boolean },
  { say }: Context,
  more: readonly string[] = [],
): Reply {
  const notices = [...(data.repeated ? [say.recipes.repeated] : []), ...more];
  return {
    kind: 'reply',
    headline,
    data,
    blocks: notices.map((notice): Block => ({ kind: 'text', text: notice })),
    cautions: [],
  };
}

/** A change with the way back from it. */
const withUndo = (reply: Reply, done: { readonly repeated: boolean }, context: Context): Reply => ({
  ...reply,
  choices: undoChoice(done, context.change.cause, context),
});

/** The recipe's own words, one a line, as `/plan` takes them. */
const asWritten = ({ written, times }: recipes.Recipe, { say }: Context): Block => ({
  kind: 'text',
  folds: true,
  text: [
    `${say.recipes.asWritten}:`,
    ...Object.entries(written).map(([option, value]) => {
      const factor = times[(option === 'liquid' ? 'liquids' : option) as keyof recipes.Times] ?? 1;
      return `${option}: ${value}${factor === 1 ? '' : ` (${say.recipes.times({ factor })})`}`;
    }),
  ].join('\n'),
});

function row(found: recipes.Found, { say }: Context): string {
  const { written, times } = found;
  const size = [
    written.size ?? say.recipes.sizeOfOils,
    ...(times.size === 1 ? [] : [say.recipes.times({ factor: times.size })]),
  ].join(', ');
  const oils = cut(written.oils.replaceAll(/\s+/g, ' '), 120);
  return found.shared
    ? say.recipes.sharedRow({ name: found.name, by: found.byName, oils, size })
    : say.recipes.row({ name: found.name, oils, size });
}

export default commandGroup('recipe', says.purpose, {
  list: action({
    purpose: says.list.purpose,
    seenBy: 'asker',
    options: {},
    async answer(_asked, context) {
      const { say } = context;
      const all = await recipes.listRecipes(context.recipes);
      const own = all.filter(({ shared }) => !shared);
      const shared = all.filter(one => one.shared);
      const lists = [
        { title: say.recipes.own, rows: own },
        { title: say.recipes.shared, rows: shared },
      ];
      return {
        kind: 'reply',
        headline:
          all.length === 0 ? say.recipes.none : say.recipes.count({ own: own.length, shared: shared.length }),
        data: { own, shared },
        blocks: lists
          .filter(({ rows }) => rows.length > 0)
          .map(({ title, rows }) => ({ kind: 'rows', title, rows: rows.map(one => row(one, context)) })),
        cautions: [],
      };
    },
  }),
  show: action({
    purpose: says.show.purpose,
    seenBy: 'asker',
    options: { recipe },
    completes: { recipe: suggest },
    async answer(asked, context) {
      const found = await recipes.findRecipe(context.recipes, asked.recipe);
      const reply = await answerPlan(found, { name: found.name, seenBy: 'asker' }, context);
      const by: readonly Block[] = found.shared
        ? [{ kind: 'text', text: context.say.recipes.by({ name: found.byName }) }]
        : [];
      return {
        ...reply,
        data: { ...reply.data, written: found.written, times: found.times, by: found.byName },
        blocks: [...by, ...reply.blocks, asWritten(found, context)],
      };
    },
  }),
  save: action({
    purpose: says.save.purpose,
    seenBy: 'asker',
    options: { 'save-as': saveAs },
    formerly: { name: 'save-as' },
    async answer(asked, context) {
      const { say } = context;
      const plan = await recipes.lastPlan(context.shelf);
      const kept = await recipes.saveRecipe(context.recipes, asked['save-as'], plan, context.change);
      return told(say.recipes.saved(kept), kept, context);
    },
  }),
  copy: action({
    purpose: says.copy.purpose,
    seenBy: 'asker',
    options: { recipe, 'save-as': saveAs.optional() },
    formerly: { name: 'save-as' },
    completes: { recipe: suggest },
    async answer(asked, context) {
      const shelf = context.recipes;
      const found = await recipes.findRecipe(shelf, asked.recipe);
      const kept = await recipes.saveRecipe(shelf, asked['save-as'] ?? found.name, found, context.change);
      return told(context.say.recipes.copied({ ...kept, from: found.name }), kept, context);
    },
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
    async answer(asked, context) {
      const { say } = context;
      const found = await recipes.findRecipe(context.recipes, asked.recipe);
      const { plan, factor } = await rescaled(found, asked.size, context);
      const keptAs = asked['save-as'];
      const reply = await answerPlan(
        plan,
        { name: keptAs ?? found.name, saveAs: keptAs, seenBy: 'asker' },
        context,
      );
      const said =
        keptAs === undefined
          ? say.recipes.rescaled({ name: found.name, factor })
          : say.recipes.rescaledKept({ name: keptAs, from: found.name, factor });
      return {
        ...reply,
        data: { ...reply.data, factor },
        blocks: [{ kind: 'text', text: said }, ...reply.blocks],
      };
    },
  }),
  share: action({
    purpose: says.share.purpose,
    seenBy: 'group',
    options: { recipe },
    completes: { recipe: suggest },
    async answer(asked, context) {
      const shared = await recipes.shareRecipe(context.recipes, asked.recipe, context.change);
      return told(context.say.recipes.sharedNow(shared), shared, context);
    },
  }),
  unshare: action({
    purpose: says.unshare.purpose,
    seenBy: 'asker',
    options: { recipe },
    completes: { recipe: suggest },
    async answer(asked, context) {
      const steward = await isSteward(context);
      const change = { ...context.change, steward };
      const taken = await recipes.unshareRecipe(context.recipes, asked.recipe, change);
      return withUndo(told(context.say.recipes.unshared(taken), taken, context), taken, context);
    },
  }),
  remove: action({
    purpose: says.remove.purpose,
    seenBy: 'asker',
    options: { recipe },
    completes: { recipe: suggest },
    async answer(asked, context) {
      const shelf = context.recipes;
      const gone = await recipes.removeRecipe(shelf, asked.recipe, context.change);
      const stays = (await recipes.listRecipes(shelf)).some(
        one => one.shared && one.by === shelf.member && one.name === gone.name,
      );
      const more = stays ? [context.say.recipes.removedStillShared] : [];
      const minutes = gone.repeated ? [] : [context.say.undo.within({ minutes: UNDO_MINUTES })];
      const reply = told(context.say.recipes.removed(gone), gone, context, [...more, ...minutes]);
      return withUndo(reply, gone, context);
    },
  }),
});
