import type { Context } from '../../../src/conversation/context.ts';
import { firstAidReply } from '../../../src/conversation/first-aid/first-aid.ts';
import type { Block } from '../../../src/conversation/reply.ts';
import type { EmergencyId } from '../../../src/engine/hazards/index.ts';
import type { Questioned } from '../../../src/engine/questions/found/jars/own-jars.ts';
import { type Before, isOfLye } from '../../../src/engine/questions/leaning/before.ts';
import { namesItsOwn } from '../../../src/engine/questions/leaning/in-context.ts';
import { FOR_ALL } from '../../../src/engine/questions/leaning/lacks.ts';
import { leanOf } from '../../../src/engine/questions/leaning/lean.ts';
import type { Lack, Lean } from '../../../src/engine/questions/leaning/lean-kinds.ts';
import {
  asksForAcid,
  hasMetMetal,
  isOfNothingElse,
  isOnClothes,
  isOnSurface,
  isOnSurfaceToo,
  isSkinStillHurt,
  isStillHurt,
} from '../../../src/engine/questions/leaning/subject/points-back.ts';
import { openedTurn } from '../../../src/engine/questions/leaning/turn/plain.ts';
import type { Slots } from '../../../src/engine/questions/leaning/turn/slots.ts';
import { fineTurn, languageTurn } from '../../../src/engine/questions/leaning/turn/turns.ts';
import { capital } from '../../../src/engine/text/capital.ts';
import { plainReply } from '../../../src/presenting/plain-reply.ts';
import { preferencesOf } from '../../../src/records/preferences.ts';
import type { Answerer, Turn } from '../asked.ts';
import { contestReply } from '../contest.ts';
import { figureBefore } from '../lye/figure-before.ts';
import { cautions, topicReply } from '../lye/matter.ts';
import { techniqueAnswer } from '../technique/technique-answer.ts';
import { type AskReply, leansOnTalk, ofFirstAid, type Understood } from '../understood.ts';
import { partReply } from './leaned-part.ts';
import { leanedRun } from './leaned-run.ts';

/** The first aid of before once more, where a turn still tells of it: nothing is looked up for that. */
function stillHurtReply(question: string, context: Context): AskReply | undefined {
  const before = context.lately?.before(context)?.last;
  // Who hears that lye eats the pan and says that it is in already stands beside it.
  if (before?.kind === 'matter' && before.id === 'aluminium' && hasMetMetal(question))
    return ofFirstAid(firstAidReply(['hydrogen-from-metal'], context));
  if (before?.kind === 'matter' && before.id === 'lye-on-skin' && isSkinStillHurt(question))
    return ofFirstAid(firstAidReply(['lye-skin'], context));
  if (before?.kind !== 'emergency') return undefined;
  const spilt = afterSpill(question, before, context);
  if (spilt) return spilt;
  if (!isStillHurt(question) && !isStillOfIt(question)) return undefined;
  const again = aidAgain(before, context);
  return ON_SKIN.has(before.ids[0]!) && asksForAcid(question)
    ? { ...again, headline: context.say.leaning.noVinegar }
    : again;
}

/** Names nothing of the trade, and is no “ok”. */
function isStillOfIt(question: string): boolean {
  const turn = openedTurn(question);
  const isAlone = question.trim().startsWith('/') || languageTurn(question) !== undefined;
  return (
    turn !== undefined && !isAlone && !fineTurn(turn) && !namesItsOwn(question) && isOfNothingElse(question)
  );
}

/** Lye that got out: on what somebody wears it is first aid for the skin beneath; on a surface alone it is wiped up. */
function afterSpill(
  question: string,
  { ids }: Extract<Before, { kind: 'emergency' }>,
  context: Context,
): AskReply | undefined {
  if (!ids.every(id => SPILT.has(id))) return undefined;
  if (isOnClothes(question)) return ofFirstAid(firstAidReply(['lye-skin'], context));
  if (isOnSurfaceToo(question) && ids.includes('lye-skin')) return onBoth(question, context);
  if (!isOnSurface(question)) return undefined;
  const told = techniqueAnswer('lye-spilt-surface', question, context);
  const { stillHere } = context.say.firstAid;
  return { ...told, blocks: [...told.blocks, { kind: 'text', text: stillHere, firm: true }] };
}
/** Lye on somebody and on the bench: the skin first, then how the bench is cleaned; the talk stays about whoever was splashed. */
function onBoth(question: string, context: Context): AskReply {
  const told = techniqueAnswer('lye-spilt-surface', question, context);
  const aid = ofFirstAid(firstAidReply(['lye-skin'], context));
  return {
    ...aid,
    headline: context.say.leaning.skinThenSurface({ told: told.headline }),
    blocks: [...told.blocks, { kind: 'text', text: aid.headline, firm: true }, ...aid.blocks],
  };
}
const SPILT: ReadonlySet<EmergencyId> = new Set(['lye-eruption', 'lye-skin']);

/** Where acid is reached for first. */
const ON_SKIN: ReadonlySet<EmergencyId> = new Set(['lye-skin']);

