/**
 * Amounts, figures and shares as texts that the strict readers of options take: where a question in plain words becomes the options of
 * a command, it is by these. What members read is written by `src/words` from values.
 */

/** A figure with at most so many decimals and a full stop before them. */
export const figureText = (value: number, decimals = 2): string => String(Number(value.toFixed(decimals)));

/** So many grams or millilitres, of oils where they are. */
export const amountText = (
  value: number,
  {
    unit = 'g',
    ofOils = false,
    decimals = 2,
  }: { readonly unit?: 'g' | 'ml'; readonly ofOils?: boolean; readonly decimals?: number } = {},
): string => `${figureText(value, decimals)} ${unit}${ofOils ? ' oils' : ''}`;

/** A share of one as per cent. */
export const percentText = (share: number, decimals = 2): string => `${figureText(share * 100, decimals)}%`;
