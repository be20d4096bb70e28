import type { Member, MessageView } from '../../../src/loopback/interface.ts';
import { prefer } from '../../../src/records/preferences.ts';
import { openFair } from '../challenge/room.ts';

/** A room with a clock of its own, and a maker with two jars and a plan. */
export async function openBook() {
  const fair = await openFair();
  return {
    fair,
    /** A group of its own whose member has the jars “Dusk” (40 g, lot B7) and “Sun” (10 g). */
    async maker() {
      const group = fair.group();
      const { member } = group;
      await prefer(fair.room.store, member.id, { answers: 'whole' });
      await member.run('/shelf add', {
        item: 'Dusk',
        amount: '40 g',
        colourant: 'ultramarine violet',
        lot: 'B7',
      });
      await member.run('/shelf add', { item: 'Sun', amount: '10 g', colourant: 'gold mica' });
      return { ...group, member, wait: (ms: number) => group.wait(ms) };
    },
    [Symbol.asyncDispose]: () => fair[Symbol.asyncDispose](),
  };
}

export type Book = Awaited<ReturnType<typeof openBook>>;

export const planned = {
  oils: 'coconut 30%, olive 50%, palm 20%',
  size: '1000 g oils',
  portions: '2 cups Dusk full; 1 cup Sun pastel; rest plain',
};

export const headline = ({ text }: Pick<MessageView, 'text'>) =>
  (text.split('\n')[0] ?? '').replace(/^#+ /, '');

/** Grams left of a jar, as the shelf says. */
export async function left(member: Member, item: string): Promise<number> {
  const { text } = await member.run('/shelf show', { item });
  return Number(/: ([\d.]+) g/.exec(text)?.[1]);
}

/** What the bot wrote to a member in private, oldest first, as it reads now. */
export const letters = (member: Member): readonly MessageView[] =>
  member.sees({ context: 'bot-dm' }).filter(({ ephemeral }) => !ephemeral);
