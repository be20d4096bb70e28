import type { HueScheme } from '../../../engine/palettes/hue-schemes.ts';
import { numbersIn } from '../../numbers.ts';
import type { RefusalSentences } from '../../sentence.ts';

const schemes: Record<HueScheme, string> = {
  analogous: 'neighbours',
  complementary: 'opposites',
  'split-complementary': 'split opposites',
  triadic: 'triangle',
  tetradic: 'square',
};
const and = new Intl.ListFormat('en');

const { one } = numbersIn('en');

export const palettes = {
  schemes,
  today: (v: { count: number; first: string }) =>
    `${v.count} ${v.count === 1 ? 'palette' : 'palettes'} from your shelf today; the liveliest: ${v.first}`,
  nothingToday: 'No palette from your shelf holds together by its hues today',
  nothingTodayWhy:
    'Two hues that face one another, or three in a triangle, are missing. See /palette buy with a palette you like.',
  row: (v: { scheme: string; list: string }) => `${v.scheme}: ${v.list}`,
  colour: (v: { word: string; doses: string }) => `${v.word} (${v.doses})`,
  dose: (v: { spoons: string; name: string }) => `${v.spoons} ${v.name}`,
  inPortion: (v: { portion: string }) => `Spoons for ${v.portion} each.`,
  schemeNote: 'Hues by Itten’s circle (1961), measured in OKLCh; each within half a step of it.',
  todayTitle: 'What your shelf makes today',
  buy: (v: { names: readonly string[]; off: number; before: number }) =>
    `Buy ${and.format(v.names)}: off by ${one(v.off)} on average, ${one(v.before)} now`,
  buyNothing: (v: { off: number; reached: boolean }) =>
    v.reached
      ? 'Buy nothing: your shelf reaches all of it'
      : `Nothing safe in lye and listed by law brings it nearer: off by ${one(v.off)} now`,
  one: 'If you buy one',
  two: 'If you buy two',
  purchase: (v: { names: readonly string[]; off: number }) =>
    `${and.format(v.names)}: off by ${one(v.off)} on average`,
  now: 'With your shelf',
  wanted: 'Wanted',
  withIt: (v: { names: readonly string[] }) => `With ${and.format(v.names)}`,
  off: (v: { hex: string; deltaE: number }) => `${v.hex}, off ${one(v.deltaE)}`,
  buyNote:
    'Only pigments that hold in lye and that both laws list for soap are offered. Best doses, before spoons: /match gives those.',
  emptyShelf: 'Your shelf is empty, so this starts from plain soap.',
  buyTitle: 'What it would bring',
  make: (v: { reached: number; of: number; portion: string }) =>
    `${v.reached} of ${v.of} colours reached from your shelf, ${v.portion} each`,
  makeRow: (v: { hex: string; recipe: string; deltaE: number; nearness: string }) =>
    `${v.hex}: ${v.recipe}; off by ${one(v.deltaE)}, ${v.nearness}`,
  makeNone: (v: { hex: string }) => `${v.hex}: nothing on your shelf comes near`,
  makeTitle: (v: { theme: string | undefined }) => (v.theme ? `A palette: ${v.theme}` : 'Your palette'),
  madeOf: 'Made',
  idea: (v: { names: readonly string[] }) => `${v.names.join(', ')}: colours that hold together.`,
  goesWith: (v: { colour: string; names: readonly string[] }) =>
    `Beside ${v.colour}: ${v.names.join(', ')}, and white or cream.`,
  ideaWhy: (v: { hexes: readonly string[] }) =>
    `${v.hexes.join(', ')}. Leave a third of the batter plain or white, so that they have room. A mood or a list of colours goes into /palette make.`,
  ideaMake: 'From my shelf',
  ideaBuy: 'What to buy',
  reachMore: 'For what is out of reach: /palette buy with the same words.',
  picture: (v: { list: string }) => `Strips of colour: ${v.list}.`,
  pictureNote: 'Predicted cured colours. Screens differ; a test bar decides.',
};

export const palettesRefusals: Pick<
  RefusalSentences,
  'palette-size' | 'palette-unreadable' | 'palette-without-jars'
> = {
  'palette-size': ({ least, most }) =>
    `A palette has ${least} to ${most} colours, such as “teal, gold, cream”.`,
  'palette-unreadable': ({ text }) =>
    `I can’t read “${text}” as a palette. Name colours, “teal, gold, #a04060”, or a mood: “sunset, four layers”.`,
  'palette-without-jars': () => 'Your shelf has nothing to colour with yet: put a jar on it with /shelf add.',
};
