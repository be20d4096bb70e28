import { spaced } from '../../../engine/over-lines.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const { one } = numbersIn('en');
const andList = new Intl.ListFormat('en', { type: 'conjunction' });
const orList = new Intl.ListFormat('en', { type: 'disjunction' });
const quoted = (names: readonly string[]) => names.map(name => `“${name}”`);
const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;

export const community = {
  season: 'Season palette',
  palette: (v: { title: string; colours: readonly string[] }) => `“${v.title}”: ${v.colours.join(', ')}`,
  noSeason: 'No palette is settled yet. Put one forward with /season propose, vote with /season vote.',
  putForward: 'Put forward',
  proposal: (v: { title: string; colours: readonly string[]; votes: number }) =>
    `“${v.title}”: ${v.colours.join(', ')}; ${count(v.votes, 'vote', 'votes')}`,
  proposed: (v: { title: string; colours: readonly string[] }) =>
    `Put forward for the season, “${v.title}”: ${v.colours.join(', ')}. Vote with /season vote.`,
  voted: (v: { title: string }) => `Your vote is for “${v.title}”.`,
  settled: (v: { title: string; colours: readonly string[]; votes: number }) =>
    `The season’s palette, with ${count(v.votes, 'vote', 'votes')}, “${v.title}”: ${v.colours.join(', ')}`,
  offered: (v: { name: string; by: string; wants: string | undefined }) =>
    `${v.by} offers “${v.name}”${v.wants ? ` for ${v.wants}` : ''}.`,
  offers: (v: { offers: number }) =>
    v.offers === 0
      ? 'Nobody offers a jar here. /swap offer puts one of yours up.'
      : `${count(v.offers, 'jar', 'jars')} to swap`,
  offer: (v: {
    name: string;
    kind: string | undefined;
    grams: number | undefined;
    by: string;
    wants: string | undefined;
  }) => spaced`
    “${v.name}”${v.kind && v.kind.toLowerCase() !== v.name.toLowerCase() ? ` (${v.kind})` : ''}${v.grams === undefined ? '' : `, ${one(v.grams)} g`},
    by ${v.by}${v.wants ? `, for ${v.wants}` : ''}
  `,
  offerGone: (v: { name: string }) => `“${v.name}” is no longer offered here.`,
  recipeGiven: (v: { title: string; bar: string; recipe: string }) =>
    `The recipe of “${v.bar}”, first in “${v.title}”, is here by leave of its maker: keep it with /recipe copy recipe:${v.recipe}`,
};

type CommunityRefusal =
  | 'season-colours-unfit'
  | 'season-palette-unknown'
  | 'season-nothing-put'
  | 'season-tie'
  | 'season-title-taken'
  | 'bar-not-won';

export const communityRefusals: Pick<RefusalSentences, CommunityRefusal> = {
  'season-colours-unfit': ({ least, most }) =>
    `A season’s palette has ${least} to ${most} colours, apart by commas.`,
  'season-palette-unknown': ({ asked, titles }) =>
    `No palette is called “${asked}”. Put forward: ${orList.format(quoted(titles))}.`,
  'season-nothing-put': () => 'Nothing is put forward yet: /season propose.',
  'season-tie': ({ titles }) =>
    `${andList.format(quoted(titles))} have as many votes: let members vote on before you settle it.`,
  'season-title-taken': ({ title }) => `“${title}” is put forward already: give yours another title.`,
  'bar-not-won': ({ asked }) =>
    asked === undefined
      ? 'No bar of yours came first in a challenge here yet.'
      : `No bar of yours came first in “${asked}” here.`,
};
