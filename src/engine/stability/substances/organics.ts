import { remembered } from '../../colourants/catalogue/origins.ts';
import { spaced } from '../../over-lines.ts';
import { stable, unknown } from './alkali.ts';
import { certifiedColours } from './certified.ts';
import { named, type Substance } from './substance.ts';

const fluorescent = {
  role: 'dye',
  kind: 'dye',
  ci: [],
  us: 'none',
  alkali: { behaviour: 'conditional', on: 'shade-of-neon' },
  light: 'fades',
  confidence: 'low',
  source: remembered('pigment handbooks on daylight-fluorescent dyes'),
} as const;

/** Of those that Annex IV of Regulation (EC) No 1223/2009 lists by name, entries 69 and 71, the number that it gives. */
const LISTED_AS: ReadonlyMap<string, readonly string[]> = new Map([
  ['Basic Blue 26', ['44045']],
  ['Acid Red 52', ['45100']],
]);

/** Dyes that neon resins hold. */
const fluorescentDyes: readonly Substance[] = (
  [
    'Basic Red 1',
    'Basic Red 1:1',
    'Basic Violet 10',
    'Basic Violet 11',
    'Basic Violet 11:1',
    'Basic Violet 16',
    'Basic Yellow 40',
    'Basic Blue 3',
    'Basic Blue 7',
    'Basic Blue 26',
    'Basic Green 4',
    'Solvent Yellow 43',
    'Solvent Yellow 44',
    'Solvent Yellow 98',
    'Solvent Yellow 145',
    'Solvent Yellow 160',
    'Solvent Yellow 172',
    'Solvent Orange 63',
    'Solvent Red 49',
    'Solvent Blue 104',
    'Acid Red 52',
  ] as const
).map(name => ({
  ...fluorescent,
  ci: LISTED_AS.get(name) ?? [],
  id: name.toLowerCase().replace(/[ :]/g, '-'),
  names: name === 'Basic Violet 10' ? named('Basic Violet 10; rhodamine b; rodamina b') : [name],
}));

/** Certified dyes and their lakes, fluorescent dyes, carmine and pigments that dissolve in nothing. */
export const organics: readonly Substance[] = [
  ...certifiedColours,
  ...fluorescentDyes,
  {
    id: 'carmine',
    role: 'lake',
    kind: 'lake',
    ci: ['75470'],
    e: ['120'],
    us: ['73.2087'],
    light: 'fades-slowly',
    confidence: 'high',
    like: 'carmine',
    alkali: { behaviour: 'shifts', towards: 'purple-then-dull' },
    source: remembered(
      'JECFA specification of carmines, FNP 52 Add 8 (2000): violet once alkaline, and soluble',
    ),
    names: named(
      spaced`
        Carmine; carmines; cochineal; cochineal extract; carminic acid; natural red 4; carmín; carmín de
        cochinilla; cochinilla; ácido carmínico; carmin; carmin de cochenille; cochenille; Karmin;
        Karminsäure; carminio; cocciniglia; carmim; cochonilha; crimson lake; carmine lake
      `,
    ),
  },
  {
    id: 'copper-phthalocyanine',
    role: 'pigment',
    kind: 'lake',
    ci: ['74160'],
    us: 'none',
    alkali: stable,
    confidence: 'high',
    source: remembered('organic pigment handbooks'),
    like: 'phthalocyanine-blue',
    names: named(
      spaced`
        CI 74160; copper phthalocyanine; phthalocyanine blue; phthalo blue; pigment blue 15; pigment blue
        15:3; ftalocianina de cobre; azul de ftalocianina; phtalocyanine de cuivre; Kupferphthalocyanin
      `,
    ),
  },
  {
    id: 'phthalocyanine-green',
    role: 'pigment',
    kind: 'lake',
    ci: ['74260'],
    us: 'none',
    alkali: stable,
    confidence: 'high',
    source: remembered('organic pigment handbooks'),
    like: 'phthalocyanine-green',
    names: named(
      'CI 74260; phthalocyanine green; phthalo green; polychloro copper phthalocyanine; pigment green 7; verde de ftalocianina',
    ),
  },
  {
    id: 'caramel',
    role: 'dye',
    kind: 'dye',
    ci: [],
    e: ['150a', '150b', '150c', '150d', '150'],
    us: ['73.2085'],
    alkali: stable,
    confidence: 'medium',
    source: remembered('food chemistry'),
    like: 'caramel',
    names: named('Caramel; caramel colour; caramelo; color caramelo; caramello; Zuckerkulör; caramel color'),
  },
  {
    id: 'beta-carotene',
    role: 'dye',
    kind: 'dye',
    ci: ['40800', '75130'],
    e: ['160a'],
    us: ['73.2095'],
    alkali: stable,
    light: 'fades',
    confidence: 'medium',
    source: remembered('food chemistry: no group that alkali attacks'),
    like: 'beta-carotene',
    names: named(
      'Beta-Carotene; beta carotene; carotene; betacaroteno; bêta-carotène; Betacarotin; betacarotene',
    ),
  },
  {
    id: 'copper-chlorophyllin',
    role: 'dye',
    kind: 'dye',
    ci: ['75810', '75815'],
    e: ['141', '140'],
    us: ['73.2125'],
    alkali: stable,
    light: 'fades',
    confidence: 'medium',
    source: remembered('food chemistry: copper chelate'),
    like: 'copper-chlorophyllin',
    names: named(
      spaced`
        Chlorophyllin-Copper Complex; copper chlorophyllin; sodium copper chlorophyllin; potassium sodium
        copper chlorophyllin; chlorophyllin; clorofilina; clorofilina cúprica; clorofilina de cobre;
        chlorophylline cuivrique; chlorophyll; clorofila; natural green 3
      `,
    ),
  },
  {
    id: 'guaiazulene',
    role: 'dye',
    kind: 'dye',
    ci: [],
    us: ['73.2180'],
    alkali: unknown,
    light: 'fades',
    confidence: 'low',
    source: remembered('dye chemistry'),
    names: named('Guaiazulene; azulene; guayazuleno; azuleno'),
  },
  {
    id: 'zinc-sulfide-luminescent',
    role: 'pigment',
    kind: 'neon',
    ci: ['77975'],
    us: ['73.2995'],
    alkali: unknown,
    confidence: 'low',
    source: remembered('general inorganic chemistry'),
    names: named(
      'Luminescent Zinc Sulfide; zinc sulfide; zinc sulphide; sulfuro de zinc; sulfuro de zinc luminiscente',
    ),
  },
  {
    id: 'pyrophyllite',
    role: 'additive',
    ci: [],
    us: ['73.2400'],
    alkali: { behaviour: 'stable' },
    confidence: 'medium',
    source: remembered('a clay mineral: no change in cold-process time'),
    names: named('Pyrophyllite; pirofilita'),
  },
  {
    id: 'strontium-aluminate',
    role: 'pigment',
    kind: 'neon',
    ci: [],
    us: 'none',
    alkali: unknown,
    confidence: 'low',
    source: remembered('general inorganic chemistry: uncoated grades lose their glow in water'),
    names: named(
      spaced`
        Strontium Aluminate; strontium aluminium oxide; glow powder; glow in the dark powder; aluminato de
        estroncio; polvo fosforescente; polvo que brilla en la oscuridad
      `,
    ),
  },
];
