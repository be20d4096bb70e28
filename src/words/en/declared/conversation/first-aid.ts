/** What `/first-aid` says of itself where it is declared. */
export const says = {
  purpose: 'Lye, fumes or fresh soap hurt somebody: what to do now',
  what: 'What happened',
};
