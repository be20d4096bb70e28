import type { Refusal } from '../../refusal.ts';

/** Refusals of the options' own readers that only say how a text is worded. */
const UNREAD: ReadonlySet<string> = new Set([
  'amount-unit-unknown',
  'amount-unreadable',
  'amount-vessel',
  'cavity-by-mass',
  'mould-sides',
  'oil-is-food',
  'oil-unknown',
  'oil-without-amount',
  'oils-mixed-units',
  'oils-without-unit',
  'size-unreadable',
]);

/** Whether a text was refused for how it is worded, and not for what it says. */
export const isOfWording = ({ id }: Refusal): boolean => UNREAD.has(id);
