import { remembered } from '../../colourants/catalogue/origins.ts';
import { spaced } from '../../over-lines.ts';
import { pigment } from './mineral.ts';
import { named, type Substance } from './substance.ts';

/** White minerals. */
export const whites: readonly Substance[] = [
  {
    ...pigment,
    id: 'titanium-dioxide',
    kind: 'white',
    ci: ['77891'],
    e: ['171'],
    us: ['73.2575'],
    like: 'titanium-dioxide',
    names: named(`Titanium Dioxide; titanium oxide; titania; TiO2; dióxido de titanio; bióxido de titanio;
      óxido de titanio; dioxyde de titane; oxyde de titane; Titandioxid; Titanoxid; biossido di titanio;
      diossido di titanio;
      dióxido de titânio; titanium white; pigment white 6; anatase; rutile; titanium dioxyde; titandioxide; titan dioxide`),
  },
  {
    ...pigment,
    id: 'zinc-oxide',
    kind: 'white',
    ci: ['77947'],
    us: ['73.2991'],
    like: 'zinc-oxide',
    alkali: { behaviour: 'conditional', on: 'dissolves-partly' },
    confidence: 'medium',
    source: remembered('general inorganic chemistry: amphoteric'),
    names: named(
      'Zinc Oxide; óxido de zinc; óxido de cinc; oxyde de zinc; Zinkoxid; ossido di zinco; óxido de zinco; zinc white; pigment white 4; ZnO',
    ),
  },
  {
    ...pigment,
    id: 'bismuth-oxychloride',
    kind: 'mica',
    ci: ['77163'],
    us: ['73.2162'],
    like: 'bismuth-pearl',
    light: 'fades-slowly',
    alkali: { behaviour: 'conditional', towards: 'greyer', on: 'pearl-lost' },
    confidence: 'medium',
    source: remembered('general inorganic chemistry: hydrolyses toward the oxide'),
    names: named(
      spaced`
        Bismuth Oxychloride; bismuth chloride oxide; oxicloruro de bismuto; oxychlorure de bismuth;
        Bismutoxychlorid; Bismutchloridoxid; ossicloruro di bismuto; oxicloreto de bismuto; bismuth
        oxichloride
      `,
    ),
  },
];
