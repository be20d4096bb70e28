import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askLine } from '../../src/terminal/seat.ts';
import { openConversation } from '../sets/open-conversation.ts';

let conversation: Awaited<ReturnType<typeof openConversation>>;
beforeAll(async () => {
  conversation = await openConversation();
  for (const line of [
    '/shelf add item:"Deep sea" colourant:"ultramarine blue" amount:"30 g"',
    '/shelf add item:"Deep red" colourant:"red iron oxide" amount:"30 g"',
    '/plan oils:"olive 700 g, coconut 300 g" save-as:"Harbour one"',
    '/plan oils:"olive 700 g, coconut 300 g" save-as:"Harbour two"',
    '/batch poured recipe:"Harbour one" name:"Monday loaf"',
  ])
    await ask(line);
});
afterAll(() => conversation[Symbol.asyncDispose]());

const seat = { member: 'ana', group: 'bench', language: 'en', manages: false, roles: [] } as const;
const ask = async (line: string) => (await askLine(line, seat, conversation)).answer;

/** A line for every refusal that names what may be meant, by the refusal's id. */
const LINES: Readonly<Record<string, readonly string[]>> = {
  'colourant-unknown': ['/dose colourant:"ultramarang flue" portion:"2 cups"'],
  'colourant-ambiguous': ['/dose colourant:oxide portion:"1 cup"'],
  'oil-unknown': ['/plan oils:"olivette 500 g, coconut 500 g"'],
  'recipe-unknown': ['/recipe show recipe:"Harbuor onw"'],
  'recipe-ambiguous': ['/recipe show recipe:"Harbour"'],
  'shelf-item-unknown': ['/shelf show item:"Drop tea"'],
  'topic-unknown': ['/help topic:"supefrats"'],
  'shelf-item-ambiguous': ['/shelf show item:"Deep"'],
  'batch-unknown': ['/batch show batch:"Munday loaf"'],
  'colour-unreadable': ['/match target:"xqzzt wwq"'],
  'amount-several': ['/dose colourant:"ultramarine blue" portion:"500g oils then lye n that on top, or 600"'],
  'command-unknown': ['/doos colourant:"gold mica" portion:"1 cup"', '/shelv list'],
  'option-unknown': ['/dose color:"gold mica" portion:"1 cup"'],
};

/** Ids of refusals whose values hold `candidates` or `nearest`, as they are declared. */
function offering(): readonly string[] {
  const root = join(import.meta.dirname, '../..');
  const files = ['src', 'commands'].flatMap(folder =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter(file => file.endsWith('.ts'))
      .map(file => join(root, folder, file)),
  );
  return files.flatMap(file =>
    [
      ...readFileSync(file, 'utf8').matchAll(
        /'([a-z-]+)': (?:Readonly<)?\{[^}]*\b(?:candidates|nearest|meant)\??: [^}]*\}/gu,
      ),
    ].map(match => match[1]!),
  );
}

test('every refusal that names what may be meant is walked here', () => {
  const ids = offering();
  expect(ids.length).toBeGreaterThan(7);
  expect(ids.filter(id => LINES[id] === undefined)).toEqual([]);
});

describe('“did you mean” is a button, and pressing it answers', () => {
  test.each(Object.entries(LINES).flatMap(([id, lines]) => lines.map(line => ({ id, line }))))(
    '$id: $line',
    async ({ line }) => {
      const answer = await ask(line);
      const choices = ('choices' in answer ? answer.choices : undefined) ?? [];
      const buttons = choices.flatMap(choice => (choice.kind === 'button' ? [choice] : []));
      // A plain slip of the finger, and candidates with one answer, are answered at once.
      if (answer.kind === 'reply') return;
      expect({ line, buttons: buttons.length > 0 }).toEqual({ line, buttons: true });
      const pressed = await ask(`press ${buttons[0]!.follow}`);
      expect(pressed).toMatchObject({ kind: 'reply' });
    },
  );
});
