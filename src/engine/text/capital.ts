/**
 * A text that begins with a capital, as a sentence does. Pure.
 * @example capital('óxido verde') // 'Óxido verde'
 */
export const capital = (text: string): string => text.replace(/^\p{Ll}/u, first => first.toUpperCase());
