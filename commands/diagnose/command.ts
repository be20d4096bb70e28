import { z } from 'zod';
import {
  action,
  command,
  followUp,
  type MenuEntry,
  privateIfRecipe,
} from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { picture, text } from '../../src/conversation/option.ts';
import { isPicture } from '../../src/conversation/question.ts';
import type { ReplyWith } from '../../src/conversation/reply.ts';
import { diagnose } from '../../src/engine/flaws/diagnose.ts';
import type { FindingId } from '../../src/engine/flaws/findings.ts';
import { planEvidence } from '../../src/engine/flaws/plan-evidence.ts';
import { MEASURES } from '../../src/engine/quantities/units.ts';
import { refuse } from '../../src/engine/refusal.ts';
import * as flaws from '../../src/records/flaws/index.ts';
import { kitchenOf, preferencesOf } from '../../src/records/preferences.ts';
import { findRecipe, nearestRecipes } from '../../src/records/recipes/index.ts';
import { readKept } from '../../src/records/recipes/kept-plan.ts';
import { phrases } from '../../src/words/declared.ts';
import { type FlawData, flawReply, lookAt } from './answer.ts';
import { flawChoices } from './choices.ts';
import { type Description, described, describeForm, isFinding } from './form.ts';
import { giving, offer } from './giving.ts';
import { MarkedPhotos } from './marked-photos.ts';
import { readPicture } from './picture.ts';

const says = phrases('diagnose');

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'flaw-nothing-given': Record<never, never>;
    'flaw-message-without-picture': Record<never, never>;
    'flaw-choice-unknown': Record<never, never>;
  }
}

/** Some tens of photos: a day's questions of a busy group. */
const marked = new MarkedPhotos(48 * 1024 * 1024);

const { give, filled, takeBack } = giving(marked);

const scopeOf = ({ store, group }: Context): flaws.FlawScope => ({ store, group });

const findingArg = z.string().refine(isFinding) as z.ZodType<FindingId, string>;

const reply = followUp({
  seenBy: 'group',
  replaces: true,
  args: { id: z.string(), finding: findingArg, answer: z.enum(flaws.answers) },
  async answer({ id, finding, answer }, context) {
    await flaws.keepAnswer(scopeOf(context), id, { finding, answer, at: new Date(context.at) });
    return shown(id, context);
  },
});

const notIt = followUp({
  seenBy: 'group',
  replaces: true,
  args: { id: z.string() },
  async answer({ id }, context, { values }) {
    const findings = values.map(value => (isFinding(value) ? value : refuse('flaw-choice-unknown', {})));
    await flaws.withdraw(scopeOf(context), id, findings, new Date(context.at));
    return shown(id, context);
  },
});

const turnedOut = followUp({
  seenBy: 'asker',
  // Soap is judged after its cure.
  hours: 24 * 90,
  args: { id: z.string() },
  async answer({ id }, context, { values: [value] }) {
    const cause = flaws.outcomes.find(one => one === value) ?? refuse('flaw-choice-unknown', {});
    const { say, by } = context;
    await flaws.keepOutcome(scopeOf(context), id, { cause, ...by });
    const again = await flaws.relabelPicture(scopeOf(context), id, { member: by.member, cause });
    const offered = again ? { text: [], choices: [] } : offer({ id, cause }, { give }, context);
    const { counts } = await flaws.learnedIn(scopeOf(context));
    const count = counts[cause] ?? 0;
    const name = cause === 'something-else' ? say.flaws.somethingElse : say.flaws.causes[cause].name;
    return {
      kind: 'reply',
      headline: say.flaws.noted({ name }),
      data: { case: id, turnedOut: cause, count },
      blocks: [say.flaws.notedNote({ count }), ...offered.text].map(text => ({ kind: 'text', text })),
      cautions: [],
      choices: offered.choices,
    };
  },
});

/** The case as it stands, with what the member may press next. */
async function shown(id: string, context: Context): Promise<ReplyWith<FlawData>> {
  const scope = scopeOf(context);
  const { say, store, asker } = context;
  const [file, learned, wishes] = await Promise.all([
    flaws.fileOf(scope, id),
    flaws.learnedIn(scope),
    preferencesOf(store, asker.id),
  ]);
  const looked = lookAt(file, learned);
  return {
    ...flawReply(id, looked, { say, measures: kitchenOf(wishes), marked: marked.of(id)?.png }),
    choices: flawChoices(id, looked, { reply, notIt, turnedOut }, say),
  };
}

/** Opens a case with everything that was handed in, and answers. */
async function opened(
  { words, photos, recipe }: Description,
  context: Context,
): Promise<ReplyWith<FlawData>> {
  const id = await flaws.caseIdFor(scopeOf(context), context.idempotencyKey, words);
  const [first] = photos;
  // Metal in soap and burnt skin are said before a photo is fetched.
  diagnose(words);
  const [photo, plan] = await Promise.all([
    first && readPicture(first, { pictures: photos.length, marked }, context),
    recipe === undefined ? undefined : readPlan(recipe, context),
  ]);
  if (photo && photo.bars.length === 0 && words === '') refuse('photo-bar-unseen', {});
  await flaws.openCase(scopeOf(context), id, {
    ...context.by,
    words,
    ...(photo && { photo }),
    ...(plan && { plan }),
  });
  return shown(id, context);
}

/** The numbers of a kept recipe, planned in the workers: they warm a loaf many times over. */
async function readPlan(asked: string, context: Context): Promise<flaws.PlanShown> {
  const { store, asker, workers } = context;
  const found = await findRecipe(context.recipes, asked);
  const measures = MEASURES[(await preferencesOf(store, asker.id)).spoons];
  const { request } = await readKept(found, context.shelf, measures);
  const { evidence, numbers } = planEvidence(await workers.run('planBatch', request, { owner: asker.id }));
  return {
    name: found.name,
    evidence: evidence.map(({ finding, probability }) => ({ finding, probability })),
    numbers: structuredClone(numbers) as flaws.PlanShown['numbers'],
  };
}

const filledIn = described(opened);

const menu: MenuEntry = {
  name: says.menu,
  // It may be somebody else's bar: the verdict is for who asked.
  seenBy: 'asker',
  pace: 'quick',
  anywhere: true,
  access: 'member',
  take({ text: words, attachments }, context) {
    const photos = attachments.filter(isPicture);
    if (photos.length === 0) refuse('flaw-message-without-picture', {});
    return opened({ words, photos }, context);
  },
};

export default command(
  'diagnose',
  action({
    purpose: says.purpose,
    anywhere: true,
    opensForm: 'bare',
    seenBy: privateIfRecipe,
    options: {
      words: text(says.words, { most: 5000 }).optional(),
      photo: picture(says.photo).optional(),
      recipe: text(says.recipe).optional(),
    },
    completes: {
      recipe: async (typed, context) =>
        (await nearestRecipes(context.recipes, typed, 25)).map(name => ({ name, value: name })),
    },
    answer({ words = '', photo, recipe }, context) {
      if (words.trim() === '' && !photo && recipe === undefined)
        return describeForm(context, filledIn.with({}));
      if (words.trim() === '' && !photo) refuse('flaw-nothing-given', {});
      return opened({ words, photos: photo ? [photo] : [], recipe }, context);
    },
  }),
  {
    followUps: {
      reply,
      'not-it': notIt,
      'turned-out': turnedOut,
      give,
      filled,
      'take-back': takeBack,
      described: filledIn,
    },
    menu,
  },
);
