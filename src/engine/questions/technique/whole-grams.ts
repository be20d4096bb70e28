/** A scale that shows no tenths, in words. */
export const WHOLE_GRAMS_WORDS = `(?:whole|full|even) (?:g|grams?)|(?:g|gramos) enteros?|no decimals?|sin decimales`;
