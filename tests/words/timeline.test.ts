import { describe, expect, test } from 'vitest';
import { planNumbers } from '../../src/engine/batch/planning/plan.ts';
import { timelineOf } from '../../src/engine/batch/planning/timeline.ts';
import { colourants } from '../../src/engine/colourants/catalogue.ts';
import { wordsIn } from '../../src/words/index.ts';
import { asked, filled } from '../engine/batch/asked.ts';

/** What is said of whisking the colours into the cups of a pour, in a language. */
function whisked(portions: string, language: 'en' | 'es' = 'en'): readonly string[] {
  const request = asked({ portions });
  const { recipe, filled: batch } = filled(request);
  const { jug, lye, additives } = planNumbers(request);
  const facts = { kohShare: 0, saltPercent: 0, ovenC: 77, peakHours: 3, peakCoreC: 70, keepCool: false };
  const steps = timelineOf(request, batch, {
    ...facts,
    lye: recipe.lye,
    jug,
    oilGrams: recipe.oilGrams,
    lyeRise: lye.mixingRise,
    additives,
  });
  const { 'whisk-portion': whisk } = wordsIn(language).timeline.steps;
  return steps.flatMap(one => (one.step === 'whisk-portion' ? [whisk(one.values)] : []));
}

describe('a cup that is called after its colours need not name them twice', () => {
  test('one or several, in both languages', () => {
    expect(whisked('1 cup gold mica; rest')).toEqual(['“Gold mica”: whisk in its colour.']);
    expect(whisked('1 cup mica dorada; rest', 'es')).toEqual([
      '«Mica dorada»: integra su color con varillas.',
    ]);
    const both = '1 cup ultramarine blue + gold mica; rest';
    expect(whisked(both)).toEqual(['“Ultramarine blue + gold mica”: whisk in its colours.']);
  });
  test('one that is called otherwise names them with what tells them apart', () => {
    const [gold, mixed] = ['1 cup gold; rest', '1 cup gold mica + red oxide; rest'];
    expect(whisked(gold)).toEqual(['“Gold”: whisk in gold mica (iron oxide).']);
    const one = '1 cup mica dorada + óxido rojo; rest';
    expect(whisked(one, 'es')[0]).toContain(': integra mica dorada (óxido de hierro), óxido');
    expect(whisked(gold, 'es')).toEqual(['«Gold»: integra mica dorada (óxido de hierro) con varillas.']);
    expect(whisked(mixed)).toEqual([
      '“Gold mica + red oxide”: whisk in gold mica (iron oxide), red iron oxide.',
    ]);
  });
});

test('where two colourants are called alike, brackets tell them apart: a mica by its coat', () => {
  const alike = Map.groupBy(colourants, ({ names, called = names }) => called.en);
  const several = [...alike.values()].filter(all => all.length > 1);
  expect(several.map(all => all.map(({ names }) => names.en))).toContainEqual([
    'Black mica (iron oxide)',
    'Black mica (carbon black)',
  ]);
  // What stands in brackets is never a part of what it is called.
  const told = colourants.map(({ names, called = names }) => `${called.en} ${called.es}`);
  expect(told.filter(name => /[()]/u.test(name))).toEqual([]);
  for (const all of several) expect(new Set(all.map(({ names }) => names.es)).size).toBe(all.length);
});
