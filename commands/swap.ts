import { action, commandGroup, type Suggestion } from '../src/conversation/command.ts';
import type { Context } from '../src/conversation/context.ts';
import { text } from '../src/conversation/option.ts';
import { colourantById } from '../src/engine/colourants/catalogue.ts';
import { plainReply } from '../src/presenting/plain-reply.ts';
import { findItem, nearestNames } from '../src/records/shelf/index.ts';
import { offerJar, offersIn, withdrawJar } from '../src/records/swaps/index.ts';

const item = text({ en: 'A jar by its name on your shelf', es: 'Un bote por su nombre en tu estantería' });

const suggestItems = async (typed: string, { shelf }: Context): Promise<readonly Suggestion[]> =>
  (await nearestNames(shelf, typed, 25)).map(name => ({ name, value: name }));

export default commandGroup(
  'swap',
  {
    en: 'Jars that members offer one another: nothing is shown unless you offer it',
    es: 'Botes que se ofrecen entre miembros: nada se muestra si no lo ofreces',
  },
  {
    offer: action({
      purpose: { en: 'Offer one of your jars to this group', es: 'Ofrece un bote tuyo a este grupo' },
      seenBy: 'group',
      options: {
        item,
        for: text(
          { en: 'What you would like for it', es: 'Qué te gustaría a cambio' },
          { most: 200 },
        ).optional(),
      },
      completes: { item: suggestItems },
      async answer(asked, context) {
        const { store, group, asker, say } = context;
        const jar = await findItem(context.shelf, asked.item);
        const wants = asked.for?.trim();
        const offer = { ...context.by, byName: asker.name, item: jar };
        await offerJar({ store, group }, { ...offer, ...(wants && { wants }) });
        return plainReply(say.community.offered({ name: jar.name, by: asker.name, wants }), {
          item: jar.id,
          wants,
        });
      },
    }),
    list: action({
      purpose: { en: 'What members offer here', es: 'Qué se ofrece aquí' },
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
      purpose: { en: 'Take your offer back', es: 'Retira tu oferta' },
      seenBy: 'asker',
      options: { item },
      completes: { item: suggestItems },
      async answer(asked, { shelf, store, group, asker, say }) {
        const jar = await findItem(shelf, asked.item);
        await withdrawJar({ store, group }, { member: asker.id, item: jar.id });
        return plainReply(say.community.offerGone({ name: jar.name }), { item: jar.id });
      },
    }),
  },
);
