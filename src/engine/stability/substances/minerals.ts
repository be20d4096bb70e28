import { published, remembered } from '../../colourants/catalogue/origins.ts';
import { spaced } from '../../over-lines.ts';
import { pigment } from './mineral.ts';
import { named, type Substance } from './substance.ts';
import { whites } from './whites.ts';

const ironOxide = { ...pigment, kind: 'oxide', e: ['172'], us: ['73.2250'] } as const;
const ultramarine = { ...pigment, kind: 'ultramarine', ci: ['77007'], us: ['73.2725'] } as const;
const oxidisedUltramarine = {
  ...ultramarine,
  alkali: { behaviour: 'conditional', towards: 'bluer', on: 'hot-strong-lye' },
  confidence: 'medium',
  source: remembered('pigment handbooks (Kirk-Othmer, Buxbaum): oxidised grades are weaker than the blue'),
} as const;
const ullmann = published(
  'Ullmann, as cited by Haz-Map: acid destroys ultramarine; fairly resistant to alkali',
);
const ironBlue = {
  ...pigment,
  kind: 'oxide',
  ci: ['77510'],
  alkali: { behaviour: 'destroyed', towards: 'rust' },
  source: published(
    'Field and Salter, Chromatography; Terry, Pigments, Paint and Painting: alkali turns iron blue brown',
  ),
} as const;

