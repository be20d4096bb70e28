import type { Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { text } from '../../src/conversation/option.ts';
import { listShelf } from '../../src/records/shelf/index.ts';

/** A label is shorter; what is longer is no label. */
export const longestList = 4000;

export const colour = text(
  {
    en: 'An item on your shelf, a colourant such as “gold mica”, or an ingredient list',
    es: 'Un producto de tu estantería, un colorante («mica dorada») o una lista de ingredientes',
  },
  { most: longestList },
);
export async function suggestColours(typed: string, context: Context): Promise<readonly Suggestion[]> {
  const own = await listShelf(context.shelf);
  const fits = own.filter(({ name }) => name.toLowerCase().includes(typed.toLowerCase())).slice(0, 10);
  return [...fits.map(({ name }) => ({ name, value: name })), ...completeColourants(typed, context.language)];
}
