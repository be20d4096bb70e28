import { createInterface } from 'node:readline/promises';
import type { Conversation } from '../conversation/receive.ts';
import type { Choice } from '../conversation/reply.ts';
import { wordsIn } from '../words/index.ts';
import { askLine, type Seat } from './seat.ts';
import { linesOf } from './shown.ts';

/** The terminal as a room: one line asked, one answer shown, until the input ends. */
export async function runPrompt(
  seat: Seat,
  conversation: Conversation,
  { pictures }: { readonly pictures: string },
): Promise<void> {
  const say = wordsIn(seat.language);
  const commands = [...conversation.book.actions.keys()].map(path => `/${path}`);
  const terminal = createInterface({
    input: process.stdin,
    output: process.stdout,
    prompt: '› ',
    historySize: 500,
    completer: (typed: string): [string[], string] => [
      commands.filter(command => command.startsWith(typed)),
      typed,
    ],
  });
  // Piped input may end before its last line is answered.
  let ended = false;
  terminal.once('close', () => {
    ended = true;
  });
  let choices: readonly Choice<string>[] = [];
  terminal.prompt();
  for await (const typed of terminal) {
    if (typed.trim() !== '') {
      const { answer } = await askLine(chosenLine(typed, choices), seat, conversation);
      choices = answer.kind === 'reply' ? (answer.choices ?? []) : [];
      process.stdout.write(`\n${await linesOf(answer, pictures)}\n`);
      if (choices.length > 0) process.stdout.write(`${say.fronts.pickOne({ most: choices.length })}\n`);
      process.stdout.write('\n');
    }
    if (!ended) terminal.prompt();
  }
  process.stdout.write(`\n${say.fronts.goodbye}\n`);
}

/** A number picks a choice of the last answer; words after it are the values of a menu. */
function chosenLine(typed: string, choices: readonly Choice<string>[]): string {
  const [, place = '', values = ''] = /^(\d+)\s*(.*)$/.exec(typed.trim()) ?? [];
  const choice = choices[Number(place) - 1];
  if (!choice) return typed;
  return `${choice.kind === 'menu' ? 'choose' : 'press'} ${choice.follow} ${values}`;
}
