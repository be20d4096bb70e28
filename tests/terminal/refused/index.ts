import { amounts } from './amounts.ts';
import { books } from './books.ts';
import { challenges } from './challenges.ts';
import { colours } from './colours.ts';
import { lines } from './lines.ts';
import { lyeAndWater } from './lye-and-water.ts';
import { mixing } from './mixing.ts';
import { oils } from './oils.ts';
import { pictures } from './pictures.ts';
import { pouring } from './pouring.ts';
import type { RefusedCases } from './row.ts';
import { shelf } from './shelf.ts';
import { sizes } from './sizes.ts';
import { toldInChat } from './told-in-chat.ts';

/** Every refusal that a line in a terminal meets, by subject. */
export const REFUSED: RefusedCases = {
  ...amounts,
  ...books,
  ...challenges,
  ...colours,
  ...lines,
  ...lyeAndWater,
  ...mixing,
  ...oils,
  ...pictures,
  ...pouring,
  ...shelf,
  ...sizes,
  ...toldInChat,
};
