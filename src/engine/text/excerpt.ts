/** A text without its line breaks: one space wherever there is any. */
export const oneLine = (text: string): string => text.replaceAll(/\s+/gu, ' ');

const graphemes = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

/**
 * As much from the start of a text as fits into `most` UTF-16 units, by which the platform's client library
 * counts: whole words, with an ellipsis that says there was more. Never cuts through what a reader sees as one
 * character, such as a flag or a family, not even in a word that is longer than all the room.
 */
export function cut(text: string, most: number): string {
  if (text.length <= most) return text;
  let kept = '';
  for (const { segment } of graphemes.segment(text)) {
    if (kept.length + segment.length > most - 1) break;
    kept += segment;
  }
  const space = kept.search(/\s\S*$/u);
  // Half of the room is left to a word that never ends.
  return `${(space > most / 2 ? kept.slice(0, space) : kept).trimEnd()}…`;
}

const MOST_LETTERS = 40;
/** One letter may be stacked up without end. */
const MOST_UNITS = 200;

/** As much of a member's text as fits in a sentence: 40 letters as readers see them, then an ellipsis. */
export function excerpt(text: string): string {
  const seen: string[] = [];
  let units = 0;
  for (const { segment } of graphemes.segment(text.trim())) {
    units += segment.length;
    if (seen.length === MOST_LETTERS || units > MOST_UNITS)
      return `${seen.slice(0, MOST_LETTERS - 1).join('')}…`;
    seen.push(segment);
  }
  return seen.join('');
}
