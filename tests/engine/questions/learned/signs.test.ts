import { expect, test } from 'vitest';
import { foundIn } from '../../../../src/engine/questions/found/found-in.ts';
import { featuresOf, saidIn } from '../../../../src/engine/questions/learned/features.ts';
import { fieldFeaturesOf } from '../../../../src/engine/questions/learned/field/features.ts';
import { strangeness, tellingStems } from '../../../../src/engine/questions/learned/strange-words.ts';
import { type Counts, ideaCounts } from '../../../../src/engine/text/learned/hashes.ts';

/*
 * What a question tells those who judge what is asked, before any weight: which colourant, how much and which colour stand each as what they
 * are. The questions are makers' (from memory); what they tell is read off them.
 */
const NOBODY: ReadonlySet<number> = new Set();
const IDEAS = 3;
const MATTERS = 6;
const among = (counts: Counts, signs: readonly string[]): readonly string[] =>
  signs.filter(sign => counts.has([...ideaCounts([sign]).keys()][0]!));
function signsOf(question: string) {
  const { words, found } = foundIn(question);
  const jobs = featuresOf(words, found, NOBODY);
  return { jobs: jobs[IDEAS]!.counts, field: fieldFeaturesOf(words, found, NOBODY, jobs)[MATTERS]!.counts };
}
const tells = (question: string, signs: readonly string[]) => among(signsOf(question).jobs, signs);

const LYE_AND_OILS = ['lye', 'no lye'].flatMap(lye =>
  ['oils', 'no oils'].flatMap(oils => ['colour', 'no colour'].map(colour => [lye, oils, colour].join(', '))),
);
test.each([
  ['how much lye for 500 g olive, 200 g coconut', 'lye, oils, no colour'],
  ['cuánta sosa para 500 g oliva, 200 g coco', 'lye, oils, no colour'],
  ['500 g olive, 200 g coconut, half blue half white with mica', 'no lye, oils, colour'],
  ['how much mica for 2 cups?', 'no lye, no oils, colour'],
  // A colour that is written as its hex is one.
  ['#7fa37a', 'no lye, no oils, colour'],
  ['is my lye still good', 'lye, no oils, no colour'],
  ['why did it turn out soft', 'no lye, no oils, no colour'],
])('“%s” is of %s: a bare recipe asks for lye, one with a colour for a plan', (question, told) => {
  expect(tells(question, LYE_AND_OILS)).toEqual([told]);
});

const INTO = ['powder', 'no powder'].flatMap(powder =>
  ['an amount', 'none'].map(to => `${powder} into ${to}`),
);
test.each([
  ['used 5 g rose clay, 2 g kaolin', 'powder into none'],
  ['5 g rose clay for 500 g oils', 'powder into an amount'],
  ['rose clay for 500 g oils', 'no powder into an amount'],
  ['rose clay', 'no powder into none'],
])('“%s” tells of %s: so much powder in so much is a dose, alone it may be off a shelf', (question, told) => {
  expect(tells(question, INTO)).toEqual([told]);
});

const MEASURED = ['batter', 'oils', 'powder', 'oil', 'unsaid'];
test.each([
  ['how much mica for 2 cups of batter', ['batter']],
  ['rose clay for 500 g oils', ['oils']],
  ['used 5 g rose clay', ['powder']],
  ['500 g olive, 200 g coconut', ['oil']],
  ['rose clay', []],
])('“%s” measures %j', (question, told) => {
  expect(tells(question, MEASURED)).toEqual(told);
  expect(
    tells(
      question,
      MEASURED.map(one => `no ${one}`),
    ),
  ).toHaveLength(MEASURED.length - told.length);
});

test.each([
  ['oil list', '500 g olive, 200 g coconut', 'rose clay for 500 g oils'],
  ['target', '#7fa37a', 'rose clay'],
  ['region', 'is titanium dioxide legal in the eu', 'is titanium dioxide legal'],
  ['strength', 'rose clay pastel for 500 g oils', 'rose clay for 500 g oils'],
  ['?', 'how much mica for 2 cups?', 'how much mica for 2 cups'],
  ['colours', 'half blue half white', 'half rose clay'],
  ['one or the other', 'is ultramarine or red oxide stronger', 'is ultramarine and red oxide stronger'],
  ['so many colours', '3 layers: blue, white and pink', 'blue, white and pink'],
])('a sign of %s is in “%s” and not in “%s”', (sign, there, away) => {
  expect([tells(there, [sign]), tells(there, [`no ${sign}`])]).toEqual([[sign], []]);
  expect(tells(away, [sign])).toEqual([]);
});

