import { readDecimal } from '../quantities/number.ts';
import { refuse } from '../refusal.ts';
import { excerpt } from '../text/excerpt.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'swirl-shares-unreadable': { readonly text: string };
    'swirl-shares-over': { readonly percent: number };
  }
}

export type SwirlShare = { readonly name: string /** 0 to 1 of the top. */; readonly share: number };

const MOST = 8;
const PART = /^(.+?)\s*[:=]?\s*([\d.,]+(?:\/\d+)?)\s*(%|parts?|partes?)?$/u;

/**
 * Reads what share of the top each colour takes: percents (`blue 50%, white 30%, gold 20%`) or parts (`blue 2, white 1`).
 * Percents that sum to less leave the rest to the base, without a name. Throws a Refusal: `swirl-shares-unreadable`,
 * `swirl-shares-over`.
 */
export function readSwirlShares(text: string): readonly SwirlShare[] {
  const unread = () => refuse('swirl-shares-unreadable', { text: excerpt(text) });
  const pieces = text
    .slice(0, 400)
    .split(/[;\n+]|,(?!\d)/u)
    .map(piece => piece.trim())
    .filter(piece => piece !== '');
  if (pieces.length === 0 || pieces.length > MOST) return unread();
  const read = pieces.map(piece => {
    const [, name, figures = '', unit] = PART.exec(piece) ?? [];
    const count = figureOf(figures);
    return name !== undefined && count !== undefined && count > 0 ? { name, count, unit } : unread();
  });
  const percents = read.filter(({ unit }) => unit === '%').length;
  if (percents !== 0 && percents !== read.length) return unread();
  const sum = read.reduce((total, { count }) => total + count, 0);
  if (percents > 0 && sum > 100 + 1e-6) refuse('swirl-shares-over', { percent: Math.round(sum) });
  const whole = percents > 0 ? 100 : sum;
  return read.map(({ name, count }) => ({ name, share: count / whole }));
}

function figureOf(figures: string): number | undefined {
  const [over = '', under] = figures.split('/');
  const value = readDecimal(over)[0];
  if (value === undefined) return undefined;
  const divisor = under === undefined ? 1 : Number(under);
  return divisor > 0 ? value / divisor : undefined;
}
