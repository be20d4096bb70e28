import { addedIn } from '../../../../../src/engine/questions/lye/amounts/added.ts';
import { alkaliIn } from '../../../../../src/engine/questions/lye/amounts/alkali.ts';
import { superfatIn, waterIn } from '../../../../../src/engine/questions/lye/amounts/amounts.ts';
import { amountsFirst, inOrder } from '../../../../../src/engine/questions/lye/amounts/amounts-first.ts';
import { asTyped, withOneMore } from '../../../../../src/engine/questions/lye/amounts/as-typed.ts';
import {
  isEveryday,
  isNearOil,
  isPlain,
  nearestOilWord,
  oilWordsMeant,
} from '../../../../../src/engine/questions/lye/amounts/chat-words.ts';
import { withBrackets } from '../../../../../src/engine/questions/lye/amounts/in-brackets.ts';
import { isIdleWord } from '../../../../../src/engine/questions/lye/amounts/oils.ts';
import {
  clausesOfOils,
  oilsAmongWords,
} from '../../../../../src/engine/questions/lye/amounts/oils-among-words.ts';
import {
  PREPARING,
  prepared,
  scentsOf,
  through,
} from '../../../../../src/engine/questions/lye/amounts/prepared.ts';
import { tokensOf } from '../../../../../src/engine/questions/lye/amounts/recipe-tokens.ts';
import { gramsOf, Remaining } from '../../../../../src/engine/questions/lye/amounts/words.ts';
import {
  oilOfNoFat,
  spoonOfLye,
} from '../../../../../src/engine/questions/lye/recipe-line/doubts/amounts/strange-amounts.ts';
import {
  absenceIn,
  isHarmlessBesideOil,
} from '../../../../../src/engine/questions/lye/recipe-line/doubts/beside-oils.ts';
import { notSureOf } from '../../../../../src/engine/questions/lye/recipe-line/doubts/not-sure.ts';
import {
  carbonateAsLye,
  hydroxideUnknown,
} from '../../../../../src/engine/questions/lye/recipe-line/doubts/not-the-lye.ts';
import {
  isOilLostBeforeLye,
  oilLostIn,
} from '../../../../../src/engine/questions/lye/recipe-line/doubts/oil-lost.ts';
import { placesIn } from '../../../../../src/engine/questions/lye/recipe-line/doubts/places-in-list.ts';
import { refusePotsCompared } from '../../../../../src/engine/questions/lye/recipe-line/doubts/pots-compared.ts';
import { saidBehind } from '../../../../../src/engine/questions/lye/recipe-line/doubts/said-behind.ts';
import { softSoapIn } from '../../../../../src/engine/questions/lye/recipe-line/doubts/soft-soap.ts';
import { takenBackIn } from '../../../../../src/engine/questions/lye/recipe-line/doubts/taken-back.ts';
import { apart } from '../../../../../src/engine/questions/lye/recipe-line/doubts/vessels.ts';
import { asListed } from '../../../../../src/engine/questions/lye/recipe-line/items/as-listed.ts';
import { beyondIn } from '../../../../../src/engine/questions/lye/recipe-line/items/beyond-reading.ts';
import { superfatTold } from '../../../../../src/engine/questions/lye/recipe-line/items/fat-unread.ts';
import { isRequest } from '../../../../../src/engine/questions/lye/recipe-line/items/harmless-words.ts';
import { itemsOf } from '../../../../../src/engine/questions/lye/recipe-line/items/items.ts';
import { weighedOils } from '../../../../../src/engine/questions/lye/recipe-line/items/weighed-oils.ts';
import {
  isLostWord,
  wordsBeside,
} from '../../../../../src/engine/questions/lye/recipe-line/items/words-beside.ts';
import {
  asksForLyeOf,
  isPlainRecipe,
  tellsOfHarm,
} from '../../../../../src/engine/questions/lye/recipe-line/plain-recipe.ts';
import {
  asksForLyeOfWeighed,
  weighsAnOilTwice,
} from '../../../../../src/engine/questions/lye/recipe-line/recipe-asked.ts';
import { recipeLine } from '../../../../../src/engine/questions/lye/recipe-line/recipe-line.ts';
import { withFatLeftOver } from '../../../../../src/engine/questions/lye/recipe-line/settling/fat-left-over.ts';
import { fixedIn } from '../../../../../src/engine/questions/lye/recipe-line/settling/fixed-figures.ts';
import { toldIn } from '../../../../../src/engine/questions/lye/recipe-line/settling/ingredients-told.ts';
import { isMeantThenTold } from '../../../../../src/engine/questions/lye/recipe-line/settling/meant-then-told.ts';
import { pairsOf, partsOf } from '../../../../../src/engine/questions/lye/recipe-line/settling/parts.ts';
import { ratioIn } from '../../../../../src/engine/questions/lye/recipe-line/settling/ratio.ts';
import { timesOf } from '../../../../../src/engine/questions/lye/recipe-line/settling/times.ts';
import { withWhole } from '../../../../../src/engine/questions/lye/recipe-line/settling/whole-of-one.ts';
import { withoutAskedOfOil } from '../../../../../src/engine/questions/lye/recipe-line/talk/asked-of-oil.ts';
import { benchSaid } from '../../../../../src/engine/questions/lye/recipe-line/talk/bench-said.ts';
import {
  isOfElse,
  withoutElse,
  withoutSetAside,
} from '../../../../../src/engine/questions/lye/recipe-line/talk/clauses-of-else.ts';
import { withoutFormerSoap } from '../../../../../src/engine/questions/lye/recipe-line/talk/former-soap.ts';
import { askedPlainly } from '../../../../../src/engine/questions/lye/recipe-line/talk/how-it-is-written.ts';
import { withoutTalk } from '../../../../../src/engine/questions/lye/recipe-line/talk/idle-talk.ts';
import { withoutLeftOut } from '../../../../../src/engine/questions/lye/recipe-line/talk/left-out.ts';
import { withoutOthers } from '../../../../../src/engine/questions/lye/recipe-line/talk/mentions.ts';
import { withoutMistold } from '../../../../../src/engine/questions/lye/recipe-line/talk/mistold.ts';
import { withoutStock } from '../../../../../src/engine/questions/lye/recipe-line/talk/oil-stock.ts';
import { withOwnPound } from '../../../../../src/engine/questions/lye/recipe-line/talk/own-pound.ts';
import { withoutScents } from '../../../../../src/engine/questions/lye/recipe-line/talk/scents.ts';
import { withoutToldOfOil } from '../../../../../src/engine/questions/lye/recipe-line/talk/told-of-oil.ts';
import { holdRecorded } from '../../../recorded.ts';

