import { wordsIn } from '../words/index.ts';
import { requireSteward } from './access.ts';
import { isAction } from './command.ts';
import type { Context } from './context.ts';
import type { Conversation } from './conversation.ts';
import type { Origin } from './question.ts';
import { unknownCommand } from './task.ts';
import { typedValue } from './typed-value.ts';
import { takeOrOffer } from './which-one.ts';

export const contextOf = (
  origin: Origin,
  { services, registry }: Conversation,
  idempotencyKey: string,
): Context => {
  const { id, at, asker, group, channel, here, language, locale } = origin;
  const { store } = services;
  const context: Context = {
    id,
    at,
    asker,
    group,
    channel,
    here,
    language,
    locale,
    ...services,
    workers: {
      ...services.workers,
      run: (name, input, more) => services.workers.run(name, input, { group, ...more }),
    },
    shelf: { store, member: asker.id },
    recipes: { store, member: asker.id, group },
    change: { cause: idempotencyKey, at: new Date(at), byName: asker.name },
    get commands() {
      return registry.commands.map(({ name, purpose, does }) => ({
        name,
        purpose,
        subcommands: isAction(does) ? [] : Object.keys(does),
      }));
    },
    say: wordsIn(language),
    idempotencyKey,
    async run(command, given) {
      const action = registry.actions.get(command) ?? unknownCommand(command, registry);
      if (action.access === 'steward') await requireSteward(context);
      const typed = Object.entries(given).map(([name, value]) => {
        const option = action.options.find(one => one.name === name);
        return [name, option && typeof value === 'string' ? typedValue(option, value) : value] as const;
      });
      return takeOrOffer({ command, action, given: Object.fromEntries(typed) }, context);
    },
  };
  return context;
};
