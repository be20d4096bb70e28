import type { Context } from '../../../src/conversation/context.ts';
import { textsOf } from '../../../src/conversation/question.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import { strengthOfHue } from '../../../src/engine/colourants/holding-hues.ts';
import type { Portion } from '../../../src/engine/quantities/amount.ts';
import type { Facts } from '../../../src/engine/questions/found/facts.ts';
import { thingsIn } from '../../../src/engine/questions/found/names/entities.ts';
import { strengthIn } from '../../../src/engine/questions/found/strength/strength-in.ts';
import { type Words as Said, wordsOf } from '../../../src/engine/questions/found/words-of.ts';
import { holderNamed } from '../../../src/engine/questions/leaning/subject/subject.ts';
import {
  type ColouredPart,
  type ColouredParts,
  colouredParts,
} from '../../../src/engine/questions/plans/coloured-parts.ts';
import { gradientParts } from '../../../src/engine/questions/plans/gradient-parts.ts';
import { TOUCH } from '../../../src/engine/questions/plans/plan-parts.ts';
import type { Reading } from '../../../src/engine/questions/read.ts';
import { Refusal } from '../../../src/engine/refusal.ts';
import type { Words } from '../../../src/words/index.ts';
import type { Answerer } from '../asked.ts';
import { ranCommand } from '../reading/ran-command.ts';
import type { AskReply, Understood } from '../understood.ts';
import { planLacks, withColours, withPortions } from './plan-lacks.ts';
import { together } from './shared-doses.ts';

/** So much of a portion, as an option takes it: the measure and what it is of go with it. */
function shareOf(whole: Portion, share: number): string {
  if (whole.measure === 'volume') return `${Math.round(whole.millilitres * share)} ml`;
  return `${Math.round(whole.grams * share)} g ${whole.of}`;
}

/** What colours one part: the dose of what is named or holds of its hue, else what mixes to it. */
async function partReply(
  { text, isThing, owned, strength: ofPart }: ColouredPart,
  { portion, strength }: { readonly portion: string; readonly strength: string | undefined },
  context: Context,
): Promise<AskReply> {
  const holder = isThing ? text : (owned ?? holderNamed(text));
  const own = isThing ? undefined : strengthOfHue(text);
  const isMixed = holder === undefined || (own === 'mixed' && owned === undefined && ofPart === undefined);
  const deep = ofPart ?? strength ?? own;
  const [command, given] = isMixed
    ? (['match', { target: text, portion }] as const)
    : (['dose', { colourant: holder, portion, ...(deep !== undefined && { strength: deep }) }] as const);
  // A mix has a card and ways to dose it by itself, which are no answer for one part among several.
  const { choices: _own, ...reply } = await ranCommand(command, given, context);
  const blocks = reply.blocks.filter(({ kind }) => kind !== 'picture');
  const line = context.say.ask.understood({ line: lineOf(command, given) });
  return {
    ...reply,
    understood: { kind: 'command', job: command === 'match' ? 'mix' : 'dose', command, given },
    blocks: [{ kind: 'text', text: line, firm: true }, ...blocks],
  };
}

/** A wish for a plan: as it was said, its words, and what was read of it. */
type ToldOfPlan = {
  readonly said: string;
  readonly words: Said;
  readonly reading: Reading;
  readonly facts: Facts;
};

/** What each part of a batch takes whose colours and size are told, before anything is known of its oils. */
async function partsReply(
  { whole, parts, isTold, touches = [] }: ColouredParts,
  { said, words, reading, facts }: ToldOfPlan,
  context: Context,
): Promise<AskReply> {
  const { say } = context;
  // "A hint of gold" is how much of it there is, and no pale gold.
  const strength = touches.length > 0 ? undefined : strengthIn(words, thingsIn(words));
  const replies: AskReply[] = [];
  for (const part of parts.filter(({ hex }) => hex !== undefined))
    replies.push(await partReply(part, { portion: shareOf(whole, part.share), strength }, context));
  const [size, told] = [shareOf(whole, 1), sizeIn(whole, say)];
  // The plan itself waits for its oils, with what is told of it.
  const given = withPortions({ size, ...reading.given }, planLacks(reading, reading.given, said));
  const understood: Understood = {
    kind: 'command',
    job: 'plan',
    command: 'plan',
    given: textsOf(given),
    facts: withColours(facts, reading, said),
  };
  const dose = replies[0]?.headline ?? '';
  const headline = isTold
    ? say.ask.planShares({ whole: told(1), dose })
    : say.ask.planParts({ parts: parts.length, each: told(1 / parts.length), dose });
  const reply = together(replies, { understood, headline });
  const plain = parts
    .filter(({ hex }) => hex === undefined)
    .map(({ text, share }) => say.ask.planPlain({ part: told(share), colour: text }));
  const thin = touches.map(colour => say.ask.planTouch({ colour, part: told(TOUCH) }));
  const more = [...thin, ...plain, say.ask.planNeedsOils].join('\n');
  return {
    ...reply,
    short: { lacking: ['oils'] },
    blocks: [...reply.blocks, { kind: 'text', text: more, firm: true }],
  };
}

/** So much of a batch as it is told to whoever reads it. */
const sizeIn = (whole: Portion, say: Words) => (share: number) =>
  whole.measure === 'volume'
    ? shareOf(whole, share)
    : `${Math.round(whole.grams * share)} g ${say.quantities[whole.of]}`;

/** A batch whose colours and size are told, and whose oils are not: what each part takes. */
export const planWithoutOils: Answerer = {
  id: 'plan-without-oils',
  leavesTo: ['stays-out', 'lye'],
  async answer({ said, read, context, reading }) {
    const first = await reading();
    if (first?.job !== 'plan' || first.given.oils !== undefined) return undefined;
    const words = wordsOf(said);
    const asked = gradientParts(words) ?? colouredParts(words);
    if (!asked?.parts.some(({ hex }) => hex !== undefined)) return undefined;
    // A part whose colourant may be several is asked for with the oils.
    return await partsReply(asked, { said, words, reading: first, facts: read.facts }, context).catch(
      (error: unknown) => {
        if (error instanceof Refusal) return undefined;
        throw error;
      },
    );
  },
};
