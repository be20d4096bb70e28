import { z } from 'zod';
import { type FollowUp, followUp, type SeenBy } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import type { Given } from '../../src/conversation/question.ts';
import type { Choice, Form, Reply } from '../../src/conversation/reply.ts';
import { answeredPlainly } from '../../src/conversation/typed/answered-plainly.ts';
import type { WrittenPlan } from '../../src/engine/batch/planning/written-plan.ts';
import { Refusal } from '../../src/engine/refusal.ts';
import { plainReply } from '../../src/presenting/plain-reply.ts';
import { preferencesOf } from '../../src/records/preferences.ts';
import {
  type KeptPlan,
  keepRecentPlan,
  ONCE,
  recentPlanOf,
  saveRecipe,
  type Use,
} from '../../src/records/recipes/index.ts';
import type { Words } from '../../src/words/index.ts';
import { type Asking, makePlan, printPlan } from './answer.ts';
import { emptied, type FormName, fieldsOf, typedIn, unlike, wordsIn } from './forms.ts';
import { nameSent, save } from './save.ts';
import { take } from './take.ts';
import { planNamesJar, whoSees } from './who-sees.ts';
import { changed, READS } from './written.ts';

const planId = { plan: z.string() };
/** A plan, and whether the answer that it stood in was for everybody: `g`. */
const shownPlan = { plan: z.string(), seen: z.string() };
type Shown = { readonly plan: string | number; readonly seen: string | number };
const seenIn = ({ seen }: { readonly seen?: string }): SeenBy => (seen === 'g' ? 'group' : 'asker');
const seenAs = (seenBy: SeenBy) => (seenBy === 'group' ? 'g' : 'a');

/** A form, filled with what the plan says now. */
export function formOf(
  name: FormName,
  { now, id, seenBy }: { readonly now: Partial<WrittenPlan>; readonly id: string; readonly seenBy: SeenBy },
  { say, language }: Context,
): Form {
  return {
    kind: 'form',
    title: say.plan.forms[name],
    fields: fieldsOf(name, now, { say, language }),
    follow: sentForms[name].with({ plan: id, seen: seenAs(seenBy) }),
  };
}

/** The plan that a form goes on with; a new one where nothing was planned yet. */
const planOrNone = async (id: string, context: Context): Promise<KeptPlan> =>
  id === '' ? freshPlan({ oils: '' }, context) : await recentPlanOf(context.shelf, id);

/** A plan of the member's own, nothing of it found yet. */
export async function freshPlan(words: WrittenPlan, { store, asker }: Context): Promise<KeptPlan> {
  const { spoons } = await preferencesOf(store, asker.id);
  return { written: words, spoons, times: ONCE, colours: [] };
}

/** The plan that a sent form makes of the one before it. Throws the Refusals of `wordsIn`. */
async function planSent(before: KeptPlan, name: FormName, sent: Given, context: Context): Promise<KeptPlan> {
  const { spoons } = await preferencesOf(context.store, context.asker.id);
  return changed(emptied(before, name, sent), unlike(before, wordsIn(sent, name, context.say)), spoons);
}

const sentForm = (name: FormName): FollowUp<Shown> =>
  followUp({
    seenBy: seenIn,
    args: shownPlan,
    namesJar: async ({ plan: id }, context, { fields: sent }) =>
      planNamesJar(await planSent(await planOrNone(id, context), name, sent, context), context),
    async answer({ plan: id, seen }, context, { fields: sent }) {
      const before = await planOrNone(id, context);
      const kept = emptied(before, name, sent);
      const shown = async (fields: Given): Promise<Reply> => {
        const plan = await planSent(before, name, fields, context);
        const seenBy = seenIn({ seen }) === 'asker' ? 'asker' : await whoSees(plan, context);
        return answerPlan(plan, { seenBy }, context);
      };
      try {
        return await answeredPlainly(shown, { given: sent, reads: READS }, context);
      } catch (refusal) {
        if (!(refusal instanceof Refusal)) throw refusal;
        return putRight(
          refusal,
          { name, seen, typed: { ...kept, written: { ...kept.written, ...typedIn(sent, name) } } },
          context,
        );
      }
    },
  });

/** What was typed is not lost on a member who typed much: one press opens the form again with all of it. */
async function putRight(
  refusal: Refusal,
  { name, seen, typed }: { readonly name: FormName; readonly seen: string; readonly typed: KeptPlan },
  context: Context,
): Promise<Reply> {
  const { say, idempotencyKey, change } = context;
  await keepRecentPlan(context.shelf, idempotencyKey, { ...typed, uses: [] }, change.at);
  return {
    ...plainReply(say.refusal(refusal), { problem: refusal.id }),
    choices: [
      {
        kind: 'button',
        label: say.plan.tryAgain,
        weight: 'main',
        follow: openers[name].with({ plan: idempotencyKey, seen }),
      },
    ],
  };
}

