import { describe, expect, test } from 'vitest';
import type { Ran } from '../../../../../src/engine/questions/leaning/before.ts';
import { leanOf } from '../../../../../src/engine/questions/leaning/lean.ts';
import { potToldOtherwise } from '../../../../../src/engine/questions/leaning/recipes/told-otherwise.ts';

/* The lye that was told stands on the pot as it was told: what says that the pot was otherwise asks for the recipe, and is no flaw of a bar. */

const recipe = (oils: string): Ran => ({
  kind: 'command',
  job: 'lye',
  command: 'plan',
  given: { oils, superfat: '5' },
});
const OUNCES = recipe('24 oz olive, 8 oz coconut');
const GRAMS = recipe('700 g sunflower, 300 g coconut');
const asksAfter = (turn: string, before: Ran) => {
  const lean = leanOf(turn, { last: before, ran: before });
  return lean?.kind === 'asks' ? lean.lacks : lean?.kind;
};

// A recipe of 24 and 8 oz takes 28 times the lye of one of 24 and 8 g (an ounce is 28.35 g: NIST SP 811).
describe('weights in another unit than they were reckoned in', () => {
  test.each([
    'sorry those are grams not oz, tiny test batch',
    'sorry, grams not oz',
    'not ounces but grams',
    'I meant grams',
    'perdon, son gramos no onzas',
    'quise decir gramos',
    'no son onzas, son gramos',
  ])('“%s” asks for the recipe', turn => {
    expect(asksAfter(turn, OUNCES)).toBe('whole-recipe');
  });
  test('whoever wants the figure in grams is told it in grams', () => {
    expect(asksAfter('in grams please', OUNCES)).toBe('runs');
  });
  test('weights that were reckoned in grams are not put right by it', () => {
    expect(potToldOtherwise('grams not oz', GRAMS)).toBeUndefined();
    expect(potToldOtherwise('kilos, not grams', GRAMS)).toBeDefined();
    expect(potToldOtherwise('pounds not ounces', OUNCES)).toBeDefined();
  });
});

describe('another oil, or another weight of one', () => {
  test.each([
    'my husband used the sunflower for chips, so I put avocado instead. all of it',
    'I used up the sunflower, put avocado instead',
    'oops I used lard in place of the coconut',
    'the coconut was actually palm, and it went moldy looking',
    'not sunflower, its castor i put in',
    'it isnt coconut, it was palm kernel',
    'no es girasol, es ricino el que puse, y el coco eran 40 no 400',
    'gasté el girasol en la freidora y le puse aguacate',
    'se me acabó el coco y le puse palma',
    'en realidad no era coco sino palmiste',
  ])('“%s” asks for the recipe', turn => {
    expect(asksAfter(turn, GRAMS)).toBe('whole-recipe');
  });
  test.each([
    'how much mica instead of oxide',
    'can I use lard instead of coconut',
    'what if the coconut ran out',
    'does olive oil go rancid',
    'the bar with coconut is soft',
    'purple mica instead of the olive green',
    'no, the coconut was wrong: 500 g olive 200 g coconut, 5%, lye?',
    'puedo usar oliva en vez de girasol',
    'it came out soft and crumbly',
    'me salió blando y con manchas blancas',
  ])('“%s” puts no pot right', turn => {
    expect(potToldOtherwise(turn, GRAMS)).toBeUndefined();
  });
});
