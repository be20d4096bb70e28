import { drawn, howMany } from '../../walk.ts';

/** Of 5,000 random plans, each by its number, the usual run takes a tenth that lies together. */
export const PLANS = howMany(500, 5000);
const tenths = Array.from({ length: 10 }, (_, at) => 1 + 500 * at);
/** The number of the first. */
export const FIRST = drawn(tenths, 1, 'plans')[0]!;
