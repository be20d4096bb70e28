import { describe, expect, test } from 'vitest';
import { amountsIn } from '../../../../src/engine/questions/found/amounts.ts';
import { factsOf } from '../../../../src/engine/questions/found/facts.ts';
import { thingsIn } from '../../../../src/engine/questions/found/names/entities.ts';
import { wordsOf } from '../../../../src/engine/questions/found/words-of.ts';
import { jobByPhrase } from '../../../../src/engine/questions/jobs/job-by-phrase.ts';
import { readQuestion } from '../../../../src/engine/questions/read.ts';

/* Turns of phrase that tell the job whatever the other words are taken for; the lines are our own. */

const phraseOf = (question: string) => {
  const words = wordsOf(question);
  const things = thingsIn(words);
  const amounts = amountsIn(words, things);
  return jobByPhrase(words, { things, amounts, facts: factsOf(question, words, { things, amounts }) });
};
const jobOf = (question: string) => readQuestion(question).readings[0]?.job;

describe('a turn of phrase tells the job', () => {
  test.each([
    ['my beet pink is tan. what happened', 'diagnose'],
    ['puse cúrcuma y se me ha quedado marrón, por qué', 'diagnose'],
    ['vanilla cupcake scent. cream on monday, brown as tea by friday. is it off', 'diagnose'],
    ['aroma de vainilla. blanco el lunes y marrón el viernes, está malo?', 'diagnose'],
    ['will turmeric go brown, what happened to yours', 'survives-lye'],
    ['my icing was white on monday, yellow by friday', undefined],
    ['brown oxide vs cocoa powder', 'compare'],
    ['óxido negro contra carbón', 'compare'],
    ['are 4 g of red oxide too much for 700 g of oils?', 'dose'],
    // Bare figures of oils are grams.
    ['3 g of red oxide in 550 oils, overkill?', 'dose'],
    ['le puse 5 g de carbón a 500 g de aceites, ¿es demasiado?', 'dose'],
    ['60% white and 40% blue for 900 g oils, how much of each', 'plan'],
    ['can I sell bars with ultramarine in Norway', 'law'],
    ['¿puedo usar carmín si lo mando a Portugal?', 'law'],
    ['how would you get the grey of a rainy harbour', 'mix'],
    ['¿Cómo consigo el azul de las hortensias de mi calle?', 'mix'],
    ['ultramarine blue + yellow iron oxide makes what color', 'preview'],
    ['oxido rojo y azul ultramar juntos q color dan', 'preview'],
    ['hola q cosas sabes hacer tú', 'help'],
    ['con qué se hace un rojo como el de los tejados viejos', 'mix'],
  ])('%s: %s', (question, job) => {
    expect(jobOf(question)).toBe(job);
  });

  test('a likened hue is the colour that is wished, and no other field', () => {
    const { outside, facts } = readQuestion('¿Cómo consigo el dorado de los campos al atardecer?');
    expect(outside).toBeUndefined();
    expect(facts.target?.text).toContain('dorado');
  });
});

describe('a dose that is named', () => {
  test.each(['indigo powder dose for denim blue', 'dosis de óxido rojo para 500 g de aceites'])(
    '%s',
    question => expect(phraseOf(question)).toBe('dose'),
  );
});

describe('and leaves alone', () => {
  test.each([
    // Of two colourants no one dose.
    'dose of indigo and of madder, which is more',
    // What has come of it is told.
    '4 g of red oxide in 700 g of oils was too much, the suds turned pink',
    '2 Tbsp of charcoal in 1 lb oils and the bar leaves black on the sink, too much?',
    // What lye does to both is asked.
    'annatto vs turmeric, which one survives lye',
    'can I use alkanet in Norway or does it fade',
    'how do I get the red of a wine stain off the tablecloth',
    'how do I get the brown of a good crust on bread',
  ])('%s', question => {
    expect(phraseOf(question)).toBeUndefined();
  });
});
