import type { Origin } from '../../origin.ts';
import { spaced } from '../../over-lines.ts';

/** Why a colour stays out of soap. */
export type BarredReason =
  | 'cadmium'
  | 'lead'
  | 'mercury'
  | 'arsenic'
  | 'antimony'
  | 'chromate'
  | 'oxidiser'
  | 'cobalt'
  | 'nickel'
  | 'copper-poison'
  | 'radioactive'
  | 'asbestos'
  | 'delisted-dye'
  | 'us-delisted'
  | 'burning-plant'
  | 'metal'
  | 'paint'
  | 'crayon'
  | 'candle-dye'
  | 'cloth-dye'
  | 'food-colouring'
  | 'make-up';

/** A colour that is refused by name, wherever a colourant can be named. */
export type BarredColour = {
  readonly reason: BarredReason;
  /** Names in both languages, parted by `; `, matched word by word in singular and without accents. */
  readonly names: string;
  /** Further names that people also give to a mere hue: with `mica`, `tone` and the like beside them they pass. */
  readonly hues?: string;
  /** Colour Index numbers. */
  readonly ci?: readonly string[];
  /** E numbers, with the E. */
  readonly e?: readonly string[];
  readonly source: Origin;
};

const annex2 = (entry: string): Origin => ({
  trust: 'from memory',
  source: `Regulation (EC) No 1223/2009 Annex II: ${entry}`,
});
const fda = (section: string): Origin => ({ trust: 'from memory', source: `21 CFR ${section}` });
const practice = (source: string): Origin => ({ trust: 'common practice', source });

