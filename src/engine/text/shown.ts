const LONGEST = 40;
const letters = new Intl.Segmenter();

/** As much of what a member typed as fits in a sentence. */
export function shown(text: string): string {
  const seen = Array.from(letters.segment(text.slice(0, 4 * LONGEST).trim()), one => one.segment);
  return seen.length > LONGEST ? `${seen.slice(0, LONGEST - 1).join('')}…` : seen.join('');
}
