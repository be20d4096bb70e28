import type { Context } from '../../src/conversation/context.ts';
import { fold } from '../../src/engine/text/fold.ts';

type Knows = Pick<Context, 'commands' | 'say' | 'language'>;

/** What a topic is, and what is said of it. */
export type Topic =
  | { readonly kind: 'command'; readonly name: string; readonly asks: readonly Ask[] }
  | { readonly kind: 'option'; readonly name: string; readonly rows: readonly string[] }
  | {
      readonly kind: 'term' | 'caution';
      readonly name: string;
      /** What it means, in one sentence. */
      readonly means: string;
      /** What else is said of it. */
      readonly more?: string;
    };

type Ask = {
  readonly path: string;
  readonly purpose: string;
  readonly options: readonly { readonly name: string; readonly says: string }[];
};

/** Every name that can be explained: commands, words of the trade, cautions, options. */
export const topicNames = (context: Knows): readonly string[] => [
  ...new Set([
    ...paths(context).map(({ path }) => path),
    ...entries(context).map(({ name }) => name),
    ...paths(context).flatMap(({ options }) => options.map(({ name }) => name.replace(/-\d$/, ''))),
  ]),
];

const paths = ({ commands, language }: Knows): readonly Ask[] =>
  commands.flatMap(({ asks }) =>
    asks.map(({ path, purpose, options }) => ({
      path,
      purpose: purpose[language],
      options: options.map(({ name, says }) => ({ name, says: says[language] })),
    })),
  );

/** Words of the trade, and cautions under the word that they are known by. */
function entries({ say }: Knows): readonly Extract<Topic, { kind: 'term' | 'caution' }>[] {
  const { terms, cautions } = say.help;
  return [
    ...Object.values(terms).map(one => ({ kind: 'term' as const, ...one })),
    ...Object.values(cautions).map(one => ({ kind: 'caution' as const, ...one })),
  ];
}

/** What a topic means: a command before a word of the trade, that before an option; undefined where it is none. */
export function findTopic(typed: string, context: Knows): Topic | undefined {
  const wanted = fold(typed.replace(/^\//, '').replace(/:$/, ''));
  const asks = paths(context).filter(
    ({ path }) => fold(path) === wanted || fold(path).startsWith(`${wanted} `),
  );
  if (asks.length > 0) return { kind: 'command', name: asks[0]!.path.split(' ')[0]!, asks };
  const entry = entries(context).find(({ name }) => fold(name) === wanted);
  if (entry) return entry;
  const rows = paths(context).flatMap(({ path, options }) =>
    options
      .filter(({ name }) => fold(name.replace(/-\d$/, '')) === wanted)
      .slice(0, 1)
      .map(({ says }) => `/${path}: ${says}`),
  );
  return rows.length > 0 ? { kind: 'option', name: wanted, rows: [...new Set(rows)] } : undefined;
}