/** The answer to a turn that leans on the one before, with the jars of its asker under names that every reader knows; undefined where it stands alone. */
async function leanedReply(
  question: string,
  own: Questioned,
  context: Context,
): Promise<AskReply | undefined> {
  const talk = context.lately?.before(context);
  const lean = own.restore(leanOf(own.text, talk));
  return lean && (await answered(lean, talk?.last, { question, context }));
}

type Asked = { readonly question: string; readonly context: Context };

async function answered(lean: Lean, before: Before | undefined, asked: Asked): Promise<AskReply | undefined> {
  const { context } = asked;
  switch (lean.kind) {
    case 'fine':
      return plainly(context.say.leaning.fine, { kind: 'outside', outside: 'other' });
    case 'asks':
      return askedFor(lean.lacks, lean.slots, context);
    case 'runs':
      return await leanedRun(lean.readings, { unit: lean.unit, context });
    case 'matter':
      return topicReply(lean.id, context);
    case 'technique':
      return techniqueAnswer(lean.id, lean.words ?? '', context);
    case 'scent':
      return scentFor(lean.grams, context);
    case 'contest':
      return await contestReply(context);
    case 'again':
      return await again(before, asked);
    case 'part':
      if (lean.behind) return await partReply(lean.of, lean.behind, asked);
      if (before?.kind === 'emergency') return aidAgain(before, context);
      if (lean.of === 'which-cup') return await cupsTold(context);
      return (
        (before && (await partReply(lean.of, before, asked))) ??
        (FOR_ALL.has(lean.of) || before?.kind !== 'command' || isOfLye(before)
          ? undefined
          : askedFor('which-thing', undefined, context))
      );
  }
}

/** Share of the oils that a scent mostly is; common practice, its own sheet sets the limit. */
const SCENT_SHARE = 0.03;
/** How much scent so many grams of oils take, above what is said of scents. */
function scentFor(oils: number, context: Context): AskReply {
  const told = techniqueAnswer('scent-amount', '', context);
  const grams = context.say.plan.figure(oils * SCENT_SHARE, 3);
  const headline = context.say.leaning.scentFor({ grams, oils: context.say.plan.figure(oils, 4) });
  return { ...told, headline, blocks: [{ kind: 'text', text: told.headline }, ...told.blocks] };
}

/** Which cups and spoons the figures are in. */
async function cupsTold({ store, asker, say }: Context): Promise<AskReply> {
  const { spoons } = await preferencesOf(store, asker.id);
  return plainly(say.leaning.cups({ spoons: say.prefer.spoons[spoons] }), {
    kind: 'outside',
    outside: 'other',
  });
}

/** The same once more, in the language that the question asks for. */
async function again(before: Before | undefined, asked: Asked): Promise<AskReply | undefined> {
  if (before?.kind === 'emergency') return aidAgain(before, asked.context);
  if (before?.kind === 'command') return await leanedRun([before], { isAgain: true, context: asked.context });
  return before && (await partReply('again', before, asked));
}

export const plainly = (headline: string, understood: Understood, blocks: readonly Block[] = []): AskReply =>
  leansOnTalk({ ...plainReply(headline, {}, blocks), understood });

/** Asks for the one thing that is missing; what is known by then is kept for the next turn. */
export function askedFor(lacks: Lack, slots: Slots | undefined, context: Context): AskReply {
  const { say } = context;
  const [name] = [...(slots?.named ?? []), ...(slots?.hues ?? [])];
  const amount = slots?.amount?.text;
  const told = (lacks === 'amount-of' ? amount : name) ?? '';
  const known =
    lacks === 'amount-of' && amount !== undefined
      ? { portion: amount }
      : lacks === 'name-for' && slots?.named[0] !== undefined
        ? { colourant: slots.named[0] }
        : undefined;
  const understood: Understood = known
    ? { kind: 'asked-back', job: 'dose', command: 'dose', given: known }
    : { kind: 'asked-back', command: 'ask', given: {}, lacks };
  const hurt: readonly Block[] =
    lacks === 'what-happened' ? [{ kind: 'text', text: say.firstAid.stillHere, firm: true }] : [];
  const beside = lacks === 'whole-recipe' ? figureBefore(context) : hurt;
  const reply = plainly(say.leaning.lacks[lacks]({ told: capital(told) }), understood, beside);
  return lacks === 'whole-recipe' || lacks === 'lye-over' ? { ...reply, cautions: cautions(context) } : reply;
}

/** The first aid of before, whole and before all else: nothing that is carried stands over it. */
export function aidAgain(
  { ids }: Extract<Before, { kind: 'emergency' }>,
  { say, locale }: Context,
): AskReply {
  const aid = ofFirstAid(firstAidReply(ids, { say, locale }));
  return {
    ...aid,
    headline: say.leaning.stillHurt,
    blocks: [{ kind: 'text', text: aid.headline, firm: true }, ...aid.blocks],
  };
}

/** First aid was given, and the turn still tells of it. */
export const stillHurt: Answerer<Turn> = {
  id: 'still-hurt',
  answer: ({ question, context }) => stillHurtReply(question, context),
};

/** A turn that leans on the one before. */
export const leaning: Answerer<Turn> = {
  id: 'leaning',
  answer: async ({ question, own, context }) => leanedReply(question, await own(), context),
};
