import type { LyeTopic } from '../lye/topics/topic.ts';
import type { NamedAnswer } from './named-answers.ts';
import type { Technique } from './topic.ts';

/** Where a question that holds these words is led: to a part of the technique, to what is said near lye, or to another technique. */
export type Part = { readonly words: RegExp } & (
  | { readonly named: NamedAnswer }
  | { readonly lye: LyeTopic }
  | { readonly technique: Technique }
);

/** Whole words, their endings spelt out with `\\w*`; the text is lower case and without accents. */
export const wholeWords = (words: string) => new RegExp(String.raw`(?<!\p{L})(?:${words})(?!\p{L})`, 'u');
/** Less of the water that the lye is dissolved in. */
export const LESS_WATER = wholeWords(
  String.raw`(?:a (?:bit|little) )?less (?:of the )?water|(?:un poco )?menos agua`,
);
