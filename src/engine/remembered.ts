/** Longer texts are hardly ever written twice, UTF-16 units. */
const LONGEST = 80;
/** So many texts are remembered, and so many single words; then all are read anew. */
const MOST = 500;
const MOST_WORDS = 5000;

type Reader = <Read>(read: (text: string) => Read) => (text: string) => Read;

/** A reading of texts of at most so many units, of which at most so many are known at once. */
const within =
  (most: number, longest: number): Reader =>
  read => {
    const known = new Map<string, { readonly it: ReturnType<typeof read> }>();
    return text => {
      const before = known.get(text);
      if (before) return before.it;
      const it = read(text);
      if (text.length > longest) return it;
      if (known.size >= most) known.clear();
      known.set(text, { it });
      return it;
    };
  };

/**
 * A reading of short texts that is made once for each: names and amounts come again and again. For what hangs on the text
 * alone; what throws is read again each time.
 */
export const remembered: Reader = within(MOST, LONGEST);

/** So many texts of any length are known at once: those of one question, and what its readers make of it on their way. */
const MOST_READ = 64;

/**
 * {@link remembered} for whole questions, of any length: one question goes through dozens of readers, many of which need the same
 * reading of it. Those of the questions before are soon forgotten.
 */
export const readOnce: Reader = within(MOST_READ, Number.POSITIVE_INFINITY);

/** {@link remembered} for single words, of which members use few, again and again. What is not found is remembered too. */
export const rememberedWord: Reader = within(MOST_WORDS, Number.POSITIVE_INFINITY);
