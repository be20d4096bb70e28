import { remembered } from '../../colourants/catalogue/origins.ts';
import { spaced } from '../../over-lines.ts';
import { named, type Substance } from './substance.ts';

const handbook = remembered('pigment handbooks: resists dilute alkali');
const stable = { behaviour: 'stable' } as const;
const substrate = {
  role: 'substrate',
  kind: 'mica',
  alkali: stable,
  confidence: 'high',
  source: handbook,
} as const;
const oxideCoat = { role: 'additive', alkali: stable, confidence: 'high', source: handbook } as const;
/** Substrates and the oxides that coat them. */
export const effects: readonly Substance[] = [
  {
    ...substrate,
    id: 'mica',
    e: ['555'],
    ci: ['77019'],
    us: ['73.2496'],
    like: 'mica-unknown-coat',
    names: named(
      spaced`
        Mica; muscovite; sericite; mica powder; mica en polvo; Glimmer; potassium aluminium silicate;
        potassium aluminum silicate; mica mineral; natural mica; mica naturale; mica naturel; pigment white
        20
      `,
    ),
  },
  {
    ...substrate,
    id: 'synthetic-fluorphlogopite',
    ci: [],
    like: 'mica-unknown-coat',
    names: named(
      spaced`
        Synthetic Fluorphlogopite; synthetic fluorophlogopite; fluorphlogopite; synthetic mica; mica
        sintética; fluorflogopita sintética; fluorphlogopite synthétique; mica synthétique; synthetischer
        Glimmer; fluorflogopite sintetica; mica sintetica
      `,
    ),
  },
  {
    ...substrate,
    id: 'borosilicate',
    family: true,
    ci: [],
    like: 'mica-unknown-coat',
    names: named(`Calcium Aluminum Borosilicate; calcium sodium borosilicate; calcium titanium borosilicate;
      sodium calcium aluminum borosilicate; silver borosilicate; borosilicate; borosilicate glass;
      glass flakes; glass flake; borosilicato; borosilicato de calcio y aluminio;
      borosilicato de calcio y sodio; borosilicate de calcium et d’aluminium;
      borosilicate de calcium et de sodium; Calcium-Aluminium-Borosilikat;
      borosilicato di calcio e alluminio`),
  },
  {
    ...oxideCoat,
    id: 'tin-oxide',
    ci: ['77861'],
    names: named(
      spaced`
        Tin Oxide; stannic oxide; tin dioxide; óxido de estaño; dióxido de estaño; oxyde d’étain; oxyde de
        étain; Zinnoxid; Zinndioxid; ossido di stagno; óxido de estanho
      `,
    ),
  },
  {
    ...oxideCoat,
    id: 'silica',
    ci: [],
    names: named(
      spaced`
        Silica; silicon dioxide; hydrated silica; silica dimethyl silylate; sílice; dióxido de silicio;
        silice; silicium dioxide; Siliciumdioxid; Kieselsäure; silica silylate; sílica
      `,
    ),
  },
  {
    ...oxideCoat,
    id: 'alumina',
    ci: [],
    names: named(
      'Alumina; aluminum oxide; aluminium oxide; alúmina; óxido de aluminio; alumine; Aluminiumoxid; allumina; ossido di alluminio',
    ),
  },
  {
    ...oxideCoat,
    id: 'aluminium-hydroxide',
    ci: ['77002'],
    names: named(
      spaced`
        Aluminum Hydroxide; aluminium hydroxide; alumina hydrate; hydrated alumina; hidróxido de aluminio;
        hydroxyde d’aluminium; hydroxyde d aluminium; Aluminiumhydroxid; idrossido di alluminio; hidróxido
        de alumínio
      `,
    ),
  },
  {
    ...oxideCoat,
    id: 'zirconium-dioxide',
    ci: [],
    names: named('Zirconium Dioxide; zirconia; dióxido de circonio'),
  },
  {
    ...oxideCoat,
    id: 'talc',
    ci: ['77718'],
    names: named('Talc; talco; Talkum; talcum; magnesium silicate; silicato de magnesio'),
  },
  {
    ...oxideCoat,
    id: 'barium-sulfate',
    ci: ['77120'],
    names: named(
      'Barium Sulfate; barium sulphate; sulfato de bario; sulfate de baryum; Bariumsulfat; solfato di bario; blanc fixe',
    ),
  },
  {
    ...oxideCoat,
    id: 'calcium-carbonate',
    ci: ['77220'],
    e: ['170'],
    names: named(
      'Calcium Carbonate; chalk; carbonato de calcio; carbonate de calcium; Calciumcarbonat; carbonato di calcio',
    ),
  },
  {
    ...oxideCoat,
    id: 'calcium-sulfate',
    ci: ['77231'],
    names: named('Calcium Sulfate; calcium sulphate; gypsum; sulfato de calcio; sulfate de calcium'),
  },
  {
    ...oxideCoat,
    id: 'magnesium-carbonate',
    ci: ['77713'],
    names: named('Magnesium Carbonate; carbonato de magnesio; carbonate de magnésium'),
  },
  {
    ...oxideCoat,
    id: 'guanine',
    ci: ['75170'],
    confidence: 'low',
    names: named('Guanine; pearl essence; guanina'),
  },
];