const counts = (name: string) => Array.from({ length: 7 }, (_, count) => `${name} ${count}`);
test.each([
  ['things', 'rose clay', 1],
  ['things', 'rose clay, kaolin', 2],
  // Beyond so many, one more tells nothing.
  ['things', 'rose clay, kaolin, gold mica, titanium dioxide, charcoal', 3],
  ['things', 'how much for 2 cups', 0],
  ['hues', 'blue, white and pink', 3],
  // What runs on is one hue.
  ['hues', 'light grey blue', 1],
  ['shares', 'half and half, the rest plain', 3],
  ['poured', 'swirl on top', 2],
  ['words', 'mica', 1],
  ['words', 'mica in it for my own', 1],
  ['words', 'one two three four five six seven', 2],
  ['ours', 'best paint for my wall', 0],
  ['ours', 'the soap', 1],
])('%s are counted in “%s”: %i', (name, question, count) => {
  expect(tells(question, counts(name))).toEqual([`${name} ${count}`]);
});

const HUES = ['many', 'two', 'few'].flatMap(hues =>
  ['parted', 'whole'].flatMap(whole => ['sized', 'no size'].map(size => `${hues} hues, ${whole}, ${size}`)),
);
test.each([
  ['3 layers: blue, white and pink, 1 kg of batter', 'many hues, parted, sized'],
  ['split it, a third blue, the rest white', 'two hues, parted, no size'],
  ['blue and white for 500 g oils', 'two hues, whole, sized'],
  ['how much mica for 2 cups', 'few hues, whole, sized'],
  ['half blue', 'few hues, whole, no size'],
])('“%s” has %s: several colours and a size are a plan, one is a dose', (question, told) => {
  expect(tells(question, HUES)).toEqual([told]);
});

test.each([
  ['how much mica for 2 cups', ['first how', 'first how much', 'last <batter>']],
  ['gold mica, ', ['first <thing>', 'last <,>']],
  // Other marks than a comma tell nothing.
  ['gold mica!', ['first <thing>', 'last <thing>']],
  ['#7fa37a', ['first <hex>', 'last <hex>']],
  ['12 of olive', ['first <figure>', 'last <oil>']],
  ['blue for my wall', ['first <colour>']],
])('“%s” begins and ends with %j', (question, told) => {
  expect(tells(question, told)).toEqual(told);
});
test('what is named, measured and marked is none of its words', () => {
  const { words, found } = foundIn('how much rose clay, for 2 cups?');
  expect(saidIn(words, found)).toEqual(['how', 'much', '<thing>', 'for', '<batter>']);
});

const TOPICS = ['a topic', 'no topic'].flatMap(topic =>
  ['ours', 'nothing of ours'].map(ours => `${topic}, ${ours}`),
);
test.each([
  ['500 g olive, 200 g coconut', 'no topic, ours'],
  ['rose clay', 'no topic, ours'],
  ['the soap', 'no topic, ours'],
  ['#7fa37a', 'no topic, nothing of ours'],
  ['best paint for my wall in rose clay', 'a topic, ours'],
  ['recipe for bread', 'a topic, nothing of ours'],
])('“%s” is of %s', (question, told) => {
  expect(tells(question, TOPICS)).toEqual([told]);
});

const FOREIGN = ['foreign', 'none foreign'].flatMap(foreign =>
  ['ours', 'none of ours'].flatMap(ours =>
    ['named', 'none named'].map(named => [foreign, ours, named].join(', ')),
  ),
);
test.each([
  ['best paint for my wall', 'foreign, ours, named'],
  ['12 of olive', 'none foreign, none of ours, none named'],
  ['how much lye for 500 g olive, 200 g coconut', 'none foreign, ours, none named'],
  ['how much mica for 2 cups', 'none foreign, ours, named'],
])('“%s” speaks of %s to who judges the field', (question, told) => {
  expect(among(signsOf(question).field, FOREIGN)).toEqual([told]);
});
test('a matter that is none of ours is told by its name, and what is surely ours as that', () => {
  const signs = ['of paint', 'surely ours', ...counts('ours'), ...counts('foreign words')];
  expect(among(signsOf('best paint for my wall').field, signs)).toEqual([
    'of paint',
    'ours 0',
    'foreign words 2',
  ]);
  expect(among(signsOf('paint for my soap').field, signs)).toEqual([
    'of paint',
    'surely ours',
    'ours 1',
    'foreign words 1',
  ]);
});

test('a word is strange that no maker used: short ones, figures and what stands for a thing tell nothing', () => {
  expect(tellingStems(['the', '<thing>', '2023', 'gear'])).toHaveLength(1);
  const known = new Set(tellingStems(['mould', 'batter', 'swirl', 'trace']));
  expect(strangeness(['mould', 'batter', 'swirl', 'gearbox'], known)).toEqual([
    'strange words 1',
    'strange share 1',
  ]);
  expect(strangeness(['mould', 'batter'], known)).toEqual(['strange words 0', 'strange share 0']);
  expect(strangeness(['gearbox', 'camshaft', 'gasket', 'piston', 'clutch'], known)).toEqual([
    'strange words 4',
    'strange share 5',
  ]);
  expect(strangeness(['the'], known)).toEqual(['strange words 0', 'strange share 0']);
  // Endings are of grammar: a word of other endings is the same.
  expect(tellingStems(['moulds'])).toEqual(tellingStems(['mould']));
});
