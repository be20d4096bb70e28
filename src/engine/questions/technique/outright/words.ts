import type { AnswerTo } from '../answer-to.ts';
import type { Technique } from '../topic.ts';

/** What a short question says so plainly that no likelihood is asked: the matter, and which of its answers. */
export type Outright = {
  /** Over lower case without accents. */
  readonly words: RegExp;
  /** Where these stand as well, something else is asked. */
  readonly unless?: RegExp;
  readonly technique: Technique;
  readonly to: AnswerTo;
  /** Somebody stands before it, or lye is part of what is asked: whatever else is told beside it gives way. */
  readonly atHand?: true;
};

/** These words anywhere in a question, whole ones. */
export const within = (words: string) => new RegExp(String.raw`(?<!\p{L})(?:${words})(?!\p{L})`, 'u');
/** These words and nothing else. */
export const whole = (words: string) => new RegExp(String.raw`^\W*(?:${words})\W*$`, 'u');
/** All of these words, in any order. */
export const all = (...ideas: readonly string[]) =>
  new RegExp(`^${ideas.map(words => String.raw`(?=[^]*(?<!\p{L})(?:${words})(?!\p{L}))`).join('')}`, 'u');
