import { refuse } from '../refusal.ts';
import { type Terms, votesFollow } from './terms.ts';

declare module '../refusal.ts' {
  interface Reasons {
    'challenge-title-unfit': { readonly most: number };
    'challenge-palette-unfit': { readonly least: number; readonly most: number; readonly given: number };
    'challenge-times-order': { readonly first: 'opening' | 'entries'; readonly next: 'entries' | 'votes' };
    'challenge-times-far': { readonly most: number };
    'challenge-number-unfit': {
      readonly what: 'entries' | 'colourants' | 'cure' | 'quorum';
      readonly least: number;
      readonly most: number;
    };
  }
}

/** At most as many as a menu of the platform shows at once can be entered by one member, and far fewer help. */
const mostEntries = 5;
const mostPalette = 6;
const mostTitle = 80;
/** A year: no maker remembers a challenge that runs longer. */
const mostDays = 366;
const DAY = 86_400_000;

/** Refuses terms that nobody could keep: deadlines out of order, an empty palette where colour decides, and such. */
export function checkTerms(terms: Terms): void {
  const { title, palette, decides, opensAt, entriesUntil, votesUntil } = terms;
  if (title.trim() === '' || title.length > mostTitle) refuse('challenge-title-unfit', { most: mostTitle });
  const least = decides === 'votes' ? 0 : 1;
  if (palette.length < least || palette.length > mostPalette)
    refuse('challenge-palette-unfit', { least, most: mostPalette, given: palette.length });
  if (!(opensAt < entriesUntil)) refuse('challenge-times-order', { first: 'opening', next: 'entries' });
  if (!votesFollow(terms)) refuse('challenge-times-order', { first: 'entries', next: 'votes' });
  if (votesUntil - opensAt > mostDays * DAY) refuse('challenge-times-far', { most: mostDays });
  within('entries', terms.entriesPerMember, 1, mostEntries);
  within('colourants', terms.mostColourants, 1, 20);
  within('cure', terms.leastCureDays, 0, mostDays);
  within('quorum', terms.quorum, 1, 100_000);
}

function within(
  what: 'entries' | 'colourants' | 'cure' | 'quorum',
  given: number | undefined,
  least: number,
  most: number,
): void {
  if (given === undefined) return;
  if (!Number.isInteger(given) || given < least || given > most)
    refuse('challenge-number-unfit', { what, least, most });
}
