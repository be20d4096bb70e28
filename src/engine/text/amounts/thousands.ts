import { unitOfWord } from '../../quantities/unit-words.ts';

/** One figure, a mark and three more before a unit: `1,250 g`, `1.250ml`. */
const GROUPED = /(?<![\d.,/])([1-9])[.,](\d{3})(?![\d.,/])(?=\s?(\p{L}+))/gu;

/**
 * A portion or a batch with its thousands as plain figures: `1,250 g` and `1.250 g` are `1250 g`, since no batter is weighed to the
 * thousandth of a gram or poured to that of a millilitre. Other units stay as they are: of `1,250 oz` and `1.500 kg` both
 * readings could be true.
 */
export const thousandsPlain = (text: string): string =>
  text.replace(GROUPED, (written, thousands: string, rest: string, unit: string) => {
    const known = unitOfWord(unit);
    return known === 'gram' || known === 'millilitre' ? thousands + rest : written;
  });
