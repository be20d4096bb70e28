/**
 * What tells outright of an emergency in the ideas of `lexicon.ts`, in the grammar of `../patterns.ts`. `anaphylaxis`
 * stands alone: it kills within minutes, and its swollen throat must not be taken for fumes or lye in the mouth.
 */
export const OUTRIGHT_PATTERNS = {
  anaphylaxis: [
    'swell airway ~6 !caustic !drink',
    'allergy breathless ~14 !caustic !drink',
    'allergy airway swell ~14 !drink',
  ],
  swallowed: [
    'bite rawsoap who ~8',
    'drink rawsoap who ~8',
    'drink jug who ~9',
    'tookself jug ~4',
    'drink mistaken ~12',
    'seizure drink ~14',
    'caustic ontongue ~3',
    'tasted lyewater who ~8',
    'cantswallow',
    'kid bite|drink pigment ~5',
    'find kid jug ~9',
  ],
  eye: [
    'contact ineye ~6 !fume',
    'splash inface ~4',
    'splash dim ~14',
    'dim caustic|pouring ~14 !view',
    'aneye sting ~4',
    'glove ineye contact ~9',
    'lens sting|splash ~6',
  ],
  skin: [
    'boilover onme ~4',
    'ranonme caustic ~6',
    'splashedself',
    'upnose caustic|batter ~5',
    'blister batter|caustic ~8',
    'fingerpart sting batter|caustic ~8',
    'fingerpart rawskin barehanded ~30',
    'holed fingerpart ~5 !glove',
  ],
  unconscious: ['outcold who caustic|bench ~10'],
  spill: [
    'spill caustic onsurface ~9',
    'caustic onsurface ~3 !kept',
    'spill caustic container ~6',
    'container givesway ~3 !fat',
    'caustic givesway container ~6 !fat',
    'moldout !simile',
    'moldout volcano ~5',
  ],
  metal: ['metalpot gassing ~6', 'lyewater greyed gassing ~14'],
  'toxic-gas': [
    'bleach sour joined ~8',
    'bleach sour reek|breathless|chesty ~12',
    'bleach sour yellowed ~14',
    'chlorine reek ~4',
    'bleach breathless|chesty ~10',
  ],
  fire: ['alight !simile', 'blaze !simile', 'onfire burnable ~5 !simile'],
  powder: [
    'pinkcough caustic|bench|dust ~30',
    'inhaled dust who ~9 !guard',
    'chesty dust inhaled ~12',
    "chesty dust 'since|'after|'desde|'opened ~9",
  ],
} as const;

export type OutrightScene = keyof typeof OUTRIGHT_PATTERNS;
