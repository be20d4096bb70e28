import type { Given } from '../../../src/conversation/question.ts';
import type { Facts } from '../../../src/engine/questions/found/facts.ts';
import { wordsOf } from '../../../src/engine/questions/found/words-of.ts';
import { planParts } from '../../../src/engine/questions/plans/plan-parts.ts';
import type { Reading } from '../../../src/engine/questions/read.ts';
import type { Words } from '../../../src/words/index.ts';

/** What is told of a plan whose oils have no amounts: which oils, and its colours. Undefined of what is no such plan. */
export type PlanLacks = ReturnType<typeof planParts> | undefined;

export const planLacks = ({ command }: Reading, given: Given, question: string): PlanLacks =>
  command === 'plan' && given.oils === undefined ? planParts(wordsOf(question)) : undefined;

/** What a question tells, with the colours of the plan that it asks for. */
export const withColours = (facts: Facts, { job }: Reading, question: string): Facts =>
  job === 'plan'
    ? {
        ...facts,
        colours: planParts(wordsOf(question)).colours.map(({ text, hex }) => ({ text, ...(hex && { hex }) })),
      }
    : facts;

/** The options of a plan with the colours that are told beside oils without amounts: they are kept while those are asked. */
export const withPortions = (given: Given, lacks: PlanLacks): Given =>
  lacks?.portions === undefined || given.portions !== undefined
    ? given
    : { ...given, portions: lacks.portions };

/** Asks only for the shares of the oils that were named; undefined where none was. */
export const oilsWithoutShares = (lacks: PlanLacks, { ask }: Words): string | undefined =>
  lacks && lacks.oils.length > 0 ? ask.oilsWithoutShares({ oils: lacks.oils }) : undefined;
