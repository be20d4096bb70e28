import { expect, test } from 'vitest';
import { amountJudged } from '../../../../src/engine/questions/found/amount-judged.ts';
import type { Facts } from '../../../../src/engine/questions/found/facts.ts';
import { foundIn } from '../../../../src/engine/questions/found/found-in.ts';
import { featuresOf } from '../../../../src/engine/questions/learned/features.ts';
import { fieldFeaturesOf } from '../../../../src/engine/questions/learned/field/features.ts';
import FIELD from '../../../../src/engine/questions/learned/field/weights.json' with { type: 'json' };
import JOBS from '../../../../src/engine/questions/learned/weights.json' with { type: 'json' };
import type { QuestionRead } from '../../../../src/engine/questions/read.ts';
import { asksCause } from '../../../../src/engine/questions/technique/cause-asked.ts';
import { isPlainMix, isWishedWith } from '../../../../src/engine/questions/technique/mix-wished.ts';
import { foreseesTwo } from '../../../../src/engine/questions/technique/two-hues.ts';
import { hashesOf, modelOf } from '../../../../src/engine/text/learned/written.ts';

/*
 * A judge weighs only what it was taught by: of what is named and told in a question each sign has to be one that its weights know, whatever
 * they are. Questions as makers ask them (from memory).
 */
const ASKED = [
  'how much mica for 2 cups of batter?',
  'how much rose clay for 500 g oils, pastel',
  'cuánta mica dorada para 500 g de masa?',
  'does spirulina survive lye',
  'is titanium dioxide legal in the eu?',
  'why did my soap turn brown, it went soft and has spots',
  'how do i make olive green from yellow oxide and ultramarine',
  'what colour do i get from red oxide and gold mica',
  'how much lye for 500 g olive, 200 g coconut',
  '500 g olive, 200 g coconut, superfat 5, half blue half white with mica',
  '3 layers: blue, white and pink, 1 kg of batter',
  'half blue, half white and the rest pink, swirl on top and bottom',
  'is ultramarine or oxide stronger',
  'add 20 g of gold mica to my shelf',
  'used 5 g rose clay, 2 g kaolin',
  'how do i bake a cake with green icing',
  'best paint for my wall',
  'how much paint for my wall in red',
  'what is in the contest this month',
  'can you help',
  '#7fa37a',
];
type Rows = ReturnType<typeof modelOf>['rows'];
const unpacked = new Map<object, { readonly rows: Rows; readonly known: ReadonlySet<number> }>();
/** What a judge's weights know, unpacked once. */
function knownTo(written: Parameters<typeof modelOf>[0] & { readonly known: string }) {
  const before = unpacked.get(written);
  const it = before ?? { rows: modelOf(written).rows, known: hashesOf(written.known) };
  unpacked.set(written, it);
  return it;
}
const unknown = (features: ReturnType<typeof featuresOf>, at: number, rows: Rows): number =>
  [...features[at]!.counts.keys()].filter(hash => !rows.has(hash)).length;
const IDEAS = 3;
const STRANGE = 4;
const MATTERS = 6;
/** How a question begins and ends may be new: at most its first word, its first two and its last. */
const MOST_NEW = 3;

test.each(ASKED)('what is named and told in “%s” is known to those who judge it', question => {
  const { words, found } = foundIn(question);
  const ofJobs = knownTo(JOBS);
  const jobs = featuresOf(words, found, ofJobs.known);
  expect(unknown(jobs, IDEAS, ofJobs.rows)).toBeLessThanOrEqual(MOST_NEW);
  expect(unknown(jobs, STRANGE, ofJobs.rows)).toBe(0);
  const ofField = knownTo(FIELD);
  const field = fieldFeaturesOf(words, found, ofField.known, jobs);
  expect(unknown(field, MATTERS, ofField.rows)).toBe(0);
});

test('a word beyond the hundred and twentieth tells nothing of what is asked', () => {
  const long = (count: number) => foundIn(Array.from({ length: count }, () => 'batter').join(' ')).words;
  const counts = (count: number) => {
    const words = long(count);
    return featuresOf(words, { things: [], amounts: [], facts: { findings: 0 } as Facts }, new Set())[0]!
      .counts;
  };
  const most = (count: number) => Math.max(...counts(count).values());
  expect([most(119), most(120), most(121)]).toEqual([119, 120, 120]);
});

const read = (job: string, score: number, facts: object = {}): QuestionRead =>
  ({
    readings: [{ job, score, command: 'x', given: {}, missing: [] }],
    facts: { named: [], ...facts },
  }) as never;
const NAVY = { target: { text: 'navy', hex: '#000080', name: 'navy' } };
const TWO = { ...NAVY, named: ['green clay', 'charcoal'] };

