import type { CauseId } from '../../../engine/flaws/cause.ts';

/** The trade's name for a cause, and one plain sentence on what happened. */
export const flawCauses: Readonly<Record<CauseId, { name: string; why: string }>> = {
  'undispersed-pigment': {
    name: 'undispersed pigment',
    why: 'Dry colour went in faster than it was wetted, so clumps of it sit in the bar as specks.',
  },
  'carrier-pockets': {
    name: 'pockets of colour',
    why: 'The glycerin, oil or water that carried the colour was not blended into the batter and stayed as wet coloured pockets.',
  },
  'white-pigment-crackle': {
    name: 'white-pigment crackle',
    why: 'The part with titanium dioxide overheated and set with a net of fine lines, like old china. It is looks only.',
  },
  'glycerin-rivers': {
    name: 'glycerin rivers',
    why: 'Water and heat let the soap set in two textures: see-through veins beside whiter soap. It is looks only.',
  },
  'excess-white-pigment': {
    name: 'too much white pigment',
    why: 'More titanium dioxide or zinc oxide than the soap can hold together makes it chalky and crumbly.',
  },
  'lye-excess': {
    name: 'lye-heavy soap',
    why: 'There was more lye than the oils could use up, so free lye is left all through the soap.',
  },
  'lye-pockets': {
    name: 'lye pockets',
    why: 'Lye that was not dissolved, or not stirred in, sits in spots and can burn there while the rest seems fine.',
  },
  'over-hard-recipe': {
    name: 'a recipe too hard to cut',
    why: 'Many hard fats, or a late cut, make the loaf so hard that it breaks instead of slicing.',
  },
  'soda-ash': {
    name: 'soda ash',
    why: 'Fresh soap at the surface met the air and grew a white powdery film. It is harmless.',
  },
  'partial-gel': {
    name: 'partial gel',
    why: 'The middle got hot enough to gel and the edges did not, which leaves a darker ring. It is looks only.',
  },
  'vanillin-browning': {
    name: 'vanillin browning',
    why: 'Vanillin in the fragrance turns soap tan to brown over days and weeks, from the outside in.',
  },
  'alkali-unstable-colourant': {
    name: 'a colour that lye destroys',
    why: 'The colourant does not hold in fresh soap, so its colour changed or went when it met the lye.',
  },
  'dye-bleed': {
    name: 'bleeding colour',
    why: 'A dye or lake that dissolves a little wandered into the soap beside it.',
  },
  'overdosed-colour': {
    name: 'too much colour',
    why: 'There is more colour than the soap holds, so it comes off in the lather.',
  },
  'underdosed-colour': {
    name: 'too little colour',
    why: 'The dose was small for that much batter, so the colour is pale. Nothing is wrong with the soap.',
  },
  'base-colour-cast': {
    name: 'the base shows through',
    why: 'Yellow or green oils tint the batter, and every colour is mixed with that tint from the start.',
  },
  'overheating-crack': {
    name: 'an overheating crack (volcano)',
    why: 'The loaf got so hot that the middle swelled and split the top.',
  },
  acceleration: {
    name: 'acceleration (seizing)',
    why: 'The fragrance, the heat or the fats made the batter thicken before you could pour.',
  },
  ricing: {
    name: 'ricing',
    why: 'Parts of the fragrance bound with hard fats into little rice-like lumps.',
  },
  separation: {
    name: 'separation (false trace)',
    why: 'Oil and lye water came apart again, so there is oil on one side and lye-rich soap on the other.',
  },
  'stearic-spots': {
    name: 'stearic spots',
    why: 'Hard fats set before they turned to soap and left pale waxy spots without colour.',
  },
  rancidity: {
    name: 'rancidity (DOS, orange spots)',
    why: 'Oil left in the soap has gone rancid, which shows as orange spots and a stale smell.',
  },
  'air-bubbles': {
    name: 'air bubbles',
    why: 'Air was blended in or trapped in thick batter and left dry little holes.',
  },
  'humidity-dew': {
    name: 'sweating (dew)',
    why: 'Glycerin in the soap draws water from damp air, which stands on the bar as beads.',
  },
  'soft-from-carrier': {
    name: 'soft from too much carrier',
    why: 'The oil, glycerin or water that came with the colour made that portion soft or greasy.',
  },
  'light-fade': {
    name: 'faded by light',
    why: 'Daylight or lamps bleached the colour; what lay in the dark kept it.',
  },
  'fragrance-discolouration': {
    name: 'discoloured by the fragrance',
    why: 'Something in the scent other than vanillin tinted the soap.',
  },
  'reactive-metal': {
    name: 'stained by metal',
    why: 'A pan, mould, tool or rack of a metal that lye attacks left a grey, dark or green mark.',
  },
  'mica-oil-pools': {
    name: 'mica oil pools',
    why: 'More oil than the top could drink was drawn on with mica, and it stands in shiny puddles.',
  },
  'wire-drag': {
    name: 'drag lines from the cutter',
    why: 'The wire or blade pulled grains or colour across the cut face. Just under it the bar is clean.',
  },
  'mould-growth': {
    name: 'mould',
    why: 'Fresh food or standing damp fed something that grows. That soap is not for skin.',
  },
  'layers-apart': {
    name: 'layers that come apart',
    why: 'The lower layer had set, or oil, mica or ash lay on it, so the next one had nothing to grip.',
  },
  'muddy-swirl': {
    name: 'a muddy swirl (over-mixed)',
    why: 'The colours were stirred, swirled or poured so much, or so thin, that they blended into one.',
  },
  'sunk-swirl': {
    name: 'a swirl that sank',
    why: 'The batter below was too thin to hold the colour up, or it was poured from high, so it went to the bottom.',
  },
  warped: {
    name: 'warped bars',
    why: 'One side lost its water sooner than the other and shrank, so the bar bent.',
  },
  'loose-mica': {
    name: 'loose mica on top',
    why: 'Mica dusted on dry, or on soap that had already set, lies there unbound and rubs off.',
  },
  'gel-shifted-colour': {
    name: 'a colour that gel changed',
    why: 'Soap that went hot right through turned clearer, and the same dose looks deeper or another shade.',
  },
  'unsuitable-colour': {
    name: 'a colour not made for soap',
    why: 'Crayon, candle dye, paint or kitchen colour is made for something else: in soap it clumps, runs, fades or changes.',
  },
  'unmoulded-early': {
    name: 'out of the mould too early',
    why: 'The soap had not firmed up, so it stuck, tore or dented. It is still caustic at that age.',
  },
  'mould-texture': {
    name: 'marks of the mould or liner',
    why: 'Creases of the liner, or air and water against it, printed themselves on the sides. It is looks only.',
  },
  'wrinkled-top': {
    name: 'a wrinkled top (alligator skin)',
    why: 'The top set as a skin while the heat beneath still moved it, so it folded. It is looks only.',
  },
};
