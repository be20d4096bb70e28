import { refuseSpirit } from '../../../batch/additives/additives.ts';
import { type RiskyScent, riskyScents } from '../../../hazards/index.ts';
import { unlessRefused } from '../../../refusal.ts';
import { foldedWords } from '../../../text/fold.ts';
import type { QuestionRead } from '../../read.ts';

const INSTEAD = /\b(?:instead|replace|substitute|en vez|en lugar|reemplazar|sustituir|por agua)\b/u;
/** Without one of these, mint and lemon are colours as often as scents. */
const SCENT =
  /\b(?:oils?|essential|scents?|fragrances?|balsam|perfume|cologne|eau|aceites?|esencial|esencias?|fragancia|balsamo|colonia|aroma)\b/u;
const LIQUID = /\b(?:water|agua|liquid|liquido|lye|sosa|soda|lejia)\b/u;

/** True where no colour is asked about, and nothing else of ours can be answered. */
const isOfNoColour = ({ outside, readings: [reading], facts }: QuestionRead) =>
  facts.named.length === 0 &&
  facts.target === undefined &&
  (outside === 'other' ||
    reading === undefined ||
    (outside === undefined &&
      reading.missing.length > 0 &&
      /^(?:dose|colourant check)$/u.test(reading.command)));

/** More of a question is not looked through for scents, characters. */
const LONGEST = 500;

/**
 * Scents that do harm and are asked about by name, where no colour is; none where none is named. Throws a Refusal `scent-barred`, or
 * `liquid-is-spirit` where strong drink is to stand in for the water.
 */
export function scentsAsked(question: string, read: QuestionRead): readonly RiskyScent[] {
  const words = foldedWords(question.slice(0, LONGEST)).join(' ');
  const { named, target } = read.facts;
  // Strong drink for the water is barred whatever else the sentence was read as.
  if (named.length === 0 && target === undefined && INSTEAD.test(words) && LIQUID.test(words))
    refuseSpirit(question);
  if (!isOfNoColour(read)) return [];
  return SCENT.test(words) ? riskyScents(question) : [];
}

/** Whether a scent that stays out of soap is asked about, or strong drink for the water. Pure. */
export const isBarredScent = (question: string, read: QuestionRead): boolean =>
  unlessRefused(() => scentsAsked(question, read)) === undefined;
