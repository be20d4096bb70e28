import { unbroken } from '../../../over-lines.ts';

/** What is asked of what was spoken of before, without naming it. */
export type Aspect =
  | 'why'
  | 'holds'
  | 'allowed'
  | 'safe'
  | 'bleeds'
  | 'how-much'
  | 'wet'
  | 'water'
  | 'looks'
  | 'instead'
  | 'next-time'
  | 'done'
  | 'still'
  | 'comes-back'
  | 'how-long'
  | 'how-hot'
  | 'same'
  | 'more'
  | 'when'
  | 'too-much'
  | 'which-cup'
  | 'that-one';

/** An aspect and the turns that ask for it. */
export type AspectPhrases = readonly [aspect: Aspect, turns: RegExp];

export const IT = unbroken`
  (?:it|that|this|these|those|they|them|this one|that one|the colou?r|my soap|the soap|my bars?|eso|esto|
  este|esta|ese|esa|lo|la|las|los|el color|el jabon|la pastilla)
`;
export const CUPS =
  '(?:us|uk|american|british|english|imperial|metric|australian|250|240)(?: ml)?(?: (?:cups?|spoons?|tsps?|teaspoons?))?';
export const POWDER = '(?:mica|oxido|oxide|pigmento?|colou?r|colorante|polvo|powder|arcilla|clay|dye)';
export const WILL = '(?:will|would|does|do|can|could|is|are|did|has)';
export const END = unbroken`
  (?: (?:in soap|in cp|in lye|in the lye|in the end|over time|later|in the sun|in the light|en jabon|
  en la sosa|con el tiempo|al sol|con la luz|a la luz|on the windowsill|no|verdad))*
`;

export const whole = (...alternatives: readonly string[]): RegExp =>
  new RegExp(`^(?:${alternatives.join('|')})$`, 'u');
