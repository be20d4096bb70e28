import { text } from '../../src/conversation/option.ts';

/** A label is shorter; what is longer is no label. */
export const longestList = 4000;

export const colour = text(
  {
    en: 'An item on your shelf, a colourant such as “gold mica”, or an ingredient list',
    es: 'Un producto de tu estantería, un colorante («mica dorada») o una lista de ingredientes',
  },
  { most: longestList },
);
