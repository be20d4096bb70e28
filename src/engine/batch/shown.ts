const LONGEST = 40;

/** As much of what a member typed as fits in a sentence. */
export function shown(text: string): string {
  const letters = Array.from(
    new Intl.Segmenter().segment(text.slice(0, 4 * LONGEST).trim()),
    one => one.segment,
  );
  return letters.length > LONGEST ? `${letters.slice(0, LONGEST - 1).join('')}…` : letters.join('');
}
