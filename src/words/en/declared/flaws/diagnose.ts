/** What `/diagnose` says of itself where it is declared. */
export const says = {
  purpose: 'Why did my bar do that? Describe it, show a picture, or both',
  menu: 'Diagnose this picture',
  words: 'What you see and feel, and what you did: “blue specks all over, no zap”',
  photo: 'The whole bar on a plain surface, all edges in view',
  recipe: 'The recipe it was made by, yours or the group’s: its numbers count too',
};
