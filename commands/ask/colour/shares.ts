import type { Context } from '../../../src/conversation/context.ts';
import type { Block } from '../../../src/conversation/reply.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import { colourantsMeant } from '../../../src/engine/colourants/find.ts';
import { wordsOf } from '../../../src/engine/questions/found/words-of.ts';
import { isHotSpice } from '../../../src/engine/questions/lye/topics/gives-way.ts';
import { barsAsked, enoughAsked } from '../../../src/engine/questions/plans/enough-asked.ts';
import {
  amongNoColours,
  BAR_G,
  type SharesAsked,
  sharesAsked,
} from '../../../src/engine/questions/plans/shares-asked.ts';
import { unaccented } from '../../../src/engine/text/unaccented.ts';
import type { Answerer } from '../asked.ts';
import { topicReply } from '../lye/matter.ts';
import { ranCommand } from '../reading/ran-command.ts';
import type { AskReply, Understood } from '../understood.ts';
import { together } from './shared-doses.ts';

/** Sums of a colour that a question tells all of: equal parts, whether a jar is enough, so many bars; undefined where it tells none. */
async function colourSumReply(question: string, context: Context): Promise<AskReply | undefined> {
  const words = wordsOf(question);
  const mixed = amongNoColours(words);
  if (mixed) return await withoutOthers(mixed, context);
  const shares = sharesAsked(words);
  if (shares) return await sharesReply(shares, context);
  const enough = enoughAsked(words);
  if (enough) {
    const { grams, of, colourant, has } = enough;
    const powder = `${has} g`;
    const { reply, needs } = await dosed({ colourant, portion: `${round(grams)} g ${of}`, powder }, context);
    return needs === undefined
      ? reply
      : { ...reply, headline: context.say.ask.isEnough({ has, needs: rough(needs), dose: reply.headline }) };
  }
  const bars = barsAsked(words);
  if (!bars) return undefined;
  const grams = bars.bars * BAR_G;
  const { reply } = await dosed({ colourant: bars.colourant, portion: `${grams} g batter` }, context);
  return { ...reply, headline: context.say.ask.forBars({ ...bars, each: BAR_G, dose: reply.headline }) };
}

const round = (value: number): number => Math.round(value);
const rough = (value: number): number => Number(value.toPrecision(2));

/** `powder`: what there is of it. */
type Dosed = { readonly colourant: string; readonly portion: string; readonly powder?: string };

/** A dose as it is answered, and its grams of powder. */
async function dosed({ powder, ...given }: Dosed, context: Context) {
  const answer = await ranCommand('dose', given, context);
  const line = context.say.ask.understood({ line: lineOf('dose', given) });
  const facts = { named: [given.colourant], portion: given.portion, powder };
  const reply: AskReply = {
    ...answer,
    understood: { kind: 'command', job: 'dose', command: 'dose', given, facts },
    blocks: [{ kind: 'text', text: line, firm: true }, ...answer.blocks],
  };
  const [dose, ...others] = answer.doses ?? [];
  return { reply, needs: others.length === 0 ? dose?.grams.typical : undefined };
}

/** What each of several parts takes: of the colours that are named, else of a mica as most begin. */
async function sharesReply(asked: SharesAsked, context: Context): Promise<AskReply> {
  const { say } = context;
  const { grams, of, parts, colours, shares, bars } = asked;
  const each = round(grams / parts);
  const portionOf = (at: number) => `${shares ? round(grams * shares[at]!) : each} g ${of}`;
  const doses: AskReply[] = [];
  for (const [at, colour] of (colours.length > 0 ? colours : ['mica', 'iron oxide']).entries())
    doses.push((await dosed({ colourant: colour, portion: portionOf(at) }, context)).reply);
  const [first] = doses;
  // A batch that is shared among colours is one that is planned.
  const understood: Understood = {
    kind: 'command',
    job: 'plan',
    command: 'dose',
    given: { portion: portionOf(0) },
    facts: { named: colours, portion: `${grams} g ${of}`, colours: colours.map(seen) },
  };
  const whole = say.quantities[of];
  const dose =
    bars === undefined ? first!.headline : say.ask.forBars({ bars, each: BAR_G, dose: first!.headline });
  return together(doses, {
    understood,
    headline: shares
      ? say.ask.toldShares({ grams, of: whole, dose })
      : say.ask.eachShare({ parts, grams: each, of: whole, dose }),
  });
}

/** What is no colour has no part among colours: said first, then what the colours take. */
async function withoutOthers(
  { colourants, others, whole }: NonNullable<ReturnType<typeof amongNoColours>>,
  context: Context,
): Promise<AskReply> {
  const { say } = context;
  const portion = whole ?? say.match.oneCup;
  const doses: AskReply[] = [];
  for (const colourant of colourants) doses.push((await dosed({ colourant, portion }, context)).reply);
  const [first] = doses;
  const headline = say.ask.noColours({ names: others, dose: first!.headline });
  const reply = together(doses, { headline, understood: first!.understood });
  if (!others.some(name => isHotSpice(unaccented(name)))) return reply;
  const spice: Block = { kind: 'text', text: topicReply('kitchen-spice', context).headline, firm: true };
  return { ...reply, blocks: [spice, ...reply.blocks] };
}

const seen = (text: string) => {
  const hex = colourantsMeant(text)[0]?.hex;
  return { text, ...(hex !== undefined && { hex }) };
};

/** A sum of colour that the question tells all of. */
export const colourSums: Answerer = {
  id: 'colour-sums',
  leavesTo: ['stays-out'],
  answer: ({ said, context }) => colourSumReply(said, context),
};
