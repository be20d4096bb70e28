import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { wholeOf } from '../../src/conversation/faces/face.ts';
import { formText, textOf } from '../../src/conversation/faces/plain-text.ts';
import { followUpNameIn } from '../../src/conversation/follow-ups/follow.ts';
import type { Form, Reply } from '../../src/conversation/reply.ts';
import type { Control, Member, MessageView, OpenForm, Options, Outcome } from '../../src/loopback/index.ts';
import { wordsIn } from '../../src/words/index.ts';
import { openRoom, registry } from '../loopback/room.ts';
import { speckedBar } from '../photo/render/specked-bar.ts';
import { isDue } from '../walk.ts';
import { LONGEST, longJar, UNREACHED } from './longest.ts';

/*
 * Replies at their longest: whatever an answer holds is read on the platform, on its face, behind a fold, or in the file
 * that comes with it. Nothing is cut. Every command is asked at its longest, and every button, menu and form that comes is
 * used once, as the declarations list them: what is declared and not met here fails.
 */

const JARS = 40;
const HOUR = 3_600_000;
const say = wordsIn('en');

let now = Date.UTC(2026, 10, 2, 10);
let room: Awaited<ReturnType<typeof openRoom>>;

/** What the commands answered, the outermost last, before anything is folded for a front. */
const answers: (Reply | Form)[] = [];
const unwrap: (() => void)[] = [];
/** Keeps what is answered from here on; undone at the end, since other files share the registry. */
function listenTo(declared: { take: (...given: never[]) => Promise<Reply | Form> }): void {
  const { take } = declared;
  const listening = async (...given: never[]) => {
    const answer = await take(...given);
    answers.push(answer);
    return answer;
  };
  Object.assign(declared, { take: listening });
  unwrap.push(() => void Object.assign(declared, { take }));
}

beforeAll(async () => {
  room = await openRoom({ host: { now: () => now, acknowledgeWithinMs: 240_000 } });
  for (const one of [...registry.actions.values(), ...registry.followUps.values()]) listenTo(one);
  const kinds = ['ultramarine blue', 'gold mica', 'red iron oxide', 'titanium dioxide', 'neon pink'];
  for (let n = 0; n < JARS; n += 1)
    await room.steward.run('/shelf add', { item: longJar(n), amount: '30 g', colourant: kinds[n % 5]! });
  for (let n = 0; n < 12; n += 1)
    await room.steward.run('/plan', {
      oils: 'coconut 30%, olive 50%, palm 20%',
      size: '1000 g oils',
      'save-as': `Loaf ${n} ${'with a name as long as a recipe may have '.repeat(2)}`.slice(0, 78),
    });
}, 300_000);
afterAll(async () => {
  for (const undo of unwrap) undo();
  expect(room.faults).toEqual([]);
  await room[Symbol.asyncDispose]();
});

/** Letters and digits alone: marks, escapes and line ends differ between fronts. */
const bare = (text: string): string => text.toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, '');
const filed = ({ files }: MessageView): string =>
  files
    .filter(({ name }) => name.endsWith('.txt'))
    .map(file => Buffer.from(file.bytes()).toString())
    .join('\n');

/** Everything that can be read of an answer on the platform: its face, each fold, and the files of both. */
async function readAll(answer: MessageView, member: Member): Promise<string> {
  const parts = [answer.text, filed(answer), ...answer.controls.map(({ label }) => label)];
  for (const { label, customId = '' } of answer.controls.filter(one => one.label.startsWith('▸'))) {
    const opened = await member.press(answer, customId);
    reached.add('fold.open');
    parts.push(label, opened.text, filed(opened));
  }
  return bare(parts.join('\n'));
}

/** Lines of the whole answer that are nowhere to be read. */
async function lostOf(reply: Reply, answer: MessageView, member: Member): Promise<readonly string[]> {
  const read = await readAll(answer, member);
  return (
    textOf(wholeOf(reply), say)
      // A time is shown in each reader's own zone by the platform.
      .replaceAll(/\uE000[^\uE001]*\uE001[^\uE002]*\uE002/gu, '\n')
      .split('\n')
      .map(one => one.trim())
      // What a picture shows is described beside it, not in the text.
      .filter(one => !one.startsWith('[') && bare(one).length > 3 && !read.includes(bare(one)))
  );
}

const reached = new Set<string>();
const photo = () => ({
  name: 'bar.png',
  bytes: speckedBar(),
});
type FieldValue = Parameters<Member['submit']>[1][string];
const LONG_TEXT = 'as long as a field takes, and then some more of it ';