/** Poisonous and prohibited colours, and what is sold as colour for something else. */
export const BARRED: readonly BarredColour[] = [
  {
    reason: 'cadmium',
    names: spaced`
      cadmium; cadmium sulfide; cadmium sulphide; cadmium selenide; cadmio; sulfuro de cadmio; seleniuro de
      cadmio; kadmium; pigment yellow 37; pigment yellow 35; pigment red 108; pigment orange 20
    `,
    ci: ['77196', '77199', '77202', '77205'],
    source: annex2('cadmium and its compounds'),
  },
  {
    reason: 'lead',
    names: spaced`
      lead white; white lead; flake white; cremnitz white; ceruse; red lead; minium; lead carbonate; lead
      oxide; lead tetroxide; lead chromate; lead acetate; lead sulfate; lead pigment; lead tin yellow;
      litharge; massicot; naples yellow lead; chrome yellow; chrome orange; chrome green lead; chrome red;
      molybdate orange; molybdate red; blanco de plomo; albayalde; cerusa; minio; plomo; oxido de plomo;
      carbonato de plomo; cromato de plomo; amarillo de cromo; naranja de cromo; naranja de molibdeno;
      litargirio; massicote; pigment white 1; pigment yellow 34; pigment red 104; pigment red 105; sindoor;
      sindur; kumkum; surma; kohl; galena; azarcon; greta; lead; silver white; patent yellow; turner
      yellow; turners yellow; cassel yellow; mineral yellow lead; blanco de plata; crocoite; crocoita;
      krems white; cremnitz
    `,
    ci: ['77597', '77578', '77600', '77601', '77603', '77605', '77577'],
    source: annex2('lead and its compounds'),
  },
  {
    reason: 'mercury',
    names: spaced`
      cinnabar; mercuric sulfide; mercury sulfide; mercury; mercuric; cinabrio; cinabario; sulfuro de
      mercurio; mercurio; pigment red 106; vermilion pigment; genuine vermilion; chinese vermilion;
      mercurochrome; mercurocromo; merbromin; merbromina; thimerosal
    `,
    hues: 'vermilion; vermillion; bermellon',
    ci: ['77766'],
    source: annex2('mercury and its compounds'),
  },
  {
    reason: 'arsenic',
    names: spaced`
      realgar; rejalgar; orpiment; oropimente; king yellow; kings yellow; scheele green; scheeles green;
      verde de scheele; verde scheele; paris green; verde de paris; verde paris; schweinfurt green; verde
      de schweinfurt; vienna green; copper acetoarsenite; acetoarsenito de cobre; copper arsenite; arsenito
      de cobre; arsenic; arsenico; arsenic sulfide; sulfuro de arsenico; pigment green 21; pigment green
      22; pigment yellow 39; mitis green; verde mitis; amarillo rey; amarillo real; emerald green pigment
    `,
    hues: 'emerald green; verde esmeralda',
    ci: ['77410', '77412', '77086', '77085'],
    source: annex2('arsenic and its compounds'),
  },
  {
    reason: 'antimony',
    names: spaced`
      naples yellow; amarillo de napoles; antimony; antimonio; antimony trioxide; lead antimonate;
      antimoniato de plomo; chrome antimony titanium; nickel antimony titanium; pigment yellow 41; pigment
      brown 24; pigment yellow 53; antimony white; stibnite; estibina; estibnita; antimonita; antimony
      sulfide; sulfuro de antimonio; kermesite
    `,
    ci: ['77588', '77310', '77052'],
    source: annex2('antimony and its compounds'),
  },
  {
    reason: 'chromate',
    names: spaced`
      chromate; cromato; dichromate; bichromate; dicromato; zinc chromate; zinc yellow; barium chromate;
      strontium chromate; strontium yellow; lemon yellow chromate; potassium dichromate; chromic acid;
      chromium trioxide; chromium vi; hexavalent chromium; cromo hexavalente; cromato de zinc; amarillo de
      zinc; cromato de bario; cromato de estroncio; amarillo de estroncio; baryta yellow; pigment yellow
      31; pigment yellow 32; pigment yellow 36; bicromato; dicromato de potasio; bicromato de potasio;
      potassium bichromate; zinc green; verde de zinc; brunswick green; verde brunswick; verde de brunswick
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
      cobalt violet; cobalt green; cobalt turquoise; cobalt teal; cobalt yellow; aureolin; smalt; esmalte
      de cobalto; cobalt oxide; cobalt chloride; cobalt carbonate; cobalt stannate; cobalt pigment; cobalt;
      cobalto; cerulean blue pigment; violeta de cobalto; verde de cobalto; turquesa de cobalto; amarillo
      de cobalto; oxido de cobalto; pigment blue 35; pigment blue 36; pigment green 50; pigment green 19;
      pigment violet 14; pigment blue 32; cobalt aluminium oxide; cobalt aluminate; aluminato de cobalto;
      oxido de cobalto y aluminio; thenard blue; thenards blue; azul de thenard; azul thenard; bleu de
      cobalt; kobaltblau; pigment blue 28
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
      verdigris; cardenillo; verdete; copper acetate; acetato de cobre; copper sulfate; copper sulphate;
      sulfato de cobre; bluestone; blue vitriol; vitriolo azul; piedra lipe; azurite; azurita; malachite
      pigment; malachite powder; malaquita en polvo; bremen blue; egyptian blue; azul egipcio; han blue;
      pigment green 20; pigment blue 30; pigment blue 31; malachite; malaquita; malachite green pigment;
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
      asbestos; asbestos powder; asbesto; amianto; chrysotile; crisotilo; crocidolite; crocidolita;
      amosite; amosita; tremolite; tremolita; blue asbestos; white asbestos; asbestos fibre; asbestos
      fiber; fibra de amianto
    `,
    source: annex2('asbestos'),
  },
  {
    reason: 'delisted-dye',
    names: spaced`
      rhodamine; rhodamine b; rodamina; rodamina b; basic violet 10; basic red 1; d&c red 19; d&c red no
      19; red no 19; d&c red 37; d&c red no 37; d&c red 8; d&c red no 8; d&c red 9; d&c red no 9; lake red
      c; laca roja c; pigment red 53; pigment red 53:1; d&c orange 17; d&c orange no 17; permanent orange;
      pigment orange 5; fd&c red 1; fd&c red no 1; ponceau 3r; fd&c violet 1; fd&c violet no 1; benzyl
      violet; acid violet 49; fd&c orange 1; fd&c orange no 1; fd&c orange 2; fd&c orange no 2; fd&c yellow
      3; fd&c yellow no 3; fd&c yellow 4; fd&c yellow no 4; d&c blue 6; d&c blue no 6; d&c green 7;
      auramine; auramina; basic yellow 2; butter yellow; amarillo mantequilla; sudan i; sudan ii; sudan iv;
      scarlet red; solvent red 24; solvent yellow 14; malachite green; verde malaquita; basic green 4;
      crystal violet; violeta cristal; gentian violet; violeta de genciana; basic violet 3; methyl violet;
      violeta de metilo; brilliant green; verde brillante basico; metanil yellow; amarillo metanilo; orange
      b; citrus red 2; pigment orange 13; pigment orange 34; pigment yellow 12; solvent yellow 2; solvent
      blue 35; disperse blue 1; disperse yellow 3; disperse orange 3; p phenylenediamine; ppd;
      parafenilendiamina; black henna; henna black; henna negra; negro de henna; methylene blue; azul de
      metileno; basic blue 9
    `,
    ci: [
      '52015',
      '45170',
      '45160',
      '15585',
      '15585:1',
      '12075',
      '42640',
      '41000',
      '42000',
      '42555',
      '42535',
      '42040',
      '12055',
      '12140',
      '26105',
      '11020',
      '12156',
      '13065',
      '21110',
      '21115',
      '21090',
      '61554',
      '64500',
      '16155',
    ],
    source: fda('81.10 and 81.30 (terminated listings and cancelled certificates); EU Annex II'),
  },
  {
    reason: 'us-delisted',
    names: spaced`
      fd&c red 2; fd&c red no 2; fd&c red 3; fd&c red no 3; d&c red 3; d&c red no 3; food red 9; food red
      14; acid red 27; acid red 51; pigment red 172; erythrosine; erythrosin; eritrosina; erythrosin b;
      amaranth dye; amaranth lake; amaranto colorante; laca amaranto; laca eritrosina; rojo 3; red 3; red
      no 3; red 3 lake
    `,
    hues: 'amaranth; amaranto',
    ci: ['45430', '45430:1', '16185', '16185:1'],
    e: ['E127', 'E123'],
    source: fda(
      '81.10 (Red No. 2 and its lakes) and 81.10, 81.30 (Red No. 3 in cosmetics); the EU lists both',
    ),
  },
  {
    reason: 'burning-plant',
    names:
      'bloodroot; sanguinaria; sanguinaria canadensis; pokeberry; pokeweed; phytolacca; phytolacca americana; fitolaca; hierba carmin; uva de america',
    source: practice('bloodroot corrodes skin; pokeberry is poisonous through the skin, and browns in lye'),
  },
  {
    reason: 'metal',
    names: spaced`
      dutch metal; dutch leaf; composition leaf; schlagmetal; magnesium powder; magnesium; magnesio en
      polvo; polvo de magnesio; magnesium flake; oro holandes; pan de oro falso; schlag
    `,
    source: practice('metal in lye corrodes, heats and may give off hydrogen'),
  },
  {
    reason: 'paint',
    names: spaced`
      artist pigment; artists pigment; artist's pigment; artist paint; artists paint; pigmento de artista;
      pigmento artistico; pigmento para pintura; pigmento de pintura; paint; acrylic paint; acrylic; oil
      paint; tempera; tempera powder; poster paint; gouache; watercolour; watercolor; water colour; house
      paint; wall paint; latex paint; paint pigment; spray paint; car paint; automotive paint; auto paint;
      pintura de coche; pintura de auto; pintura automotriz; highlighter ink; highlighter pen; fluorescent
      marker; marcador fluorescente; rotulador fluorescente; nail polish; nail varnish; ink; printer ink;
      toner powder; printer toner; marker ink; epoxy pigment; resin pigment; concrete pigment; cement
      pigment; cement colour; concrete dye; mortar dye; pottery glaze; glaze stain; ceramic stain; ceramic
      pigment; underglaze; grout colour; sidewalk chalk; chalkboard chalk; pastel chalk; soft pastel stick;
      pintura; pintura acrilica; acrilico; pintura al oleo; oleo; acuarela; tempera en polvo; guache;
      esmalte de unas; pintura de unas; tinta; tinta de impresora; toner de impresora; rotulador; pigmento
      epoxi; pigmento para resina; pigmento para cemento; pigmento para hormigon; colorante para cemento;
      esmalte ceramico; pigmento ceramico; tiza; tizas; gis; anilina; anilinas; oil pastel; oil pastels;
      chalk pastel; soft pastel; pastel stick; pastel al oleo; pasteles al oleo; tiza pastel; tizas pastel;
      pastel seco; barra de pastel; resin mica; epoxy mica; mica para resina; mica de resina; mica epoxi;
      powder coat; powder coating; pintura en polvo; gises; tiza de colores; tizas de colores; gis de
      color; gises de colores; colour for cement; colour for concrete; color para cemento; color para
      hormigon; color para concreto; pigmento para concreto
    `,
    source: practice('made for other things: what is in it is not known, and may be lead, cadmium or cobalt'),
  },
  {
    reason: 'crayon',
    names: spaced`
      crayon; crayons; wax crayon; crayones; cera de colores; ceras de colores; ceras de color; lapiz de
      cera; ceritas; colouring pencil; coloured pencil; lapiz de color
    `,
    source: practice('wax and pigments of unknown kind; they bleed and are in no list of cosmetic colours'),
  },
  {
    reason: 'candle-dye',
    names: spaced`
      candle dye; candle dyes; candle colour; candle colorant; candle colourant; candle wax dye; candle
      chip; candle block dye; wax dye; colorante para vela; colorante para velas; colorante de vela;
      colorante de velas; tinte para velas; tinte para vela; anilina para velas; pigmento para velas; color
      para velas
    `,
    source: practice('oil-soluble dyes for wax: not made for skin, in no list of cosmetic colours'),
  },
  {
    reason: 'cloth-dye',
    names: spaced`
      fabric dye; clothing dye; textile dye; cloth dye; tie dye; tie dye powder; laundry bluing; laundry
      blue; bluing; azulete; azul de lavar; anil de lavar; anil de ropa; anil de la ropa; anil para la
      ropa; anil para lavar; azul de lavar ropa; azul para la ropa; azulillo; leather dye; shoe dye; fibre
      reactive dye; wood stain; hair dye; hair colour dye; tinte para ropa; tinte de ropa; tinte textil;
      anilina para ropa; tinte para tela; tinte para telas; colorante textil; tinte para cuero; tinte para
      pelo; tinte de pelo; tinte para cabello; tinte de cabello; tinte para madera
    `,
    source: practice('made for cloth, leather, wood or hair: sensitises skin'),
  },
  {
    reason: 'food-colouring',
    names: spaced`
      food colouring; food coloring; food colour; food color; food dye; food colorant; food colourant; gel
      food colour; gel food colouring; liquid food colour; icing colour; icing colouring; cake colouring;
      cake colour; easter egg dye; egg dye; drink powder; jelly powder; jelly crystals; gelatin dessert;
      pudding powder; gelatina en polvo; gelatina de sabor; polvo para bebidas; polvo para refresco; candy
      colour; colorante alimentario; colorante alimenticio; colorante de alimentos; colorante de comida;
      colorante para alimentos; colorante de reposteria; colorante para reposteria; colorante para tortas;
      colorante para pasteles; colorante en gel; colorante vegetal liquido de cocina; anilina comestible;
      anilina vegetal; colorante comestible
    `,
    source: practice('most food dyes change or fade in lye, bleed and stain'),
  },
  {
    reason: 'make-up',
    names: spaced`
      eye shadow; eyeshadow; eye shadow powder; mascara; eyeliner; eye liner; nail powder; dip powder; make
      up powder; makeup powder; face powder; setting powder; highlighter powder; bronzer; foundation
      powder; sombra de ojos; sombra para ojos; rimel; delineador de ojos; delineador; polvo de maquillaje;
      maquillaje en polvo; maquillaje; pintalabios; lapiz labial; labial; polvo acrilico para unas; polvo
      de unas
    `,
    hues: 'lipstick',
    source: practice(
      'fillers, oils and colours in unknown shares, some of them destroyed by lye or for eyes only',
    ),
  },
];
