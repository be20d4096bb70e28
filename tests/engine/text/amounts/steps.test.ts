import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { amountPhrase } from '../../../../src/engine/quantities/spoken/amount-phrases.ts';
import { hedged, unframed, withoutRemark } from '../../../../src/engine/quantities/spoken/amount-remarks.ts';
import { figuresOf } from '../../../../src/engine/quantities/spoken/number-words.ts';
import { piecesOf } from '../../../../src/engine/quantities/spoken/pieces.ts';
import { spokenAmounts } from '../../../../src/engine/quantities/spoken/spoken-amounts.ts';
import { amountAlone } from '../../../../src/engine/text/amounts/amount-alone.ts';
import { amountAmongWords } from '../../../../src/engine/text/amounts/amount-among-words.ts';
import { withoutAsides } from '../../../../src/engine/text/amounts/amount-asides.ts';
import {
  isEverydayWord,
  isHarmlessWord,
  mayChangeAmount,
} from '../../../../src/engine/text/amounts/everyday-words.ts';
import { readOff } from '../../../../src/engine/text/amounts/filled-to.ts';
import { layersIn } from '../../../../src/engine/text/amounts/layers/layer-phrases.ts';
import { layersSaid } from '../../../../src/engine/text/amounts/layers/layers-said.ts';
import { placedLayers } from '../../../../src/engine/text/amounts/layers/placed-layers.ts';
import { leadingAmount, leadingBatter } from '../../../../src/engine/text/amounts/leading-amount.ts';
import {
  coloursIn,
  placed,
  placedByClause,
  resting,
  stacked,
} from '../../../../src/engine/text/amounts/portions/portion-places.ts';
import { tokensOf } from '../../../../src/engine/text/amounts/portions/portion-tokens.ts';
import {
  isPlainDivision,
  portionsAmongWords,
} from '../../../../src/engine/text/amounts/portions/portions-among-words.ts';
import {
  colourantAmongWords,
  isChangedBeside,
  powderFromFigure,
} from '../../../../src/engine/text/amounts/powders/powder-among-words.ts';
import { readPowder } from '../../../../src/engine/text/amounts/powders/powder-phrase.ts';
import { powderSaid } from '../../../../src/engine/text/amounts/powders/powder-said.ts';
import { restated } from '../../../../src/engine/text/amounts/restated.ts';
import { bare, shareAt } from '../../../../src/engine/text/amounts/shares/share-at.ts';
import { listedShares } from '../../../../src/engine/text/amounts/shares/share-lists.ts';
import { sharesPhrase } from '../../../../src/engine/text/amounts/shares/share-phrases.ts';
import { tidiedShares, wordedShares } from '../../../../src/engine/text/amounts/shares/share-wordings.ts';
import { sharesSaid } from '../../../../src/engine/text/amounts/shares/shares-said.ts';
import {
  isAnyOil,
  isEachWord,
  isPieceWord,
  isStopWord,
  isVesselWord,
  listed,
} from '../../../../src/engine/text/amounts/stop-words.ts';
import { thousandsPlain } from '../../../../src/engine/text/amounts/thousands.ts';
import { toldAmount } from '../../../../src/engine/text/amounts/told-amount.ts';
import { portionBeside, sizeBeside, withHundreds } from '../../../../src/engine/text/amounts/told-beside.ts';
import { withUpperEnd } from '../../../../src/engine/text/amounts/upper-end.ts';
import { asData } from '../../as-data.ts';

/*
 * What each reader makes of amounts as makers write them (texts of the sets and of the tests beside): what it reads, and what it leaves to
 * the next. As read when this was written, and looked over for what is plainly wrong.
 */

const STEPS = {
  amountAlone: (text: string) => amountAlone(text),
  amountAmongWords: (text: string) => amountAmongWords(text),
  withoutAsides: (text: string) => withoutAsides(text),
  amountPhrase: (text: string) => amountPhrase(text),
  piecesOf: (text: string) => piecesOf(text),
  hedged: (text: string) => hedged(text),
  withoutRemark: (text: string) => withoutRemark(text),
  unframed: (text: string) => unframed(text),
  isEverydayWord: (text: string) => isEverydayWord(text),
  isHarmlessWord: (text: string) => isHarmlessWord(text),
  mayChangeAmount: (text: string) => mayChangeAmount(text),
  readOff: (text: string) => readOff(text),
  layersIn: (text: string) => layersIn(text),
  layersSaid: (text: string) => layersSaid(text),
  placedLayers: (text: string) => placedLayers(text),
  leadingAmount: (text: string) => leadingAmount(text),
  leadingBatter: (text: string) => leadingBatter(text),
  figuresOf: (text: string) => figuresOf(text),
  placed: (text: string) => placed(tokensOf(text)!),
  placedByClause: (text: string) => placedByClause(text),
  resting: (text: string) => resting(text),
  stacked: (text: string) => stacked(tokensOf(text)!),
  coloursIn: (text: string) => coloursIn(tokensOf(text)!),
  tokensOf: (text: string) => tokensOf(text),
  portionsAmongWords: (text: string) => portionsAmongWords(text),
  isPlainDivision: (text: string) => isPlainDivision(text),
  powderFromFigure: (text: string) => powderFromFigure(text),
  colourantAmongWords: (text: string) => colourantAmongWords(text),
  isChangedBeside: (text: string) => isChangedBeside(text),
  readPowder: (text: string) => readPowder(text),
  powderSaid: (text: string) => powderSaid(text),
  restated: (text: string) => restated(text),
  shareAt: (text: string) => shareAt(text),
  bare: (text: string) => bare(text),
  listedShares: (text: string) => listedShares(text),
  sharesPhrase: (text: string) => sharesPhrase(text),
  wordedShares: (text: string) => wordedShares(text),
  tidiedShares: (text: string) => tidiedShares(text),
  sharesSaid: (text: string) => sharesSaid(text),
  spokenAmounts: (text: string) => spokenAmounts(text),
  listed: (text: string) => listed(text),
  isAnyOil: (text: string) => isAnyOil(text),
  isStopWord: (text: string) => isStopWord(text),
  isVesselWord: (text: string) => isVesselWord(text),
  isPieceWord: (text: string) => isPieceWord(text),
  isEachWord: (text: string) => isEachWord(text),
  thousandsPlain: (text: string) => thousandsPlain(text),
  toldAmount: (text: string) => toldAmount(text),
  sizeBeside: (text: string) => sizeBeside(text),
  portionBeside: (text: string) => portionBeside(text),
  withHundreds: (text: string) => withHundreds(text),
  withUpperEnd: (text: string) => withUpperEnd(text),
} as const;

const rows = JSON.parse(readFileSync(new URL('steps.json', import.meta.url), 'utf8')) as Record<
  keyof typeof STEPS,
  readonly (readonly [input: never, told: unknown])[]
>;

test.each(Object.keys(STEPS) as (keyof typeof STEPS)[])('a reader of amounts: %s', step => {
  const told = rows[step].map(([input]) => ({ input, told: asData(() => STEPS[step](input)) }));
  expect(told).toEqual(rows[step].map(([input, one]) => ({ input, told: one })));
});
