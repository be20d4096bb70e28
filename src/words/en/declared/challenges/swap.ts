/** What `/swap` says of itself where it is declared. */
export const says = {
  purpose: 'Jars that members offer one another: nothing is shown unless you offer it',
  options: { item: 'A jar by its name on your shelf' },
  offer: { purpose: 'Offer one of your jars to this group', for: 'What you would like for it' },
  list: { purpose: 'What members offer here' },
  withdraw: { purpose: 'Take your offer back' },
};
