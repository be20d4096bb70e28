import { expect, test } from 'vitest';
import { aspectByWords } from '../../../../src/engine/questions/leaning/aspects/by-words.ts';
import { ofLyeBefore } from '../../../../src/engine/questions/leaning/behind/after-lye.ts';
import { onlyTells } from '../../../../src/engine/questions/leaning/behind/said-since.ts';
import { asksToGoOn } from '../../../../src/engine/questions/leaning/danger/go-on.ts';
import { asksWhetherLye, objects } from '../../../../src/engine/questions/leaning/danger/objects.ts';
import { askedInDanger } from '../../../../src/engine/questions/leaning/danger/turns.ts';
import { mayNeedContext } from '../../../../src/engine/questions/leaning/in-context.ts';
import {
  asksForAcid,
  hasMetMetal,
  isOfNothingElse,
  isOnClothes,
  isOnSurface,
  isOnSurfaceToo,
  isSkinStillHurt,
  isStillHurt,
  pointsBack,
} from '../../../../src/engine/questions/leaning/subject/points-back.ts';
import { halfPlain } from '../../../../src/engine/questions/leaning/turn/half-plain.ts';
import { languageTurn } from '../../../../src/engine/questions/leaning/turn/turns.ts';

/*
 * A turn goes on from before only while it is short: what is longer tells what it is about. So many words, of which the last may be anything.
 */

/** Said before a turn, so that it has so many words. */
function longAs(turn: string, words: number, with_ = 'well'): string {
  const missing = words - turn.split(' ').length;
  return [...Array.from({ length: missing }, () => with_), turn].join(' ');
}
const EMERGENCY = ['lye-skin'] as const;
const MATTER = { last: { kind: 'matter', id: 'cloudy-lye' }, ran: undefined } as const;
const TECHNIQUE = {
  last: { kind: 'technique', id: 'mica-settles' },
  ran: undefined,
  words: 'why is my lye cloudy',
} as const;
const named = { named: [] };

test.each<
  readonly [turns: readonly string[], most: number, reads: (turn: string) => boolean, filling: string]
>([
  [['is that one ok', 'y eso sirve'], 12, pointsBack, 'well'],
  [['my hand burns', 'me arde la mano'], 16, isStillHurt, 'well'],
  [['been a while', 'hace rato'], 10, isOfNothingElse, 'well'],
  [['looks red', 'sigue roja'], 10, isSkinStillHurt, 'well'],
  [['can i use vinegar', 'le echo limón'], 10, asksForAcid, 'well'],
  [['already poured it', 'ya la eché'], 10, hasMetMetal, 'well'],
  [['on my sleeve', 'en la manga'], 14, isOnClothes, 'well'],
  [['on the table too', 'en la mesa también'], 16, isOnSurfaceToo, 'well'],
  [['only on the floor', 'solo en el piso'], 16, isOnSurface, 'well'],
  [['my gran uses it', 'nunca me ha pasado nada'], 20, objects, 'well'],
  [['is it lye', 'y si es sosa'], 10, asksWhetherLye, 'well'],
  [['can i carry on', 'puedo seguir'], 26, turn => asksToGoOn(turn, EMERGENCY), 'well'],
  [['can i sell it', 'la puedo vender'], 16, turn => askedInDanger(turn, 'lye-heavy') !== undefined, 'well'],
  [['theres a crust', 'hay una costra'], 16, turn => askedInDanger(turn, 'lye-water') !== undefined, 'well'],
  [['how long', 'cuánto tiempo'], 9, mayNeedContext, 'well'],
  [['paprika', 'salió rosa'], 6, onlyTells, 'soft'],
  [['still there', 'sigue ahí'], 7, turn => ofLyeBefore(turn, named, MATTER) !== undefined, 'well'],
  [['it sank', 'se fue al fondo'], 18, turn => ofLyeBefore(turn, named, TECHNIQUE) !== undefined, 'well'],
  [['why', 'por que'], 9, turn => aspectByWords(turn) === 'why', 'so'],
  [['half of it stays white', 'la mitad queda blanca'], 18, turn => halfPlain(turn) !== turn, 'well'],
])('%j of at most %i words', (turns, most, reads, filling) => {
  for (const turn of turns) {
    expect(reads(turn)).toBe(true);
    // Two Spanish words may be one thing asked: “por qué”.
    const words = /^por que/u.test(turn) ? most + 1 : most;
    expect(reads(longAs(turn, words, filling))).toBe(true);
    expect(reads(longAs(turn, words + 1, filling))).toBe(false);
  }
});

test('what stands behind a language that is asked for may be six words', () => {
  expect(languageTurn('in english? he reads no spanish at all')).toBe('en');
  expect(languageTurn('in english? he reads no spanish at all really')).toBeUndefined();
  expect(languageTurn('en inglés? ¿lo lee?')).toBeUndefined();
  expect(languageTurn('en español. por favor.')).toBe('es');
  expect(languageTurn('el jabón en español')).toBeUndefined();
});

test('a command is no turn that goes on', () => {
  expect(onlyTells('/dose mica')).toBe(false);
  expect(mayNeedContext('/dose mica')).toBe(false);
  expect(mayNeedContext('water and/or oil/')).toBe(true);
  expect(askedInDanger('/shelf sell', 'lye-heavy')).toBeUndefined();
});
