import type { Context } from '../../src/conversation/context.ts';
import { lineOf } from '../../src/conversation/typed/line-of.ts';
import { smallTalkIn } from '../../src/engine/questions/fields/small-talk.ts';
import { type PlainRequest, plainRequest } from '../../src/engine/questions/jobs/plain-requests.ts';
import { askedOfBench } from '../../src/engine/questions/technique/asked/read.ts';
import { listOwn } from '../../src/records/recipes/index.ts';
import type { Answerer, Turn } from './asked.ts';
import { chatReply, smallTalkReply } from './chat.ts';
import { askFollowUps } from './follow-ups.ts';
import { keepLines } from './kept-lines.ts';
import type { AskReply, Understood } from './understood.ts';

type Asked = { readonly command: string; readonly given: Readonly<Record<string, string>> };

/** The answer to words that can mean one command only; undefined where they are read in the usual way. */
async function plainRequestReply(question: string, context: Context): Promise<AskReply | undefined> {
  const request = plainRequest(question);
  const isHurt = context.lately?.before(context)?.last.kind === 'emergency';
  const smallTalk = request || isHurt || askedOfBench(question) ? undefined : smallTalkIn(question);
  if (smallTalk) return smallTalkReply(smallTalk, context);
  if (!request) return undefined;
  if (request.kind === 'thanks' || request.kind === 'night' || request.kind === 'pictures')
    return chatReply(question, context);
  const asked = await commandOf(request, context);
  const line = lineOf(asked.command, asked.given);
  // A greeting asks for nothing yet; what can be asked is shown.
  const understood: Understood =
    request.kind === 'greeting'
      ? { kind: 'outside', outside: 'other' }
      : { kind: 'command', job: request.kind, command: asked.command, given: asked.given };
  if (request.kind === 'undo') {
    // It writes: what was understood is shown first, and done on a press.
    await keepLines([line], context);
    const follow = askFollowUps.run.with({ line: context.idempotencyKey, at: 0 });
    return {
      kind: 'reply',
      headline: context.say.ask.confirm({ line }),
      data: {},
      understood,
      blocks: [],
      cautions: [],
      choices: [{ kind: 'button', label: context.say.ask.doIt, weight: 'main', follow }],
    };
  }
  const answer = await context.run(asked.command, asked.given);
  if (answer.kind !== 'reply') return undefined;
  const told = { kind: 'text' as const, text: context.say.ask.understood({ line }) };
  return {
    ...answer,
    understood,
    // Who asks what a word means wants the whole of its meaning before how the question was read.
    headline: request.kind === 'greeting' ? context.say.ask.hello : answer.headline,
    blocks: request.kind === 'term' ? [...answer.blocks, told] : [told, ...answer.blocks],
  };
}

async function commandOf(
  request: Exclude<PlainRequest, { kind: 'thanks' | 'night' | 'pictures' }>,
  context: Context,
): Promise<Asked> {
  switch (request.kind) {
    case 'term':
      return { command: 'help', given: { topic: context.say.help.terms[request.term].name } };
    case 'greeting':
    case 'help':
      return { command: 'help', given: {} };
    case 'shelf':
      return { command: 'shelf list', given: {} };
    case 'today':
      return { command: 'palette today', given: {} };
    case 'undo':
      return { command: 'shelf undo', given: {} };
    case 'dates':
      return { command: 'batch dates', given: {} };
    case 'rescale': {
      const own = await listOwn(context.recipes);
      const newest = own.toSorted((a, b) => b.at.getTime() - a.at.getTime())[0];
      if (!newest) return { command: 'recipe list', given: {} };
      return { command: 'recipe rescale', given: { recipe: newest.name, size: String(request.times) } };
    }
  }
}

/** Words that can mean one thing only. */
export const wholeSentence: Answerer<Turn> = {
  id: 'whole-sentence',
  answer: ({ question, context }) => plainRequestReply(question, context),
};
