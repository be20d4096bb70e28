import { spaced } from '../../../engine/over-lines.ts';
import type { PlantClass } from '../../../engine/stability/plant-classes.ts';

/** What lye does to plants and foods that the catalogue does not hold. */
export const plants = {
  /** `name` as its asker wrote it. */
  fate: {
    anthocyanins: name =>
      `“${name}” does not keep its colour: lye turns its anthocyanins blue, green, then yellow-brown.`,
    betalains: name =>
      `“${name}” does not keep its colour: lye breaks its betalains down to yellow, then brown.`,
    chlorophyll: name =>
      `“${name}” starts green and dulls: its chlorophyll goes olive, then tan within weeks, in light sooner.`,
    carotenoids: name =>
      `“${name}” mostly keeps a soft yellow or orange: carotenoids bear lye, but fade in light; of a purée often only beige is left.`,
    curcumin: name => `“${name}” goes red in lye, then settles to peach or tan, and fades in light.`,
    tannins: name => `“${name}” goes brown: its tannins darken in lye, and the brown mostly stays.`,
    flavonoids: name => `“${name}” gives a yellow that deepens in lye, then browns and fades.`,
    quinones: name =>
      `“${name}” shifts: its quinones are red in acid, purple to grey-blue in lye; test before you count on it.`,
    dyewood: name => `“${name}” shifts in lye, red toward purple, then browns in air and light.`,
    indigo: name =>
      `“${name}” gives no blue as a leaf: only the pigment won from it does, and that bears lye.`,
    phycocyanin: name => `“${name}” loses its blue: its protein does not bear lye or heat.`,
    phycoerythrin: name =>
      `“${name}” loses its red: its protein does not bear lye; a tan or olive brown is left.`,
    'roasted-meal': name =>
      `“${name}” gives a pale beige with specks that stays: sieve it fine, or it scratches; a tablespoon a pound of oils is plenty.`,
    'browned-sugar': name => `“${name}” gives a brown that stays, darker with its sugar.`,
  } satisfies Readonly<Record<PlantClass, (name: string) => string>>,
  /** Of a plant that no dose is known of. */
  usual:
    'How much: makers use about a tablespoon of a plant powder to a pound (450 g) of oils. Begin with half of that, wetted in a little oil.',
  notListed: (name: string) =>
    `“${name}” is not on my list. Plant colours mostly turn brown or fade in lye: pour a small test bar first.`,
  onlyForSoap: 'What is no plant or food goes into soap only if it is sold for soap.',
  test: 'Plants differ from harvest to harvest: pour a spoonful of batter as a test, and keep bars in the dark.',
  asLiquid: spaced`
    In place of water it has a method of its own: ice-cold or frozen, wine and beer boiled flat first,
    sugar heats the batter. Never plain onto lye; /plan weighs it with liquid:“coffee”.
  `,
  source: (v: { source: string; isRemembered: boolean }) =>
    `Where it comes from: ${v.source}${v.isRemembered ? ' (from memory)' : ''}.`,
};
