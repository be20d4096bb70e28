import { spaced } from '../../../engine/over-lines.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const { one } = numbersIn('es');
const andList = new Intl.ListFormat('es', { type: 'conjunction' });
const orList = new Intl.ListFormat('es', { type: 'disjunction' });
const quoted = (names: readonly string[]) => names.map(name => `«${name}»`);
const count = (n: number, one: string, many: string) => `${n} ${n === 1 ? one : many}`;

export const community = {
  season: 'Paleta de la temporada',
  palette: (v: { title: string; colours: readonly string[] }) => `«${v.title}»: ${v.colours.join(', ')}`,
  noSeason: 'Aún no hay paleta fijada. Propón una con /season propose y vota con /season vote.',
  putForward: 'Propuestas',
  proposal: (v: { title: string; colours: readonly string[]; votes: number }) =>
    `«${v.title}»: ${v.colours.join(', ')}; ${count(v.votes, 'voto', 'votos')}`,
  proposed: (v: { title: string; colours: readonly string[] }) =>
    `Propuesta para la temporada, «${v.title}»: ${v.colours.join(', ')}. Vota con /season vote.`,
  voted: (v: { title: string }) => `Tu voto es para «${v.title}».`,
  settled: (v: { title: string; colours: readonly string[]; votes: number }) =>
    `La paleta de la temporada, con ${count(v.votes, 'voto', 'votos')}, «${v.title}»: ${v.colours.join(', ')}`,
  offered: (v: { name: string; by: string; wants: string | undefined }) =>
    `${v.by} ofrece «${v.name}»${v.wants ? ` por ${v.wants}` : ''}.`,
  offers: (v: { offers: number }) =>
    v.offers === 0
      ? 'Nadie ofrece un bote aquí. /swap offer pone uno tuyo.'
      : `${count(v.offers, 'bote', 'botes')} para cambiar`,
  offer: (v: {
    name: string;
    kind: string | undefined;
    grams: number | undefined;
    by: string;
    wants: string | undefined;
  }) => spaced`
    «${v.name}»${v.kind && v.kind.toLowerCase() !== v.name.toLowerCase() ? ` (${v.kind})` : ''}${v.grams === undefined ? '' : `, ${one(v.grams)} g`},
    de ${v.by}${v.wants ? `, por ${v.wants}` : ''}
  `,
  offerGone: (v: { name: string }) => `«${v.name}» ya no se ofrece aquí.`,
  recipeGiven: (v: { title: string; bar: string; recipe: string }) =>
    `La receta de «${v.bar}», primera en «${v.title}», está aquí con permiso de quien la hizo: guárdala con /recipe copy recipe:${v.recipe}`,
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
    `La paleta de una temporada tiene de ${least} a ${most} colores, separados por comas.`,
  'season-palette-unknown': ({ asked, titles }) =>
    `Ninguna paleta se llama «${asked}». Propuestas: ${orList.format(quoted(titles))}.`,
  'season-nothing-put': () => 'Aún no hay propuestas: /season propose.',
  'season-tie': ({ titles }) =>
    `${andList.format(quoted(titles))} tienen los mismos votos: que se siga votando antes de fijarla.`,
  'season-title-taken': ({ title }) => `«${title}» ya está propuesta: dale otro título a la tuya.`,
  'bar-not-won': ({ asked }) =>
    asked === undefined
      ? 'Ninguna barra tuya ha quedado primera aún en un reto de aquí.'
      : `Ninguna barra tuya quedó primera en «${asked}» aquí.`,
};
