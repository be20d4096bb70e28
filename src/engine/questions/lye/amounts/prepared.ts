import { readOnce } from '../../../remembered.ts';
import { ofBatchAsked } from '../batch-asked.ts';
import { asListed } from '../recipe-line/items/as-listed.ts';
import { withFatLeftOver } from '../recipe-line/settling/fat-left-over.ts';
import { withFigurePutRight } from '../recipe-line/settling/figure-put-right.ts';
import { withWhole } from '../recipe-line/settling/whole-of-one.ts';
import { withoutAskedOfOil } from '../recipe-line/talk/asked-of-oil.ts';
import { benchSaid } from '../recipe-line/talk/bench-said.ts';
import { withoutElse, withoutSetAside } from '../recipe-line/talk/clauses-of-else.ts';
import { withoutFormerSoap } from '../recipe-line/talk/former-soap.ts';
import { askedPlainly } from '../recipe-line/talk/how-it-is-written.ts';
import { withoutTalk } from '../recipe-line/talk/idle-talk.ts';
import { withoutMistold } from '../recipe-line/talk/mistold.ts';
import { withoutStock } from '../recipe-line/talk/oil-stock.ts';
import { withoutWhatIsOut } from '../recipe-line/talk/out-altogether.ts';
import { withOwnPound } from '../recipe-line/talk/own-pound.ts';
import { withoutScents } from '../recipe-line/talk/scents.ts';
import { withoutToldOfAll } from '../recipe-line/talk/told-of-all.ts';
import { withoutToldOfOil } from '../recipe-line/talk/told-of-oil.ts';
import { withoutWhoAsks } from '../recipe-line/talk/who-asks.ts';
import { saidPlainly } from '../said-plainly.ts';
import { withSolution } from '../sums/ready-solution.ts';
import { asTyped, withOneMore } from './as-typed.ts';
import {
  withCastile,
  withCausticSoda,
  withEqualParts,
  withLiquid,
  withoutCounted,
  withoutCourtesies,
  withoutDoubleCheck,
  withoutForEach,
  withoutKinds,
  withoutLabel,
  withSuperfat,
} from './turns-of-phrase.ts';
import { plainWords } from './words.ts';

/** One step of {@link PREPARING}: the line as the steps before left it, told otherwise; `question` is the whole of it as it was typed. */
export type Step = {
  readonly id: string;
  readonly rewrite: (line: string, question: string) => string;
};

/**
 * What is done to a question before its recipe is read, in this order: each step takes a way of telling for which the grammar of
 * recipes has no place and tells it as that grammar does, or leaves it out. DEVELOPERS.md prints them with what each is for; a test
 * holds a recipe for each that is not read without it.
 */
export const PREPARING: readonly Step[] = [
  { id: 'as-typed', rewrite: asTyped },
  { id: 'plain-words', rewrite: line => plainWords(line, { clauses: true }) },
  { id: 'who-asks', rewrite: withoutWhoAsks },
  { id: 'own-pound', rewrite: withOwnPound },
  { id: 'batch-asked', rewrite: ofBatchAsked },
  { id: 'fat-left-over', rewrite: withFatLeftOver },
  { id: 'figure-put-right', rewrite: withFigurePutRight },
  { id: 'whole-of-one', rewrite: withWhole },
  { id: 'told-of-all', rewrite: withoutToldOfAll },
  { id: 'out-altogether', rewrite: withoutWhatIsOut },
  { id: 'set-aside', rewrite: withoutSetAside },
  { id: 'as-listed', rewrite: asListed },
  { id: 'how-it-is-written', rewrite: askedPlainly },
  { id: 'mistold', rewrite: withoutMistold },
  { id: 'oil-stock', rewrite: withoutStock },
  { id: 'ready-solution', rewrite: withSolution },
  { id: 'scents', rewrite: line => withoutScents(line).rest },
  { id: 'former-soap', rewrite: withoutFormerSoap },
  { id: 'asked-of-oil', rewrite: withoutAskedOfOil },
  { id: 'told-of-oil', rewrite: withoutToldOfOil },
  { id: 'bench-said', rewrite: benchSaid },
  { id: 'of-else', rewrite: withoutElse },
  { id: 'idle-talk', rewrite: withoutTalk },
  { id: 'said-plainly', rewrite: saidPlainly },
  { id: 'double-check', rewrite: withoutDoubleCheck },
  { id: 'castile', rewrite: withCastile },
  { id: 'label', rewrite: withoutLabel },
  { id: 'liquid', rewrite: withLiquid },
  { id: 'for-each', rewrite: withoutForEach },
  { id: 'equal-parts', rewrite: withEqualParts },
  { id: 'courtesies', rewrite: withoutCourtesies },
  { id: 'kinds', rewrite: withoutKinds },
  { id: 'caustic-soda', rewrite: withCausticSoda },
  { id: 'superfat', rewrite: withSuperfat },
  { id: 'counted', rewrite: withoutCounted },
];

/** What these steps make of a question, one after the other. Pure. */
export const through = (steps: readonly Step[], question: string): string =>
  steps.reduce((line, { rewrite }) => rewrite(line, question), question);

/** The scents of a question, which its recipe is read without. Pure. */
export const scentsOf = (question: string): readonly string[] =>
  withoutScents(withSolution(withOneMore(ofBatchAsked(plainWords(asTyped(question), { clauses: true })))))
    .scents;

/** A line as `recipeLine` takes it: a question through all of {@link PREPARING}. Pure. */
export const prepared = readOnce((question): string => through(PREPARING, question));
