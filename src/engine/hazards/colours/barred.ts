import type { Origin } from '../../origin.ts';
import { spaced } from '../../over-lines.ts';
import type { BarredColour } from './barred-colour.ts';
import { POISONOUS_COLOURS } from './poisonous-colours.ts';

const fda = (section: string): Origin => ({ trust: 'from memory', source: `21 CFR ${section}` });
const practice = (source: string): Origin => ({ trust: 'common practice', source });

/** Poisonous and prohibited colours, and what is sold as colour for something else. */
export const BARRED: readonly BarredColour[] = [
  ...POISONOUS_COLOURS,
  {
    reason: 'delisted-dye',
    names: spaced`
      rhodamine; rhodamine b; rodamina; rodamina b;
      basic violet 10; basic red 1; d&c red 19; d&c red no 19;
      red no 19;
      d&c red 37; d&c red no 37; d&c red 8;
      d&c red no 8; d&c red 9; d&c red no 9;
      lake red c; laca roja c; pigment red 53; pigment red 53:1;
      d&c orange 17; d&c orange no 17; permanent orange; pigment orange 5;
      fd&c red 1; fd&c red no 1; ponceau 3r;
      fd&c violet 1; fd&c violet no 1; benzyl violet; acid violet 49;
      fd&c orange 1; fd&c orange no 1; fd&c orange 2; fd&c orange no 2;
      fd&c yellow 3; fd&c yellow no 3; fd&c yellow 4; fd&c yellow no 4;
      d&c blue 6; d&c blue no 6; d&c green 7;
      auramine; auramina; basic yellow 2; butter yellow;
      amarillo mantequilla;
      sudan i; sudan ii; sudan iv;
      scarlet red; solvent red 24; solvent yellow 14; malachite green;
      verde malaquita; basic green 4; crystal violet; violeta cristal;
      gentian violet; violeta de genciana; basic violet 3; methyl violet;
      violeta de metilo; brilliant green; verde brillante basico; metanil yellow;
      amarillo metanilo; orange b; citrus red 2;
      pigment orange 13; pigment orange 34; pigment yellow 12;
      solvent yellow 2; solvent blue 35;
      disperse blue 1; disperse yellow 3; disperse orange 3;
      p phenylenediamine; ppd; parafenilendiamina; black henna;
      henna black; henna negra; negro de henna; methylene blue;
      azul de metileno; basic blue 9
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
      fd&c red 2; fd&c red no 2; fd&c red 3; fd&c red no 3;
      d&c red 3; d&c red no 3; food red 9; food red 14;
      acid red 27; acid red 51; pigment red 172;
      erythrosine; erythrosin; eritrosina; erythrosin b;
      amaranth dye; amaranth lake; amaranto colorante;
      laca amaranto; laca eritrosina; rojo 3;
      red 3; red no 3; red 3 lake
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
      dutch metal; dutch leaf; composition leaf; schlagmetal;
      magnesium powder; magnesium; magnesio en polvo;
      polvo de magnesio; magnesium flake; oro holandes; pan de oro falso;
      schlag
    `,
    source: practice('metal in lye corrodes, heats and may give off hydrogen'),
  },
  {
    reason: 'paint',
    names: spaced`
      artist pigment; artists pigment; artist's pigment; artist paint; artists paint;
      pigmento de artista; pigmento artistico; pigmento para pintura; pigmento de pintura;
      paint; acrylic paint; acrylic; oil paint;
      tempera; tempera powder; poster paint; gouache;
      watercolour; watercolor; water colour;
      house paint; wall paint; latex paint; paint pigment;
      spray paint; car paint; automotive paint; auto paint;
      pintura de coche; pintura de auto; pintura automotriz;
      highlighter ink; highlighter pen; fluorescent marker; marcador fluorescente;
      rotulador fluorescente; nail polish; nail varnish; ink;
      printer ink; toner powder; printer toner; marker ink;
      epoxy pigment; resin pigment; concrete pigment;
      cement pigment; cement colour; concrete dye; mortar dye;
      pottery glaze; glaze stain; ceramic stain; ceramic pigment;
      underglaze; grout colour; sidewalk chalk; chalkboard chalk;
      pastel chalk; soft pastel stick; pintura; pintura acrilica;
      acrilico; pintura al oleo; oleo; acuarela;
      tempera en polvo; guache; esmalte de unas; pintura de unas;
      tinta; tinta de impresora; toner de impresora; rotulador;
      pigmento epoxi; pigmento para resina; pigmento para cemento; pigmento para hormigon;
      colorante para cemento; esmalte ceramico; pigmento ceramico;
      tiza; tizas; gis;
      anilina; anilinas; oil pastel; oil pastels;
      chalk pastel; soft pastel;
      pastel stick; pastel al oleo; pasteles al oleo;
      tiza pastel; tizas pastel; pastel seco; barra de pastel;
      resin mica; epoxy mica;
      mica para resina; mica de resina; mica epoxi;
      powder coat; powder coating; pintura en polvo; gises;
      tiza de colores; tizas de colores; gis de color; gises de colores;
      colour for cement; colour for concrete; color para cemento; color para hormigon; color para concreto;
      pigmento para concreto
    `,
    source: practice('made for other things: what is in it is not known, and may be lead, cadmium or cobalt'),
  },
  {
    reason: 'crayon',
    names: spaced`
      crayon; crayons; wax crayon; crayones;
      cera de colores; ceras de colores; ceras de color;
      lapiz de cera; ceritas; colouring pencil; coloured pencil;
      lapiz de color
    `,
    source: practice('wax and pigments of unknown kind; they bleed and are in no list of cosmetic colours'),
  },
  {
    reason: 'candle-dye',
    names: spaced`
      candle dye; candle dyes; candle colour; candle colorant;
      candle colourant; candle wax dye; candle chip; candle block dye;
      wax dye;
      colorante para vela; colorante para velas; colorante de vela; colorante de velas;
      tinte para velas; tinte para vela; anilina para velas; pigmento para velas;
      color para velas
    `,
    source: practice('oil-soluble dyes for wax: not made for skin, in no list of cosmetic colours'),
  },
  {
    reason: 'cloth-dye',
    names: spaced`
      fabric dye; clothing dye; textile dye; cloth dye;
      tie dye; tie dye powder; laundry bluing; laundry blue;
      bluing; azulete; azul de lavar;
      anil de lavar; anil de ropa; anil de la ropa; anil para la ropa; anil para lavar;
      azul de lavar ropa; azul para la ropa; azulillo;
      leather dye; shoe dye; fibre reactive dye; wood stain;
      hair dye; hair colour dye;
      tinte para ropa; tinte de ropa; tinte textil;
      anilina para ropa; tinte para tela; tinte para telas; colorante textil;
      tinte para cuero; tinte para pelo; tinte de pelo;
      tinte para cabello; tinte de cabello; tinte para madera
    `,
    source: practice('made for cloth, leather, wood or hair: sensitises skin'),
  },
  {
    reason: 'food-colouring',
    names: spaced`
      food colouring; food coloring; food colour; food color;
      food dye; food colorant; food colourant;
      gel food colour; gel food colouring; liquid food colour;
      icing colour; icing colouring; cake colouring; cake colour;
      easter egg dye; egg dye; drink powder;
      jelly powder; jelly crystals; gelatin dessert; pudding powder;
      gelatina en polvo; gelatina de sabor;
      polvo para bebidas; polvo para refresco; candy colour;
      colorante alimentario; colorante alimenticio; colorante de alimentos; colorante de comida;
      colorante para alimentos; colorante de reposteria; colorante para reposteria; colorante para tortas;
      colorante para pasteles; colorante en gel; colorante vegetal liquido de cocina;
      anilina comestible; anilina vegetal; colorante comestible
    `,
    source: practice('most food dyes change or fade in lye, bleed and stain'),
  },
  {
    reason: 'make-up',
    names: spaced`
      eye shadow; eyeshadow; eye shadow powder;
      mascara; eyeliner; eye liner; nail powder;
      dip powder; make up powder; makeup powder; face powder;
      setting powder; highlighter powder; bronzer; foundation powder;
      sombra de ojos; sombra para ojos; rimel;
      delineador de ojos; delineador; polvo de maquillaje;
      maquillaje en polvo; maquillaje; pintalabios; lapiz labial;
      labial; polvo acrilico para unas; polvo de unas
    `,
    hues: 'lipstick',
    source: practice(
      'fillers, oils and colours in unknown shares, some of them destroyed by lye or for eyes only',
    ),
  },
];
