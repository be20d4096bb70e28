/** Longer texts are hardly ever written twice, UTF-16 units. */
const LONGEST = 80;
/** So many texts are remembered; then all are read anew. */
const MOST = 500;

/**
 * A reading of short texts that is made once for each: names and amounts come again and again. For what hangs on the text
 * alone; what throws is read again each time.
 */
export function remembered<Read>(read: (text: string) => Read): (text: string) => Read {
  const known = new Map<string, { readonly it: Read }>();
  return text => {
    const before = known.get(text);
    if (before) return before.it;
    const it = read(text);
    if (text.length > LONGEST) return it;
    if (known.size >= MOST) known.clear();
    known.set(text, { it });
    return it;
  };
}

/** As many words as are remembered before all are forgotten. */
const MOST_WORDS = 5000;

/** {@link remembered} for single words, of which members use few, again and again. What is not found is remembered too. */
export function rememberedWord<Found>(find: (word: string) => Found): (word: string) => Found {
  const seen = new Map<string, Found>();
  return word => {
    if (seen.has(word)) return seen.get(word)!;
    if (seen.size > MOST_WORDS) seen.clear();
    const found = find(word);
    seen.set(word, found);
    return found;
  };
}
