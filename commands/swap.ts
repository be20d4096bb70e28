import { action, commandGroup, type Suggestion } from '../src/conversation/command.ts';
import type { Context } from '../src/conversation/context.ts';
import { text } from '../src/conversation/option.ts';
import { colourantById } from '../src/engine/colourants/catalogue.ts';
import { plainReply } from '../src/presenting/plain-reply.ts';
import { findItem, nearestNames } from '../src/records/shelf/index.ts';
import { offerJar, offersIn, withdrawJar } from '../src/records/swaps/index.ts';
import { phrases } from '../src/words/declared.ts';

const says = phrases('swap');

const item = text(says.options.item);

const suggestItems = async (typed: string, { shelf }: Context): Promise<readonly Suggestion[]> =>
  (await nearestNames(shelf, typed, 25)).map(name => ({ name, value: name }));

export default commandGroup('swap', says.purpose, {
  offer: action({
    purpose: says.offer.purpose,
    seenBy: 'group',
    options: {
      item,
      for: text(says.offer.for, { most: 200 }).optional(),
    },
    completes: { item: suggestItems },
    async answer(asked, context) {
      const { store, group, asker, say, by } = context;
      const jar = await findItem(context.shelf, asked.item);
      const wants = asked.for?.trim();
      const offer = { ...by, byName: asker.name, item: jar };
      await offerJar({ store, group }, { ...offer, ...(wants && { wants }) });
      return plainReply(say.community.offered({ name: jar.name, by: asker.name, wants }), {
        item: jar.id,
        wants,
      });
    },
  }),
  list: action({
    purpose: says.list.purpose,
    seenBy: 'asker',
    options: {},
    async answer(_, { store, group, say }) {
      const offers = await offersIn({ store, group });
      const rows = offers.slice(0, 40).map(({ jar, byName, wants }) =>
        say.community.offer({
          name: jar.name,
          kind: jar.colourant === undefined ? undefined : colourantById(jar.colourant)?.names[say.language],
          grams: jar.stock.grams,
          by: byName,
          wants,
        }),
      );
      const data = {
        offers: offers.map(({ jar, byName, wants }) => ({ name: jar.name, by: byName, wants })),
      };
      return plainReply(
        say.community.offers({ offers: offers.length }),
        data,
        rows.length > 0 ? [{ kind: 'rows', rows }] : [],
      );
    },
  }),
  withdraw: action({
    purpose: says.withdraw.purpose,
    seenBy: 'asker',
    options: { item },
    completes: { item: suggestItems },
    async answer(asked, { shelf, store, group, say }) {
      const jar = await findItem(shelf, asked.item);
      await withdrawJar({ store, group }, { member: shelf.member, item: jar.id });
      return plainReply(say.community.offerGone({ name: jar.name }), { item: jar.id });
    },
  }),
});
