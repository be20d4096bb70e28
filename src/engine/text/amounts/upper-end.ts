import { unbroken } from '../../over-lines.ts';
import { unitOfWord } from '../../quantities/unit-words.ts';

const FIGURE = String.raw`(?<![\d.,/])(\d+(?:[.,]\d+)?)`;
/** "2 cups, could be up to 3", "400 g, quizás hasta 500". */
const UP_TO = new RegExp(
  unbroken`
    ${FIGURE} ?(\p{L}+)((?: (?:of|de) \p{L}+)?)[\s,]+(?:(?:but|pero|and|y|or|o|it|that|maybe|perhaps|could|
    might|may|can|will|be|go|possibly|puede[ns]?|podr[ií]an?|ser|llegar|quiz[aá]s?|tal vez|a lo mejor|as|
    even) )*(?:up to|as much as|hasta) (?:about |like |unos |
    unas )?(\d+(?:[.,]\d+)?)(?: ?(\p{L}+))?(?![\d.,/]\d)
  `,
  'iu',
);
const figure = (written: string): number => Number(written.replace(',', '.'));

/**
 * An amount with its upper end told behind it as a range of both: "2 cups, could be up to 3" is "2-3 cups". Takes numbers as figures;
 * what tells no upper end comes back as it was. Pure.
 */
export const withUpperEnd = (text: string): string =>
  text.replace(
    UP_TO,
    (all, low: string, unit: string, of: string, high: string, again: string | undefined) => {
      const own = unitOfWord(unit);
      const other = again === undefined ? undefined : unitOfWord(again);
      if (own === undefined || (other !== undefined && other !== own) || !(figure(high) > figure(low)))
        return all;
      return `${low}-${high} ${unit}${of}${again !== undefined && other === undefined ? ` ${again}` : ''}`;
    },
  );
