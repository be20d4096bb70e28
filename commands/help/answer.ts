import type { Context } from '../../src/conversation/context.ts';
import type { Next, Reply } from '../../src/conversation/reply.ts';
import { refuse } from '../../src/engine/refusal.ts';
import { cut } from '../../src/engine/text/excerpt.ts';
import { nearestNames } from '../../src/engine/text/spelling/closest-name.ts';
import { findTopic, type Topic, topicNames } from './topics.ts';

declare module '../../src/engine/refusal.ts' {
  interface Reasons {
    'topic-unknown': { readonly text: string; readonly nearest: readonly string[] };
  }
}

/** Words on the face of help. */
const MOST_WORDS = 70;

/** The five jobs, each a button, and every command behind a fold. */
export function overview({ say, commands: all, language }: Context): Reply {
  const commands = all.map(({ name, purpose, subcommands }) => ({
    name,
    purpose: purpose[language],
    subcommands,
  }));
  const jobs = Object.values(say.help.jobs);
  return {
    kind: 'reply',
    headline: say.help.headline,
    data: { commands },
    blocks: [
      { kind: 'rows', rows: jobs.map(job => say.help.job(job)), fold: 'face' },
      { kind: 'text', text: say.help.start },
      { kind: 'rows', rows: commands.map(one => say.help.row(one)), fold: 'more' },
    ],
    cautions: [{ id: 'lye', text: say.help.lye, firm: true, brief: say.help.lyeBrief }],
    next: jobs.map(({ name, topic }) => ({ label: name, line: `/help topic:"${topic}"` })),
    most: MOST_WORDS,
  };
}

/** One command, option, word of the trade or caution explained. Throws a Refusal `topic-unknown`. */
export function topicReply(typed: string, context: Context): Reply {
  const topic = findTopic(typed, context);
  if (!topic)
    return refuse('topic-unknown', {
      text: cut(typed.trim(), 60),
      nearest: nearestNames(typed.replace(/^\//, ''), [...topicNames(context)], 3),
    });
  return {
    kind: 'reply',
    headline: headlineOf(topic, context),
    data: dataOf(topic),
    blocks: blocksOf(topic, context),
    cautions: [],
    next: topic.kind === 'command' ? nextOf(topic, context) : [],
    most: MOST_WORDS,
  };
}

function headlineOf(topic: Topic, { say }: Context): string {
  if (topic.kind === 'command') {
    const [first, ...others] = topic.asks;
    return others.length === 0 && first ? `/${first.path}: ${first.purpose}` : `/${topic.name}`;
  }
  return topic.kind === 'option' ? `${topic.name}:` : say.help.meaning(topic);
}

/** A topic as programs are told it. */
function dataOf(topic: Topic): object {
  if (topic.kind === 'command' || topic.kind === 'option') return topic;
  const { kind, name, means, more } = topic;
  return { kind, name, text: more === undefined ? means : `${means} ${more}` };
}

function blocksOf(topic: Topic, { say }: Context): Reply['blocks'] {
  switch (topic.kind) {
    case 'command': {
      const [first, ...others] = topic.asks;
      if (others.length > 0 || !first)
        return [{ kind: 'rows', rows: topic.asks.map(({ path, purpose }) => `/${path}: ${purpose}`) }];
      const example = say.help.examples[first.path as keyof typeof say.help.examples];
      return [
        ...(example === undefined ? [] : [{ kind: 'text' as const, text: example }]),
        { kind: 'rows', rows: first.options.map(({ name, says }) => `${name}: ${says}`) },
      ];
    }
    case 'option':
      return [{ kind: 'rows', rows: topic.rows }];
    case 'term':
    case 'caution':
      return topic.more === undefined ? [] : [{ kind: 'text', text: topic.more }];
  }
}

/** Commands below this one, and an example to run. */
function nextOf({ asks }: Extract<Topic, { kind: 'command' }>, { say }: Context): readonly Next[] {
  const [first, ...others] = asks;
  const example = first && say.help.examples[first.path as keyof typeof say.help.examples];
  if (others.length > 0)
    return asks.slice(0, 10).map(({ path }) => ({ label: `/${path}`, line: `/help topic:"${path}"` }));
  return example === undefined ? [] : [{ label: say.help.tryIt, line: example }];
}
