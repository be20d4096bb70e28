import { unaccented } from '../../text/unaccented.ts';
import type { LyeTopic } from '../lye/topics/topic.ts';
import { LED_TO } from './beside.ts';
import type { NamedAnswer } from './named-answers.ts';
import { PARTS } from './parts.ts';
import { type Answered, isAnswered, type Technique } from './topic.ts';
import { warmthTold } from './warmth.ts';

/** Which answer a technique has: its own, one to a part of it that is named, or one that is said near lye. */
export type AnswerTo =
  | { readonly technique: Answered }
  | { readonly named: NamedAnswer }
  | { readonly lye: LyeTopic };

/**
 * The answer to a technique that a question asks about, by what else the question names. Pure.
 * @example answerTo('natural-colours', 'azul natural hay?') // { named: 'natural-blue' }
 */
export function answerTo(technique: Technique, question: string): AnswerTo {
  const plain = unaccented(question);
  const warmth = technique === 'swirl-temperature' ? warmthTold(plain) : undefined;
  if (warmth !== undefined) return { named: warmth };
  const part = PARTS[technique]?.find(({ words }) => words.test(plain));
  if (part && 'technique' in part) return answerTo(part.technique, question);
  if (part && 'named' in part) return { named: part.named };
  if (part) return { lye: part.lye };
  return isAnswered(technique) ? { technique } : { lye: LED_TO[technique] };
}
