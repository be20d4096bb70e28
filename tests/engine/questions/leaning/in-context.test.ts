import { describe, expect, test } from 'vitest';
import { aspectByWords } from '../../../../src/engine/questions/leaning/aspects/by-words.ts';
import type { Before } from '../../../../src/engine/questions/leaning/before.ts';
import {
  namesItsOwn,
  sameLyeMatter,
  techniqueInContext,
} from '../../../../src/engine/questions/leaning/in-context.ts';
import { leanOf } from '../../../../src/engine/questions/leaning/lean.ts';
import { goOnPart } from '../../../../src/engine/questions/leaning/parts/nearest-part.ts';
import { partOf } from '../../../../src/engine/questions/leaning/parts/part-of.ts';
import {
  hasMetMetal,
  isOfNothingElse,
} from '../../../../src/engine/questions/leaning/subject/points-back.ts';
import type { MatterChances, NearMatter } from '../../../../src/engine/questions/technique/read.ts';

/* How a short turn is read behind the question before it; common practice of chat (no source). */

const chances = (...near: readonly (readonly [NearMatter['matter'], number])[]): MatterChances => ({
  near: near.map(([matter, chance]) => ({ matter, chance })),
  none: 0,
});
const LAYERS: Before = { kind: 'technique', id: 'layers-how' };
const read = (turn: string, alone: MatterChances, joint: MatterChances, last: Before = LAYERS) =>
  techniqueInContext(turn, { alone, joint, last });

describe('a way of working that both questions together tell', () => {
  test('stands where the turn alone is of nothing in particular', () => {
    expect(read('how long between', chances(['cure-time', 0.28]), chances(['layers-how', 0.84]))).toBe(
      'layers-how',
    );
    expect(
      read('how long between', chances(['cure-time', 0.28]), chances(['layers-how', 0.49])),
    ).toBeUndefined();
  });
  test('gives way to what the turn plainly is by itself, of few words only where it is surer, of a figure sooner', () => {
    const joint = chances(['layers-how', 0.95]);
    const alone = (chance: number) => chances(['mica-line', chance], ['layers-how', 0.06]);
    expect(read('and a thin line of gold mica dusted', alone(0.8), joint)).toBeUndefined();
    expect(read('lines between them', alone(0.8), joint)).toBe('layers-how');
    expect(read('lines between them', alone(0.91), joint)).toBeUndefined();
    expect(read('5 lines', alone(0.6), joint)).toBeUndefined();
  });
  test('another matter than that of before needs a turn that says little else, or leads there too', () => {
    expect(read('in the cold', chances(['pot-time', 0.5]), chances(['cure-time', 0.9]))).toBeUndefined();
    expect(read('in the cold', chances(['pot-time', 0.3]), chances(['cure-time', 0.9]))).toBe('cure-time');
    expect(read('in the cold', chances(['cure-time', 0.5]), chances(['cure-time', 0.9]))).toBe('cure-time');
    expect(read('and what would that be like', chances(['pot-time', 0.3]), joined)).toBeUndefined();
  });
  const joined = chances(['cure-time', 0.9]);
  test('a name of its own stands alone, but for one word to the matter of before', () => {
    const joint = chances(['layers-how', 0.95]);
    expect(read('charcoal', chances(['dry-in', 0.1]), joint)).toBe('layers-how');
    expect(read('what about the betarraga', chances(['dry-in', 0.1]), joint)).toBeUndefined();
  });
});

test.each(['betarraga', 'for 500 g', 'the blue', 'with coconut'])('“%s” names a subject of its own', turn => {
  expect(namesItsOwn(turn)).toBe(true);
  expect(namesItsOwn('how long between')).toBe(false);
});

describe('near lye', () => {
  const last: Before = { kind: 'matter', id: 'clumped' };
  const both = (turn: string, chance: number) =>
    sameLyeMatter(turn, { alone: undefined, joint: { topic: 'clumped', chance }, last });
  test('only the matter of before is gone on with, and only surely', () => {
    expect(both('just a few small lumps', 0.93)).toBe('clumped');
    expect(both('just a few small lumps', 0.84)).toBeUndefined();
    expect(
      sameLyeMatter('a few', { alone: undefined, joint: { topic: 'children', chance: 0.99 }, last }),
    ).toBeUndefined();
  });
  test('who puts right what was said is not told more of it', () => {
    expect(both('no sorry i meant the scent', 0.97)).toBeUndefined();
    expect(both('perdón, quise decir el aroma', 0.97)).toBeUndefined();
  });
});

test.each([
  ['how much anyway', 'how-much'],
  ['they safe', 'safe'],
  ['in lye water or oil', 'wet'],
  ['what oil to wet it', 'wet'],
  ['dose same', 'how-much'],
  ['prevent', 'next-time'],
  ['any way round it', 'comes-back'],
  ['me va a manchar la toalla', 'bleeds'],
  ['algo seguro pues', 'instead'],
  ['y cuanto tiempo lo dejo', 'how-long'],
] as const)('“%s” asks %s by its words', (turn, aspect) => {
  expect(aspectByWords(turn)).toBe(aspect);
});
test.each(['how much lye', 'is it a swirl', 'same', 'how much mica'])('a word is left over in “%s”', turn => {
  expect(aspectByWords(turn)).toBeUndefined();
});

