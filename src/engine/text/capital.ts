/**
 * A text that begins with a capital, as a sentence does. Pure.
 * @example capital('óxido verde') // 'Óxido verde'
 */
export const capital = (text: string): string => text.replace(/^\p{Ll}/u, first => first.toUpperCase());

/**
 * A name as it stands in the middle of a sentence: an abbreviation stays. Pure.
 * @example midSentence('Shea butter') // 'shea butter'
 */
export const midSentence = (name: string): string =>
  name.replace(/^\p{Lu}(?=\p{Ll}| \p{Ll})/u, first => first.toLowerCase());
