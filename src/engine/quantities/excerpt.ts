const letters = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

/** As much of a member's text as fits in a sentence: 40 letters as readers see them, then an ellipsis. */
export function excerpt(text: string): string {
  const seen = Array.from(letters.segment(text.slice(0, 200).trim()), ({ segment }) => segment);
  return seen.length > 40 ? `${seen.slice(0, 39).join('')}…` : seen.join('');
}
