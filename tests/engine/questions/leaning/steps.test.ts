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
import { holdRecorded } from '../../recorded.ts';
import { BEFORE, talkAfter } from './before.ts';

/*
 * What each reader makes of a turn, alone or behind what was asked before (turns of the talks and of the tests beside): what it takes as
 * going on, and what it leaves. As read when this was written, and looked over for what is plainly wrong.
 */

const STEPS = {
  aspectIn,
  aspectByWords,
  askedIn,
  namesOil,
  namesOilOrFigure,
  saysOtherwise,
  tellsOfPoured,
  asksOfSuds,
  onlyTells,
  tellsWhatItBecame,
  isOfAmount,
  cameOut: ([before, turn]: [string, string]) => cameOut(turn, BEFORE[before]!),
  isAsked,
  turnsToAnother,
  objects,
  asksWhetherLye,
  askedInDanger: ([danger, turn]: [Danger, string]) => askedInDanger(turn, danger),
  halfPlain,
  namesItsOwn,
  mayNeedContext,
  lackOf: (text: string) => lackOf(slotsOf(openedTurn(text)!)!),
  unnamed: (text: string) => unnamed(slotsOf(openedTurn(text)!)!),
  leanOf: ([before, turn]: [string, string]) => leanOf(turn, talkAfter(before)),
  ofMatterNear: ([before, turn]: [string, string]) => ofMatterNear(turn, talkAfter(before)),
  openedTurn,
  plainTurn,
  pointsBack,
  isStillHurt,
  isOfNothingElse,
  asksForAcid,
  hasMetMetal,
  isOnClothes,
  isOnSurfaceToo,
  isOnSurface,
  isSkinStillHurt,
  weightsPutRight: ([before, turn]: [string, string]) => weightsPutRight(turn, BEFORE[before]!),
  swapLaid: ([before, turn]: [string, string]) => swapLaid(turn, BEFORE[before]!),
  waterLaid: ([before, turn]: [string, string]) => waterLaid(turn, BEFORE[before]!),
  takesOilAway,
  tellsOilOff,
  isSoMuchOver,
  oilsAlone,
  gramsOf,
  mayChangeRecipe: ([before, turn]: [string, string]) => mayChangeRecipe(BEFORE[before]!, turn),
  slotsOf: (text: string) => slotsOf(openedTurn(text)!),
  subjectAfter: ([before, turn]: [string, string]) =>
    subjectAfter(undefined, { text: turn, ran: turn.length % 2 === 1 ? BEFORE[before]! : undefined }),
  holderNamed,
  languageTurn,
  partSwapTurn,
  swapTurn,
  oilTurn,
  fineTurn: (text: string) => fineTurn(openedTurn(text)!),
} as const;

holdRecorded('a reader of turns', { steps: STEPS, folder: import.meta.dirname });
