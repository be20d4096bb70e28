import { expect, test } from 'vitest';
import { foundIn } from '../../../../src/engine/questions/found/found-in.ts';
import { commandFor } from '../../../../src/engine/questions/jobs/command-for.ts';
import type { Job } from '../../../../src/engine/questions/jobs/jobs.ts';

/* What of a question becomes which option of the command that does the job, and what that command still has to ask for. */

const asked = (job: Job, text: string) => commandFor(job, text, foundIn(text).found.facts);

type Given = Readonly<Record<string, string>>;
test.each<readonly [Job, string, string, Given, readonly string[]]>([
  [
    'dose',
    'ultramarine in glycerin for 2 cups, pastel',
    'dose',
    { colourant: 'ultramarine', portion: '2 cups', carrier: 'glycerin', strength: 'pastel' },
    [],
  ],
  ['dose', 'ultramarine', 'dose', { colourant: 'ultramarine' }, ['portion']],
  ['dose', '2 cups', 'dose', { portion: '2 cups' }, ['colourant']],
  ['dose', 'how much', 'dose', {}, ['colourant', 'portion']],
  [
    'dose',
    'gold mica for 2 cups, double',
    'dose',
    { colourant: 'gold mica', portion: '2 cups', strength: '200% of full' },
    [],
  ],
  [
    'dose',
    'gold mica for 2 cups, half strength',
    'dose',
    { colourant: 'gold mica', portion: '2 cups', strength: '50% of full' },
    [],
  ],
  [
    'dose',
    '1 tsp ppo gold mica for 2 cups',
    'dose',
    { colourant: 'gold mica', portion: '2 cups', strength: '1 tsp ppo' },
    [],
  ],
  ['wet', 'gold mica for 2 cups, pastel', 'dose', { colourant: 'gold mica', portion: '2 cups' }, []],
  ['wet', '2 cups', 'dose', { portion: '2 cups' }, ['colourant']],
  ['survives-lye', 'does turmeric survive', 'colourant check', { item: 'turmeric' }, []],
  ['survives-lye', 'turmeric and madder', 'colourant check', { ingredients: 'turmeric, madder' }, []],
  ['law', 'red 40 in the EU', 'colourant check', { item: 'red 40' }, []],
  ['law', 'red 40 and blue 1 in the EU', 'colourant check', { ingredients: 'red 40, blue 1' }, []],
  ['diagnose', ' my soap went grey ', 'diagnose', { words: 'my soap went grey' }, []],
  ['mix', 'how do I get sage green for 2 cups', 'match', { target: 'sage green', portion: '2 cups' }, []],
  ['mix', 'how do I get sage green from my shelf', 'match', { target: 'sage green', from: 'shelf' }, []],
  ['mix', 'what do I mix', 'match', {}, ['target']],
  ['preview', '1 tsp gold mica in 2 cups', 'preview', { mix: '1 tsp gold mica', portion: '2 cups' }, []],
  ['preview', '2 cups', 'preview', { portion: '2 cups' }, ['mix']],
  [
    'lye',
    '500 g olive, 200 g coconut, 5% superfat',
    'plan',
    { oils: '500 g olive , 200 g coconut', superfat: '5' },
    [],
  ],
  ['lye', '500 g olive, 33% lye concentration', 'plan', { oils: '500 g olive', water: '33% lye' }, []],
  ['lye', 'lye please', 'plan', {}, ['oils']],
  ['plan', '500 g olive, 200 g coconut', 'plan', { oils: '500 g olive , 200 g coconut' }, []],
  ['plan', 'plan me a soap', 'plan', {}, ['oils']],
  ['compare', 'ultramarine vs green oxide', 'compare', { first: 'ultramarine', second: 'green oxide' }, []],
  ['compare', 'ultramarine', 'compare', { first: 'ultramarine' }, ['second']],
  ['compare', 'which is stronger', 'compare', {}, ['first', 'second']],
  ['shelf-add', 'I bought 30 g gold mica', 'shelf add', { item: 'gold mica', amount: '30 g' }, []],
  ['shelf-add', 'I bought a jar', 'shelf add', {}, ['item']],
  ['shelf-use', 'I used 5 g gold mica', 'shelf use', { item: 'gold mica', amount: '5 g' }, []],
  ['shelf-use', 'I used gold mica', 'shelf use', { item: 'gold mica' }, ['amount']],
  ['shelf-use', 'I used some', 'shelf use', {}, ['item', 'amount']],
  ['shelf-use', 'take the gold mica off my shelf', 'shelf remove', { item: 'gold mica' }, []],
  ['shelf-use', 'quita la mica dorada de mi estante', 'shelf remove', { item: 'mica dorada' }, []],
  ['shelf-use', 'take 5 g gold mica off my shelf', 'shelf use', { item: 'gold mica', amount: '5 g' }, []],
  ['shelf-show', 'what is on my shelf', 'shelf list', {}, []],
  ['shelf-show', 'how much gold mica have I', 'shelf show', { item: 'gold mica' }, []],
  ['challenge', 'what is the challenge', 'challenge list', {}, []],
  ['doubt', 'are you sure', 'help', {}, []],
  ['help', 'what can you do', 'help', {}, []],
])('%s: %s', (job, text, command, given, missing) => {
  expect(asked(job, text)).toEqual({ command, given, missing });
});

test('a plant that no catalogue holds is checked by itself, and nothing is compared with it', () => {
  const facts = {
    ...foundIn('spirulina or chlorella').found.facts,
    named: ['spirulina', 'chlorella'],
    plants: ['chlorella'],
  };
  expect(commandFor('survives-lye', '', facts).given).toEqual({ item: 'spirulina' });
  expect(commandFor('compare', '', facts)).toMatchObject({
    command: 'colourant check',
    given: { item: 'spirulina' },
  });
});

test('shares of oils need a size beside them, weights of oils none', () => {
  const facts = foundIn('2 lb batch').found.facts;
  const of = (oils: string) => commandFor('lye', '', { ...facts, oils, size: '2 lb' }).given;
  expect(of('70% olive, 30% coconut')).toEqual({ oils: '70% olive, 30% coconut', size: '2 lb' });
  expect(of('500 g olive')).toEqual({ oils: '500 g olive' });
});
