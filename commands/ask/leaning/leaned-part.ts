import type { Context } from '../../../src/conversation/context.ts';
import { lineOf } from '../../../src/conversation/typed/line-of.ts';
import type { Aspect } from '../../../src/engine/questions/leaning/aspects/aspect.ts';
import { asOneText, type Before, isOfLye, type Ran } from '../../../src/engine/questions/leaning/before.ts';
import { asksOfSuds, tellsOfPoured } from '../../../src/engine/questions/leaning/behind/names-another.ts';
import { goOnPart, nearestPart } from '../../../src/engine/questions/leaning/parts/nearest-part.ts';
import { type MatterTold, partOf, tellingOf } from '../../../src/engine/questions/leaning/parts/part-of.ts';
import type { LyeTopic } from '../../../src/engine/questions/lye/topics/topic.ts';
import { answerTo } from '../../../src/engine/questions/technique/answer-to.ts';
import { IN_THE_POT } from '../../../src/engine/questions/technique/stands-before.ts';
import type { Technique } from '../../../src/engine/questions/technique/topic.ts';
import { oneText } from '../../../src/words/sentence.ts';
import { topicReply } from '../lye/matter.ts';
import { ranCommand } from '../reading/ran-command.ts';
import { answeredTo, ownWords, techniqueAnswer } from '../technique/technique-answer.ts';
import { type AskReply, likeliestCause } from '../understood.ts';
import { leanedRun } from './leaned-run.ts';

type Asked = { readonly question: string; readonly context: Context };
/** `points`: something that was not understood points back to it; `goes-on`: it is surely of the same matter. */
type Part = Aspect | 'again' | 'points' | 'goes-on';

/** What is asked on after a matter, a flaw or a command, told from the answer that it had; undefined where that tells nothing of it. */
export async function partReply(of: Part, before: Before, asked: Asked): Promise<AskReply | undefined> {
  const { context } = asked;
  switch (before.kind) {
    case 'technique':
      return (await techniquePart(of, before, asked)) ?? besideMatter(of, before.id, context);
    case 'matter':
      return matterPart(of, topicReply(before.id, context), {
        told: context.say.lyeQuestions.topics[before.id],
        asked,
      });
    case 'emergency':
      return undefined;
    case 'command':
      return before.command === 'diagnose'
        ? await flawPart(of, before, asked)
        : await commandPart(of, before, asked);
  }
}

async function techniquePart(
  of: Part,
  { id, named, words }: Extract<Before, { readonly kind: 'technique' }>,
  asked: Asked,
): Promise<AskReply | undefined> {
  const { context } = asked;
  if (words !== undefined && IN_THE_POT.has(id) && tellsOfPoured(asked.question))
    return await flawPart(
      of,
      {
        kind: 'command',
        job: 'diagnose',
        command: 'diagnose',
        // Who only said that it split speaks of the batter.
        given: { words: named === 'split-where' ? 'batter split, oil on top' : words },
      },
      asked,
    );
  const { say } = context;
  const to = named ? { named } : answerTo(id, '');
  const told = 'lye' in to ? say.lyeQuestions.topics[to.lye] : ownWords(to, say);
  return matterPart(of, answeredTo(id, to, context), { told, asked });
}

/** Of a matter the sentences that tell it, the whole of it below. */
function matterPart(
  of: Part,
  reply: AskReply,
  { told, asked }: { readonly told: MatterTold; readonly asked: Asked },
): AskReply | undefined {
  const { say } = asked.context;
  if (of === 'again') return reply;
  const { question } = asked;
  const part =
    of === 'points'
      ? nearestPart(told, question)
      : of === 'goes-on'
        ? goOnPart(told, question)
        : partOf(told, of);
  if (!part) return undefined;
  const { first, whole } = part;
  return {
    ...reply,
    headline: oneText(first),
    blocks: [
      { kind: 'text', text: oneText(whole) },
      { kind: 'text', text: say.leaning.onBefore },
    ],
  };
}

/** What the answer of a matter does not tell and is told of all colours alike. */
const OF_ALL_COLOURS: { readonly [One in Part]?: Technique } = {
  bleeds: 'coloured-suds',
  holds: 'colours-that-stay',
  'too-much': 'too-much-colour',
  when: 'when-colour',
};
/** Batter that went wrong is good soap where its lye was weighed right: from when on it is used. */
const OF_BATTER: ReadonlySet<Technique> = new Set([
  'thick-now',
  'riced-now',
  'scent-speeds',
  'thin-it',
  'keep-fluid',
]);
const OF_USE: ReadonlySet<Part> = new Set(['safe', 'comes-back']);

/** What is asked after a matter that its own answer does not tell. */
function besideMatter(of: Part, id: Technique, context: Context): AskReply | undefined {
  if (OF_USE.has(of) && OF_BATTER.has(id)) return topicReply('when-safe', context);
  const other = OF_ALL_COLOURS[of];
  return other === undefined || other === id ? undefined : techniqueAnswer(other, '', context);
}

