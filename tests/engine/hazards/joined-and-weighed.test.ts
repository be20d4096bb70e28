import { describe, expect, test } from 'vitest';
import { criesFire } from '../../../src/engine/hazards/emergencies/cried.ts';
import type { Emergency, EmergencyId } from '../../../src/engine/hazards/emergencies/emergency.ts';
import {
  accountsOf,
  scoreOf,
  type Weights,
  weighAll,
} from '../../../src/engine/hazards/emergencies/evidence/weigh.ts';
import { explainedIn } from '../../../src/engine/hazards/emergencies/explained.ts';
import { isTakenBack, toldAfterAlarm } from '../../../src/engine/hazards/emergencies/false-alarm.ts';
import { withoutFiguresOfSpeech } from '../../../src/engine/hazards/emergencies/figures-of-speech.ts';
import { joined } from '../../../src/engine/hazards/emergencies/join.ts';
import { featuresOf } from '../../../src/engine/hazards/emergencies/learned/features.ts';
import { outrightIn } from '../../../src/engine/hazards/emergencies/outright/read.ts';
import { scenesIn } from '../../../src/engine/hazards/emergencies/scenes.ts';
import { withoutTide } from '../../../src/engine/hazards/emergencies/tide.ts';
import {
  isBareEggSmell,
  isUltramarineWhiff,
  withSpokenOf,
} from '../../../src/engine/hazards/emergencies/ultramarine-whiff.ts';

const told = (id: EmergencyId, inDoubt = false): Emergency => ({ id, from: id, inDoubt });
const TEXT = { words: 9, from: 'whole text', isOver: false };
/** What was learned: odds of any emergency, and the scores of some; all others lie far below. */
const learned = (odds: number, scores: Partial<Record<EmergencyId, number>>) => ({
  odds,
  likeliest: (
    [
      'lye-swallowed',
      'lye-eye',
      'fire',
      'fumes-inhaled',
      'lye-eruption',
      'lye-skin',
      'animal-exposed',
      'skin-reaction',
      'hydrogen-from-metal',
    ] as const
  )
    .map(id => ({ id, score: scores[id] ?? -50 }))
    .toSorted((a, b) => b.score - a.score),
});
const ids = (all: readonly Emergency[]) => all.map(({ id, inDoubt }) => (inDoubt ? `${id}?` : id));

// In doubt first aid is shown, and what may cost a life or an eye is never pushed behind (common first aid).
describe('what the lexicon read and what was learned', () => {
  const SURE = 3;
  test('where neither says enough, nothing is told', () => {
    expect(joined([], learned(-1.26, { 'lye-eye': 0 }), TEXT)).toEqual([]);
    expect(joined([told('lye-eye', true)], learned(-1.8, { 'lye-eye': 0 }), TEXT)).toEqual([]);
    expect(joined([told('lye-eye')], learned(-2.8, { 'lye-eye': 0 }), TEXT)).toEqual([]);
  });
  test('a little more is enough: patterns weigh more than a sum of evidence, that more than nothing', () => {
    expect(ids(joined([], learned(-1.24, { 'lye-eye': 0 }), TEXT))).toEqual(['lye-eye?']);
    expect(ids(joined([told('lye-eye', true)], learned(-1.7, { 'lye-eye': 0 }), TEXT))).toEqual(['lye-eye?']);
    expect(ids(joined([told('lye-eye')], learned(-2.7, { 'lye-eye': 0 }), TEXT))).toEqual(['lye-eye']);
  });
  test('three words are too few to be told from other texts, but not for the lexicon', () => {
    const words = { ...TEXT, words: 3 };
    expect(joined([], learned(SURE, { 'lye-eye': 0 }), words)).toEqual([]);
    expect(ids(joined([], learned(SURE, { 'lye-eye': 0 }), { ...TEXT, words: 4 }))).toEqual(['lye-eye?']);
    expect(ids(joined([told('lye-eye')], learned(SURE, { 'lye-eye': 0 }), words))).toEqual(['lye-eye']);
  });
  test('two that lie near one another are both shown where nothing else is told', () => {
    expect(ids(joined([], learned(SURE, { 'lye-eye': 0, 'lye-skin': -2.4 }), TEXT))).toEqual([
      'lye-eye?',
      'lye-skin?',
    ]);
    expect(ids(joined([], learned(SURE, { 'lye-eye': 0, 'lye-skin': -2.6 }), TEXT))).toEqual(['lye-eye?']);
    expect(joined([], learned(SURE, { 'lye-eye': 0 }), TEXT)[0]?.from).toBe('whole text');
  });
  test('metal that left its marks on a cured bar is no danger', () => {
    const metal = learned(SURE, { 'hydrogen-from-metal': 0 });
    expect(joined([], metal, { ...TEXT, isOver: true })).toEqual([]);
    expect(ids(joined([], metal, TEXT))).toEqual(['hydrogen-from-metal?']);
    expect(
      ids(
        joined([told('lye-skin')], learned(SURE, { 'hydrogen-from-metal': 3, 'lye-skin': 0 }), {
          ...TEXT,
          isOver: true,
        }),
      ),
    ).toEqual(['hydrogen-from-metal?', 'lye-skin']);
  });
  test('what is clearly likelier comes first, what is a little so stands beside', () => {
    const beside = learned(SURE, { 'lye-eye': 0.4, 'lye-skin': 0 });
    expect(ids(joined([told('lye-skin')], beside, TEXT))).toEqual(['lye-skin', 'lye-eye?']);
    const first = learned(SURE, { 'lye-eye': 0.6, 'lye-skin': 0 });
    expect(ids(joined([told('lye-skin')], first, TEXT))).toEqual(['lye-eye?', 'lye-skin']);
    expect(ids(joined([told('lye-skin'), told('skin-reaction')], beside, TEXT))).toEqual([
      'lye-skin',
      'lye-eye?',
      'skin-reaction',
    ]);
    // Of what was in doubt too half of that lead is enough.
    expect(
      ids(joined([told('lye-skin', true)], learned(SURE, { 'lye-eye': 0.3, 'lye-skin': 0 }), TEXT)),
    ).toEqual(['lye-eye?', 'lye-skin?']);
  });
  test('what patterns told stands by urgency unless another of them is far likelier', () => {
    const both = [told('lye-eye'), told('lye-skin')];
    expect(ids(joined(both, learned(SURE, { 'lye-skin': 2.4, 'lye-eye': 0 }), TEXT))).toEqual([
      'lye-eye',
      'lye-skin',
    ]);
    expect(ids(joined(both, learned(SURE, { 'lye-skin': 2.6, 'lye-eye': 0 }), TEXT))).toEqual([
      'lye-skin',
      'lye-eye',
    ]);
  });
  test('a closing airway, an animal’s own and an eye before a jug stay first', () => {
    const skin = learned(SURE, { 'lye-skin': 9, 'skin-reaction': 0, 'animal-exposed': 0 });
    expect(ids(joined([{ ...told('skin-reaction'), airway: true }], skin, TEXT))).toEqual(['skin-reaction']);
    expect(ids(joined([told('animal-exposed')], skin, TEXT))).toEqual(['animal-exposed']);
    expect(ids(joined([told('animal-exposed', true)], skin, TEXT))).toEqual(['lye-skin?', 'animal-exposed?']);
    const jug = learned(SURE, { 'lye-eruption': 9, 'lye-eye': 0 });
    expect(ids(joined([told('lye-eye')], jug, TEXT))).toEqual(['lye-eye']);
    expect(ids(joined([told('lye-eye', true)], jug, TEXT))).toEqual(['lye-eruption?', 'lye-eye?']);
  });
  test('what both read alike is told as it was read', () => {
    const read = [told('lye-eye'), told('lye-skin')];
    expect(joined(read, learned(SURE, { 'lye-eye': 9 }), TEXT)).toBe(read);
  });
});

