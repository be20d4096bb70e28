import { expect, test } from 'vitest';
import type { Ran } from '../../../../src/engine/questions/leaning/before.ts';
import { ASKS_RECIPE } from '../../../../src/engine/questions/leaning/lean-kinds.ts';
import { purityLaid } from '../../../../src/engine/questions/leaning/recipes/told-anew.ts';
import { isNoSingleAlkali, type LyeTold } from '../../../../src/engine/questions/lye/amounts/alkali.ts';
import { readLyeQuestion } from '../../../../src/engine/questions/lye/question.ts';
import { dissolved } from '../../../../src/engine/questions/lye/ready-lye-told.ts';

/* The words are our own. Dry alkali is weighed; lye water of 45 % and more is what is kept ready (common practice). */

test.each<readonly [string, LyeTold, boolean]>([
  ['lye for 500 g olive', { alkali: 'NaOH', solution: false }, false],
  ['sosa al 98% para 500 g de oliva', { alkali: 'NaOH', solution: false }, false],
  ['KOH 90% for 500 g olive', { alkali: 'KOH', solution: false }, false],
  ['50% lye solution, 500 g olive', { alkali: 'NaOH', solution: true }, true],
  ['50% KOH solution, 500 g olive', { alkali: 'KOH', solution: true }, true],
  // Weaker than that it is the strength of a batch's lye water.
  ['33% lye solution, 500 g olive', { alkali: 'NaOH', solution: false }, false],
  ['dual lye for 500 g olive', { alkali: 'both', solution: false }, true],
  ['60% NaOH 40% KOH, 500 g olive', { alkali: 'both', kohPercent: 40, solution: false }, true],
  ['NaOH 95%, the rest KOH, 500 g olive', { alkali: 'both', kohPercent: 5, solution: false }, true],
])('“%s” tells which lye it is, and whether it is one alkali alone', (text, lye, isMixed) => {
  const told = readLyeQuestion(text).lye;
  expect(told).toEqual(lye);
  expect(isNoSingleAlkali(told)).toBe(isMixed);
});

test('dry lye is told as the ready-made lye that is asked for; what is told as dissolved stays so', () => {
  const dry = readLyeQuestion('500 g olive');
  const ready = dissolved(dry, 'how much of my lye masterbatch at 50% for 500 g olive');
  expect(ready).toMatchObject({
    given: { lye: '50% lye solution' },
    lye: { alkali: 'NaOH', solution: true },
  });
  expect(dissolved(ready, 'how much of my lye masterbatch at 60% for 500 g olive')).toBe(ready);
});

const plan = (lye?: string): Ran => ({
  kind: 'command',
  job: 'lye',
  command: 'plan',
  given: { oils: '500 g olive', ...(lye !== undefined && { lye }) },
});

test('the purity of the one lye of a recipe is laid over it', () => {
  expect(purityLaid('my koh is 85%', plan('KOH'))).toMatchObject({
    readings: [{ given: { lye: 'KOH 85%' } }],
  });
  expect(purityLaid('la sosa es del 98%', plan())).toMatchObject({ readings: [{ given: { purity: '98' } }] });
  // Of the other alkali than the recipe's.
  expect(purityLaid('my koh is 85%', plan())).toBe(ASKS_RECIPE);
});

test.each(['NaOH 60% + KOH 40%', 'both', '50% KOH solution', '50% lye solution'])(
  'the purity of one lye never becomes that of “%s”: 61.8 g of KOH beside NaOH are no 163 g of KOH alone',
  lye => {
    expect(purityLaid('my koh is 85%', plan(lye))).toBe(ASKS_RECIPE);
    expect(purityLaid('la sosa es del 98%', plan(lye))).toBe(ASKS_RECIPE);
  },
);
