import { expect, test } from 'vitest';
import type { Facts } from '../../../../src/engine/questions/found/facts.ts';
import { withItsAcid } from '../../../../src/engine/questions/jobs/acid-beside.ts';
import { commandFor } from '../../../../src/engine/questions/jobs/command-for.ts';
import type { Job } from '../../../../src/engine/questions/jobs/jobs.ts';
import type { Reading } from '../../../../src/engine/questions/read.ts';

/* Which command does what is asked, with which options, and which it lacks. */

const for_ = (job: Job, facts: Partial<Facts>, question = 'are they allowed') =>
  commandFor(job, question, { named: [], ...facts } as Facts);
const asked = (named: readonly string[], plants?: readonly string[]) =>
  for_('law', { named, ...(plants && { plants }) });

test('several things are checked as a list, one by itself', () => {
  expect(asked(['gold mica', 'ultramarine'])).toMatchObject({
    command: 'colourant check',
    given: { ingredients: 'gold mica, ultramarine' },
  });
  expect(asked(['gold mica']).given).toEqual({ item: 'gold mica' });
});

test('a plant that no catalogue holds is not in the list', () => {
  expect(asked(['gold mica', 'beet', 'ultramarine'], ['beet']).given).toEqual({
    ingredients: 'gold mica, ultramarine',
  });
  expect(asked(['gold mica', 'beet'], ['beet']).given).toEqual({ item: 'gold mica' });
});

const MICA = { named: ['gold mica'] };
const TWO = { named: ['gold mica', 'rose clay'] };
test.each<
  readonly [job: Job, facts: Partial<Facts>, command: string, given: object, missing: readonly string[]]
>([
  ['dose', { ...MICA, portion: '2 cups' }, 'dose', { colourant: 'gold mica', portion: '2 cups' }, []],
  ['dose', MICA, 'dose', { colourant: 'gold mica' }, ['portion']],
  ['dose', { portion: '2 cups' }, 'dose', { portion: '2 cups' }, ['colourant']],
  [
    'dose',
    { ...MICA, portion: '2 cups', strength: 'double', carrier: 'oil' },
    'dose',
    { colourant: 'gold mica', portion: '2 cups', carrier: 'oil', strength: '200% of full' },
    [],
  ],
  [
    'dose',
    { ...MICA, portion: '2 cups', strength: 'half' },
    'dose',
    { colourant: 'gold mica', portion: '2 cups', strength: '50% of full' },
    [],
  ],
  // A bare percent is of full colour, and no share of the oils.
  [
    'dose',
    { ...MICA, portion: '2 cups', strength: '30%' },
    'dose',
    { colourant: 'gold mica', portion: '2 cups', strength: '30% of full' },
    [],
  ],
  [
    'dose',
    { ...MICA, portion: '2 cups', strength: 'pastel' },
    'dose',
    { colourant: 'gold mica', portion: '2 cups', strength: 'pastel' },
    [],
  ],
  [
    'wet',
    { ...MICA, portion: '2 cups', strength: 'pastel' },
    'dose',
    { colourant: 'gold mica', portion: '2 cups' },
    [],
  ],
  ['wet', {}, 'dose', {}, ['colourant']],
  ['survives-lye', { subject: 'glitter' }, 'colourant check', { item: 'glitter' }, []],
  ['survives-lye', { ...MICA, subject: 'glitter' }, 'colourant check', { item: 'gold mica' }, []],
  ['law', {}, 'colourant check', {}, ['item']],
  ['diagnose', MICA, 'diagnose', { words: 'are they allowed' }, []],
  [
    'mix',
    { target: { text: 'teal', hex: '#008080', name: 'teal' }, portion: '2 cups', fromShelf: true },
    'match',
    { target: 'teal', portion: '2 cups', from: 'shelf' },
    [],
  ],
  ['mix', { fromShelf: false }, 'match', {}, ['target']],
  [
    'preview',
    { mix: '1 tsp mica', portion: '2 cups' },
    'preview',
    { mix: '1 tsp mica', portion: '2 cups' },
    [],
  ],
  ['preview', {}, 'preview', {}, ['mix']],
  // Shares alone tell no amount; weights tell it themselves.
  [
    'lye',
    { oils: '60% olive, 40% coconut', size: '1 kg', superfat: 5, concentration: 33 },
    'plan',
    { oils: '60% olive, 40% coconut', size: '1 kg', superfat: '5', water: '33% lye' },
    [],
  ],
  ['lye', { oils: '500 g olive', size: '1 kg' }, 'plan', { oils: '500 g olive' }, []],
  ['lye', { oils: '500 g olive', superfat: 0 }, 'plan', { oils: '500 g olive', superfat: '0' }, []],
  ['lye', {}, 'plan', {}, ['oils']],
  [
    'plan',
    { oils: '500 g olive', size: '1 kg', portions: 'blue, pink' },
    'plan',
    { oils: '500 g olive', size: '1 kg', portions: 'blue, pink' },
    [],
  ],
  ['plan', {}, 'plan', {}, ['oils']],
  ['compare', TWO, 'compare', { first: 'gold mica', second: 'rose clay' }, []],
  ['compare', MICA, 'compare', { first: 'gold mica' }, ['second']],
  ['compare', {}, 'compare', {}, ['first', 'second']],
  // No strength is known of a plant that no catalogue holds.
  [
    'compare',
    { named: ['spirulina', 'chlorella'], plants: ['chlorella'] },
    'colourant check',
    { item: 'spirulina' },
    [],
  ],
  ['compare', { plants: ['chlorella'] }, 'compare', {}, ['first', 'second']],
  ['shelf-add', { ...MICA, powder: '20 g' }, 'shelf add', { item: 'gold mica', amount: '20 g' }, []],
  ['shelf-add', {}, 'shelf add', {}, ['item']],
  ['shelf-use', { ...MICA, powder: '5 g' }, 'shelf use', { item: 'gold mica', amount: '5 g' }, []],
  ['shelf-use', MICA, 'shelf use', { item: 'gold mica' }, ['amount']],
  ['shelf-show', {}, 'shelf list', {}, []],
  ['shelf-show', MICA, 'shelf show', { item: 'gold mica' }, []],
  ['challenge', MICA, 'challenge list', {}, []],
  ['doubt', MICA, 'help', {}, []],
  ['help', MICA, 'help', {}, []],
])('%s of %j is /%s %j without %j', (job, facts, command, given, missing) => {
  expect(for_(job, facts)).toEqual({ command, given, missing });
});
test('what is taken off the shelf without an amount goes whole', () => {
  expect(for_('shelf-use', MICA, 'take the gold mica off my shelf').command).toBe('shelf remove');
  expect(for_('shelf-use', MICA, 'saca la mica dorada de mi estante').command).toBe('shelf remove');
  expect(for_('shelf-use', { ...MICA, powder: '5 g' }, 'take 5 g off my shelf').command).toBe('shelf use');
});
test('what is told of a flaw is the whole of what was written, up to 5,000 letters', () => {
  expect(for_('diagnose', {}, `  ${'a'.repeat(5100)}`).given.words).toBe('a'.repeat(4998));
});