describe('what stands around a word of harm', () => {
  const accounts = (text: string, tells: readonly { id: 'lye-eye'; from: number }[] = []) => {
    const { mentions, reading } = scenesIn(text);
    return accountsOf(mentions, reading, tells);
  };
  const names = (text: string, id: 'lye-eye' | 'lye-skin' | 'lye-swallowed') =>
    (accounts(text).get(id) ?? []).map(account => [...account.names].toSorted());
  test('is one account, within reach of it', () => {
    expect(names('lye in my eye', 'lye-eye')).toHaveLength(1);
    expect(names('lye in my eye', 'lye-eye')[0]).toEqual(expect.arrayContaining(['caustic', 'eye']));
    expect(names('lye on my hand', 'lye-eye')).toEqual([]);
    const far = `lye stood there. ${'we talked on and on about bars. '.repeat(6)} my eye`;
    expect(names(far, 'lye-eye')[0]).not.toContain('caustic');
  });
  test('denied it speaks against, and is no core of one', () => {
    expect(names('no lye in my eye', 'lye-eye')).toEqual([]);
    expect(names('lye on my hand, nothing in my eye', 'lye-skin').flat()).toContain('denied');
  });
  test('alike accounts are one, and one that a pattern told is marked', () => {
    expect(names('my eye, my eye, my eye', 'lye-eye')).toHaveLength(1);
    const marked = accounts('lye in my eye', [{ id: 'lye-eye', from: 3 }]).get('lye-eye')!;
    expect([...marked[0]!.names]).toContain('told');
    expect([...accounts('lye in my eye').get('lye-eye')![0]!.names]).not.toContain('told');
  });
  test('a score is the start and what each idea adds; the likeliest account of each is first', () => {
    const weights = { start: -2, eye: 1, caustic: 3 };
    expect(scoreOf({ names: new Set(['eye', 'caustic', 'unheard']), at: 0 }, weights)).toBe(2);
    expect(scoreOf({ names: new Set<string>(), at: 0 }, { eye: 1 })).toBe(0);
    const all = new Map([
      [
        'lye-eye',
        [
          { names: new Set(['eye']), at: 1 },
          { names: new Set(['eye', 'caustic']), at: 2 },
        ],
      ],
      ['lye-skin', [{ names: new Set(['eye', 'caustic']), at: 3 }]],
      ['animal-exposed', []],
    ]) as unknown as ReturnType<typeof accountsOf>;
    const table = {
      'lye-eye': weights,
      'lye-skin': { start: 9 },
      'animal-exposed': {},
    } as unknown as Weights;
    expect(weighAll(all, table).map(({ id, score, at }) => [id, score, at])).toEqual([
      ['lye-skin', 9, 3],
      ['lye-eye', 2, 2],
    ]);
  });
});

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
  const words = (text: string) => [...featuresOf(scenesIn(text))[0]!.counts.keys()].toSorted();
  expect(words('lye, in my eye!!')).toEqual(words('lye in my eye'));
  expect(words('years ago lye in my eye').length).toBeLessThan(words('lye in my eye').length);
});

test('a cry of fire is one up to eighty signs', () => {
  const cry = `${'fire '.repeat(15)}fire!`;
  expect(cry).toHaveLength(80);
  expect(criesFire(cry)).toBe(true);
  expect(criesFire(`${cry}!`)).toBe(false);
});