/** What comes next of a colour that was dosed, of a recipe that was reckoned. */
const AFTER_DOSE: { readonly [One in Part]?: Technique } = {
  done: 'when-colour',
  when: 'when-colour',
  still: 'no-lumps',
  more: 'no-lumps',
  instead: 'colours-that-stay',
};
const AFTER_MATCH: { readonly [One in Part]?: Technique } = {
  holds: 'colours-that-stay',
  bleeds: 'colours-that-bleed',
  instead: 'colours-that-stay',
  wet: 'no-lumps',
  done: 'when-colour',
  when: 'when-colour',
};
const AFTER_LYE: { readonly [One in Part]?: LyeTopic } = {
  done: 'lye-into-water',
  more: 'lye-into-water',
  'how-hot': 'mixing-temperature',
};
/** These ask for what folds behind an answer. */
const UNFOLDS: ReadonlySet<Part> = new Set(['why', 'too-much', 'how-long', 'more', 'same']);

async function commandPart(
  of: Part,
  before: Ran,
  { question, context }: Asked,
): Promise<AskReply | undefined> {
  const { command } = before;
  if (isOfLye(before)) {
    const topic = AFTER_LYE[of];
    return topic ? topicReply(topic, context) : undefined;
  }
  if (command === 'match' && of === 'bleeds' && asksOfSuds(question))
    return techniqueAnswer('coloured-suds', '', context);
  const next = command === 'match' ? AFTER_MATCH[of] : command === 'dose' ? AFTER_DOSE[of] : undefined;
  if (next) return techniqueAnswer(next, '', context);
  if (command === 'colourant check' && (of === 'instead' || of === 'when'))
    return techniqueAnswer(of === 'when' ? 'when-colour' : 'colours-that-stay', '', context);
  if (!UNFOLDS.has(of) || !WITH_FOLDS.has(command)) return undefined;
  const reply = await leanedRun([before], { isAgain: true, context });
  if (!reply) return undefined;
  const blocks = reply.blocks.map(({ fold: _fold, ...block }) => block);
  const most = of === 'too-much' ? mostOf(reply) : undefined;
  return { ...reply, ...(most !== undefined && { headline: most }), blocks };
}

/** Commands whose answers fold away what such a turn asks for. */
const WITH_FOLDS: ReadonlySet<string> = new Set(['dose', 'match', 'colourant check', 'preview']);

/** How near the most that it takes a dose is. */
function mostOf({ blocks }: AskReply): string | undefined {
  const measures = blocks.flatMap(block => (block.kind === 'measures' ? block.measures : []));
  const told = measures.find(({ note }) => note !== undefined);
  return told && `${told.label}: ${told.value}. ${told.note}`;
}

/** Asked on about a flaw: this adds to what is known of it. */
const ADDS: ReadonlySet<Part> = new Set(['still', 'points']);
const OF_NEXT: ReadonlySet<Part> = new Set(['next-time']);
const MOST_REMEDIES = 2;

/** A flaw once more, with what was told since; first what is done about it now, next time, or why it came. */
async function flawPart(of: Part, before: Ran, { question, context }: Asked): Promise<AskReply> {
  const { say } = context;
  const words = before.given.words ?? '';
  const told = ADDS.has(of) ? asOneText(words, question) : words;
  const reply = await ranCommand('diagnose', { words: told }, context);
  const cause = likeliestCause(reply);
  // Lye that may be in a bar stands before all that is asked of it.
  const first = cause && !reply.flaw?.doNotUse ? firstOf(of, cause, context) : '';
  return {
    ...reply,
    headline: first === '' ? reply.headline : first,
    understood: {
      kind: 'command',
      job: 'diagnose',
      command: 'diagnose',
      given: { words: told },
      leans: true,
    },
    blocks: [
      ...(first === '' ? [] : [{ kind: 'text' as const, text: reply.headline }]),
      ...reply.blocks,
      { kind: 'text', text: say.leaning.again({ line: lineOf('diagnose', { words: told }) }), firm: true },
    ],
  };
}

type Cause = NonNullable<ReturnType<typeof likeliestCause>>;

/** What is told first of a cause; empty where its own headline is. */
function firstOf(of: Part, { id, thisBatch, nextBatch }: Cause, { say }: Context): string {
  if (of === 'again') return '';
  const remedies: Readonly<Record<string, string>> = say.flaws.remedies;
  const causes: Readonly<Record<string, { readonly why: string }>> = say.flaws.causes;
  if (of === 'why') return causes[id]?.why ?? '';
  const texts = (ids: readonly string[]) => ids.flatMap(one => remedies[one] ?? []);
  const telling =
    of === 'points' || of === 'goes-on' || of === 'next-time'
      ? []
      : tellingOf(texts([...nextBatch, ...thisBatch]), of);
  const list = telling.length > 0 ? telling : texts(OF_NEXT.has(of) ? nextBatch : thisBatch);
  return list.slice(0, MOST_REMEDIES).join(' ');
}
