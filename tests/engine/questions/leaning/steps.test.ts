import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { aspectIn } from '../../../../src/engine/questions/leaning/asked-of-it.ts';
import { aspectByWords } from '../../../../src/engine/questions/leaning/aspects/by-words.ts';
import { askedIn } from '../../../../src/engine/questions/leaning/before.ts';
import {
  asksOfSuds,
  namesOil,
  namesOilOrFigure,
  saysOtherwise,
  tellsOfPoured,
} from '../../../../src/engine/questions/leaning/behind/names-another.ts';
import {
  isOfAmount,
  onlyTells,
  tellsWhatItBecame,
} from '../../../../src/engine/questions/leaning/behind/said-since.ts';
import { isAsked, turnsToAnother } from '../../../../src/engine/questions/leaning/carried.ts';
import type { Danger } from '../../../../src/engine/questions/leaning/danger/danger-kind.ts';
import { asksWhetherLye, objects } from '../../../../src/engine/questions/leaning/danger/objects.ts';
import { askedInDanger } from '../../../../src/engine/questions/leaning/danger/turns.ts';
import { mayNeedContext, namesItsOwn } from '../../../../src/engine/questions/leaning/in-context.ts';
import { lackOf, unnamed } from '../../../../src/engine/questions/leaning/lacks.ts';
import { leanOf } from '../../../../src/engine/questions/leaning/lean.ts';
import { ofMatterNear } from '../../../../src/engine/questions/leaning/near-turns.ts';
import { sentencesOf } from '../../../../src/engine/questions/leaning/parts/part-of.ts';
import {
  gramsOf,
  mayChangeRecipe,
  oilsAlone,
} from '../../../../src/engine/questions/leaning/recipes/recipe.ts';
import { weightsPutRight } from '../../../../src/engine/questions/leaning/recipes/recipe-put-right.ts';
import {
  swapLaid,
  takesOilAway,
  tellsOilOff,
  waterLaid,
} from '../../../../src/engine/questions/leaning/recipes/recipe-swaps.ts';
import { isSoMuchOver } from '../../../../src/engine/questions/leaning/recipes/recipe-turns.ts';
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
import { holderNamed, subjectAfter } from '../../../../src/engine/questions/leaning/subject/subject.ts';
import { cameOut } from '../../../../src/engine/questions/leaning/turn/came-out.ts';
import { halfPlain } from '../../../../src/engine/questions/leaning/turn/half-plain.ts';
import { openedTurn, plainTurn } from '../../../../src/engine/questions/leaning/turn/plain.ts';
import { slotsOf } from '../../../../src/engine/questions/leaning/turn/slots.ts';
import {
  fineTurn,
  languageTurn,
  oilTurn,
  partSwapTurn,
  swapTurn,
} from '../../../../src/engine/questions/leaning/turn/turns.ts';
import { asData } from '../../as-data.ts';
import { BEFORE, talkAfter } from './before.ts';

/*
 * What each reader makes of a turn, alone or behind what was asked before (turns of the talks and of the tests beside): what it takes as
 * going on, and what it leaves. As read when this was written, and looked over for what is plainly wrong.
 */

const STEPS = {
  aspectIn: (text: string) => aspectIn(text),
  aspectByWords: (text: string) => aspectByWords(text),
  askedIn: (text: string) => askedIn(text),
  namesOil: (text: string) => namesOil(text),
  namesOilOrFigure: (text: string) => namesOilOrFigure(text),
  saysOtherwise: (text: string) => saysOtherwise(text),
  tellsOfPoured: (text: string) => tellsOfPoured(text),
  asksOfSuds: (text: string) => asksOfSuds(text),
  onlyTells: (text: string) => onlyTells(text),
  tellsWhatItBecame: (text: string) => tellsWhatItBecame(text),
  isOfAmount: (text: string) => isOfAmount(text),
  cameOut: ([before, turn]: [string, string]) => cameOut(turn, BEFORE[before]!),
  isAsked: (text: string) => isAsked(text),
  turnsToAnother: (text: string) => turnsToAnother(text),
  objects: (text: string) => objects(text),
  asksWhetherLye: (text: string) => asksWhetherLye(text),
  askedInDanger: ([danger, turn]: [Danger, string]) => askedInDanger(turn, danger),
  halfPlain: (text: string) => halfPlain(text),
  namesItsOwn: (text: string) => namesItsOwn(text),
  mayNeedContext: (text: string) => mayNeedContext(text),
  lackOf: (text: string) => lackOf(slotsOf(openedTurn(text)!)!),
  unnamed: (text: string) => unnamed(slotsOf(openedTurn(text)!)!),
  leanOf: ([before, turn]: [string, string]) => leanOf(turn, talkAfter(before)),
  ofMatterNear: ([before, turn]: [string, string]) => ofMatterNear(turn, talkAfter(before)),
  sentencesOf: (text: string) => sentencesOf(text),
  openedTurn: (text: string) => openedTurn(text),
  plainTurn: (text: string) => plainTurn(text),
  pointsBack: (text: string) => pointsBack(text),
  isStillHurt: (text: string) => isStillHurt(text),
  isOfNothingElse: (text: string) => isOfNothingElse(text),
  asksForAcid: (text: string) => asksForAcid(text),
  hasMetMetal: (text: string) => hasMetMetal(text),
  isOnClothes: (text: string) => isOnClothes(text),
  isOnSurfaceToo: (text: string) => isOnSurfaceToo(text),
  isOnSurface: (text: string) => isOnSurface(text),
  isSkinStillHurt: (text: string) => isSkinStillHurt(text),
  weightsPutRight: ([before, turn]: [string, string]) => weightsPutRight(turn, BEFORE[before]!),
  swapLaid: ([before, turn]: [string, string]) => swapLaid(turn, BEFORE[before]!),
  waterLaid: ([before, turn]: [string, string]) => waterLaid(turn, BEFORE[before]!),
  takesOilAway: (text: string) => takesOilAway(text),
  tellsOilOff: (text: string) => tellsOilOff(text),
  isSoMuchOver: (text: string) => isSoMuchOver(text),
  oilsAlone: (text: string) => oilsAlone(text),
  gramsOf: (text: string) => gramsOf(text),
  mayChangeRecipe: ([before, turn]: [string, string]) => mayChangeRecipe(BEFORE[before]!, turn),
  slotsOf: (text: string) => slotsOf(openedTurn(text)!),
  subjectAfter: ([before, turn]: [string, string]) =>
    subjectAfter(undefined, { text: turn, ran: turn.length % 2 === 1 ? BEFORE[before]! : undefined }),
  holderNamed: (text: string) => holderNamed(text),
  languageTurn: (text: string) => languageTurn(text),
  partSwapTurn: (text: string) => partSwapTurn(text),
  swapTurn: (text: string) => swapTurn(text),
  oilTurn: (text: string) => oilTurn(text),
  fineTurn: (text: string) => fineTurn(openedTurn(text)!),
} as const;

const rows = JSON.parse(readFileSync(new URL('steps.json', import.meta.url), 'utf8')) as Record<
  keyof typeof STEPS,
  readonly (readonly [input: never, told: unknown])[]
>;

test.each(Object.keys(STEPS) as (keyof typeof STEPS)[])('a reader of turns: %s', step => {
  const told = rows[step].map(([input]) => ({ input, told: asData(() => STEPS[step](input)) }));
  expect(told).toEqual(rows[step].map(([input, one]) => ({ input, told: one })));
});
