import { unbroken } from '../../over-lines.ts';

/** A figure that may be degrees: those of time and of weight are told by their unit. */
const FIGURE = new RegExp(
  unbroken`
    (?<![\d.,:/])(\d{2,3})(?![\d.,:/])(?! ?(?:g|gr|kg|oz|lb|ml|min\p{L}*|mins?|sec\p{L}*|hours?|horas?|%|
    times|of|gramos)(?!\p{L}))(?: ?(?:°|º|deg\p{L}*|grados?))? ?(c|f)?(?!\p{L})
  `,
  'gu',
);

/** No batter is as cool in °F, nor as hot in °C, as here. */
const LEAST_FAHRENHEIT = 65;
const MOST_SWIRLED = 38;
const MOST_USED = 46;

/**
 * How a temperature that is told suits a swirl: a bit warm from 39 °C (102 °F) on, too warm from 47 °C (117 °F) on; undefined where none is
 * told or it suits. What is over 65 with no unit is °F. Common practice (no source). `plain`: lower case, without accents.
 */
export function warmthTold(plain: string): 'a-bit-warm' | 'too-warm' | undefined {
  const told = [...plain.matchAll(FIGURE)].map(([, figure, unit]) => {
    const degrees = Number(figure);
    return unit === 'f' || (unit === undefined && degrees >= LEAST_FAHRENHEIT)
      ? ((degrees - 32) * 5) / 9
      : degrees;
  });
  const [celsius] = told.filter(degrees => degrees >= 20 && degrees <= 90);
  if (celsius === undefined || celsius <= MOST_SWIRLED) return undefined;
  return celsius <= MOST_USED ? 'a-bit-warm' : 'too-warm';
}
