/** Nothing a member writes is longer: the platform's longest option holds 6,000. UTF-16 units. */
const LONGEST_TEXT = 6000;

/**
 * A text in compatibility form, its length bounded before and after: a single ligature may unfold into eighteen letters
 * (U+FDFA), so a text that was short enough as it came need not stay so. NFKD takes letters and accents apart.
 */
export function unfolded(text: string, form: 'NFKC' | 'NFKD', most = LONGEST_TEXT): string {
  return text.slice(0, most).normalize(form).slice(0, most);
}
