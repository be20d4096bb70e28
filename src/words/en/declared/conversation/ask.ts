/** What `/ask` says of itself where it is declared. */
export const says = {
  purpose: 'Ask in your own words: “how much ultramarine for 2 cups?”',
  menu: 'Answer this',
  question: 'Your question, as you would ask a friend',
  photo: 'A picture it is about',
};
