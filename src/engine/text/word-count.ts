/** How many words a text has, by the white space between them; 1 for an empty one. Pure. */
export const wordCount = (text: string): number => text.trim().split(/\s+/u).length;
