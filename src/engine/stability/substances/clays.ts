import { remembered } from '../../colourants/catalogue/origins.ts';
import { spaced } from '../../over-lines.ts';
import { named, type Substance } from './substance.ts';

const clay = {
  role: 'pigment',
  kind: 'clay',
  alkali: { behaviour: 'stable' },
  confidence: 'high',
  source: remembered('pigment handbooks: attacked slowly, no change in cold-process time'),
} as const;

/** Clays. */
export const clays: readonly Substance[] = [
  {
    ...clay,
    id: 'kaolin',
    ci: ['77004'],
    like: 'kaolin',
    names: named(
      spaced`
        Kaolin; white clay; kaolin clay; china clay; hydrated aluminum silicate; aluminum silicate;
        aluminium silicate; caolín; arcilla blanca; argile blanche; Kaolinerde; weiße Tonerde; caolino;
        argilla bianca; caulim; pigment white 19
      `,
    ),
  },
  {
    ...clay,
    id: 'bentonite',
    ci: ['77004'],
    like: 'bentonite',
    names: named('Bentonite; montmorillonite; bentonita; bentonite clay; montmorillonita'),
  },
  {
    ...clay,
    id: 'illite',
    ci: [],
    like: 'french-green-clay',
    names: named(
      'Illite; green clay; french green clay; illita; arcilla verde; argile verte; grüne Tonerde; argilla verde; sea clay; sea silt',
    ),
  },
  {
    ...clay,
    id: 'rose-clay',
    ci: [],
    like: 'rose-clay',
    names: named('Rose Clay; pink clay; arcilla rosa; argile rose; rosa Tonerde; argilla rosa'),
  },
  {
    ...clay,
    id: 'red-clay',
    ci: [],
    like: 'red-clay',
    names: named('Red Clay; arcilla roja; argile rouge; rote Tonerde; argilla rossa'),
  },
  {
    ...clay,
    id: 'yellow-clay',
    ci: [],
    like: 'yellow-clay',
    names: named('Yellow Clay; arcilla amarilla; argile jaune; gelbe Tonerde'),
  },
  {
    ...clay,
    id: 'rhassoul',
    ci: [],
    like: 'rhassoul-clay',
    names: named('Moroccan Lava Clay; rhassoul; ghassoul; rhassoul clay; arcilla rhassoul; lava clay'),
  },
  {
    ...clay,
    id: 'fullers-earth',
    ci: [],
    like: 'fullers-earth',
    names: named('Fuller’s Earth; fullers earth; fuller earth; solum fullonum; tierra de batán'),
  },
  {
    ...clay,
    id: 'aluminium-silicate-red',
    ci: ['77015'],
    names: named('CI 77015; aluminum silicate coloured with ferric oxide'),
  },
];
