import type { Origin } from '../../origin.ts';
import { spaced } from '../../over-lines.ts';
import type { BarredColour } from './barred-colour.ts';

const annex2 = (entry: string): Origin => ({
  trust: 'from memory',
  source: `Regulation (EC) No 1223/2009 Annex II: ${entry}`,
});

/** Colours of poisonous metals and minerals. */
export const POISONOUS_COLOURS: readonly BarredColour[] = [
  {
    reason: 'cadmium',
    names: spaced`
      cadmium; cadmium sulfide; cadmium sulphide; cadmium selenide; cadmio;
      sulfuro de cadmio; seleniuro de cadmio; kadmium;
      pigment yellow 37; pigment yellow 35; pigment red 108; pigment orange 20
    `,
    ci: ['77196', '77199', '77202', '77205'],
    source: annex2('cadmium and its compounds'),
  },
  {
    reason: 'lead',
    names: spaced`
      lead white; white lead; flake white; cremnitz white;
      ceruse; red lead; minium;
      lead carbonate; lead oxide; lead tetroxide; lead chromate;
      lead acetate; lead sulfate; lead pigment; lead tin yellow;
      litharge; massicot; naples yellow lead;
      chrome yellow; chrome orange; chrome green lead; chrome red;
      molybdate orange; molybdate red; blanco de plomo; albayalde;
      cerusa; minio; plomo; oxido de plomo;
      carbonato de plomo; cromato de plomo; amarillo de cromo;
      naranja de cromo; naranja de molibdeno; litargirio; massicote;
      pigment white 1; pigment yellow 34; pigment red 104; pigment red 105;
      sindoor; sindur; kumkum; surma;
      kohl; galena; azarcon; greta;
      lead; silver white; patent yellow;
      turner yellow; turners yellow; cassel yellow; mineral yellow lead;
      blanco de plata; crocoite; crocoita; krems white;
      cremnitz
    `,
    ci: ['77597', '77578', '77600', '77601', '77603', '77605', '77577'],
    source: annex2('lead and its compounds'),
  },
  {
    reason: 'mercury',
    names: spaced`
      cinnabar;
      mercuric sulfide; mercury sulfide; mercury; mercuric;
      cinabrio; cinabario; sulfuro de mercurio; mercurio;
      pigment red 106; vermilion pigment; genuine vermilion; chinese vermilion;
      mercurochrome; mercurocromo; merbromin; merbromina;
      thimerosal
    `,
    hues: 'vermilion; vermillion; bermellon',
    ci: ['77766'],
    source: annex2('mercury and its compounds'),
  },
  {
    reason: 'arsenic',
    names: spaced`
      realgar; rejalgar; orpiment; oropimente;
      king yellow; kings yellow; scheele green; scheeles green;
      verde de scheele; verde scheele; paris green;
      verde de paris; verde paris; schweinfurt green; verde de schweinfurt;
      vienna green; copper acetoarsenite; acetoarsenito de cobre; copper arsenite;
      arsenito de cobre; arsenic; arsenico; arsenic sulfide;
      sulfuro de arsenico;
      pigment green 21; pigment green 22; pigment yellow 39;
      mitis green; verde mitis; amarillo rey; amarillo real;
      emerald green pigment
    `,
    hues: 'emerald green; verde esmeralda',
    ci: ['77410', '77412', '77086', '77085'],
    source: annex2('arsenic and its compounds'),
  },
  {
    reason: 'antimony',
    names: spaced`
      naples yellow; amarillo de napoles;
      antimony; antimonio; antimony trioxide;
      lead antimonate; antimoniato de plomo; chrome antimony titanium;
      nickel antimony titanium;
      pigment yellow 41; pigment brown 24; pigment yellow 53;
      antimony white; stibnite; estibina; estibnita;
      antimonita; antimony sulfide; sulfuro de antimonio; kermesite
    `,
    ci: ['77588', '77310', '77052'],
    source: annex2('antimony and its compounds'),
  },
  {
    reason: 'chromate',
    names: spaced`
      chromate; cromato; dichromate; bichromate;
      dicromato; zinc chromate; zinc yellow; barium chromate;
      strontium chromate; strontium yellow; lemon yellow chromate;
      potassium dichromate;
      chromic acid; chromium trioxide; chromium vi;
      hexavalent chromium; cromo hexavalente; cromato de zinc; amarillo de zinc;
      cromato de bario; cromato de estroncio; amarillo de estroncio; baryta yellow;
      pigment yellow 31; pigment yellow 32; pigment yellow 36;
      bicromato; dicromato de potasio; bicromato de potasio; potassium bichromate;
      zinc green; verde de zinc; brunswick green;
      verde brunswick; verde de brunswick
    `,
    ci: ['77103', '77839', '77955', '77957'],
    source: annex2('chromium; chromic acid and its salts'),
  },
  {
    reason: 'oxidiser',
    names: 'potassium permanganate; permanganate; permanganato; permanganato de potasio',
    source: {
      trust: 'from memory',
      source: 'a strong oxidiser, harmful and staining; in no list of cosmetic colours',
    },
  },
  {
    reason: 'cobalt',
    names: spaced`
      cobalt violet; cobalt green; cobalt turquoise; cobalt teal; cobalt yellow;
      aureolin; smalt; esmalte de cobalto;
      cobalt oxide; cobalt chloride; cobalt carbonate; cobalt stannate;
      cobalt pigment; cobalt; cobalto;
      cerulean blue pigment; violeta de cobalto; verde de cobalto;
      turquesa de cobalto; amarillo de cobalto; oxido de cobalto;
      pigment blue 35; pigment blue 36; pigment green 50;
      pigment green 19; pigment violet 14; pigment blue 32;
      cobalt aluminium oxide; cobalt aluminate; aluminato de cobalto;
      oxido de cobalto y aluminio; thenard blue; thenards blue;
      azul de thenard; azul thenard; bleu de cobalt; kobaltblau;
      pigment blue 28
    `,
    hues: 'cobalt blue; blue cobalt; azul cobalto; azul de cobalto; cerulean; cerulean blue; azul ceruleo',
    ci: ['77346', '77360', '77362', '77364', '77368', '77343', '77335', '77357', '77365'],
    source: annex2('cobalt salts; Annex IV lists CI 77346 alone, 21 CFR 73 none for cosmetics'),
  },
  {
    reason: 'nickel',
    names:
      'nickel; nickel titanate; nickel titanium yellow; nickel oxide; niquel; titanato de niquel; oxido de niquel; nickel azo',
    ci: ['77778', '77788', '77377'],
    source: annex2('nickel oxides, sulfide and salts'),
  },
  {
    reason: 'copper-poison',
    names: spaced`
      verdigris; cardenillo; verdete; copper acetate;
      acetato de cobre; copper sulfate; copper sulphate; sulfato de cobre;
      bluestone; blue vitriol; vitriolo azul; piedra lipe;
      azurite; azurita;
      malachite pigment; malachite powder; malaquita en polvo;
      bremen blue; egyptian blue; azul egipcio; han blue;
      pigment green 20; pigment blue 30; pigment blue 31;
      malachite; malaquita; malachite green pigment;
      chrysocolla; crisocola; cupric carbonate
    `,
    ci: ['77408', '77418', '77420', '77437', '77492:9'],
    source: {
      trust: 'from memory',
      source: 'soluble in alkali or acid, irritant; in no list of cosmetic colours',
    },
  },
  {
    reason: 'radioactive',
    names:
      'uranium; uranium oxide; uranio; oxido de uranio; radium; radium paint; radio luminiscente; thorium; torio',
    source: annex2('radioactive substances'),
  },
  {
    reason: 'asbestos',
    names: spaced`
      asbestos; asbestos powder; asbesto;
      amianto; chrysotile; crisotilo;
      crocidolite; crocidolita; amosite; amosita;
      tremolite; tremolita; blue asbestos; white asbestos;
      asbestos fibre; asbestos fiber; fibra de amianto
    `,
    source: annex2('asbestos'),
  },
];
