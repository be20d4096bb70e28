import type { Origin } from '../../origin.ts';
import { spaced } from '../../over-lines.ts';

/** How a scent hurts skin, eyes or lungs although it is sold for soap. */
export type ScentRisk =
  | 'cinnamal'
  | 'eugenol'
  | 'phenols'
  | 'citral'
  | 'phototoxic'
  | 'oxidises'
  | 'salicylate'
  | 'camphor'
  | 'sensitises'
  | 'balsam'
  | 'perfume';

/** Those that burn or sensitise skin at doses that other scents are used at: weighed only under their maker's limit. */
export const NEEDS_CERTIFICATE: ReadonlySet<ScentRisk> = new Set([
  'cinnamal',
  'eugenol',
  'phenols',
  'citral',
  'salicylate',
  'sensitises',
  'balsam',
]);

/** Why a scent is not planned at all. */
export type BarredScentReason = 'alcohol' | 'not-for-skin' | 'prohibited';

/** A scent that must not be dosed like any other. */
export type ScentRow = {
  readonly risk?: ScentRisk;
  readonly barred?: BarredScentReason;
  /** Names in both languages, parted by `; `, matched word by word in singular and without accents. */
  readonly names: string;
  readonly source: Origin;
};

const memory = (source: string): Origin => ({ trust: 'from memory', source });
const ANNEX_3 = 'Regulation (EC) No 1223/2009 Annex III (fragrance allergens)';
const IFRA_INDEX = 'index of the IFRA Standards, 46th and 50th amendment: prohibited as a fragrance';

