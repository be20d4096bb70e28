import { describe, expect, test } from 'vitest';
import { type ColourWord, nearestWord } from '../../src/engine/colour/reading/plain-words.ts';
import { chromaOf, colourDifference, labOfHex } from '../../src/engine/colour/spectra/cielab.ts';

/*
 * What people call colours, measured: the colours that some 200,000 people named most alike on their screens. Source: R. Munroe,
 * Color Survey Results, 2010 (rgb.txt, CC0), as matplotlib 3.11 carries it. Screens are more vivid than soap ever is, so a
 * word may lie off what the survey found, yet never far, and never in another hue.
 */
const SURVEY: readonly (readonly [ColourWord, string])[] = [
  ['white', '#ffffff'],
  ['cream', '#ffffc2'],
  ['ivory', '#ffffcb'],
  ['beige', '#e6daa6'],
  ['tan', '#d1b26f'],
  ['brown', '#653700'],
  ['dark-brown', '#341c02'],
  ['reddish-brown', '#7f2b0a'],
  ['black', '#000000'],
  ['charcoal', '#343837'],
  ['grey', '#929591'],
  ['light-grey', '#d8dcd6'],
  ['pale-pink', '#ffcfdc'],
  ['pink', '#ff81c0'],
  ['hot-pink', '#ff028d'],
  ['dusty-rose', '#c0737a'],
  ['rose', '#cf6275'],
  ['red', '#e50000'],
  ['dark-red', '#840000'],
  ['maroon', '#650021'],
  ['brick', '#a03623'],
  ['coral', '#fc5a50'],
  ['peach', '#ffb07c'],
  ['orange', '#f97306'],
  ['burnt-orange', '#c04e01'],
  ['gold', '#dbb40c'],
  ['mustard', '#ceb301'],
  ['yellow', '#ffff14'],
  ['pale-yellow', '#ffff84'],
  ['olive', '#6e750e'],
  ['olive-green', '#677a04'],
  ['lime', '#aaff32'],
  ['bright-green', '#01ff07'],
  ['green', '#15b01a'],
  ['dark-green', '#033500'],
  ['sage', '#87ae73'],
  ['mint', '#9ffeb0'],
  ['teal', '#029386'],
  ['turquoise', '#06c2ac'],
  ['pale-blue', '#d0fefe'],
  ['sky-blue', '#75bbfd'],
  ['blue', '#0343df'],
  ['dusty-blue', '#5a86ad'],
  ['deep-blue', '#040273'],
  ['navy', '#01153e'],
  ['periwinkle', '#8e82fe'],
  ['lavender', '#c79fef'],
  ['lilac', '#cea2fd'],
  ['violet', '#9a0eea'],
  ['deep-violet', '#490648'],
  ['purple', '#7e1e9c'],
  ['plum', '#580f41'],
  ['mauve', '#ae7181'],
  ['magenta', '#c20078'],
];

/** Where another word of ours is nearer, what the survey calls by it is no farther off than this (CIEDE2000): a neighbour. */
const NEIGHBOUR = 22;
const GREY = /^(?:grey|light-grey|charcoal|black)$/u;

describe('a plain word means what a survey of names measured', () => {
  test('whose words are nearly all of ours', () => {
    expect(SURVEY.length).toBeGreaterThanOrEqual(54);
  });

  test.each(SURVEY)('%s', (word, hex) => {
    const lab = labOfHex(hex);
    const called = nearestWord(lab);
    const meant = labOfHex(SURVEY.find(([one]) => one === called)![1]);
    expect(colourDifference(lab, meant)).toBeLessThan(NEIGHBOUR);
    // What has a hue is not called grey, and what has none is called so.
    expect(GREY.test(called)).toBe(GREY.test(word));
  });

  test('most are called just what the survey calls them', () => {
    const alike = SURVEY.filter(([word, hex]) => nearestWord(labOfHex(hex)) === word).length;
    expect(alike / SURVEY.length).toBeGreaterThan(0.7);
  });

  test('greys are grey from black to white, whatever hue they lean to', () => {
    for (let level = 30; level <= 190; level += 10)
      for (const lean of [-6, 0, 6]) {
        const parts = [level + lean, level, level - lean].map(part => part.toString(16).padStart(2, '0'));
        const lab = labOfHex(`#${parts.join('')}`);
        expect(chromaOf(lab)).toBeLessThan(10);
        expect(nearestWord(lab)).toMatch(GREY);
      }
  });
});