/** Mineral pigments: oxides, ultramarines, chromiums, iron blue, manganese violet and whites. */
export const minerals: readonly Substance[] = [
  {
    ...ironOxide,
    id: 'iron-oxides',
    ci: ['77491', '77492', '77499'],
    like: 'brown-iron-oxide',
    names: named(`Iron Oxides; iron oxide; synthetic iron oxide; óxidos de hierro; óxido de hierro;
      oxydes de fer; oxyde de fer; Eisenoxide; Eisenoxid; ossidi di ferro;
      ossido di ferro; óxidos de ferro; óxido de ferro; brown iron oxide; iron oxide brown;
      óxido de hierro marrón; oxyde de fer brun; Eisenoxid braun; orange iron oxide; iron oxide orange`),
  },
  {
    ...ironOxide,
    id: 'iron-oxide-red',
    ci: ['77491'],
    like: 'red-iron-oxide',
    names: named(`Iron Oxides; red iron oxide; iron oxide red; ferric oxide; iron(III) oxide; hematite;
      haematite; óxido de hierro rojo; óxido férrico; oxyde de fer rouge;
      Eisenoxid rot; rotes Eisenoxid; ossido di ferro rosso; óxido de ferro vermelho; pigment red 101; red ochre; red oxide; óxido rojo; Fe2O3`),
  },
  {
    ...ironOxide,
    id: 'iron-oxide-yellow',
    ci: ['77492'],
    like: 'yellow-iron-oxide',
    names: named(`Iron Oxides; yellow iron oxide; iron oxide yellow; hydrated iron oxide; ferric hydroxide;
      goethite; óxido de hierro amarillo; oxyde de fer jaune; Eisenoxid gelb;
      ossido di ferro giallo; óxido de ferro amarelo; pigment yellow 42; yellow ochre; yellow oxide; óxido amarillo`),
  },
  {
    ...ironOxide,
    id: 'iron-oxide-black',
    ci: ['77499'],
    like: 'black-iron-oxide',
    names: named(`Iron Oxides; black iron oxide; iron oxide black; ferrous ferric oxide; ferrosoferric oxide;
      magnetite; óxido de hierro negro; oxyde de fer noir; Eisenoxid schwarz;
      ossido di ferro nero; óxido de ferro preto; pigment black 11; black oxide; óxido negro; Fe3O4`),
  },
  {
    ...ironOxide,
    id: 'iron-oxide-orange',
    us: [],
    ci: ['77489'],
    like: 'orange-iron-oxide',
    names: named('Iron Oxides; ferrous oxide; iron(II) oxide'),
  },
  {
    ...ultramarine,
    id: 'ultramarines',
    confidence: 'medium',
    source: ullmann,
    like: 'ultramarine-blue',
    names: named(
      'Ultramarines; ultramarine; ultramar; ultramarinos; ultramarino; outremers; outremer; Ultramarin; Ultramarine Pigment; oltremare; lazurite; lazurita',
    ),
  },
  {
    ...ultramarine,
    id: 'ultramarine-blue',
    source: ullmann,
    like: 'ultramarine-blue',
    names: named(
      spaced`
        Ultramarines; ultramarine blue; blue ultramarine; azul ultramar; azul ultramarino; bleu outremer;
        outremer bleu; Ultramarinblau; blu oltremare; pigment blue 29
      `,
    ),
  },
  {
    ...ultramarine,
    id: 'ultramarine-green',
    source: ullmann,
    like: 'ultramarine-green',
    names: named(
      'Ultramarines; ultramarine green; green ultramarine; verde ultramar; vert outremer; Ultramaringrün; verde oltremare',
    ),
  },
  {
    ...oxidisedUltramarine,
    id: 'ultramarine-violet',
    like: 'ultramarine-violet',
    names: named(
      spaced`
        Ultramarines; ultramarine violet; violet ultramarine; ultramarine purple; violeta ultramar; violeta
        ultramarino; violet outremer; outremer violet; Ultramarinviolett; viola oltremare; violetto
        oltremare; pigment violet 15
      `,
    ),
  },
  {
    ...oxidisedUltramarine,
    id: 'ultramarine-pink',
    like: 'ultramarine-pink',
    names: named(
      spaced`
        Ultramarines; ultramarine pink; pink ultramarine; ultramarine rose; ultramarine red; rosa ultramar;
        rojo ultramar; rose outremer; outremer rose; Ultramarinrosa; rosa oltremare; pigment red 259
      `,
    ),
  },
  {
    ...pigment,
    id: 'chromium-oxide-green',
    kind: 'chromium',
    ci: ['77288'],
    us: ['73.2327'],
    like: 'chromium-oxide-green',
    source: published(
      'Gettens and Stout, Painting Materials, p. 107: unaffected by heat, strong acids and alkalis',
    ),
    names:
      named(`Chromium Oxide Greens; chromium oxide green; chromium oxide; chrome oxide green; chromic oxide;
      chromium(III) oxide; green chromium oxide; óxido de cromo verde;
      óxido de cromo; verde óxido de cromo; verde de cromo; oxyde de chrome vert; oxyde de chrome;
      vert oxyde de chrome; Chromoxidgrün; Chromoxid grün; Chromoxid; ossido di cromo;
      ossido di cromo verde; verde ossido di cromo; óxido de crómio; óxido de crômio; pigment green 17; Cr2O3`),
  },
  {
    ...pigment,
    id: 'chromium-hydroxide-green',
    kind: 'chromium',
    ci: ['77289'],
    us: ['73.2326'],
    like: 'chromium-hydroxide-green',
    source: published('21 CFR 73.1326 limits chromium extracted by 2 % sodium hydroxide to 0.1 %'),
    names: named(`Chromium Hydroxide Green; chromium hydroxide; hydrated chromium oxide;
      hydrated chromium oxide green; chrome hydroxide green; viridian; hidróxido de cromo;
      hidróxido de cromo verde;
      verde hidróxido de cromo; óxido de cromo hidratado; hydroxyde de chrome; hydroxyde de chrome vert;
      vert émeraude; Chromhydroxidgrün; Chromhydroxid; idrossido di cromo; idrossido di cromo verde;
      pigment green 18`),
  },
  {
    ...ironBlue,
    id: 'ferric-ferrocyanide',
    us: ['73.2299'],
    names:
      named(`Ferric Ferrocyanide; ferric ferro cyanide; ferro cyanide; iron blue; prussian blue; milori blue; ferrocianuro férrico;
      ferrocianuro de hierro; azul de prusia; azul de hierro; azul prusia; ferrocyanure ferrique;
      ferrocyanure de fer;
      bleu de prusse; Berliner Blau; Preußischblau; Eisenblau; Eisen(III)-hexacyanoferrat;
      ferrocianuro ferrico; blu di prussia; ferrocianeto férrico; azul da prússia; ferric hexacyanoferrate;
      pigment blue 27`),
  },
  {
    ...ironBlue,
    id: 'ferric-ammonium-ferrocyanide',
    us: ['73.2298'],
    names: named(
      spaced`
        Ferric Ammonium Ferrocyanide; ferric ammonium ferrocyanide blue; ammonium iron ferrocyanide;
        ferrocianuro férrico amónico; ferrocianuro de hierro y amonio; ferrocyanure ferrique ammoniacal;
        Eisenammoniumferrocyanid
      `,
    ),
  },
  {
    ...pigment,
    id: 'manganese-violet',
    kind: 'oxide',
    ci: ['77742'],
    us: ['73.2775'],
    alkali: { behaviour: 'destroyed', towards: 'beige' },
    source: remembered('pigment handbooks (Buxbaum): strong acids and alkalis destroy manganese violet'),
    names:
      named(`Manganese Violet; violeta de manganeso; violeta manganeso; violet de manganèse; Manganviolett;
      violetto di manganese; viola di manganese; violeta de manganês; ammonium manganese pyrophosphate;
      manganese ammonium pyrophosphate; ammonium manganese diphosphate; pigment violet 16`),
  },
  ...whites,
  {
    ...pigment,
    id: 'cobalt-aluminium-oxide',
    kind: 'oxide',
    ci: ['77346'],
    names: named(
      'CI 77346; cobalt aluminum oxide; cobalt blue; azul cobalto; azul de cobalto; bleu de cobalt; Kobaltblau; pigment blue 28',
    ),
  },
];
