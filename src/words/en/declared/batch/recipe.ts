/** What `/recipe` says of itself where it is declared. */
export const says = {
  purpose: 'Your batch recipes: keep, plan again, copy, rescale, share',
  options: { recipe: 'A recipe by its name, yours or the group’s', saveAs: 'A name to keep it under' },
  list: { purpose: 'Your recipes, and those shared in this group' },
  show: { purpose: 'One recipe, planned anew, and as it was written' },
  save: { purpose: 'Keep the last plan I made for you' },
  copy: { purpose: 'Make a recipe yours, under its name or another' },
  rescale: {
    purpose: 'The same recipe for another size, volumes and all',
    size: 'How many times (“2”, “1/2”), or the new size: “1500 g oils”, “mould 25x9x7 cm”',
  },
  share: { purpose: 'Show one of your recipes to this group, as it is now' },
  unshare: { purpose: 'Take a recipe back from this group: its maker, or a steward' },
  remove: { purpose: 'Remove one of your recipes' },
};