const sentForms = { begin: sentForm('begin'), more: sentForm('more'), heat: sentForm('heat') };

const opener = (name: FormName): FollowUp<Shown> =>
  followUp({
    seenBy: 'asker',
    opensForm: true,
    args: shownPlan,
    async answer({ plan: id, seen }, context) {
      const { written: now } = await recentPlanOf(context.shelf, id);
      return formOf(name, { now, id, seenBy: seenIn({ seen }) }, context);
    },
  });
const openers = { begin: opener('begin'), more: opener('more'), heat: opener('heat') };

/** The same plan again, for everybody. */
const show = followUp({
  seenBy: 'group',
  args: planId,
  answer: async ({ plan: id }, context) =>
    answerPlan(await recentPlanOf(context.shelf, id), { seenBy: 'group' }, context),
});

/** The same plan again for its maker alone, with what the shelf holds of it. */
const shelf = followUp({
  seenBy: 'asker',
  args: planId,
  answer: async ({ plan: id }, context) =>
    answerPlan(await recentPlanOf(context.shelf, id), { seenBy: 'asker' }, context),
});

/** The same of a class: what all its stations need. */
const classShelf = followUp({
  seenBy: 'asker',
  args: {
    ...planId,
    people: z.string().transform(Number),
    stations: z.string().transform(Number),
    planIsFor: z.enum(['station', 'class']),
  },
  answer: async ({ plan: id, ...lesson }, context) =>
    answerPlan(await recentPlanOf(context.shelf, id), { seenBy: 'asker', lesson }, context),
});

/** The plan as one page to print. */
const print = followUp({
  seenBy: 'asker',
  pace: 'slow',
  args: planId,
  answer: async ({ plan: id }, context) => printPlan(await recentPlanOf(context.shelf, id), context),
});

/** What can be done with a plan: take its colours, see the shelf or show it, change it, keep it. */
function choicesFor(
  id: string,
  { uses, jars }: { readonly uses: readonly Use[]; readonly jars: number },
  { seenBy, lesson }: Asking,
  { plan }: Words,
): readonly Choice[] {
  const button = (label: string, follow: ReturnType<typeof take.with>, weight: 'main' | 'plain' = 'plain') =>
    ({ kind: 'button', label, weight, follow }) as const;
  const shown = { plan: id, seen: seenAs(seenBy) };
  return [
    ...(uses.length > 0
      ? [button(plan.takeAll({ colours: uses.length }), take.with({ plan: id }), 'main')]
      : []),
    button(plan.change, openers.begin.with(shown)),
    button(plan.forms.more, openers.more.with(shown)),
    button(plan.forms.heat, openers.heat.with(shown)),
    button(plan.forms.save, save.with({ plan: id })),
    ...(lesson ? [] : [button(plan.print, print.with({ plan: id }))]),
    ...(seenBy === 'group' && jars > 0
      ? [button(plan.myShelf, lesson ? classShelf.with({ plan: id, ...lesson }) : shelf.with({ plan: id }))]
      : []),
    ...(seenBy === 'asker' && !lesson ? [button(plan.showAll, show.with({ plan: id }))] : []),
  ];
}

/**
 * Plans and says it, with everything that can be done with it. Kept under `saveAs` first where that is given, once it
 * is known to be a plan. Throws the Refusals of planning and of keeping.
 */
export async function answerPlan(
  plan: KeptPlan,
  { saveAs, ...asking }: Asking & { readonly saveAs?: string | undefined },
  context: Context,
): Promise<Reply> {
  const { say, idempotencyKey } = context;
  const made = await makePlan(plan, asking, context, have => choicesFor(idempotencyKey, have, asking, say));
  if (saveAs === undefined) return made.reply;
  const saved = await saveRecipe(context.recipes, saveAs, made.kept, context.change);
  return {
    ...made.reply,
    data: { ...made.reply.data, savedAs: saved.name },
    blocks: [{ kind: 'text', text: say.plan.saved(saved) }, ...made.reply.blocks],
  };
}

/** Everything that can follow a plan, by the names that travel in buttons. */
export const planFollowUps = {
  take,
  save,
  show,
  shelf,
  'class-shelf': classShelf,
  print,
  'name-sent': nameSent,
  begin: openers.begin,
  more: openers.more,
  heat: openers.heat,
  'begin-sent': sentForms.begin,
  'more-sent': sentForms.more,
  'heat-sent': sentForms.heat,
};
