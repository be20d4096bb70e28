import type { Context } from '../../src/conversation/context.ts';
import type { Attachment } from '../../src/conversation/question.ts';
import type { Block } from '../../src/conversation/reply.ts';
import type { Questioned } from '../../src/engine/questions/found/jars/own-jars.ts';
import type { QuestionRead, Reading } from '../../src/engine/questions/read.ts';
import type { LyeReading } from './lye/lye-found.ts';
import type { AskReply } from './understood.ts';

/** A turn of a talk, before it is read by itself. */
export type Turn = {
  readonly question: string;
  /** A photo that came with it. */
  readonly photo?: Attachment | undefined;
  readonly context: Context;
  /** The question with jars of the asker's own under names that every reader knows; the shelf is looked up for that, once. */
  readonly own: () => Promise<Questioned>;
  /** The answer to another text that needs nothing from before, such as this turn behind the question that it goes on from. */
  readonly readAnew: (text: string) => Promise<AskReply>;
};

/** What was found near lye of a question; nothing where no matter and no recipe stands before what else it asks. */
export type NearLye = {
  /** An answer that stands by itself. */
  readonly told?: AskReply | undefined;
  /** A recipe that `/plan` reckons. */
  readonly recipe?: LyeReading | undefined;
  /** What stands behind the answer of a colour that a matter gave way to. */
  readonly behind?: readonly Block[] | undefined;
};

/** A question as its answerers see it. What is a function is read when the first of them asks for it, once. */
export type Asked = Pick<Turn, 'question' | 'photo' | 'context'> & {
  /** The question without the talk beside it, which tells of no job, no thing and no field. */
  readonly said: string;
  readonly read: QuestionRead;
  /** The check of a thing that stays out of soap, whatever else the sentence was read as; undefined beside a photo. */
  readonly staysOut: () => Reading | undefined;
  readonly nearLye: () => Promise<NearLye>;
  /** What the question is run as, where none has a better answer; undefined where nothing was understood. */
  readonly reading: () => Promise<Reading | undefined>;
};

/**
 * What an answerer leaves a question to: the check of a thing that stays out of soap (`stays-out`; `check` where nothing near lye stands before
 * that), and whatever was found near lye.
 */
export type LeavesTo = 'stays-out' | 'check' | 'lye';

/** One who may answer: `leavesTo` are those who stand before it wherever they apply, whatever their place. */
export type Answerer<About = Asked> = {
  readonly id: string;
  readonly leavesTo?: readonly LeavesTo[];
  readonly answer: (about: About) => AskReply | undefined | Promise<AskReply | undefined>;
};
