import { createInterface, type Interface } from 'node:readline/promises';
import type { Conversation } from '../conversation/conversation.ts';
import type { Answer, Choice, Field, Form, Next } from '../conversation/reply.ts';
import { type Words, wordsIn } from '../words/index.ts';
import { completeLine } from './complete-line.ts';
import { dressed, lookOf } from './dressed.ts';
import { keepPastLines, readPastLines } from './history.ts';
import { askLine, originOf, type Seat } from './seat.ts';
import { foldText, linesOf } from './shown.ts';

export type PromptOptions = {
  /** Folder for pictures. */
  readonly pictures: string;
  /** File of earlier lines. */
  readonly history: string;
  /** Answers only: no prompt, no farewell, no history; for pipes. */
  readonly plain: boolean;
  /** Ends the prompt from outside. */
  readonly signal: AbortSignal;
};

/** The terminal as a room: one line asked, one answer shown, until the input ends. Gives how many were asked. */
export async function runPrompt(
  seat: Seat,
  conversation: Conversation,
  { pictures, history, plain, signal }: PromptOptions,
): Promise<number> {
  const say = wordsIn(seat.language);
  const isTyped = process.stdin.isTTY === true && !plain;
  let past = isTyped ? await readPastLines(history) : [];
  const terminal = createInterface({
    input: process.stdin,
    ...(!plain && { output: process.stdout }),
    terminal: isTyped,
    prompt: plain ? '' : '› ',
    history: past,
    historySize: 500,
    removeHistoryDuplicates: true,
    completer: (typed: string) => completeLine(typed, originOf(seat), conversation),
  });
  terminal.on('history', lines => {
    past = lines;
  });
  clearOrLeave(terminal, say);
  const end = () => terminal.close();
  signal.addEventListener('abort', end, { once: true });
  if (signal.aborted) end();

  const room = { terminal, say, pictures, plain };
  const asked = await answerLines(seat, conversation, room);
  signal.removeEventListener('abort', end);
  if (isTyped) await keepPastLines(history, past);
  if (!plain) process.stdout.write(`\n${say.fronts.goodbye}\n`);
  return asked;
}

/** The first Ctrl-C clears what is typed, and the next on an empty line leaves. */
function clearOrLeave(terminal: Interface, say: Words): void {
  let leaves = false;
  terminal.on('SIGINT', () => {
    if (leaves && terminal.line === '') return terminal.close();
    leaves = true;
    const had = terminal.line !== '';
    terminal.write(null, { ctrl: true, name: 'e' });
    terminal.write(null, { ctrl: true, name: 'u' });
    process.stdout.write(`\n${had ? '' : `${say.fronts.leaveAgain}\n`}`);
    terminal.prompt();
  });
  terminal.on('line', () => {
    leaves = false;
  });
}

type Room = {
  readonly terminal: Interface;
  readonly say: Words;
  readonly pictures: string;
  readonly plain: boolean;
};

/** What the last answer left open: choices to pick by number, folds by name, or a form of which some fields are filled. */
type Open =
  | {
      readonly kind: 'choices';
      readonly choices: readonly Choice<string>[];
      readonly next: readonly Next[];
      readonly answer?: Answer;
    }
  | { readonly kind: 'form'; readonly form: Form<string>; readonly given: readonly string[] };

const NOTHING: Open = { kind: 'choices', choices: [], next: [] };

async function answerLines(seat: Seat, conversation: Conversation, room: Room): Promise<number> {
  const { terminal, say, pictures, plain } = room;
  const look = lookOf(process.stdout);
  const showing = { folder: pictures, opens: true };
  // Piped input may end before its last line is answered.
  let ended = false;
  terminal.once('close', () => {
    ended = true;
  });
  let asked = 0;
  let open = NOTHING;
  if (!plain) terminal.prompt();
  for await (const typed of terminal) {
    const isField = open.kind === 'form' && !typed.startsWith('/');
    if (typed.trim() !== '' || isField) {
      const unfolded = open.kind === 'choices' && open.answer && foldText(open.answer, typed);
      const next = lineFor(typed, open);
      if (unfolded) {
        process.stdout.write(`${plain ? '' : '\n'}${dressed(unfolded, look)}\n`);
      } else if (typeof next === 'string') {
        const { answer } = await askLine(next, seat, conversation);
        asked += 1;
        process.stdout.write(`${plain ? '' : '\n'}${dressed(await linesOf(answer, showing), look)}\n`);
        open = openedBy(answer);
      } else open = next;
      process.stdout.write(invitation(open, say, plain));
    }
    if (!ended && !plain) terminal.prompt();
  }
  return asked;
}

function openedBy(answer: Answer): Open {
  if (answer.kind === 'form') return { kind: 'form', form: answer, given: [] };
  const next = answer.kind === 'reply' ? (answer.next ?? []) : [];
  return { kind: 'choices', choices: answer.choices ?? [], next, answer };
}

/** What to type next, if anything is open. */
function invitation(open: Open, { fronts }: Words, plain: boolean): string {
  if (open.kind === 'form') return `${askedFor(open.form.fields[open.given.length])}:\n`;
  const most = open.choices.length + open.next.length;
  return `${most > 0 ? `${fronts.pickOne({ most })}\n` : ''}${plain ? '' : '\n'}`;
}

/** The command a line stands for, or the form with one more field filled. A line with a slash leaves a form. */
function lineFor(typed: string, open: Open): string | Open {
  if (open.kind === 'form') return typed.startsWith('/') ? typed : filled(open, typed.trim());
  const [, place = '', values = ''] = /^(\d+)\s*(.*)$/.exec(typed.trim()) ?? [];
  const choice = open.choices[Number(place) - 1];
  if (!choice) return nextLine(open.next[Number(place) - 1 - open.choices.length], values) ?? typed;
  return choice.kind === 'menu'
    ? `choose ${choice.follow} ${itemsIn(choice, values)}`
    : `press ${choice.follow} ${values}`;
}

/** Values of a menu from their numbers in it; what is no such number stands as it was typed. */
const itemsIn = ({ items }: Extract<Choice<string>, { kind: 'menu' }>, typed: string): string =>
  typed
    .split(/\s+/)
    .map(one => (/^\d+$/.test(one) ? items[Number(one) - 1]?.value : undefined) ?? one)
    .join(' ');

const nextLine = (one: Next | undefined, at: string): string | undefined =>
  one && ('line' in one ? one.line : one.lines[Number(at || 1) - 1]?.line);

/** What a field asks for, with a number before each of the things to choose from. */
function askedFor(field: Field | undefined): string {
  if (!field) return '';
  const items = 'items' in field ? field.items : [];
  return [field.label, ...items.map(({ label }, at) => `  ${at + 1}: ${label}`)].join('\n');
}

/** The values of what was chosen by number, else what was typed. */
const valuesIn = (field: Field | undefined, typed: string): string =>
  !field || !('items' in field)
    ? typed
    : typed
        .split(/[\s,]+/u)
        .map(one => (/^\d+$/.test(one) ? field.items[Number(one) - 1]?.value : undefined) ?? one)
        .join(' ');

function filled({ form, given }: Extract<Open, { kind: 'form' }>, value: string): string | Open {
  const all = [...given, valuesIn(form.fields[given.length], value)];
  if (all.length < form.fields.length) return { kind: 'form', form, given: all };
  const fields = form.fields.flatMap(({ name }, index) => {
    const text = all[index] ?? '';
    return text === '' ? [] : [`${name}:"${text.replaceAll(/["\\]/g, sign => `\\${sign}`)}"`];
  });
  return ['fill', form.follow, ...fields].join(' ');
}
