import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
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
import { prepared, scentsOf, withPounds } from '../../../../../src/engine/questions/lye/amounts/prepared.ts';
import { tokensOf } from '../../../../../src/engine/questions/lye/amounts/recipe-tokens.ts';
import { gramsOf, Remaining } from '../../../../../src/engine/questions/lye/amounts/words.ts';
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
import {
  oilOfNoFat,
  spoonOfLye,
} from '../../../../../src/engine/questions/lye/recipe-line/doubts/strange-amounts.ts';
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
import { asData } from '../../../as-data.ts';

/*
 * What each step makes of recipes as makers chat them (texts of the sets and of the tests beside): which words are weights, names and talk,
 * what is taken out, what stays. As read when this was written, and looked over for what is plainly wrong; a step that goes takes its rows along.
 */

const STEPS = {
  addedIn: (text: string) => addedIn(new Remaining(text)),
  alkaliIn: (text: string) => alkaliIn(new Remaining(text)),
  amountsFirst: (text: string) => amountsFirst(text),
  inOrder: (text: string) => inOrder(text),
  superfatIn: (text: string) => superfatIn(new Remaining(text)),
  waterIn: (text: string) => waterIn(new Remaining(text)),
  withOneMore: (text: string) => withOneMore(text),
  asTyped: (text: string) => asTyped(text),
  isNearOil: (text: string) => isNearOil(text),
  oilWordsMeant: (text: string) => oilWordsMeant(text),
  nearestOilWord: (text: string) => nearestOilWord(text),
  isEveryday: (text: string) => isEveryday(text),
  isPlain: (text: string) => isPlain(text),
  withBrackets: (text: string) => withBrackets(text),
  oilsAmongWords: (text: string) => oilsAmongWords(text),
  clausesOfOils: (text: string) => clausesOfOils(text),
  isIdleWord: (text: string) => isIdleWord(text),
  scentsOf: (text: string) => scentsOf(text),
  withPounds: (text: string) => withPounds(text),
  prepared: (text: string) => prepared(text),
  tokensOf: (text: string) => tokensOf(text),
  gramsOf: (text: string) => gramsOf(text),
  isHarmlessBesideOil: (text: string) => isHarmlessBesideOil(text),
  absenceIn: (text: string) => absenceIn(text),
  notSureOf: (text: string) => notSureOf(text),
  carbonateAsLye: (text: string) => carbonateAsLye(text),
  hydroxideUnknown: (text: string) => hydroxideUnknown(text),
  oilLostIn: (text: string) => oilLostIn(text),
  isOilLostBeforeLye: (text: string) => isOilLostBeforeLye(text),
  placesIn: (text: string) => placesIn(text),
  refusePotsCompared: (text: string) => refusePotsCompared(text),
  saidBehind: (text: string) => saidBehind(itemsOf(text)),
  softSoapIn: (text: string) => softSoapIn(text),
  oilOfNoFat: (text: string) => oilOfNoFat(itemsOf(text)),
  spoonOfLye: (text: string) => spoonOfLye(itemsOf(text)),
  takenBackIn: (text: string) => takenBackIn(itemsOf(text)),
  apart: (text: string) => apart(partsOf(itemsOf(text))),
  asListed: (text: string) => asListed(text),
  beyondIn: (text: string) => beyondIn(text),
  superfatTold: (text: string) => superfatTold(text),
  isRequest: (text: string) => isRequest(text),
  itemsOf: (text: string) => itemsOf(text),
  weighedOils: (text: string) => weighedOils(itemsOf(text)),
  wordsBeside: (text: string) => wordsBeside(itemsOf(text)),
  isLostWord: (text: string) => isLostWord(text),
  isPlainRecipe: (text: string) => isPlainRecipe(text),
  asksForLyeOf: (text: string) => asksForLyeOf(text),
  tellsOfHarm: (text: string) => tellsOfHarm(text),
  asksForLyeOfWeighed: (text: string) => asksForLyeOfWeighed(text),
  weighsAnOilTwice: (text: string) => weighsAnOilTwice(text),
  recipeLine: (text: string) => recipeLine(text),
  withFatLeftOver: (text: string) => withFatLeftOver(text),
  fixedIn: (text: string) => fixedIn(text),
  toldIn: (text: string) => toldIn(text),
  isMeantThenTold: (text: string) => isMeantThenTold(itemsOf(text)),
  partsOf: (text: string) => partsOf(itemsOf(text)),
  pairsOf: (text: string) => pairsOf(itemsOf(text), undefined),
  ratioIn: (text: string) => ratioIn(itemsOf(text)),
  timesOf: (text: string) => timesOf(text),
  withWhole: (text: string) => withWhole(text),
  withoutAskedOfOil: (text: string) => withoutAskedOfOil(text),
  benchSaid: (text: string) => benchSaid(text),
  isOfElse: (text: string) => isOfElse(text),
  withoutElse: (text: string) => withoutElse(text),
  withoutSetAside: (text: string) => withoutSetAside(text),
  withoutFormerSoap: (text: string) => withoutFormerSoap(text),
  askedPlainly: (text: string) => askedPlainly(text),
  withoutTalk: (text: string) => withoutTalk(text),
  withoutLeftOut: (text: string) => withoutLeftOut(text),
  withoutOthers: (text: string) => withoutOthers(itemsOf(text)),
  withoutMistold: (text: string) => withoutMistold(text),
  withoutStock: (text: string) => withoutStock(text),
  withOwnPound: (text: string) => withOwnPound(text),
  withoutScents: (text: string) => withoutScents(text),
  withoutToldOfOil: (text: string) => withoutToldOfOil(text),
} as const;

const rows = JSON.parse(readFileSync(new URL('steps.json', import.meta.url), 'utf8')) as Record<
  keyof typeof STEPS,
  readonly (readonly [input: never, told: unknown])[]
>;

test.each(Object.keys(STEPS) as (keyof typeof STEPS)[])('a step of reading a recipe: %s', step => {
  const told = rows[step].map(([input]) => ({ input, told: asData(() => STEPS[step](input)) }));
  expect(told).toEqual(rows[step].map(([input, one]) => ({ input, told: one })));
});
