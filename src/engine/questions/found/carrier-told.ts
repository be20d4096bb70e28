import { unbroken } from '../../over-lines.ts';

/** A liquid that the colour is said to go in; of two between which somebody asks, none. */
const CARRIER = new RegExp(
  unbroken`
    \b(?:in|into|with|using|en|con) (?:a (?:little|bit of) |some |my |un poco de |mi )?(glycerine?|glycerol|
    glicerina|water|agua|(?:olive|sunflower|sweet almond|almond|castor|rice bran|coconut|avocado|
    canola) oil|oil|aceite(?: de \p{L}+)?)(?= ?(?:(?:please|por favor|for|para|and|y|instead|en vez)\b|[?!.,;)]|$))
  `,
  'u',
);

/** What a question says that a colour is to be wetted in, in its own words; `text` in lower case without accents. */
export function carrierIn(text: string): string | undefined {
  if (
    /\b(?:glycerine?|glicerina|water|agua|oil|aceite) (?:or|o) (?:in |en )?(?:glycerine?|glicerina|water|agua|oil|aceite)\b/u.test(
      text,
    )
  )
    return undefined;
  return CARRIER.exec(text)?.[1];
}
