/** Nothing a member writes is longer: the platform's longest option holds 6,000. UTF-16 units. */
export const LONGEST_TEXT = 6000;

/**
 * A text in compatibility form, its length bounded before and after: a single ligature may unfold into eighteen letters
 * (U+FDFA), so a text that was short enough as it came need not stay so. NFKD takes letters and accents apart.
 */
export function unfolded(text: string, form: 'NFKC' | 'NFKD', most = LONGEST_TEXT): string {
  const cut = text.slice(0, most);
  let whole = '';
  // Piece by piece, so that what would be cut off is never unfolded.
  for (let at = 0; at < cut.length && whole.length < most; at += PIECE)
    whole += cut.slice(at, at + PIECE).normalize(form);
  return whole.slice(0, most);
}

/** Longer than any text that accents are taken off in earnest: a mark is parted from its letter at the seams only. */
const PIECE = 500;
