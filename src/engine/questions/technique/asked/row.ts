import type { AnswerTo } from '../answer-to.ts';
import type { Technique } from '../topic.ts';
import type { Aspect } from './aspects.ts';
import type { Thing } from './things.ts';

type Name = Thing | Aspect;
type OneOf = Name | readonly Name[];
/** An answer with what it is asked of and what is asked: of each list one has to be said, of `none` nothing. */
export type AskedRow = {
  readonly technique: Technique;
  readonly to: AnswerTo;
  readonly said: readonly OneOf[];
  readonly none?: readonly Name[];
  /** It says more of a flaw than the causes of it would. */
  readonly overFlaw?: true;
};
