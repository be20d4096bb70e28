import { askedPart, askingPart } from '../../../src/engine/questions/asking/asked-part.ts';
import { asksIn } from '../../../src/engine/questions/asking/asks.ts';
import { asksCalmly } from '../../../src/engine/questions/asking/asks-calmly.ts';
import { isTalk, speaksOfTrade } from '../../../src/engine/questions/asking/of-trade.ts';
import { piecesOf } from '../../../src/engine/questions/asking/pieces.ts';
import { asksWhatItDoes } from '../../../src/engine/questions/asking/what-it-does.ts';
import { courtesyIn } from '../../../src/engine/questions/fields/courtesy.ts';
import { plainlyElsewhere, withoutLikenesses } from '../../../src/engine/questions/fields/elsewhere.ts';
import { isOurs } from '../../../src/engine/questions/fields/field-of.ts';
import { isOfTheSkin } from '../../../src/engine/questions/fields/of-the-skin.ts';
import { tellsOfMakingSoap } from '../../../src/engine/questions/fields/other-field.ts';
import { isHotProcess, outsideField } from '../../../src/engine/questions/fields/scope.ts';
import { mayBeOfShelf } from '../../../src/engine/questions/fields/shelf-words.ts';
import { pastAside, smallTalkIn } from '../../../src/engine/questions/fields/small-talk.ts';
import { isSurelyOurs } from '../../../src/engine/questions/fields/surely-ours.ts';
import { heldWhateverIsMeant } from '../../../src/engine/questions/fields/unsure.ts';
import { amountJudged } from '../../../src/engine/questions/found/amount-judged.ts';
import { amountsIn, isOil } from '../../../src/engine/questions/found/amounts.ts';
import { askedOfNamed } from '../../../src/engine/questions/found/asked/asked-of-named.ts';
import { asksItsColour } from '../../../src/engine/questions/found/asked/asks-its-colour.ts';
import { hueAsked } from '../../../src/engine/questions/found/asked/hue-asked.ts';
import { plantAsked } from '../../../src/engine/questions/found/asked/plant-asked.ts';
import { isBarredScent, scentsAsked } from '../../../src/engine/questions/found/asked/scent-asked.ts';
import { staysOut } from '../../../src/engine/questions/found/asked/stays-out.ts';
import { survivalAsked } from '../../../src/engine/questions/found/asked/survives.ts';
import { carrierIn } from '../../../src/engine/questions/found/carrier-told.ts';
import { foundIn } from '../../../src/engine/questions/found/found-in.ts';
import { thingsIn } from '../../../src/engine/questions/found/names/entities.ts';
import { kindAlone } from '../../../src/engine/questions/found/names/kind-alone.ts';
import { kitchenColoursNamed } from '../../../src/engine/questions/found/names/kitchen-colours.ts';
import { withSharedHead } from '../../../src/engine/questions/found/names/shared-head.ts';
import { plantsBeside, unlistedIn } from '../../../src/engine/questions/found/names/unlisted.ts';
import { oilsIn } from '../../../src/engine/questions/found/oils-in.ts';
import { strengthIn } from '../../../src/engine/questions/found/strength/strength-in.ts';
import { whiteBeside } from '../../../src/engine/questions/found/strength/white-beside.ts';
import { targetIn, wishIn, wishOfThing } from '../../../src/engine/questions/found/target-in.ts';
import { termAsked } from '../../../src/engine/questions/found/trade-terms.ts';
import { wordsOf } from '../../../src/engine/questions/found/words-of.ts';
import { asksOfContest } from '../../../src/engine/questions/jobs/contest-asked.ts';
import { asksForDose } from '../../../src/engine/questions/jobs/dose-by-phrase.ts';
import { jobByPhrase } from '../../../src/engine/questions/jobs/job-by-phrase.ts';
import { plainJobOf } from '../../../src/engine/questions/jobs/plain-job.ts';
import { plainRequest } from '../../../src/engine/questions/jobs/plain-requests.ts';
import { isOfCraft, topicOf, topicsIn } from '../../../src/engine/questions/learned/topics.ts';
import { otherCountryIn } from '../../../src/engine/questions/places/countries.ts';
import { regionIn } from '../../../src/engine/questions/places/regions.ts';
import { languageOfQuestion } from '../../../src/engine/questions/question-language.ts';
import { readQuestion } from '../../../src/engine/questions/read.ts';
import { settled as settledWords } from '../../../src/engine/questions/settled.ts';
import { benchAsked } from '../../../src/engine/questions/technique/bench-asked.ts';
import { isPlainMix, isWishedWith } from '../../../src/engine/questions/technique/mix-wished.ts';
import { outrightIn } from '../../../src/engine/questions/technique/outright/read.ts';
import { putsTwoTogether } from '../../../src/engine/questions/technique/two-hues.ts';
import { warmthTold } from '../../../src/engine/questions/technique/warmth.ts';
import { holdRecorded } from '../recorded.ts';

