import { describe, expect, test } from 'vitest';
import { criesFire } from '../../../../src/engine/hazards/emergencies/cried.ts';
import { explainedIn } from '../../../../src/engine/hazards/emergencies/explained.ts';
import { isTakenBack, toldAfterAlarm } from '../../../../src/engine/hazards/emergencies/false-alarm.ts';
import { withoutFiguresOfSpeech } from '../../../../src/engine/hazards/emergencies/figures-of-speech.ts';
import { featuresOf } from '../../../../src/engine/hazards/emergencies/learned/features.ts';
import { outrightIn } from '../../../../src/engine/hazards/emergencies/outright/read.ts';
import { scenesIn } from '../../../../src/engine/hazards/emergencies/scenes.ts';
import { withoutTide } from '../../../../src/engine/hazards/emergencies/tide.ts';
import {
  isBareEggSmell,
  isUltramarineWhiff,
  withSpokenOf,
} from '../../../../src/engine/hazards/emergencies/ultramarine-whiff.ts';

describe('an alarm that is taken back', () => {
  test.each([
    ['false alarm', true],
    ['Falsa alarma!', true],
    ['lye in my eye. false alarm', true],
    ['false alarm, it was water', true],
    ['false alarm?', false],
    ['not a false alarm', false],
    ['is it a false alarm', false],
    ['lye in my eye, no false alarm', false],
    ['lye in my eye, false alarm?', false],
    ['false alarm yesterday', false],
    ['false alarm, but today it burns', false],
    ['false alarm of my sister', false],
    ['the false alarm went off when lye splashed', false],
    ['alarm', false],
    ['', false],
  ])('%s: %s', (text, isBack) => {
    expect(isTakenBack(text)).toBe(isBack);
  });
  test.each([
    ['false alarm, it was water', ', it was water'],
    ['Oh false alarm', undefined],
    ['falsa  alarma: no era sosa', ': no era sosa'],
    ['false alarm', ''],
    ['', undefined],
  ])('what is told behind it: %s', (text, behind) => {
    expect(toldAfterAlarm(text)).toBe(behind);
  });
});

test.each([
  ['my eyes sting from the marea roja mica', true],
  ['marea', true],
  ['me da marea', false],
  ['jabón "marea alta"', true],
  ['la marea', true],
  ['color marea', true],
  ['esto marea mucho', false],
])('the tide of %s is put as another word of the sea: %s', (text, isSea) => {
  expect(withoutTide(text).includes('playa')).toBe(isSea);
  expect(withoutTide(text)).toHaveLength(text.length);
});

test.each([
  ['I drank in every word', 'I'],
  ['swallowed my pride and drank lye', 'and drank lye'],
  ['the calculator ate my recipe', 'the'],
  ['tragué saliva con sosa', 'tragué saliva con sosa'],
  ['the gas bill', 'the'],
  ['lye in my eye', 'lye in my eye'],
])('of %s a figure of speech is taken away: %s', (text, left) => {
  const said = withoutFiguresOfSpeech(text);
  expect(said.trim().replaceAll(/\s+/gu, ' ')).toBe(left);
  expect(said).toHaveLength(text.length);
});

// Hydrogen sulfide comes of acid on sulphur or ultramarine; its smell alone of soap with yolk or sulphur (common practice).
describe('a smell of eggs', () => {
  test.each([
    ['fos, huele a huevo podrido', true],
    ['it smells of rotten eggs', true],
    ['it smells of rotten eggs and my head hurts', false],
    ['it smells really strongly of rotten eggs', false],
    ['smells of rotten eggs since the citric acid', false],
    ['it smells of roses', false],
    [`it smells of rotten eggs ${'.'.repeat(175)}`, true],
    [`it smells of rotten eggs ${'.'.repeat(176)}`, false],
  ])('and nothing more: %s: %s', (text, isBare) => {
    expect(isBareEggSmell(text)).toBe(isBare);
  });
  test.each([
    ['huele a huevo, es eso?', 'ultramar violeta', 'ultramar violeta: huele a huevo, es eso?'],
    ['huele a huevo podrido', 'ultramar violeta', 'huele a huevo podrido'],
    ['huele a huevo, es eso?', 'mica dorada', 'huele a huevo, es eso?'],
    ['huele a huevo, es eso?', undefined, 'huele a huevo, es eso?'],
    ['smells of eggs, my head hurts', 'ultramarine', 'smells of eggs, my head hurts'],
  ])('%s, after %s', (text, spokenOf, whole) => {
    expect(withSpokenOf(text, spokenOf)).toBe(whole);
  });
  test.each([
    ['ultramarine smells like egg', true],
    ['ultramarine stinks like egg', false],
    ['is it normal that my ultramarine smells of rotten eggs', true],
    ['my ultramarine smells of rotten eggs', false],
    ['why does the blue smell of eggs', true],
  ])('is asked of the pigment: %s: %s', (text, isAsked) => {
    expect(isUltramarineWhiff(text)).toBe(isAsked);
  });
  test.each([
    ['my sulphur soap smells of eggs', ['hydrogen-sulfide']],
    ['my yolk soap smells of eggs', []],
    ['my soap with egg yolk smells of rotten eggs', ['hydrogen-sulfide']],
    ['my sulphur soap smells of eggs and I cough', []],
    ['my sulphur soap smells of eggs since the vinegar', []],
    ['my sulphur soap smells of eggs, whom do I call', []],
    ['threw out the aluminium pots', ['hydrogen-from-metal']],
    ['threw out the aluminium pots, they were fizzing', []],
    ['boté las ollas de aluminio', ['hydrogen-from-metal']],
    ['lye in the aluminium pot', []],
    [`threw out the aluminium pots ${'and on '.repeat(40)}`, []],
  ] as const)('or metal that is explained: %s', (text, explained) => {
    expect([...explainedIn(text)]).toEqual(explained);
  });
});

describe('what is told outright', () => {
  const outright = (text: string) => {
    const { tokens, reading } = scenesIn(text);
    return outrightIn(tokens, reading).map(
      ({ id, first, airway }) => `${id}${first ? ' first' : ''}${airway ? ' airway' : ''}`,
    );
  };
  // A swollen lip or tongue may close the throat: the call comes before anything (common first aid).
  test.each([
    ['my lips swelled after my cinnamon soap', ['skin-reaction first airway']],
    ['bleach and vinegar went in one bucket', ['toxic-gas first']],
    ['lye burned a hole in my finger', ['lye-skin']],
    ['lye burned a hole in my finger, pink phlegm since', ['lye-skin', 'fumes-inhaled']],
    ['lye burned a hole in my apron', []],
  ])('%s', (text, told) => {
    expect(outright(text).toSorted()).toEqual(told.toSorted());
  });
});

test('what other texts taught goes by words, not by marks, and not by what is long past', () => {
  const words = (text: string) => [...featuresOf(scenesIn(text))[0]!.counts.keys()].toSorted((a, b) => a - b);
  expect(words('lye, in my eye!!')).toEqual(words('lye in my eye'));
  expect(words('years ago lye in my eye').length).toBeLessThan(words('lye in my eye').length);
});

test('a cry of fire is one up to eighty signs', () => {
  const cry = `${'fire '.repeat(15)}fire!`;
  expect(cry).toHaveLength(80);
  expect(criesFire(cry)).toBe(true);
  expect(criesFire(`${cry}!`)).toBe(false);
});
