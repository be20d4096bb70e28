const letters = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

const MOST_LETTERS = 40;
/** One letter may be stacked up without end. */
const MOST_UNITS = 200;

/** As much of a member's text as fits in a sentence: 40 letters as readers see them, then an ellipsis. */
export function excerpt(text: string): string {
  const seen: string[] = [];
  let units = 0;
  for (const { segment } of letters.segment(text.trim())) {
    units += segment.length;
    if (seen.length === MOST_LETTERS || units > MOST_UNITS)
      return `${seen.slice(0, MOST_LETTERS - 1).join('')}…`;
    seen.push(segment);
  }
  return seen.join('');
}