/*
 * What each reader makes of questions (texts of the sets and of the tests beside): what it finds in them, and what it leaves to another. What
 * is learned from texts is not among them. As read when this was written, and looked over for what is plainly wrong.
 */

function askedIn(question: string) {
  const typed = wordsOf(question);
  const things = thingsIn(typed);
  const words = settledWords(typed, things);
  return { words, things, amounts: amountsIn(words, things) };
}

const STEPS = {
  askedPart,
  askingPart,
  asksCalmly,
  asksIn,
  speaksOfTrade,
  isTalk,
  piecesOf,
  asksWhatItDoes,
  courtesyIn,
  plainlyElsewhere,
  withoutLikenesses,
  isOurs: (text: string) => isOurs(foundIn(text).words, foundIn(text).found),
  isOfTheSkin,
  tellsOfMakingSoap,
  outsideField,
  isHotProcess,
  mayBeOfShelf,
  smallTalkIn,
  pastAside,
  isSurelyOurs: (text: string) => isSurelyOurs(foundIn(text).words, foundIn(text).found),
  heldWhateverIsMeant,
  amountJudged: (text: string) => amountJudged(text, readQuestion(text).facts),
  amountsIn: (text: string) => amountsIn(askedIn(text).words, askedIn(text).things),
  isOil: ([words, at]: [readonly string[], number]) => isOil(words, at),
  askedOfNamed: (text: string) => askedOfNamed(text, readQuestion(text).facts),
  asksItsColour: (text: string) => asksItsColour(text, readQuestion(text)),
  carrierIn,
  thingsIn: (text: string) => thingsIn(askedIn(text).words),
  hueAsked,
  kindAlone: (text: string) => kindAlone(askedIn(text).words),
  kitchenColoursNamed,
  oilsIn: (text: string) => oilsIn(askedIn(text).words, askedIn(text).amounts),
  plantAsked: (text: string) => plantAsked(askedIn(text).words, askedIn(text).things),
  scentsAsked: (text: string) => scentsAsked(text, readQuestion(text)),
  isBarredScent: (text: string) => isBarredScent(text, readQuestion(text)),
  withSharedHead,
  staysOut: (text: string) => staysOut(text, readQuestion(text)),
  strengthIn: (text: string) => strengthIn(askedIn(text).words, askedIn(text).things),
  survivalAsked,
  targetIn: (text: string) => targetIn(text, askedIn(text).words, askedIn(text).things),
  wishIn: (text: string) => wishIn(askedIn(text).words, askedIn(text).things),
  wishOfThing: (text: string) => wishOfThing(askedIn(text).words, askedIn(text).things),
  termAsked,
  unlistedIn: (text: string) => unlistedIn(askedIn(text).words),
  plantsBeside: (text: string) => plantsBeside(askedIn(text).words, askedIn(text).things),
  whiteBeside,
  wordsOf,
  asksOfContest,
  asksForDose: (text: string) => asksForDose(foundIn(text).words, foundIn(text).found),
  jobByPhrase: (text: string) => jobByPhrase(foundIn(text).words, foundIn(text).found),
  plainJobOf: (text: string) => plainJobOf(askedIn(text).words, askedIn(text).things),
  plainRequest,
  topicOf,
  topicsIn: (text: string) => topicsIn(text.split(' ')),
  isOfCraft: (text: string) => isOfCraft(text.split(' ')),
  otherCountryIn,
  regionIn,
  languageOfQuestion,
  benchAsked: (text: string) => benchAsked(text, readQuestion(text)),
  isPlainMix: (text: string) => isPlainMix(text, readQuestion(text)),
  isWishedWith: (text: string) => isWishedWith(text, readQuestion(text)),
  outrightIn,
  putsTwoTogether,
  warmthTold,
} as const;

holdRecorded('a reader of questions', { steps: STEPS, folder: import.meta.dirname });
