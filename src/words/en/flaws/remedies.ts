import type { RemedyId } from '../../../engine/flaws/remedies.ts';
import { spaced } from '../../../engine/over-lines.ts';

/** What to do, as one instruction each. */
export const flawRemedies: Readonly<Record<RemedyId, string>> = {
  'only-looks': 'It is looks only: it washes like any other bar.',
  'use-as-it-is': 'Cure and use it as it is.',
  'do-not-use': 'Do not use, give away or sell this soap. Do not cut it by hand either.',
  'discard-safely':
    'Keep it in a closed plastic tub and ask your local waste office how to hand in something caustic.',
  'keep-gloves-on': 'Gloves and goggles on whenever you touch it.',
  'no-guessed-repair': 'Do not add oil or lye or rebatch it by guess: nobody can tell how much lye is in it.',
  'plane-or-steam-ash': 'Steam, wipe or plane the film off, or leave it: it goes at the first wash.',
  'wait-and-see-colour': 'Wait some weeks before you judge: the colour can still move.',
  'wait-longer-to-cure': 'Give it some more weeks on the rack.',
  'cut-warm-or-thin-wire': 'Warm the loaf gently and cut with a thin wire.',
  'confetti-or-rebatch': 'Grate the broken bars into a rebatch or a confetti soap.',
  'hot-process-now':
    'If its oils and lye were weighed right: cook it out as hot process, with gloves and goggles on.',
  'stick-blend-back-together':
    'Still liquid in the pot? Stick-blend until it comes back together, then pour at once.',
  'reabsorb-then-test-strip':
    'Let it stand a day. If the oil goes back in, test several spots with a strip; if not, discard it.',
  'test-white-specks': spaced`
    White specks can be undissolved lye. Gloves on; press one: soft and waxy is fat or powder; hard, sharp
    or wet: do not use it. pH paper on a wetted one that shows 11 or more: not to be used.
  `,
  'spoon-into-mould': 'Spoon it in, press it down and knock the mould on the table.',
  'keep-dry-and-airy': 'Keep the bars dry, with air on all sides.',
  'wipe-and-dry': 'Pat the bars dry; they are fine to use.',
  'use-soon-and-apart':
    'Keep them away from good bars. Use them soon if you do not mind the smell, and never sell them.',
  'discard-mouldy': 'Throw it out, do not cut the spot away, and wash what it touched.',
  'clean-cut-face': 'Plane a thin slice off the face: the picture under it is clean.',
  'scrape-stained-face':
    'With gloves, cut the stained face off; discard the soap if the metal fizzed in the batter.',
  'keep-in-dark': 'Keep the rest in a box, out of the light.',
  'mark-as-staining': 'Keep it from pale towels, and warn whoever uses it.',
  'tell-bleeding-bars-apart':
    'Let it rest: it does no harm, it only spreads. Try it on a pale cloth before you sell it.',
  'level-and-cap-crack': 'While it is warm, press the crack together with a gloved hand.',
  'cool-loaf-now': 'If it is still hot: unwrap it and set it in moving cool air.',
  'insulate-now-for-full-gel':
    'If it is still warm in the mould: cover it, so that the gel reaches the edges.',
  'pour-plain-and-fast': 'Give up the swirl: get it into the mould while it moves.',
  'dab-oil-off': 'Dab the wet spots with paper and let the rest dry in.',
  'wet-pigment-first':
    'Wet 1 tsp colour in 1 Tbsp oil, glycerin or water until no lump is left, then add it.',
  'strain-or-mill-colour': 'Press the paste through a fine sieve, or froth it before it meets the batter.',
  'stick-blend-carrier-in': 'Stick-blend the colour into its portion; stirring is not enough for glycerin.',
  'less-carrier': 'Use less carrier: about 1 Tbsp for 1 tsp of colour.',
  'hold-water-back': 'Take the water for the colour out of the lye water, never below 1:1.',
  'less-heat': 'Run it cooler: start cooler, no forced gel, no blanket.',
  'less-water': 'Use less water (about a 33 % lye solution).',
  'less-white-pigment': 'Use the least white that does it: 1/2 tsp a cup is full.',
  'keep-white-under-ceiling': 'Stay at or below 1 tsp of all white pigments a cup.',
  'cooler-fragrance': 'Choose a fragrance that does not heat up.',
  'check-lye-calculation': 'Run the recipe through a lye calculation again with every oil weighed.',
  'check-scale-and-measures':
    'Check the scale with a known weight; weigh, never measure lye by spoon or cup.',
  'dissolve-lye-fully-and-strain': 'Wait until the lye is clear and pour it through a fine sieve.',
  'stir-lye-in-evenly': 'Blend to an even batter, and scrape sides and bottom.',
  'softer-recipe': 'Bring liquid oils up and hard fats down.',
  'cut-sooner': 'Cut earlier, when it is as firm as hard cheese.',
  'cover-and-gel': 'Cover the top and keep it warm for the first day.',
  'steam-or-alcohol-on-top': 'Spray the top with strong alcohol right after the pour, away from flames.',
  'steeper-water-discount': 'Use a little less water.',
  'all-gel-or-no-gel': 'Go all the way one way: insulate well for full gel, or chill at once for none.',
  'vanillin-free-or-portion': 'Use a vanillin-free scent, or scent only the part that may go brown.',
  'plan-for-brown': 'Plan the design so that brown belongs in it; white pigment will not stop it.',
  'swap-to-alkali-stable': 'Use an oxide, an ultramarine, or a mica coloured by them.',
  'test-in-small-cup': 'Try it in half a cup of batter first and look after a week.',
  'swap-dye-for-pigment': 'Use a pigment in place of the dye or lake where lines must stay sharp.',
  'dose-down-to-ceiling':
    'Stay below the ceiling: 1/2 tsp a cup for oxides and ultramarines, 1 tsp for micas.',
  'dose-up-stepwise': 'Step the dose up towards full: 1/4 tsp a cup for oxides, 1 tsp for micas.',
  'white-under-bright-colour': 'A little white pigment under the colour hides the base.',
  'paler-base-oils': 'Use paler oils for the portion that must be clean in colour.',
  'counter-tint': 'A touch of ultramarine violet takes yellow out of white.',
  'no-insulation-for-hot-recipe': 'Leave it unwrapped and cool, or in the fridge.',
  'less-sugar-milk-honey': 'Cut back sugar, honey and milk, and start cool with them.',
  'slower-fragrance': 'Choose a fragrance known to behave in cold process.',
  'fragrance-last-hand-stir': 'Warm the fragrance with a little oil, add it last and stir by hand.',
  'thinner-trace-and-cooler': 'Stop at a thinner trace and start cooler.',
  'reach-true-emulsion': 'Blend until no oil shows when you stop; warm enough that no fat sets.',
  'warm-enough-to-stay-melted':
    'Keep oils and lye warm enough that no fat turns cloudy, about 38-43 °C (100-109 °F).',
  'melt-and-stir-butters': 'Melt all hard fats fully and stir the tub before you take from it.',
  'fresh-oils-lower-superfat': 'Use fresh oils and about 5 % superfat.',
  'fewer-unsaturated-oils': 'Use less of oils that turn fast (sunflower, grapeseed, hemp).',
  'antioxidant-and-chelator': 'Use distilled water; an antioxidant in the oils and a chelator help.',
  'burp-blender-tap-mould': 'Let the air out of the blender head under the batter, and knock the mould.',
  'cure-dry-moving-air': 'Cure in dry moving air, off metal racks.',
  'light-stable-colour':
    'Choose a colour that holds in light: oxide or ultramarine rather than neon or plant.',
  'store-out-of-light': 'Store and show it out of sun and lamps.',
  'ask-seller-about-discolouring': 'Ask the seller what the fragrance does to the colour of soap.',
  'steel-or-plastic-only':
    'Use stainless steel, heat-proof plastic or silicone only; never aluminium or copper.',
  'less-oil-in-mica-top': 'Use a few drops of oil only, or brush the mica on with alcohol.',
  'turn-bar-and-clean-wire': 'Turn the loaf on its side to cut, and wipe the wire after each cut.',
  'cut-when-firm-wipe-wire': 'Cut when it is firm, with a clean wire.',
  'no-fresh-food': 'Leave fresh food out or dry it fully, and keep petals off the top.',
  'finer-additives': 'Grind grains finer.',
  'use-halves-apart':
    'Use the halves as they are, or press them together with a little water while they are fresh.',
  'press-flat-while-pliable': 'While they still give: press them flat under a light weight for a day or two.',
  'turn-bars-often': 'Turn the bars every day or two.',
  'brush-loose-mica-off':
    'Brush the loose mica off with a dry soft brush, outdoors or with a mask: do not breathe the dust.',
  'not-for-skin-unless-permitted':
    'Keep it off the skin unless the label says the colour is permitted in soap; do not sell it.',
  'leave-to-firm-gloved': 'Gloves on: put it back, or stand it apart, for another day or two.',
  'trim-when-firm': 'Trim the torn edges when it is firm.',
  'plane-sides-smooth': 'Plane or wipe the sides smooth once it is firm.',
  'plane-top-smooth': 'Plane the top flat, or leave it: it washes away.',
  'pour-layer-while-soft': 'Pour the next layer when the last one just holds it: soft, not set.',
  'roughen-and-spray-layer':
    'Waited too long? Scratch the layer with a fork and spray it with alcohol, away from flames.',
  'less-between-layers': 'Keep mica, oil and ash out from between the layers: a breath of mica only.',
  'stop-swirling-sooner': 'Stop sooner: one or two passes with the tool, few pours in the pot.',
  'swirl-a-little-thicker': 'Swirl at light trace, when a drop stays on top for a second.',
  'colours-that-mix-clean': 'Pick neighbours on the colour wheel: opposites make brown where they meet.',
  'pour-low-over-spatula': 'Pour close to the surface, over a spatula.',
  'pour-high-for-depth': 'For a drop swirl change the height as you pour: high goes deep, low stays up.',
  'dry-evenly-on-all-sides': 'Dry the bars on edge, with air on all sides, away from a fan or sun.',
  'cut-even-and-thicker': 'Cut even bars, about 2.5 cm (1 in) thick.',
  'spray-mica-onto-wet-top':
    'Put the mica on while the top is wet, with a mist of alcohol, away from flames.',
  'less-dry-mica-on-top': 'Use less: a thin veil holds, a heap does not.',
  'colour-made-for-soap':
    'Use a colour permitted in cosmetics that holds in lye: oxide, ultramarine, or a mica for cold process.',
  'wait-before-unmoulding':
    'Wait until it is firm and cool to the touch of a glove: 1 to 3 days, longer for soft recipes.',
  'firm-up-recipe':
    'A little less water, or 1 tsp of sodium lactate per pound of oils, makes it firm sooner.',
  'chill-before-unmoulding': 'Sticks in silicone? An hour in the freezer before it comes out.',
  'smooth-taut-liner':
    'Line it tight and smooth, shiny side to the soap, and knock the mould after the pour.',
};
