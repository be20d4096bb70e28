import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ABOUT_WORDS } from '../../../../src/engine/hazards/emergencies/evidence/lexicon-about.ts';
import { WHAT_WORDS } from '../../../../src/engine/hazards/emergencies/evidence/lexicon-what.ts';
import { WHO_WORDS } from '../../../../src/engine/hazards/emergencies/evidence/lexicon-who.ts';
import { weighAll } from '../../../../src/engine/hazards/emergencies/evidence/weigh.ts';
import written from '../../../../src/engine/hazards/emergencies/evidence/weights.json' with { type: 'json' };
import { readEmergencies } from '../../../../src/engine/hazards/index.ts';
import { leastCpu } from '../../../cpu-time.ts';
import { fitWeights } from './fit-weights.ts';
import { type FittedText, fittedTexts, samplesOf } from './fitted-texts.ts';

const texts = fittedTexts();
const second = JSON.parse(readFileSync(join(import.meta.dirname, 'emergencies-second.json'), 'utf8'));
/** As in `readEmergencies`. */
const IN_DOUBT = -1;

test('the weights written down are those that the texts give', () => {
  expect(written.weights).toEqual(fitWeights(texts.flatMap(text => samplesOf(text))));
  expect(written.origin).toBe(`from memory, fitted on ${texts.length} texts`);
});

describe('the second half, tuned on', () => {
  test.each([...second.emergencies, ...second['first-aid-questions']])('$id: $text', ({ text, id }) => {
    expect(readEmergencies(text)[0]?.id).toBe(id);
  });
  test.each(second['no-alarm'] as { text: string; why: string }[])('no alarm, $why: $text', ({ text }) => {
    expect(readEmergencies(text)).toEqual([]);
  });
});

type Outcome = { readonly text: FittedText; readonly shown: boolean; readonly right: boolean };

/** By the evidence alone, without any pattern. */
function outcomes(
  tested: readonly FittedText[],
  others: readonly FittedText[],
  unheard?: Parameters<typeof samplesOf>[1],
) {
  const weights = fitWeights(others.flatMap(text => samplesOf(text)));
  return tested.map((text): Outcome => {
    const [best] = weighAll(samplesOf(text, unheard)[1].accounts, weights);
    return { text, shown: (best?.score ?? -9) > IN_DOUBT, right: best?.id === text.id };
  });
}

function figures(name: string, all: readonly Outcome[]) {
  const hurt = all.filter(({ text }) => text.id !== undefined);
  const quiet = all.filter(({ text }) => text.id === undefined);
  const shown = hurt.filter(one => one.shown);
  const alarms = quiet.filter(one => one.shown);
  const right = shown.filter(one => one.right);
  console.info(
    `${name}, evidence alone: shown ${shown.length} of ${hurt.length}, right ${right.length}, alarms ${alarms.length} of ${quiet.length}`,
  );
  return {
    shown: shown.length / hurt.length,
    right: right.length / shown.length,
    alarms: alarms.length / quiet.length,
  };
}

const halves = texts.filter(({ set }) => set === 'first' || set === 'second');

test('writers whose texts the weights never saw are understood', () => {
  const writers = [...new Set(halves.map(({ writer }) => writer))];
  const all = Array.from(
    { length: 8 },
    (_, fold) => new Set(writers.filter((_, at) => at % 8 === fold)),
  ).flatMap(away =>
    outcomes(
      halves.filter(({ writer }) => away.has(writer)),
      texts.filter(text => !halves.includes(text) || !away.has(text.writer)),
    ),
  );
  const { shown, right, alarms } = figures('writers left out', all);
  expect(shown).toBeGreaterThan(0.97);
  expect(right).toBeGreaterThan(0.93);
  expect(alarms).toBeLessThan(0.04);
});

test('the second half is understood by weights and wider words that owe it nothing', () => {
  const wider = new Set(Object.keys({ ...WHO_WORDS, ...WHAT_WORDS, ...ABOUT_WORDS }));
  const said = ({ grounds }: FittedText, { concept, from, to }: FittedText['grounds']['mentions'][number]) =>
    `${concept} ${grounds.tokens
      .slice(from, to)
      .map(({ text }) => text)
      .join(' ')}`;
  const others = texts.filter(({ set }) => set !== 'second');
  const elsewhere = new Set(others.flatMap(text => text.grounds.mentions.map(one => said(text, one))));
  const all = texts
    .filter(({ set }) => set === 'second')
    .flatMap(text => outcomesOf(text, one => wider.has(one.concept) && !elsewhere.has(said(text, one))));
  const { shown, right, alarms } = figures('second half, words heard only there left out', all);
  expect(shown).toBeGreaterThan(0.93);
  expect(right).toBeGreaterThan(0.93);
  expect(alarms).toBeLessThan(0.05);

  function outcomesOf(text: FittedText, unheard: Parameters<typeof samplesOf>[1]): Outcome[] {
    const [best] = weighAll(samplesOf(text, unheard)[1].accounts, fitted);
    return [{ text, shown: (best?.score ?? -9) > IN_DOUBT, right: best?.id === text.id }];
  }
});

const fitted = fitWeights(texts.filter(({ set }) => set !== 'second').flatMap(text => samplesOf(text)));

test('what only the sum of the evidence tells is marked so', () => {
  const told = readEmergencies('gran thought it was pudding and ate a spoonful straight from the mould');
  expect(told[0]).toMatchObject({ id: 'lye-swallowed', inDoubt: true });
  expect(readEmergencies('lye splashed in my eye')[0]).toMatchObject({ id: 'lye-eye', inDoubt: false });
});

test('a long message is read in under 50 ms of processor time', async () => {
  const long = halves
    .map(({ text }) => text)
    .join(' ')
    .slice(0, 6_000);
  expect(await leastCpu(() => readEmergencies(long), 50)).toBeLessThan(50);
});
