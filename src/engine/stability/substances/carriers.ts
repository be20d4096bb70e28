import { remembered } from '../../colourants/catalogue/origins.ts';
import type { Carrier } from '../../colourants/colourant.ts';
import { spaced } from '../../over-lines.ts';
import { named, type Substance } from './substance.ts';

const none = {
  ci: [],
  alkali: { behaviour: 'stable' },
  confidence: 'high',
  source: remembered('has no colour to lose'),
} as const;
const liquid = (id: string, carrier: Carrier, names: string): Substance => ({
  ...none,
  id,
  role: 'carrier',
  names: named(names),
  liquid: carrier,
});
const additive = (id: string, names: string): Substance => ({
  ...none,
  id,
  role: 'additive',
  names: named(names),
  family: true,
});

/** What lists name beside the colour: liquids that make a ready dispersion, and colourless additives. */
export const carriers: readonly Substance[] = [
  liquid(
    'water',
    'water',
    'Water; aqua; aqua/water; water/aqua; agua; eau; Wasser; acqua; água; purified water; deionized water; distilled water; agua purificada',
  ),
  liquid(
    'glycerin',
    'glycerin',
    'Glycerin; glycerine; glycerol; vegetable glycerin; glicerina; glicerina vegetal; glycérine; Glyzerin; glicerolo',
  ),
  liquid(
    'propylene-glycol',
    'glycerin',
    'Propylene Glycol; propanediol; butylene glycol; 1,3-propanediol; pentylene glycol; propilenglicol; sorbitol; polyglycerin-3; sorbitol solution',
  ),
  liquid(
    'plant-oil',
    'oil',
    `Plant Oil; vegetable oil; aceite vegetal; huile végétale; castor oil; ricinus communis;
    ricinus communis seed oil; ricinus communis castor seed oil; helianthus annuus seed oil; sunflower oil;
    aceite de girasol; aceite de ricino; olea europaea fruit oil; olive oil; aceite de oliva;
    prunus amygdalus dulcis oil; sweet almond oil; simmondsia chinensis seed oil; jojoba oil;
    cocos nucifera oil; coconut oil; glycine soja oil; soybean oil; caprylic/capric triglyceride;
    caprylic capric triglyceride; fractionated coconut oil; octyldodecanol; isopropyl myristate;
    hydrogenated castor oil; polyglyceryl-3 diisostearate; c12-15 alkyl benzoate`,
  ),
  liquid(
    'mineral-oil',
    'oil',
    'Mineral Oil; paraffinum liquidum; petrolatum; aceite mineral; huile minérale; Paraffinöl',
  ),
  liquid(
    'silicone',
    'oil',
    'Dimethicone; cyclopentasiloxane; cyclomethicone; dimeticona; phenyl trimethicone',
  ),
  additive('phenoxyethanol', 'Phenoxyethanol; fenoxietanol; phénoxyéthanol; fenossietanolo'),
  additive(
    'preservative',
    spaced`
      Preservative; ethylhexylglycerin; potassium sorbate; sorbato de potasio; sodium benzoate; benzoato de
      sodio; methylparaben; propylparaben; benzyl alcohol; caprylyl glycol; dehydroacetic acid; sorbic
      acid; benzoic acid; sodium dehydroacetate; tocopherol; tocopheryl acetate; vitamin e; BHT; sodium
      citrate; disodium EDTA; tetrasodium EDTA; leuconostoc/radish root ferment filtrate
    `,
  ),
  additive(
    'acid',
    spaced`
      Citric Acid; ácido cítrico; lactic acid; ácido láctico; acetic acid; ácido acético; ascorbic acid;
      ácido ascórbico; tartaric acid; ácido tartárico; malic acid; ácido málico; vinegar; vinagre; lemon
      juice; lime juice; zumo de limón; jugo de limón; jugo de lima; acid; ácido
    `,
  ),
  additive(
    'surface-treatment',
    spaced`
      Triethoxycaprylylsilane; methicone; hydrogen dimethicone; isopropyl titanium triisostearate; lauroyl
      lysine; perfluorooctyl triethoxysilane; polyhydroxystearic acid; triethoxy caprylylsilane; sodium
      stearoyl glutamate; disodium stearoyl glutamate; trimethoxycaprylylsilane; lecithin; hydrogenated
      lecithin; lecitina; polysorbate 20; polysorbate 80; sorbitan oleate; sorbitan sesquioleate; sodium
      lauroyl lactylate; xanthan gum; goma xantana; cellulose gum
    `,
  ),
  additive(
    'stearic-acid',
    'Stearic Acid; ácido esteárico; acide stéarique; Stearinsäure; acido stearico; palmitic acid; myristic acid',
  ),
  additive(
    'metal-soap',
    spaced`
      Magnesium Stearate; zinc stearate; calcium stearate; aluminum stearate; aluminium stearate; aluminum
      distearate; aluminum tristearate; magnesium myristate; zinc myristate; estearato de magnesio;
      estearato de zinc; stéarate de magnésium; Magnesiumstearat
    `,
  ),
  additive(
    'starch',
    spaced`
      Starch; zea mays starch; corn starch; almidón; almidón de maíz; aluminum starch octenylsuccinate;
      tapioca starch; oryza sativa starch; rice starch; sucrose; dextrose; lactose; sugar; azúcar
    `,
  ),
  additive(
    'filler',
    spaced`
      Nylon-12; nylon 12; polyethylene; sodium chloride; salt; sal; hydroxyapatite; calcium silicate;
      magnesium aluminum silicate; lithium magnesium sodium silicate; calcium phosphate; sodium aluminum
      silicate; silicone elastomer; microcrystalline cellulose; perlite; diatomaceous earth; magnesium
      oxide; magnesium hydroxide; sodium sulfate; sodium bicarbonate; urea; zinc carbonate; hydrotalcite;
      beeswax; cera alba; candelilla wax; copernicia cerifera cera; paraffin; ozokerite; microcrystalline
      wax; synthetic wax
    `,
  ),
  additive('boron-nitride', 'Boron Nitride; nitruro de boro; nitrure de bore; Bornitrid'),
  additive('maltodextrin', 'Maltodextrin; maltodextrina; dextrin; dextrina'),
  additive(
    'fragrance',
    'Fragrance; parfum; perfume; fragancia; aroma; Duftstoff; profumo; fragrância; flavor; limonene; linalool',
  ),
  additive('alcohol', 'Alcohol; alcohol denat.; ethanol; isopropyl alcohol; etanol; alcool'),
];
