const graphemes = new Intl.Segmenter(undefined, { granularity: 'grapheme' });

/**
 * As much from the start of a text as fits into `most` UTF-16 units, by which the platform's client library
 * counts. Never cuts through what a reader sees as one character, such as a flag or a family.
 */
export function cut(text: string, most: number): string {
  if (text.length <= most) return text;
  let kept = '';
  for (const { segment } of graphemes.segment(text)) {
    if (kept.length + segment.length > most) break;
    kept += segment;
  }
  return kept;
}