/*
 * What each step makes of recipes as makers chat them (texts of the sets and of the tests beside): which words are weights, names and talk,
 * what is taken out, what stays. As read when this was written, and looked over for what is plainly wrong; a step that goes takes its rows along.
 */

const STEPS = {
  addedIn: (text: string) => addedIn(new Remaining(text)),
  alkaliIn: (text: string) => {
    const { lye, ...told } = alkaliIn(new Remaining(text));
    return { ...told, potassium: lye.alkali === 'KOH' };
  },
  amountsFirst,
  inOrder,
  superfatIn: (text: string) => superfatIn(new Remaining(text)),
  waterIn: (text: string) => waterIn(new Remaining(text)),
  withOneMore,
  asTyped,
  isNearOil,
  oilWordsMeant,
  nearestOilWord,
  isEveryday,
  isPlain,
  withBrackets,
  oilsAmongWords,
  clausesOfOils,
  isIdleWord,
  scentsOf,
  withPounds: (text: string) => through(PREPARING.slice(0, 3), text),
  prepared,
  tokensOf,
  gramsOf,
  isHarmlessBesideOil,
  absenceIn,
  notSureOf,
  carbonateAsLye,
  hydroxideUnknown,
  oilLostIn,
  isOilLostBeforeLye,
  placesIn,
  refusePotsCompared,
  saidBehind: (text: string) => saidBehind(itemsOf(text)),
  softSoapIn,
  oilOfNoFat: (text: string) => oilOfNoFat(itemsOf(text)),
  spoonOfLye: (text: string) => spoonOfLye(itemsOf(text)),
  takenBackIn: (text: string) => takenBackIn(itemsOf(text)),
  apart: (text: string) => apart(partsOf(itemsOf(text))),
  asListed,
  beyondIn,
  superfatTold,
  isRequest,
  itemsOf,
  weighedOils: (text: string) => weighedOils(itemsOf(text)),
  wordsBeside: (text: string) => wordsBeside(itemsOf(text)),
  isLostWord,
  isPlainRecipe,
  asksForLyeOf,
  tellsOfHarm,
  asksForLyeOfWeighed,
  weighsAnOilTwice,
  recipeLine,
  withFatLeftOver,
  fixedIn,
  toldIn,
  isMeantThenTold: (text: string) => isMeantThenTold(itemsOf(text)),
  partsOf: (text: string) => partsOf(itemsOf(text)),
  pairsOf: (text: string) => pairsOf(itemsOf(text), undefined),
  ratioIn: (text: string) => ratioIn(itemsOf(text)),
  timesOf,
  withWhole,
  withoutAskedOfOil,
  benchSaid,
  isOfElse,
  withoutElse,
  withoutSetAside,
  withoutFormerSoap,
  askedPlainly,
  withoutTalk,
  withoutLeftOut,
  withoutOthers: (text: string) => withoutOthers(itemsOf(text)),
  withoutMistold,
  withoutStock,
  withOwnPound,
  withoutScents,
  withoutToldOfOil,
} as const;

holdRecorded('a step of reading a recipe', { steps: STEPS, folder: import.meta.dirname });
