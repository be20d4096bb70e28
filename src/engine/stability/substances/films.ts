import { remembered } from '../../colourants/catalogue/origins.ts';
import { spaced } from '../../over-lines.ts';
import { named, type Substance } from './substance.ts';

const stable = { behaviour: 'stable' } as const;
const resin = {
  role: 'resin',
  kind: 'neon',
  ci: [],
  us: 'none',
  alkali: { behaviour: 'conditional', on: 'shade-of-neon' },
  light: 'fades',
  confidence: 'low',
  source: remembered(
    'pigment handbooks on daylight-fluorescent resins: most shades hold at first, pinks and blues may drift',
  ),
} as const;
const film = {
  role: 'glitter',
  kind: 'glitter',
  ci: [],
  alkali: { behaviour: 'conditional', on: 'film-and-dye' },
  light: 'fades-slowly',
  confidence: 'low',
  source: remembered('polymer chemistry: lye attacks polyester film slowly and may pull its dye'),
} as const;
const metal = { role: 'metal', kind: 'metal', confidence: 'high' } as const;
const never = { ...metal, alkali: { behaviour: 'never' } } as const;
const hydrogen = remembered('general chemistry: 2 Al + 2 OH- + 6 H2O gives 2 Al(OH)4- + 3 H2');
const corrodes = remembered('general chemistry: copper and its alloys corrode in alkali and colour the soap');

/** Fluorescent resins, glitter films and metals. */
export const films: readonly Substance[] = [
  {
    ...resin,
    id: 'polyester-3',
    family: true,
    names: named(
      spaced`
        Polyester-3; polyester 3; polyester; poliéster-3; poliéster; polyester resin; resina de poliéster;
        résine polyester; Polyesterharz; polyester-1; polyester-2; polyester-4; polyester-5; polyester-11;
        polyester-25
      `,
    ),
  },
  {
    ...resin,
    id: 'polyamide-resin',
    family: true,
    names: named(
      'Polyamide Resin; polyamide; polyamide-3; polyamide-5; polyamide-8; resina de poliamida; poliamida; résine polyamide; Polyamidharz; polyamide copolymer',
    ),
  },
  {
    ...resin,
    id: 'melamine-resin',
    names: named(`Melamine/Formaldehyde Resin; melamine formaldehyde resin; melamine resin;
      melamine formaldehyde; melamine/formaldehyde copolymer; melamine formaldehyde copolymer;
      melamine formaldehyde toluenesulfonamide copolymer; toluenesulfonamide melamine formaldehyde resin;
      toluene sulfonamide melamine formaldehyde; toluenesulfonamide formaldehyde melamine resin;
      toluenesulfonamide/formaldehyde resin; tosylamide/formaldehyde resin;
      benzoguanamine formaldehyde resin; resina de melamina; melamina formaldehído;
      resina melamina formaldehído; résine mélamine formaldéhyde; Melaminharz; Melamin-Formaldehyd-Harz`),
  },
  {
    ...film,
    id: 'pet',
    names: named(
      spaced`
        Polyethylene Terephthalate; PET; polyethylene terephtalate; PET film; polyester film; PET glitter;
        polyester glitter; tereftalato de polietileno; polietileno tereftalato; polietilentereftalato;
        polytéréphtalate d’éthylène; Polyethylenterephthalat; polietilene tereftalato; polybutylene
        terephthalate; plastic glitter; cosmetic glitter
      `,
    ),
  },
  {
    ...film,
    id: 'polyurethane',
    family: true,
    role: 'additive',
    alkali: stable,
    names: named(
      'Polyurethane-33; polyurethane-11; polyurethane-14; polyurethane-15; polyurethane; poliuretano',
    ),
  },
  {
    ...film,
    id: 'acrylates-copolymer',
    family: true,
    role: 'additive',
    alkali: stable,
    names: named(
      spaced`
        Acrylates Copolymer; styrene/acrylates copolymer; polymethyl methacrylate; PMMA; acrylic copolymer;
        epoxy resin; polyacrylate; ethylene/VA copolymer; nitrocellulose; copolímero de acrilatos;
        polyvinyl alcohol
      `,
    ),
  },
  {
    ...film,
    id: 'cellulose',
    family: true,
    ci: [],
    alkali: { behaviour: 'stable' },
    names: named(
      'Cellulose; regenerated cellulose; hydrated cellulose; rayon; celulosa; biodegradable glitter; bio glitter; eucalyptus cellulose',
    ),
  },

  {
    ...never,
    id: 'aluminium',
    ci: ['77000'],
    e: ['173'],
    us: ['73.2645'],
    source: hydrogen,
    names: named(
      spaced`
        Aluminum Powder; aluminum; aluminium; aluminium powder; aluminum flake; aluminium flake; aluminio;
        aluminio en polvo; polvo de aluminio; poudre d’aluminium; Aluminiumpulver; alluminio; polvere di
        alluminio; alumínio; pó de alumínio; aluminium metal; pigment metal 1
      `,
    ),
  },
  {
    ...never,
    id: 'copper',
    ci: ['77400'],
    us: ['73.2647'],
    source: corrodes,
    names: named(
      spaced`
        Copper Powder; copper; copper flake; cobre; polvo de cobre; cobre en polvo; cuivre; poudre de
        cuivre; Kupfer; Kupferpulver; rame; polvere di rame; pó de cobre; pigment metal 2
      `,
    ),
  },
  {
    ...never,
    id: 'bronze',
    ci: ['77400'],
    us: ['73.2646'],
    source: corrodes,
    names: named(
      spaced`
        Bronze Powder; bronze; bronze flake; bronce; polvo de bronce; bronce en polvo; poudre de bronze;
        Bronzepulver; bronzo; polvere di bronzo; brass; brass powder; latón; polvo de latón; laiton;
        Messing; ottone; latão; copper zinc alloy
      `,
    ),
  },
  {
    ...never,
    id: 'zinc-metal',
    ci: [],
    source: remembered('general chemistry: zinc metal gives hydrogen with alkali'),
    names: named(
      'Zinc Powder; zinc dust; zinc metal; polvo de zinc; poudre de zinc; Zinkstaub; polvere di zinco; zinc flake',
    ),
  },
  {
    ...never,
    id: 'metal-flake',
    ci: [],
    source: hydrogen,
    names: named(
      spaced`
        Metal Flake; metallic flake; metal powder; metallic powder; metallic pigment; aluminised film;
        aluminized film; metallised film; metallized film; aluminized polyethylene terephthalate;
        metallized polyester; metallised polyester; polvo metálico; escamas metálicas
      `,
    ),
  },
  {
    ...metal,
    id: 'gold',
    ci: ['77480'],
    e: ['175'],
    alkali: stable,
    source: remembered('general chemistry: gold does not react with alkali; sold leaf is often brass'),
    names: named('Gold; gold leaf 24k; oro; or fin; Gold metallisch; ouro; pure gold; oro puro'),
  },
  {
    ...metal,
    id: 'silver',
    ci: ['77820'],
    e: ['174'],
    us: ['73.2500'],
    alkali: { behaviour: 'conditional', towards: 'greyer', on: 'tarnishes' },
    confidence: 'medium',
    source: remembered('general chemistry: silver does not react with alkali but tarnishes'),
    names: named('Silver; plata; argent; Silber; argento; prata; colloidal silver; pure silver'),
  },
];
