import { action, command } from '../src/conversation/command.ts';

export default command(
  'help',
  action({
    purpose: { en: 'What I can do, and how to ask', es: 'Qué sé hacer y cómo preguntarme' },
    seenBy: 'asker',
    options: {},
    answer(_asked, { say, commands: all }) {
      const commands = all.map(({ name, purpose, subcommands }) => ({
        name,
        purpose: purpose[say.language],
        subcommands,
      }));
      return {
        kind: 'reply',
        headline: say.help.headline,
        data: { commands },
        blocks: [
          {
            kind: 'rows',
            rows: commands.map(({ name, purpose, subcommands }) =>
              say.help.row({ name, purpose, subcommands }),
            ),
          },
          { kind: 'text', text: say.help.start },
        ],
        cautions: [{ id: 'lye', text: say.help.lye }],
      };
    },
  }),
  { listsCommands: true },
);
