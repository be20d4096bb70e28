/** What `/season` says of itself where it is declared. */
export const says = {
  purpose: 'The palette your group makes soap in this season: put forward, vote, settle',
  show: { purpose: 'This season’s palette, and what is put forward for the next' },
  propose: {
    purpose: 'Put a palette forward; it takes the place of your earlier one',
    title: 'What it is called',
    colours: 'Two to six colours: “teal, #4b3f9e, old gold”',
  },
  vote: { purpose: 'Vote for a palette; your newest vote counts', palette: 'The palette by its title' },
  settle: { purpose: 'Close the vote: the most liked is the season’s palette (stewards)' },
};
