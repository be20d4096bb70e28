import { unbroken } from '../../../over-lines.ts';

/**
 * Woods and leaves by kind, papers, cloths, smokes, hides and dishes that colours are likened to, in both languages, lower case without
 * accents. From memory, as the things of `colour-objects.ts` are.
 */
export const MATERIALS_BY_HEX: Readonly<Record<string, string>> = {
  // woods, barks and leaves by their kind
  '#a65e2e': unbroken`
    beech leaf|beech leaves|beech hedge in winter|oak leaves in autumn|oak leaf in autumn|hoja de haya|
    hojas de haya|hoja de roble seca|hoja seca|robins breast
  `,
  '#5a2b30': 'copper beech|copper beech leaves|haya roja|smoke bush|purple beech',
  '#c8a67a': 'beech wood|beechwood|beech|haya|madera de haya|ash wood|madera de fresno|birch plywood|triplay',
  '#c9953a':
    'larch|larch needles|larch in autumn|alerce|golden birch|aspen leaves|hoja de alamo|hojas de alamo|ginkgo leaf',
  '#8c8475': 'sycamore bark|plane bark|corteza de platano|weathered fence|valla vieja|ash bark',
  '#d8d5cc': 'silver birch|birch bark|abedul|corteza de abedul',
  '#4a2f22': 'wenge|rosewood dark|bog oak|dark oak|roble oscuro|nogal oscuro|old beam|viga vieja',
  '#a9773f': 'oak|roble|madera de roble|teak|teca|light walnut|barnizado|varnished pine',
  '#e2c48d': 'pine plank|pino|madera de pino|fresh sawdust|viruta|bamboo cane',
  '#6f7a45': 'bog myrtle|sage brush|hoja de encina|encina|holm oak|juniper|enebro',
  '#5d4635': 'ploughed field|plowed field|tierra arada|surco|turned earth|tierra removida|allotment soil',
  // cloths of a ward, crusts of a bakery
  '#8db6a2': unbroken`
    scrubs|surgical scrubs|hospital scrubs|scrubs green|hospital green|surgical green|theatre green|
    hospital curtain|hospital curtain green|hospital wall|verde hospital|verde quirofano|verde cirujano|
    bata de quirofano|bata de cirujano
  `,
  '#b5773d': unbroken`
    bread crust|crust of bread|loaf crust|baked crust|pie crust|corteza de pan|corteza de pan tostado|
    costra de pan|pan tostado|toasted bread|brioche|pan recien horneado|fresh bread
  `,
  '#d9ad58': 'cornbread|corn bread|pan de maiz|miga de pan de maiz|arepa',
  // papers and inks
  '#cfe3c8':
    'ledger|ledger paper|accounting paper|old accounting paper|graph paper|papel contable|libro contable|banknote pale',
  '#e9dcb8':
    'parchment|pergamino|old paper|papel viejo|old book pages|paginas viejas|manila envelope|sobre manila|old newspaper',
  '#c7d6e4': 'airmail paper|airmail|papel de carta azul|writing paper blue',
  '#1f2a5c': 'azul tinta|blue black ink|fountain pen ink|tinta de pluma|carbon paper|papel carbon',
  // smokes, oils and dust of workshops
  '#4c4c4a':
    'diesel smoke|exhaust smoke|exhaust|engine smoke|humo de diesel|humo de escape|humo negro|diesel',
  '#3a352f':
    'used engine oil|old engine oil|aceite quemado|grease|axle grease|grasa de eje|creosote|creosota',
  '#56603a': 'camo|camo green|camouflage|camuflaje|verde camuflaje|army tarp|lona militar|surplus jacket',
  '#b6b0a4': 'road dust|polvo de camino|fly ash|ceniza fina|cement dust|dry cement',
  // hides, feathers and shells
  '#d8d6cf': 'seal pup|seal pup fur|cria de foca|goose feather|pluma de ganso|swan down|plumon|duck down',
  '#c59a6a': 'vicuna|vicugna|camel hair|pelo de camello|alpaca brown|alpaca marron|llama wool|lana de llama',
  '#7a4e2d': 'pheasant|pheasant feather|faisan|pluma de faisan|hen feather|bay horse|caballo bayo oscuro',
  '#b9c2c8': 'herring|herring scales|sardine|sardina|escama|escamas|mackerel belly|anchovy|boqueron',
  // dishes and sweets
  '#6b3a1d':
    'sticky toffee|sticky toffee pudding|treacle tart|gingerbread|pan de jengibre|alfajor|black treacle sponge',
  '#2b1a18': 'black pudding|morcilla|blood sausage|squid ink|tinta de calamar',
  '#d9b581': 'tablet sweetie|scottish tablet|tablet|dulce de leche claro|cajeta clara',
  '#97994c': 'split pea soup|pea soup|sopa de chicharos|pure de guisantes|mushy peas dull',
  '#6b2e26': 'liver|higado|raw liver|kidney|rinon|kidney bean|frijol rojo',
  '#d8a868': 'pan de molde|corteza de pan de molde|sliced bread crust|loaf of bread|sandwich bread',
  '#ece6b0': 'elderflower|elderflower cordial|flor de sauco|white grape juice|mosto blanco',
  '#eab0a8': 'rose wine|vino rosado|vino rose|pink wine|clarete|blush wine',
  '#c9b06a': 'hay bale|bale of hay|fardo de heno|paca de heno|heno|straw bale|rastrojo|stubble field',
  '#6e5a48': 'hedgehog|erizo|otter|nutria|mole fur|piel de topo|badger brown|wild boar|jabali',
  '#1f5a6b': 'bluebottle fly|mosca azul|beetle wing|ala de escarabajo|mallard neck|cuello de pato',
  // sky and water by hour
  '#58626e': 'cielo de tormenta|stormy sky|storm sky|tormenta|sky before a storm|cielo de lluvia fuerte',
  '#1f2a44': '3am sky|sky at 3am|sky at midnight|cielo de medianoche|cielo a las 3|night shift sky',
  '#4f5762': 'thunder cloud|thundercloud|storm front|nube de trueno|nube de tormenta|squall',
  '#2fb5b8': 'ocean in florida|ocean in the keys|mar de cancun|mar de caribe|mar caribe|caribe',
  '#8fb6dd': 'azul purisima|purisima|manto de la virgen|azul de la virgen',
  '#b967ff': 'vaporwave|vaporwave purple|synthwave|neon sign purple',
  '#cf3a24': 'rowan berries|rowan berry|serbal|bayas de serbal|rose hip|rosehip|escaramujo',
  '#9c6a2e': 'tigers eye|tiger eye|ojo de tigre|smoky topaz|topacio ahumado',
  '#a5611c': 'heather honey|miel de brezo|buckwheat honey|miel de castano|dark honey|miel oscura',
};
