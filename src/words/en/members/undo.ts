import type { RefusalSentences } from '../../sentence.ts';

const list = new Intl.ListFormat('en');

type Named = { readonly name: string };

/** Words of taking a change back. */
export const undo = {
  button: 'Undo',
  /** By what the change was. */
  done: {
    'jar-removed': ({ name }: Named) => `Taken back: “${name}” is on your shelf again, with its history.`,
    'recipe-removed': ({ name }: Named) => `Taken back: “${name}” is among your recipes again.`,
    'recipe-unshared': ({ name }: Named) => `Taken back: “${name}” is shared with this group again.`,
    report: ({ name }: Named) => `Taken back: what you reported on ${name} is as it was before.`,
    'report-gone': ({ name }: Named) => `Taken back: your report on ${name} counts again.`,
    ballot: ({ name }: Named) => `Taken back: your ballot for “${name}” is as it was before.`,
    poured: ({ name }: Named) => `Taken back: “${name}” is out of your book.`,
    'batch-removed': ({ name }: Named) => `Taken back: “${name}” is in your book again.`,
    'batch-event': ({ name }: Named) => `Taken back: what you noted for “${name}” is gone.`,
  },
  several: (v: { readonly lefts: readonly string[] }) => `Taken back: now ${list.format(v.lefts)}.`,
  lot: (v: Named & { readonly left?: string | undefined }) =>
    `Taken back: the lot before counts again for “${v.name}”, with its tests${v.left === undefined ? '' : `; ${v.left} in all`}.`,
  already: 'Already taken back: nothing was changed now.',
  /** Beside what takes something away. */
  within: (v: { readonly minutes: number }) => `You can undo this for ${v.minutes} minutes.`,
};

export const undoRefusals: Pick<RefusalSentences, 'undo-nothing' | 'undo-too-late' | 'undo-changed-since'> = {
  'undo-nothing': ({ minutes }) =>
    `There is nothing to take back: what changes your records can be undone for ${minutes} minutes.`,
  'undo-too-late': ({ minutes }) =>
    `That is more than ${minutes} minutes ago: put it right with the command that made it.`,
  'undo-changed-since': ({ name }) =>
    `Something else has been noted for “${name}” since, so I left it as it is: put it right by hand.`,
};