const reading = (job: Job, command: string, given: Reading['given']): Reading =>
  ({ job, score: 1, command, given, missing: ['item'] }) as unknown as Reading;
// Acids destroy ultramarines, which give off hydrogen sulphide: the acid is checked with it (common knowledge of the trade).
test.each<readonly [question: string, job: Job, given: Reading['given'], told: object]>([
  [
    'is ultramarine ok with citric acid',
    'survives-lye',
    { item: 'ultramarine' },
    { ingredients: 'ultramarine, citric acid' },
  ],
  [
    'is ultramarine blue and mica ok with citric acid',
    'law',
    { ingredients: 'ultramarine blue, mica' },
    { ingredients: 'ultramarine blue, mica, citric acid' },
  ],
  [
    'is ultramarine ok with citric acid',
    'law',
    { ingredients: 'ultramarine, citric acid' },
    { ingredients: 'ultramarine, citric acid' },
  ],
  [
    'can ultramarine and citric acid go together',
    'diagnose',
    { words: 'x' },
    { ingredients: 'ultramarine, citric acid' },
  ],
  // What has come of it already is a flaw; without an ultramarine, or an acid, nothing is changed.
  ['why did ultramarine smell with citric acid', 'diagnose', { words: 'x' }, { words: 'x' }],
  [
    'how much ultramarine with citric acid',
    'dose',
    { colourant: 'ultramarine' },
    { colourant: 'ultramarine' },
  ],
  ['is mica ok with citric acid', 'survives-lye', { item: 'mica' }, { item: 'mica' }],
  ['is ultramarine ok', 'survives-lye', { item: 'ultramarine' }, { item: 'ultramarine' }],
  // A fat's acid is no acid of a list.
  ['are mica and stearic acid ok', 'law', { ingredients: 'mica, acid' }, { ingredients: 'mica' }],
])('“%s”, as %s', (question, job, given, told) => {
  expect(withItsAcid(reading(job, 'x', given), question).given).toEqual(told);
});
