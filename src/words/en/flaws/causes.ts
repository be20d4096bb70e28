import type { CauseId } from '../../../engine/flaws/cause.ts';

/** The trade's name for a cause, what else some call it, and one plain sentence on what happened. */
type Cause = { readonly plain: string; readonly aside?: string; readonly why: string };
type Causes = Readonly<Record<CauseId, Cause>>;
type Named = Readonly<
  Record<CauseId, { readonly name: string; readonly plain: string; readonly why: string }>
>;

/** Each cause by its whole name, with what else it is called in brackets, beside its plain one. */
export const withNames = (causes: Causes): Named =>
  Object.fromEntries(
    Object.entries(causes).map(([id, { plain, aside, why }]) => [
      id,
      { name: aside === undefined ? plain : `${plain} (${aside})`, plain, why },
    ]),
  ) as Named;

export const flawCauses = withNames({
  'undispersed-pigment': {
    plain: 'undispersed pigment',
    why: 'Dry colour went in faster than it was wetted, so clumps of it sit in the bar as specks.',
  },
  'carrier-pockets': {
    plain: 'pockets of colour',
    why: 'The glycerin, oil or water that carried the colour was not blended into the batter and stayed as wet coloured pockets.',
  },
  'white-pigment-crackle': {
    plain: 'white-pigment crackle',
    why: 'The part with titanium dioxide overheated and set with a net of fine lines, like old china. It is looks only.',
  },
  'glycerin-rivers': {
    plain: 'glycerin rivers',
    why: 'Water and heat let the soap set in two textures: see-through veins beside whiter soap. It is looks only.',
  },
  'excess-white-pigment': {
    plain: 'too much white pigment',
    why: 'More titanium dioxide or zinc oxide than the soap can hold together makes it chalky and crumbly.',
  },
  'lye-excess': {
    plain: 'lye-heavy soap',
    why: 'There was more lye than the oils could use up, so free lye is left all through the soap.',
  },
  'lye-pockets': {
    plain: 'lye pockets',
    why: 'Lye that was not dissolved, or not stirred in, sits in spots and can burn there while the rest seems fine.',
  },
  'over-hard-recipe': {
    plain: 'a recipe too hard to cut',
    why: 'Many hard fats, or a late cut, make the loaf so hard that it breaks instead of slicing.',
  },
  'soda-ash': {
    plain: 'soda ash',
    why: 'Fresh soap at the surface met the air and grew a white powdery film. It is harmless.',
  },
  'partial-gel': {
    plain: 'partial gel',
    why: 'The middle got hot enough to gel and the edges did not, which leaves a darker ring. It is looks only.',
  },
  'vanillin-browning': {
    plain: 'vanillin browning',
    why: 'Vanillin in the fragrance turns soap tan to brown over days and weeks, from the outside in.',
  },
  'alkali-unstable-colourant': {
    plain: 'a colour that lye destroys',
    why: 'The colourant does not hold in fresh soap, so its colour changed or went when it met the lye.',
  },
  'dye-bleed': {
    plain: 'bleeding colour',
    why: 'A dye or lake that dissolves a little wandered into the soap beside it.',
  },
  'overdosed-colour': {
    plain: 'too much colour',
    why: 'There is more colour than the soap holds, so it comes off in the lather.',
  },
  'underdosed-colour': {
    plain: 'too little colour',
    why: 'The dose was small for that much batter, so the colour is pale. Nothing is wrong with the soap.',
  },
  'base-colour-cast': {
    plain: 'the base shows through',
    why: 'Yellow or green oils tint the batter, and every colour is mixed with that tint from the start.',
  },
  'overheating-crack': {
    plain: 'an overheating crack',
    aside: 'volcano',
    why: 'The loaf got so hot that the middle swelled and split the top.',
  },
  acceleration: {
    plain: 'acceleration',
    aside: 'seizing',
    why: 'The fragrance, the heat or the fats made the batter thicken before you could pour.',
  },
  ricing: {
    plain: 'ricing',
    why: 'Parts of the fragrance bound with hard fats into little rice-like lumps.',
  },
  separation: {
    plain: 'separation',
    aside: 'false trace',
    why: 'Oil and lye water came apart again, so there is oil on one side and lye-rich soap on the other.',
  },
  'stearic-spots': {
    plain: 'stearic spots',
    why: 'Hard fats set before they turned to soap and left pale waxy spots without colour.',
  },
  rancidity: {
    plain: 'rancidity',
    aside: 'DOS, orange spots',
    why: 'Oil left in the soap has gone rancid, which shows as orange spots and a stale smell.',
  },
  'air-bubbles': {
    plain: 'air bubbles',
    why: 'Air was blended in or trapped in thick batter and left dry little holes.',
  },
  'humidity-dew': {
    plain: 'sweating',
    aside: 'dew',
    why: 'Glycerin in the soap draws water from damp air, which stands on the bar as beads.',
  },
  'soft-from-carrier': {
    plain: 'soft from too much carrier',
    why: 'The oil, glycerin or water that came with the colour made that portion soft or greasy.',
  },
  'light-fade': {
    plain: 'faded by light',
    why: 'Daylight or lamps bleached the colour; what lay in the dark kept it.',
  },
  'fragrance-discolouration': {
    plain: 'discoloured by the fragrance',
    why: 'Something in the scent other than vanillin tinted the soap.',
  },
  'reactive-metal': {
    plain: 'stained by metal',
    why: 'A pan, mould, tool or rack of a metal that lye attacks left a grey, dark or green mark.',
  },
  'mica-oil-pools': {
    plain: 'mica oil pools',
    why: 'More oil than the top could drink was drawn on with mica, and it stands in shiny puddles.',
  },
  'wire-drag': {
    plain: 'drag lines from the cutter',
    why: 'The wire or blade pulled grains or colour across the cut face. Just under it the bar is clean.',
  },
  'mould-growth': {
    plain: 'mould',
    why: 'Fresh food or standing damp fed something that grows. That soap is not for skin.',
  },
  'layers-apart': {
    plain: 'layers that come apart',
    why: 'The lower layer had set, or oil, mica or ash lay on it, so the next one had nothing to grip.',
  },
  'muddy-swirl': {
    plain: 'a muddy swirl',
    aside: 'over-mixed',
    why: 'The colours were stirred, swirled or poured so much, or so thin, that they blended into one.',
  },
  'sunk-swirl': {
    plain: 'a swirl that sank',
    why: 'The batter below was too thin to hold the colour up, or it was poured from high, so it went to the bottom.',
  },
  warped: {
    plain: 'warped bars',
    why: 'One side lost its water sooner than the other and shrank, so the bar bent.',
  },
  'loose-mica': {
    plain: 'loose mica on top',
    why: 'Mica dusted on dry, or on soap that had already set, lies there unbound and rubs off.',
  },
  'gel-shifted-colour': {
    plain: 'a colour that gel changed',
    why: 'Soap that went hot right through turned clearer, and the same dose looks deeper or another shade.',
  },
  'unsuitable-colour': {
    plain: 'a colour not made for soap',
    why: 'Crayon, candle dye, paint or kitchen colour is made for something else: in soap it clumps, runs, fades or changes.',
  },
  'unmoulded-early': {
    plain: 'out of the mould too early',
    why: 'The soap had not firmed up, so it stuck, tore or dented. It is still caustic at that age.',
  },
  'mould-texture': {
    plain: 'marks of the mould or liner',
    why: 'Creases of the liner, or air and water against it, printed themselves on the sides. It is looks only.',
  },
  'wrinkled-top': {
    plain: 'a wrinkled top',
    aside: 'alligator skin',
    why: 'The top set as a skin while the heat beneath still moved it, so it folded. It is looks only.',
  },
});