describe('more of an answer', () => {
  const told = {
    answer: ['One to three passes, 30 to 38 °C (86 to 100 °F).'],
    why: ['Paper goes into the bin.', 'Rinse the drain with hot water.', 'It takes 5 minutes.'],
  };
  test.each([
    ['and the drain', ['Rinse the drain with hot water.']],
    ['how many passes', told.answer],
    ['in farenheit', told.answer],
    ['how long', ['It takes 5 minutes.']],
    ['go on', ['Paper goes into the bin.', 'Rinse the drain with hot water.']],
  ])('“%s” is told what is asked', (asked, first) => {
    expect(goOnPart(told, asked)?.first).toEqual(first);
  });
});

test('of two sentences that share as many words the one with a figure goes first where a figure is asked for', () => {
  const told = { answer: ['Pour it.'], why: ['Water cools it.', 'Water is 200 g.'] };
  expect(goOnPart(told, 'how much water')?.first).toEqual(['Water is 200 g.']);
  expect(goOnPart(told, 'and the water')?.first).toEqual(['Water cools it.']);
});

describe('what stood behind an answer is told a sentence or two at a time', () => {
  const words = (count: number) => `${'stir '.repeat(count - 1)}on.`;
  const answer = ['Pour it.'];
  test('two sentences that are 45 words together are both said, and not once more below', () => {
    const why = [words(20), words(25), words(3)];
    expect(partOf({ answer, why }, 'more')).toEqual({ first: why.slice(0, 2), whole: [...answer, why[2]] });
  });
  test('of two that are longer the first is said alone', () => {
    const why = [words(20), words(26), words(3)];
    expect(partOf({ answer, why }, 'more')).toEqual({
      first: why.slice(0, 1),
      whole: [...answer, ...why.slice(1)],
    });
  });
  test('one sentence alone is said; where none stood behind, the answer once more', () => {
    expect(partOf({ answer, why: ['Low.'] }, 'more')).toEqual({ first: ['Low.'], whole: answer });
    expect(partOf({ answer, why: [] }, 'more')).toEqual({ first: answer, whole: answer });
  });
  test('at most two sentences that tell a figure are said, and all of it is below', () => {
    const why = ['A day.', 'Two days.', 'It keeps.', 'Three days.'];
    expect(partOf({ answer, why }, 'how-long')).toEqual({
      first: ['A day.', 'Two days.'],
      whole: [...answer, ...why],
    });
  });
  test('what began the answer is said again where the same is asked, the rest below', () => {
    expect(partOf({ answer, why: ['Low.'] }, 'same')).toEqual({ first: answer, whole: ['Low.'] });
    expect(partOf({ answer, why: ['Low.'] }, 'bleeds')).toBeUndefined();
  });
});

describe('after first aid, and after aluminium', () => {
  test('what names nothing of the trade is still of whoever is hurt', () => {
    expect(isOfNothingElse('been 10 min its still slippy')).toBe(true);
    expect(isOfNothingElse('and how much mica for the soap')).toBe(false);
    expect(isOfNothingElse('ok thanks')).toBe(false);
  });
  test('lye that is in the pan already is told', () => {
    expect(hasMetMetal('ya la eché')).toBe(true);
    expect(hasMetMetal('its bubbling')).toBe(true);
    expect(hasMetMetal('what about steel')).toBe(false);
  });
});

describe('slots', () => {
  const dose: Before = {
    kind: 'command',
    job: 'dose',
    command: 'dose',
    given: { colourant: 'mica', portion: '900 g oils' },
  };
  const laid = (turn: string, last: Before = dose) => {
    const lean = leanOf(turn, { last, ran: last.kind === 'command' ? last : undefined });
    return lean?.kind === 'runs' ? lean.readings[0]?.given : undefined;
  };
  test.each([
    ['its split in 3 colours tho', { colourant: 'mica', portion: '300 g oils' }],
    ['lo reparto entre tres', { colourant: 'mica', portion: '300 g oils' }],
    ['half a kilo for me, pale', { colourant: 'mica', portion: '1/2 kilo oils', strength: 'pastel' }],
    ['y para tres kilos, fuerte', { colourant: 'mica', portion: '3 kilos oils', strength: 'full' }],
    ['sorry meant charcoal', { colourant: 'charcoal', portion: '900 g oils' }],
    // What lye destroys gets no amount.
    ['same for prussian blue?', { item: 'prussian blue' }],
  ])('“%s” is laid over the dose', (turn, given) => {
    expect(laid(turn)).toEqual(given);
  });
  test('a third of a recipe is not what shares out its colours', () => {
    const lye: Before = { kind: 'command', job: 'lye', command: 'plan', given: { oils: '900 g olive' } };
    expect(laid('its split in 3 colours tho', lye)).toBeUndefined();
  });
  test('what is on the shelf of another colour', () => {
    const shelf: Before = {
      kind: 'command',
      job: 'shelf-show',
      command: 'shelf show',
      given: { item: 'green oxide' },
    };
    expect(laid('and the blue', shelf)).toEqual({ item: 'blue' });
  });
});