test('a colour is plainly to be mixed where the judge is sure of it and it stands at the end', () => {
  expect(isPlainMix('How do I make navy?', read('mix', 0.99, NAVY))).toBe(true);
  expect(isPlainMix('cómo hago navy', read('mix', 1, NAVY))).toBe(true);
  expect(isPlainMix('How do I make navy?', read('mix', 0.98, NAVY))).toBe(false);
  expect(isPlainMix('How do I make navy?', read('dose', 1, NAVY))).toBe(false);
  expect(isPlainMix('How do I make navy?', read('mix', 1))).toBe(false);
  expect(isPlainMix('How do I make navy soap?', read('mix', 1, NAVY))).toBe(false);
  expect(isPlainMix('I make navy', read('mix', 1, NAVY))).toBe(false);
  expect(isPlainMix('How do I make navy?', { ...read('mix', 1, NAVY), readings: [] })).toBe(false);
});
test('a colour is wished with what is at hand where two colourants and both words are told', () => {
  const wish = 'I want navy, I have green clay and charcoal';
  expect(isWishedWith(wish, read('mix', 0.99, TWO))).toBe(true);
  expect(isWishedWith('quiero navy, tengo arcilla verde y carbón', read('mix', 1, TWO))).toBe(true);
  expect(isWishedWith(wish, read('mix', 0.98, TWO))).toBe(false);
  expect(isWishedWith(wish, read('dose', 1, TWO))).toBe(false);
  expect(isWishedWith(wish, read('mix', 1, { named: TWO.named }))).toBe(false);
  expect(isWishedWith(wish, read('mix', 1, { ...NAVY, named: ['green clay'] }))).toBe(false);
  expect(isWishedWith('I want navy with green clay', read('mix', 1, TWO))).toBe(false);
  expect(isWishedWith('I have green clay for navy', read('mix', 1, TWO))).toBe(false);
  expect(isWishedWith(wish, { ...read('mix', 1, TWO), readings: [] })).toBe(false);
});
test('a cause is asked of a flaw that the judge is sure of, and that is over', () => {
  const over = 'it went thick after the clove oil. why';
  expect(asksCause(over, read('diagnose', 0.97))).toBe(true);
  expect(asksCause(over, read('diagnose', 0.96))).toBe(false);
  expect(asksCause(over, read('mix', 1))).toBe(false);
  expect(asksCause(over, { ...read('diagnose', 1), readings: [] })).toBe(false);
  expect(asksCause('thick after the clove oil. why', read('diagnose', 1))).toBe(false);
  expect(asksCause('it went thick, help. why', read('diagnose', 1))).toBe(false);
});
test('what two come to is foreseen where a turn of phrase asks it of two', () => {
  expect(foreseesTwo(read('preview', 1, TWO))).toBe(true);
  expect(foreseesTwo(read('preview', 0.999, TWO))).toBe(false);
  expect(foreseesTwo(read('mix', 1, TWO))).toBe(false);
  expect(foreseesTwo(read('preview', 1, { named: ['charcoal'] }))).toBe(false);
  expect(foreseesTwo({ ...read('preview', 1, TWO), readings: [] })).toBe(false);
});
test.each<readonly [question: string, facts: object, judged: string | undefined]>([
  [
    'is 2 tsp red oxide too much for 500 g oils',
    { named: ['red oxide'], powder: '2 tsp', portion: '500 g oils' },
    '2 tsp',
  ],
  [
    '2 tsp red oxide for 500 g oils',
    { named: ['red oxide'], powder: '2 tsp', portion: '500 g oils' },
    '2 tsp',
  ],
  // How much to take is asked; one amount is both; of two colours nobody tells which.
  ['how much red oxide, i have 2 tsp', { named: ['red oxide'], powder: '2 tsp' }, undefined],
  ['how much is too much red oxide, 2 tsp', { named: ['red oxide'], powder: '2 tsp' }, '2 tsp'],
  ['red oxide for 3 lb', { named: ['red oxide'], powder: '3 lb', portion: '3 lb' }, undefined],
  ['is 3 lb of red oxide too much', { named: ['red oxide'], powder: '3 lb', portion: '3 lb' }, '3 lb'],
  ['is 2 tsp too much', { named: ['red oxide', 'mica'], powder: '2 tsp' }, undefined],
  ['is 2 tsp too much', { named: [], powder: '2 tsp' }, undefined],
  ['is it too much', { named: ['mica'] }, undefined],
])('the amount that is judged in “%s”', (question, facts, judged) => {
  expect(amountJudged(question, facts as Facts)).toBe(judged);
});
