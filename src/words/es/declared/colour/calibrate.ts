import type { says as en } from '../../../en/declared/colour/calibrate.ts';

export const says: typeof en = {
  purpose: 'Barras de prueba: cuáles verter y qué dicen de tus botes',
  bars: {
    purpose: 'Aprende de tus barras de prueba lo fuerte que es tu bote',
    item: 'El bote por su nombre en tu estantería; sobra si cada barra nombra sus botes',
    bar: '«1/4 cdta por taza #6b5aa8», «Cielo 1 cdta + Blanco 1/2 cdta #8899bb», «sin color #efe6cf»',
    photo: 'O una foto de una barra junto a papel blanco, con luz de día; di también su dosis',
    dose: 'La dosis de la barra de la foto: «1/4 cdta por taza»',
    base: 'El jabón de las barras sin color: blanca, crema, amarilla, verde, o tus aceites',
    gel: '¿Pasaron las barras por gel?',
    share: 'Que quienes tengan aquí un bote del mismo nombre partan de tus barras',
    afresh: 'Olvida las barras anteriores de este lote',
  },
  plan: {
    purpose: 'Las mínimas barras de prueba que dicen qué hacen tus botes, con etiquetas',
    jars: 'Botes de tu estantería: «Ocaso, Cielo». Los no calibrados si no dices',
    portion: 'Masa en cada barra: «1/2 taza», «100 g». Media taza si no dices nada',
    within: 'Lo bastante conocido: más o menos cuánto. 5 si no dices; 2 apenas se ve',
    mixes: '¿Pueden dos botes compartir barra? Menos barras, y una mala daña a dos',
    base: 'El jabón sin color: blanca, crema, amarilla, verde, o tus aceites',
    gel: '¿Pasarán por gel?',
  },
};
