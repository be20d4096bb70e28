import type { RefusedCases } from './row.ts';

export const pouring: RefusedCases = {
  pouring: [
    [
      '/pour swirl mould:"25x9x7 cm" shares:blue',
      'swirl-shares-unreadable',
      'Write percents',
      'Escribe porcentajes',
    ],
    [
      '/pour swirl mould:"25x9x7 cm" shares:"blue 70%, white 60%"',
      'swirl-shares-over',
      'Those shares make',
      'arriba hay',
    ],
    [
      '/pour swirl mould:"2 cups" shares:"blue 50%, white 50%"',
      'pour-not-a-mould',
      'give its inside',
      'no es un molde',
    ],
    [
      '/pour line mould:"12 cavities x 100 ml"',
      'pour-cavity-depth',
      'How deep is one cavity',
      'Qué profundidad tiene una cavidad',
    ],
    [
      '/pour layers mould:"cylinder 8x25 cm" layers:3 raised:2',
      'pour-tilt-round',
      'or take a loaf or slab mould for the wedge',
      'o usa para la cuña un molde de barra o de losa',
    ],
    [
      '/pour swirl mould:"25x9x7 cm" shares:"blue 50%, white 50%" depth:9',
      'swirl-too-deep',
      'That is deeper than the mould',
      'Es más hondo que el molde',
    ],
    [
      '/pour infusion bar:brownish target:mustard',
      'infusion-bar-unreadable',
      'Give the share of infused oil',
      'Da la parte de aceite infusionado y su color',
    ],
    [
      '/pour infusion bar:"20% #d9b86a"',
      'infusion-without-target',
      'Say the colour you want too',
      'Di también el color que quieres',
    ],
  ],
};
