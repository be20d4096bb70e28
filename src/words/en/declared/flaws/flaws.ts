/** What `/flaws` says of itself where it is declared. */
export const says = {
  purpose: 'What flaws turned out to be here, and the pictures of them',
  learned: { purpose: 'What flaws turned out to be here, and how that moves the chances (stewards)' },
  reset: { purpose: 'Forget what flaws turned out to be here (stewards)' },
  given: { purpose: 'The pictures you gave this group’s set, to take back' },
  pictures: { purpose: 'The pictures members gave, with what they turned out to be, as a file (stewards)' },
  drop: {
    purpose: 'Erase one picture from the set: one that shows a face, or is no soap (stewards)',
    file: 'Its name in the file of /flaws pictures: “3f09c2a1b7de.jpg”',
  },
};
