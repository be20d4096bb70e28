import { text } from '../../src/conversation/option.ts';
import { phrases } from '../../src/words/declared.ts';

const says = phrases('colourant');

/** A label is shorter; what is longer is no label. */
export const longestList = 4000;

export const colour = text(says.options.colour, { most: longestList });