/** Scents by name; the longest name at a place counts. */
export const SCENTS: readonly ScentRow[] = [
  {
    risk: 'cinnamal',
    names: spaced`
      cinnamon; cinnamon bark; cinnamon leaf;
      cinnamal; cinnamaldehyde; cinnamic aldehyde;
      cassia; cassia bark; canela; corteza de canela;
      hoja de canela; casia; cinamal; cinamaldehido;
      aldehido cinamico
    `,
    source: memory(
      `cinnamal, ${ANNEX_3}; IFRA standard on cinnamic aldehyde; seizes batter: common practice`,
    ),
  },
  {
    risk: 'eugenol',
    names: spaced`
      clove; clove bud; clove leaf; clove stem;
      eugenol; isoeugenol; pimento; pimento berry;
      allspice; bay; west indian bay; bay rum;
      carnation absolute;
      clavo; clavo de olor; clavos de olor;
      pimienta de jamaica; laurel de indias; malagueta; isoeugenol
    `,
    source: memory(`eugenol and isoeugenol, ${ANNEX_3}; seizes batter: common practice`),
  },
  {
    risk: 'phenols',
    names: spaced`
      oregano; thyme; red thyme;
      thyme ct thymol; thymol; carvacrol; savory;
      winter savory; summer savory; ajowan;
      tomillo; tomillo rojo; timol; ajedrea;
      oregano brujo; orejon
    `,
    source: memory(
      'phenols of oregano, thyme and savory irritate skin and lining: textbooks of aromatic oils',
    ),
  },
  {
    risk: 'citral',
    names: spaced`
      lemongrass; lemon grass; citronella;
      lemon myrtle; lemon tea tree; litsea; litsea cubeba;
      may chang; citral; melissa; lemon balm;
      hierba limon; hierba luisa; limoncillo; zacate limon;
      te limon; citronela; melisa; toronjil;
      mirto limon; verbena exotica
    `,
    source: memory(`citral and geraniol, ${ANNEX_3}`),
  },
  {
    risk: 'phototoxic',
    names: spaced`
      bergamot; lime; lemon; grapefruit;
      bitter orange; angelica; angelica root; rue;
      cumin; opoponax; opopanax; tagetes;
      marigold oil; bergamota; limon; lima;
      pomelo; toronja; naranja amarga; raiz de angelica;
      ruda; comino; tagete
    `,
    source: {
      trust: 'published',
      source: spaced`
        IFRA standards on bergamot oil and other citrus with furocoumarins: skin in sunlight, soap and
        other products that are washed off excepted (quoted in Clinical and Experimental Dermatology,
        5-methoxypsoralen in aromatherapy oil)
      `,
    },
  },
  {
    risk: 'oxidises',
    names: spaced`
      tea tree; melaleuca; pine; pine needle;
      turpentine; fir needle; spruce; juniper berry;
      cajeput; cajuput; arbol del te; arbol de te;
      pino; trementina; abeto; enebro;
      cayeput
    `,
    source: memory(
      'old oils with terpenes sensitise: peroxide limits of the IFRA standards on Pinacea; tea tree: SCCS',
    ),
  },
  {
    risk: 'salicylate',
    names:
      'wintergreen; methyl salicylate; sweet birch; birch sweet; gaultheria; gaulteria; salicilato de metilo; abedul dulce; te de canada; te del canada',
    source: memory('methyl salicylate: poison centres (a teaspoon can kill a child); Annex III of 1223/2009'),
  },
  {
    risk: 'camphor',
    names: spaced`
      camphor; white camphor; menthol; peppermint;
      spearmint; cornmint; mint; eucalyptus;
      rosemary; hyssop; alcanfor;
      mentol; menta; menta piperita;
      hierbabuena; yerbabuena; eucalipto; romero;
      hisopo
    `,
    source: memory(
      'camphor, menthol and cineole: stinging eyes, small children and seizures; poison centres',
    ),
  },
  {
    risk: 'sensitises',
    names: spaced`
      ylang; ylang ylang; jasmine absolute; jasmine sambac;
      oakmoss; tree moss; treemoss; hydroxycitronellal;
      laurel leaf; bay laurel; costus; black pepper;
      ginger oil; ilang; ilang ilang; absoluto de jazmin;
      musgo de roble; musgo de arbol; laurel; hoja de laurel;
      pimienta negra
    `,
    source: memory(`extracts of ylang, jasmine, oak moss, laurel: ${ANNEX_3}`),
  },
  {
    risk: 'balsam',
    names:
      'peru balsam; balsam of peru; balsam peru; myroxylon; myroxylon pereirae; styrax; storax; balsamo de peru; balsamo del peru; balsamo peru; estoraque',
    source: memory('crude balsam of Peru: prohibited by IFRA and Annex II of 1223/2009, its oil restricted'),
  },
  {
    risk: 'perfume',
    names: 'perfume; parfum; perfum',
    source: { trust: 'common practice', source: 'perfume from a bottle is mostly alcohol' },
  },
  {
    barred: 'alcohol',
    names: spaced`
      eau de toilette; eau de parfum; eau de perfume; eau de cologne;
      edt; edp; edc; cologne;
      body spray; body mist; body splash;
      aftershave; after shave; perfume spray; perfume in alcohol;
      alcohol perfume; bottle of perfume; fine fragrance mist; hair mist;
      deodorant; room spray; linen spray; vanilla extract;
      lemon extract; peppermint extract; almond extract; tincture;
      colonia;
      agua de colonia; agua de perfume; agua de toilette;
      perfume en alcohol; perfume con alcohol; frasco de perfume; desodorante;
      bruma corporal; locion para despues de afeitar; extracto de vainilla;
      tintura; rociador
    `,
    source: {
      trust: 'common practice',
      source: 'mostly alcohol: flammable (GHS category 2 liquid), seizes or separates batter',
    },
  },
  {
    barred: 'not-for-skin',
    names: spaced`
      candle fragrance; candle fragrance oil; candle scent; candle oil;
      wax melt; wax melt oil; reed diffuser;
      diffuser oil; diffuser; home fragrance; room fragrance;
      air freshener; potpourri; potpourri oil;
      car freshener; car fragrance; laundry scent; laundry bead;
      scent bead; fabric softener; flavouring; flavoring;
      food flavour; food flavor;
      candy oil; candy flavour; candy flavor;
      lip flavour; ambientador; aroma para velas; fragancia para velas;
      esencia para velas; aceite para difusor; aroma para difusor;
      difusor; difusor de varillas; popurri;
      suavizante; suavizante de ropa; saborizante;
      esencia de reposteria; esencia comestible;
      aroma alimentario; aroma de reposteria
    `,
    source: {
      trust: 'common practice',
      source: 'no certificate for skin: solvents and doses of another use',
    },
  },
  {
    barred: 'prohibited',
    names: spaced`
      fig leaf; fig leaf absolute; verbena; verbena oil;
      lemon verbena; costus root; savin; savine;
      boldo; wormseed; chenopodium;
      mustard; mustard oil; horseradish; sassafras;
      safrole; bitter almond; pennyroyal; thuja;
      tansy; calamus; elecampane; alantroot;
      birch tar; cade; crude cade; hoja de higuera;
      cedron; raiz de costo; sabina; paico;
      epazote; mostaza; aceite de mostaza; rabano picante;
      sasafras; safrol; almendra amarga; almendras amargas;
      poleo; poleo menta; tuya; tanaceto;
      calamo; helenio; alquitran de abedul; enebro de la miera;
      miera
    `,
    source: {
      trust: 'published',
      source: spaced`
        ${IFRA_INDEX} (alant root, allyl isothiocyanate, boldo, birch wood pyrolysate); the others from
        memory, with Annex II of Regulation (EC) No 1223/2009
      `,
    },
  },
];
