import type { Context } from '../../src/conversation/context.ts';
import type { Block, Reply } from '../../src/conversation/reply.ts';
import { cut, oneLine } from '../../src/engine/text/excerpt.ts';
import type { Found, Recipe, Times } from '../../src/records/recipes/index.ts';
import { undoChoice } from '../shelf/follow-ups.ts';

/** What a change did, with a word when it was done before. */
export function told(
  headline: string,
  data: { readonly repeated: boolean },
  { say }: Context,
  more: readonly string[] = [],
): Reply {
  const notices = [...(data.repeated ? [say.recipes.repeated] : []), ...more];
  return {
    kind: 'reply',
    headline,
    data,
    blocks: notices.map((notice): Block => ({ kind: 'text', text: notice })),
    cautions: [],
  };
}

/** A change with the way back from it. */
export const withUndo = (reply: Reply, done: { readonly repeated: boolean }, context: Context): Reply => ({
  ...reply,
  choices: undoChoice(done, context.change.cause, context),
});

/** The recipe's own words, one a line, as `/plan` takes them. */
export const asWritten = ({ written, times }: Recipe, { say }: Context): Block => ({
  kind: 'text',
  folds: true,
  text: [
    `${say.recipes.asWritten}:`,
    ...Object.entries(written).map(([option, value]) => {
      const factor = times[(option === 'liquid' ? 'liquids' : option) as keyof Times] ?? 1;
      return `${option}: ${value}${factor === 1 ? '' : ` (${say.recipes.times({ factor })})`}`;
    }),
  ].join('\n'),
});

function row(found: Found, { say }: Context): string {
  const { written, times } = found;
  const size = [
    written.size ?? say.recipes.sizeOfOils,
    ...(times.size === 1 ? [] : [say.recipes.times({ factor: times.size })]),
  ].join(', ');
  const oils = cut(oneLine(written.oils), 120);
  return found.shared
    ? say.recipes.sharedRow({ name: found.name, by: found.byName, oils, size })
    : say.recipes.row({ name: found.name, oils, size });
}

/** One's own recipes and those that the group shares, a row each. */
export function listed(all: readonly Found[], context: Context): Reply {
  const { say } = context;
  const own = all.filter(({ shared }) => !shared);
  const shared = all.filter(one => one.shared);
  const lists = [
    { title: say.recipes.own, rows: own },
    { title: say.recipes.shared, rows: shared },
  ];
  return {
    kind: 'reply',
    headline:
      all.length === 0 ? say.recipes.none : say.recipes.count({ own: own.length, shared: shared.length }),
    data: { own, shared },
    blocks: lists
      .filter(({ rows }) => rows.length > 0)
      .map(({ title, rows }) => ({ kind: 'rows', title, rows: rows.map(one => row(one, context)) })),
    cautions: [],
  };
}
