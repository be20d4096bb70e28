/** What is said of scents in coloured batter. */
export const techniqueScents = {
  'vanilla-brown': {
    answer: ['Vanillin browns soap for weeks, and no white stops it: leave what must stay pale unscented.'],
    why: [
      '1 % vanillin in the scent ends tan, 5 % brown, 10 % and over dark brown; its data sheet says how much.',
      'Titanium dioxide only makes the brown paler.',
      'It is no fault and harms nothing, but does not come out again.',
      'Plan with it: the scent into a part that may be brown or black, none into white and pastels; or a scent without vanillin.',
    ],
  },
  'scent-amount': {
    answer: [
      'Fragrance: about 3 % of the oils, 30 g a kilo (half an ounce a pound), never above the limit on its own sheet.',
    ],
    why: [
      'The sheet (IFRA, rinse-off soap) says the most for that scent, and it may be far below 3 %: cinnamon and clove 0.5 % or less.',
      'Weigh it, no spoons.',
      'Last into the batter, by hand.',
      'None for babies.',
      'Colour is reckoned apart: tell me which one and for how much.',
    ],
  },
  'scent-lasts': {
    answer: [
      'To make scent last: about 3 % of the oils within its own limit, poured cool, cured airy and dark, then closed.',
    ],
    why: [
      'Citrus oils go within weeks; woods, resins, patchouli and most fragrance oils stay.',
      'No gel and 30 to 35 °C (86 to 95 °F) spare the light ones.',
      'Clay or starch holds it no better in any test that I know of.',
      'More than the sheet allows is no way: it irritates skin.',
    ],
  },
  'scent-mix': {
    answer: [
      'Yes: mix scents in one cup and stir them in last; together not more than about 3 % of the oils.',
    ],
    why: [
      'Each of them must also stay within the limit of its own sheet.',
      'One that races makes the whole race, one with vanillin browns it.',
      'Smell a drop of each on paper first, and let the mix stand a day.',
    ],
  },
  'scent-speeds': {
    answer: [
      'Floral and spice scents race: rose, jasmine, lilac, clove, cinnamon.',
      'Lavender and most citrus are quiet.',
    ],
    why: [
      'Next time: 30 °C (86 °F), lye of 28 to 30 %, slow oils, colours in first, the scent last and by hand, or only into the plain part.',
      'Try it: a few drops in a spoonful of batter, or 100 g.',
      'The seller’s note on acceleration helps.',
      'Clove and cinnamon irritate skin: by their certificate only.',
    ],
  },
};
