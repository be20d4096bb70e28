import type { Conversation } from '../conversation/conversation.ts';
import type { Question } from '../conversation/question.ts';
import { suggest } from '../conversation/receive.ts';

/** What could stand at the end of a line, and the part of the line it would replace: readline's own shape. */
export type Completion = [string[], string];

type Origin = Pick<Question, 'id' | 'at' | 'asker' | 'group' | 'channel' | 'language'>;

const quoted = (value: string) => (/[\s"]/.test(value) ? `"${value.replaceAll('"', '\\"')}"` : value);

/** Completes commands, then names of options, then their values: fixed ones, and those the command suggests. */
export async function completeLine(
  typed: string,
  origin: Origin,
  conversation: Conversation,
): Promise<Completion> {
  const { actions } = conversation.registry;
  const paths = [...actions.keys()];
  const path = paths.find(one => new RegExp(`^/${one}\\s`).test(typed));
  if (path === undefined) {
    const fits = paths.map(one => `/${one} `).filter(one => one.startsWith(typed));
    return [fits, typed];
  }
  const options = actions.get(path)?.options ?? [];
  const [, name, value = ''] = /\s([\p{L}][\p{L}\p{N}-]*):("[^"]*|[^\s"]*)$/u.exec(typed) ?? [];
  const option = options.find(one => one.name === name);
  if (!option) {
    const word = /\S*$/.exec(typed)?.[0] ?? '';
    const free = options.filter(one => !typed.includes(` ${one.name}:`) && one.name.startsWith(word));
    return [free.map(one => `${one.name}:`), word];
  }
  const begun = value.replace(/^"/, '');
  const offered = option.completes
    ? await suggest(
        { ...origin, kind: 'typing', path: path.split(' '), given: {}, option: option.name, typed: begun },
        conversation,
      )
    : (option.choices ?? []).filter(one => one.value.startsWith(begun));
  return [offered.map(one => `${quoted(one.value)} `), value];
}
