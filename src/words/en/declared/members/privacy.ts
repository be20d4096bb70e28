/** What `/privacy` says of itself where it is declared. */
export const says = {
  purpose: 'What I keep of you: see it, take it with you, erase it',
  show: { purpose: 'What is kept of you, and for how long' },
  export: { purpose: 'Everything about you as one file, pictures included' },
  erase: {
    purpose: 'Erase what is kept of you, all or one kind',
    what: {
      says: 'What to erase',
      choices: {
        everything: 'Everything',
        shelf: 'My shelf',
        preferences: 'My preferences',
        recipes: 'My recipes',
        batches: 'My batches',
        recent: 'Recent plans and matches',
        evidence: 'My reports',
        flaws: 'My questions about flaws',
        challenges: 'My part in challenges',
      },
    },
  },
};
