/** What `/help` says of itself where it is declared. */
export const says = {
  purpose: 'What I can do, and how to ask',
  topic: 'A command, an option, a word of the trade or a caution: “plan”, “trace”, “lye”',
};
