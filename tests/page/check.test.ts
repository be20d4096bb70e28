import { describe, expect, test } from 'vitest';
import { checkOption } from '../../src/page/browser/check.ts';
import type { Option } from '../../src/page/browser/declared.ts';
import { page as say } from '../../src/words/en/fronts/page.ts';

const of = (kind: Option['kind'], over: Partial<Option> = {}): Option => ({
  name: 'bars',
  kind,
  required: false,
  says: '',
  completes: false,
  choices: [],
  ...over,
});

describe('what is typed for an option', () => {
  test.each<[Option, string, unknown]>([
    [of('text'), ' 2 cups ', { value: '2 cups' }],
    [of('text'), '  ', undefined],
    [of('whole'), '12', { value: 12 }],
    [of('number'), '2,5', { value: 2.5 }],
    [of('yes-no'), 'sí', { value: true }],
    [of('yes-no'), 'no', { value: false }],
    [of('text', { choices: [{ label: 'Agua', value: 'water' }] }), 'agua', { value: 'water' }],
  ])('%o takes %s', (option, typed, checked) => {
    expect(checkOption(option, typed, say)).toEqual(checked);
  });

  test.each<[Option, string, string]>([
    [of('text', { required: true }), '', 'Please fill in “bars”.'],
    [of('text', { most: 3 }), 'four', '“bars” is too long: at most 3 characters fit.'],
    [of('whole'), '2.5', '“bars” must be a whole number, such as 5.'],
    [of('number'), 'many', '“bars” must be a number, such as 5.'],
    [of('number', { least: 1, most: 9 }), '10', '“bars” must be from 1 to 9.'],
    [of('yes-no'), 'perhaps', '“bars” must be yes or no.'],
    [of('text', { choices: [{ label: 'Water', value: 'w' }] }), 'oil', '“bars” must be one of: Water.'],
    [of('file'), 'bar.jpg', '“bars” takes a file: attach, drop or paste one.'],
  ])('%o says what is wrong with “%s”', (option, typed, wrong) => {
    expect(checkOption(option, typed, say)).toEqual({ wrong });
  });
});
