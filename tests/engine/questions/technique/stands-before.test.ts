import { describe, expect, test } from 'vitest';
import type { QuestionRead } from '../../../../src/engine/questions/read.ts';
import { leastBeside } from '../../../../src/engine/questions/technique/stands-before.ts';
import type { Matter } from '../../../../src/engine/questions/technique/topic.ts';

/*
 * How likely a matter of working with batter has to be beside what else was read of a question. The figures are our own, chosen on two hands'
 * ordinary questions; that somebody's health, a plain colour and another pot stand before every matter is none of chance.
 */
type Told = {
  readonly question?: string;
  readonly job?: string;
  readonly score?: number;
  readonly missing?: readonly string[];
  readonly outside?: QuestionRead['outside'];
  readonly elsewhere?: number;
  readonly facts?: object;
};
const NEVER = Number.POSITIVE_INFINITY;
const read = ({ job, score = 0.9, missing = [], outside, elsewhere = 0, facts = {} }: Told): QuestionRead =>
  ({
    readings: job === undefined ? [] : [{ job, score, command: 'x', given: {}, missing }],
    facts: { named: [], findings: 0, ...facts },
    corrections: [],
    outside,
    elsewhere,
  }) as never;
const least = (matter: Matter, told: Told) =>
  leastBeside(matter, read(told), told.question ?? 'does a stick blender make it go faster');

describe('a matter stands behind', () => {
  test.each<readonly [string, Matter, Told]>([
    ['somebody’s health', 'slow-oils', { outside: 'medical' }],
    ['lye for something else than soap', 'slow-oils', { outside: 'lye-elsewhere' }],
    [
      'a colour that is plainly to be mixed',
      'slow-oils',
      { job: 'mix', score: 1, facts: { target: { text: 'navy' } }, question: 'How do I make navy?' },
    ],
    [
      'two colourants whose colour together is foreseen',
      'blend-two',
      { job: 'preview', score: 1, facts: { named: ['green clay', 'charcoal'] } },
    ],
    [
      'one thing alone, of which no two are put together',
      'blend-two',
      { job: 'mix', question: 'and purple?' },
    ],
    ['a shelf', 'slow-oils', { job: 'shelf-show', question: 'what is on my shelf' }],
    ['another pot: custard goes thick too', 'thick-now', { outside: 'food', elsewhere: 0.99 }],
    [
      'the law of a colour in a place',
      'label-selling',
      { job: 'law', facts: { named: ['neon pink'], region: 'EU' } },
    ],
    [
      'the law of a colour in a country',
      'label-selling',
      { job: 'law', facts: { named: ['neon pink'], country: 'norway' } },
    ],
  ])('%s, however likely', (_, matter, told) => {
    expect(least(matter, told)).toBe(NEVER);
  });

  test.each<readonly [string, number, Matter, Told]>([
    ['two things that are put together', 0.65, 'blend-two', { job: 'mix', question: 'blue and white' }],
    ['a word that a shelf has too', 0.65, 'slow-oils', { job: 'dose', question: 'what is on my shelf' }],
    ['a pot of ours', 0.65, 'thick-now', { job: 'dose' }],
    ['another field’s pot that is hardly one', 0.45, 'thick-now', { outside: 'other', elsewhere: 0.6 }],
    ['a law of nothing that is named', 0.65, 'label-selling', { job: 'law', facts: { region: 'EU' } }],
    ['a law of no place', 0.65, 'label-selling', { job: 'law', facts: { named: ['neon pink'] } }],
    [
      'a law that hardly is asked',
      0.28,
      'label-selling',
      { job: 'law', score: 0.89, facts: { named: ['neon pink'], region: 'EU' } },
    ],
    ['prices, where shops are asked for', 0.65, 'buy-where', { outside: 'business' }],
    ['what becomes of a plant', 0.88, 'botanicals', { job: 'survives-lye' }],
    [
      'what becomes of a plant, of which its colour is no telling',
      0.65,
      'slow-oils',
      { job: 'survives-lye' },
    ],
    ['a plan of a portion', 0.95, 'slow-oils', { job: 'plan', facts: { portion: '2 cups' } }],
    ['a plan of none', 0.65, 'slow-oils', { job: 'plan' }],
    [
      'a flaw in nine words',
      0.8,
      'slow-oils',
      { job: 'diagnose', facts: { findings: 1 }, question: 'my soap has white dust on top once again' },
    ],
    [
      'a flaw in ten',
      1.01,
      'slow-oils',
      { job: 'diagnose', facts: { findings: 1 }, question: 'my soap has white dust on top once again today' },
    ],
    ['a flaw without a sign', 0.28, 'slow-oils', { job: 'diagnose' }],
    [
      'a flaw that hardly is one',
      0.28,
      'slow-oils',
      { job: 'diagnose', score: 0.89, facts: { findings: 1 } },
    ],
    ['help, which is no more than a list', 0.28, 'slow-oils', { job: 'help' }],
    ['a comparison', 0.95, 'slow-oils', { job: 'compare', question: 'is ultramarine stronger than oxide' }],
    ['a sure command', 0.65, 'slow-oils', { job: 'dose' }],
    ['a command that lacks what it needs', 0.28, 'slow-oils', { job: 'dose', missing: ['portion'] }],
    ['a command that is not sure', 0.28, 'slow-oils', { job: 'dose', score: 0.89 }],
    ['nothing else', 0.28, 'slow-oils', {}],
    ['a sure command, where the matter is chat', 0.65, 'chat', { job: 'dose' }],
    ['nothing sure, where it is chat', 0.55, 'chat', {}],
    ['nothing sure, where it is an errand', 0.55, 'cannot-do', { job: 'dose', score: 0.5 }],
    ['a doubt, where it is chat', 0.55, 'chat', { job: 'doubt' }],
    // Near lye a wrong answer is worse than none.
    ['nothing else, near lye', 0.7, 'lye-cloudy', {}],
    ['a plan of a portion, near lye', 0.95, 'lye-cloudy', { job: 'plan', facts: { portion: '2 cups' } }],
  ])('%s, unless it is %d likely', (_, chance, matter, told) => {
    expect(least(matter, told)).toBe(chance);
  });

  test('another field, and more surely behind one that is nearly sure', () => {
    expect(least('slow-oils', { outside: 'other', elsewhere: 0.6 })).toBe(0.45);
    expect(least('slow-oils', { outside: 'other', elsewhere: 0.999 })).toBe(0.9);
    expect(least('slow-oils', { outside: 'food', elsewhere: 0.6 })).toBe(0.9);
  });
});