/** Fills a form at its longest. */
const filledIn = ({ fields }: OpenForm) =>
  Object.fromEntries(
    fields.flatMap(({ customId, kind, options, value }): [string, FieldValue][] => {
      if (kind === 'files') return [[customId, [photo()]]];
      if (kind === 'tick') return [[customId, true]];
      if (options.length > 0) return [[customId, [options.at(-1)!.value]]];
      return kind === 'text' ? [[customId, value || LONG_TEXT.repeat(2).slice(0, 60)]] : [];
    }),
  );

/** Every loss met, by what was asked. */
const lost: (readonly [string, readonly string[]])[] = [];

/** Answers come on a sheet (a container); what could not be answered is one bare sentence. */
const isNo = (outcome: Outcome): boolean =>
  outcome.kind === 'message' && outcome.message.components[0]?.type === 10;

/** Reads what came, and goes on by every button, menu and form whose way on was not gone yet. */
async function walk(asked: string, outcome: Outcome, member: Member): Promise<void> {
  // What was answered since the last look: nothing where it was a "no".
  const answered = isNo(outcome) ? undefined : answers.at(-1);
  // One who presses a button once and waits for its answer has nothing else under way.
  if (isNo(outcome) && /still being worked on/.test(JSON.stringify(outcome))) lost.push([asked, ['busy']]);
  answers.length = 0;
  if (outcome.kind === 'silence') return;
  if (outcome.kind === 'form') {
    const head = answered?.kind === 'form' ? bare(formText(answered).split('\n')[0]!) : '';
    if (!bare(JSON.stringify(outcome.form.raw)).includes(head)) lost.push([asked, [head]]);
    const name = followUpNameIn(outcome.form.customId);
    if (reached.has(name)) return;
    reached.add(name);
    const sent = await member.perform({ do: 'submit', form: outcome.form, fields: filledIn(outcome.form) });
    return walk(`${asked} > ${name}`, sent, member);
  }
  const { message } = outcome;
  if (answered?.kind === 'reply') {
    const missing = await lostOf(answered, message, member);
    if (missing.length > 0) lost.push([asked, missing]);
  }
  for (const control of message.controls) await follow(asked, control, message, member);
}

async function follow(asked: string, control: Control, message: MessageView, member: Member): Promise<void> {
  const { customId, label, kind, options, disabled } = control;
  if (customId === undefined || disabled || label.startsWith('▸')) return;
  // An answer may have taken the place of the message, and its buttons with it.
  const stands = room.host.latest(message)?.controls.some(one => one.customId === customId);
  if (!stands) return;
  const name = followUpNameIn(customId);
  if (reached.has(name)) return;
  reached.add(name);
  const values = options.slice(0, 1).map(({ value }) => value);
  const outcome = await member.perform(
    kind === 'button' ? { do: 'press', message, customId } : { do: 'choose', message, customId, values },
  );
  return walk(`${asked} > ${name} (${label})`, outcome, member);
}

const whenDue = isDue('longest replies') ? test : test.todo;

describe('a reply at its longest', () => {
  test('is declared here for every command', () => {
    const named = new Set(LONGEST.map(({ path }) => path));
    expect([...registry.actions.keys()].filter(path => !named.has(path))).toEqual([]);
  });

  whenDue.each(LONGEST.map(one => [one.path, one] as const))(
    'loses nothing on the platform: /%s',
    { timeout: 240_000 },
    async (path, { given, later = 0, by = 'steward', refused = false }) => {
      now += later * HOUR + 60_000;
      await room.watch.check();
      lost.length = 0;
      answers.length = 0;
      const options: Options = Object.fromEntries(
        Object.entries(given).map(([name, value]) => [name, value === '{photo}' ? photo() : value]),
      );
      const member = room[by];
      const outcome = await member.perform({ do: 'run', command: `/${path}`, options });
      const isAsExpected = refused === 'perhaps' || isNo(outcome) === refused;
      if (!isAsExpected) lost.push([`/${path} answered as it should not`, [JSON.stringify(outcome)]]);
      await walk(`/${path}`, outcome, member);
      // What is told in private, such as what a batch is due for.
      for (const told of member.sees({ context: 'bot-dm' }))
        for (const control of told.controls) await follow(`/${path}, told`, control, told, member);
      expect(lost).toEqual([]);
    },
  );

  whenDue('goes on by every button, menu and form that is declared', () => {
    const declared = [...registry.followUps.keys()];
    expect(declared.filter(name => !reached.has(name) && !UNREACHED.has(name))).toEqual([]);
    expect([...UNREACHED].filter(name => !declared.includes(name))).toEqual([]);
  });
});
