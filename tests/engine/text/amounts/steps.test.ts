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
import { holdRecorded } from '../../recorded.ts';

/*
 * What each reader makes of amounts as makers write them (texts of the sets and of the tests beside): what it reads, and what it leaves to
 * the next. As read when this was written, and looked over for what is plainly wrong.
 */

const STEPS = {
  amountAlone,
  amountAmongWords,
  withoutAsides,
  amountPhrase,
  piecesOf,
  hedged,
  withoutRemark,
  unframed,
  isEverydayWord,
  isHarmlessWord,
  mayChangeAmount,
  readOff,
  layersIn,
  layersSaid,
  placedLayers,
  leadingAmount,
  leadingBatter,
  figuresOf,
  placed: (text: string) => placed(tokensOf(text)!),
  placedByClause,
  resting,
  stacked: (text: string) => stacked(tokensOf(text)!),
  coloursIn: (text: string) => coloursIn(tokensOf(text)!),
  tokensOf,
  portionsAmongWords,
  isPlainDivision,
  powderFromFigure,
  colourantAmongWords,
  isChangedBeside,
  readPowder,
  powderSaid,
  restated,
  shareAt,
  bare,
  listedShares,
  sharesPhrase,
  wordedShares,
  tidiedShares,
  sharesSaid,
  spokenAmounts,
  listed,
  isAnyOil,
  isStopWord,
  isVesselWord,
  isPieceWord,
  isEachWord,
  thousandsPlain,
  toldAmount,
  sizeBeside,
  portionBeside,
  withHundreds,
  withUpperEnd,
} as const;

holdRecorded('a reader of amounts', { steps: STEPS, folder: import.meta.dirname });
