import { action, commandGroup, type Suggestion } from '../../src/conversation/command.ts';
import type { Context } from '../../src/conversation/context.ts';
import { number, picture, several, text, yesNo } from '../../src/conversation/option.ts';
import { suggestBases } from '../../src/presenting/colour/suggest.ts';
import { nearestNames } from '../../src/records/shelf/index.ts';
import { calibrateReply } from './answer.ts';
import { barPlanReply } from './bar-plan.ts';

const suggestItems = async (typed: string, { shelf }: Context): Promise<readonly Suggestion[]> =>
  (await nearestNames(shelf, typed, 25)).map(name => ({ name, value: name }));

export default commandGroup(
  'calibrate',
  {
    en: 'Test bars: which to pour, and what they say of your jars',
    es: 'Barras de prueba: cuáles verter y qué dicen de tus botes',
  },
  {
    bars: action({
      purpose: {
        en: 'Learn from your test bars how strong your own jar is',
        es: 'Aprende de tus barras de prueba lo fuerte que es tu bote',
      },
      seenBy: 'asker',
      pace: 'slow',
      options: {
        item: text({
          en: 'The jar by its name on your shelf; not needed where each bar names its jars',
          es: 'El bote por su nombre en tu estantería; sobra si cada barra nombra sus botes',
        }).optional(),
        bar: several(
          {
            en: '“1/4 tsp per cup #6b5aa8”, “Sky 1 tsp + White 1/2 tsp per cup #8899bb”, “plain #efe6cf”',
            es: '«1/4 cdta por taza #6b5aa8», «Cielo 1 cdta + Blanco 1/2 cdta #8899bb», «sin color #efe6cf»',
          },
          { most: 6 },
        ),
        photo: picture({
          en: 'Or a photo of one bar beside white paper, by daylight; give its dose too',
          es: 'O una foto de una barra junto a papel blanco, con luz de día; di también su dosis',
        }).optional(),
        dose: text({
          en: 'The dose of the bar in the photo: “1/4 tsp per cup”',
          es: 'La dosis de la barra de la foto: «1/4 cdta por taza»',
        }).optional(),
        base: text(
          {
            en: 'The soap of the bars without colour: white, cream, yellow, green, or your oils',
            es: 'El jabón de las barras sin color: blanca, crema, amarilla, verde, o tus aceites',
          },
          { most: 400 },
        ).optional(),
        gel: yesNo({ en: 'Did the bars go through gel?', es: '¿Pasaron las barras por gel?' }).optional(),
        share: yesNo({
          en: 'Let others here with a jar of the same name start from your bars',
          es: 'Que quienes tengan aquí un bote del mismo nombre partan de tus barras',
        }).optional(),
        afresh: yesNo({
          en: 'Forget the earlier bars of this lot',
          es: 'Olvida las barras anteriores de este lote',
        }).optional(),
      },
      completes: {
        item: suggestItems,
        base: (typed: string, { say }: Context) => suggestBases(typed, say),
      },
      answer: calibrateReply,
    }),
    plan: action({
      purpose: {
        en: 'The fewest test bars that tell what your jars do, with labels to print',
        es: 'Las mínimas barras de prueba que dicen qué hacen tus botes, con etiquetas',
      },
      seenBy: 'asker',
      pace: 'slow',
      options: {
        jars: text({
          en: 'Jars of your shelf: “Dusk, Sky”. Those not calibrated yet unless you say',
          es: 'Botes de tu estantería: «Ocaso, Cielo». Los no calibrados si no dices',
        }).optional(),
        portion: text(
          {
            en: 'Batter in each test bar: “1/2 cup”, “100 g”. Half a cup unless you say',
            es: 'Masa en cada barra: «1/2 taza», «100 g». Media taza si no dices nada',
          },
          { reads: 'portion' },
        ).optional(),
        within: number(
          {
            en: 'Known well enough: give or take so much. 5 unless you say; 2 just shows',
            es: 'Lo bastante conocido: más o menos cuánto. 5 si no dices; 2 apenas se ve',
          },
          { least: 4, most: 12 },
        ).optional(),
        mixes: yesNo({
          en: 'May two jars share a bar? Fewer bars, and one bad bar harms two jars',
          es: '¿Pueden dos botes compartir barra? Menos barras, y una mala daña a dos',
        }).optional(),
        base: text(
          {
            en: 'The soap without colour: white, cream, yellow, green, or your oils',
            es: 'El jabón sin color: blanca, crema, amarilla, verde, o tus aceites',
          },
          { most: 400 },
        ).optional(),
        gel: yesNo({ en: 'Will they go through gel?', es: '¿Pasarán por gel?' }).optional(),
      },
      completes: {
        jars: suggestItems,
        base: (typed: string, { say }: Context) => suggestBases(typed, say),
      },
      answer: barPlanReply,
    }),
  },
);
