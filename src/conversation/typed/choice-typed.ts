import { fold } from '../../engine/text/fold.ts';
import type { DeclaredOption } from '../declared.ts';

/** Short forms by which units go, in both languages. */
const SHORT: Readonly<Record<string, readonly string[]>> = {
  grams: ['g', 'gr', 'gram', 'gramo', 'gramos'],
  ounces: ['oz', 'ounce', 'onza', 'onzas'],
  celsius: ['c', '°c', 'centigrade', 'centigrados'],
  fahrenheit: ['f', '°f'],
  en: ['english', 'inglés', 'ingles'],
  es: ['spanish', 'español', 'espanol', 'castellano'],
};

/**
 * The choice that a typed text means: its value in any capitals, its words in either language, or a unit's short form. The text
 * as it stands where it is none, so that validation names what is offered.
 */
export function choiceTyped({ choices = [] }: Pick<DeclaredOption, 'choices'>, text: string): string {
  if (choices.some(({ value }) => value === text)) return text;
  const typed = text.trim().toLowerCase();
  const folded = fold(text);
  const found =
    choices.find(({ value }) => value.toLowerCase() === typed) ??
    choices.find(({ value }) => Object.hasOwn(SHORT, value) && SHORT[value]!.includes(typed)) ??
    (folded === ''
      ? undefined
      : choices.find(({ label }) => Object.values(label).some(one => fold(one) === folded)));
  return found?.value ?? text;
}
