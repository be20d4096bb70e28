import type { Origin } from '../origin.ts';
import { spaced } from '../over-lines.ts';

/** What gives plants and foods their colour, by chemistry; each fares in lye in its own way. */
export const PLANT_CLASSES = [
  'anthocyanins',
  'betalains',
  'chlorophyll',
  'carotenoids',
  'curcumin',
  'tannins',
  'flavonoids',
  'quinones',
  'dyewood',
  'indigo',
  'phycocyanin',
  'phycoerythrin',
  'browned-sugar',
  'roasted-meal',
] as const;
export type PlantClass = (typeof PLANT_CLASSES)[number];

const published = (source: string): Origin => ({ trust: 'published', source });
const fromMemory = (source: string): Origin => ({ trust: 'from memory', source });

/** Where it stands what alkali does to each; raw batter is at pH 13 to 14, a cured bar at 9 to 10.5. */
export const PLANT_CLASS_ORIGINS: Readonly<Record<PlantClass, Origin>> = {
  anthocyanins: published('Eiro & Heinonen, J. Agric. Food Chem. 50 (2002) 7461: unstable by pH, light, air'),
  betalains: published('Azeredo, Int. J. Food Sci. Technol. 44 (2009) 2365: stable at pH 3 to 7 only'),
  // Saponification takes the phytol off; chlorophyllide is green and goes into the water.
  chlorophyll: published(
    'Rodriguez-Amaya, Food Carotenoids (2016), 3.3.3.5, on what alkali does to chlorophyll',
  ),
  carotenoids: published('Kimura et al., J. Food Compos. Anal. 3 (1990) 187: carotenes keep in cold alkali'),
  curcumin: fromMemory('Tønnesen & Karlsen, Z. Lebensm. Unters. Forsch. 180 (1985) 402'),
  tannins: published('Friedman & Jürgens, J. Agric. Food Chem. 48 (2000) 2101: phenolic acids up to pH 11'),
  flavonoids: fromMemory('Cardon, Natural Dyes (2007), on yellow dyes'),
  quinones: fromMemory('Cardon, Natural Dyes (2007), on quinones'),
  dyewood: fromMemory('Cardon, Natural Dyes (2007), on logwood and redwoods'),
  indigo: fromMemory('Cardon, Natural Dyes (2007), on indigo: its vats are alkaline'),
  phycocyanin: fromMemory('Chaiklahan et al., Process Biochem. 47 (2012) 659'),
  phycoerythrin: fromMemory('Munier et al., Food Chem. 150 (2014) 400: stable at pH 4 to 10'),
  'browned-sugar': fromMemory('food chemistry of caramel and of roasted browns'),
  'roasted-meal': { trust: 'common practice', source: 'makers who colour with toasted flours' },
};

/**
 * Plants and foods by what colours them, lower case without accents: the first name is the one that is kept, those behind `=` are
 * other names for it in both languages. By botany, from memory.
 */
const PLANTS: Readonly<Record<PlantClass, string>> = {
  anthocyanins: spaced`
    poppy petals=poppy=poppies=amapola=amapolas=petalos de amapola; hollyhock=hollyhocks=malvarrosa; mallow
    flower=flor de malva; black rice=arroz negro; black beans=frijol negro=frijoles negros; red
    cabbage=purple cabbage=lombarda=col lombarda=col morada=repollo morado=repollo colorado;
    blackberry=blackberries=zarzamora=zarzamoras=moras=mora=mora de castilla=jugo de mora=zumo de mora;
    blueberry=blueberries=arandano=arandanos; raspberry=raspberries=frambuesa=frambuesas;
    strawberry=strawberries=fresa=fresas=frutilla=frutillas; cranberry=cranberries;
    elderberry=elderberries=sauco; bilberry=bilberries; blackcurrant=blackcurrants=grosella=grosellas;
    cherry=cherries=cereza=cerezas; pomegranate juice=jugo de granada=zumo de
    granada=pomegranate=pomegranates=granada=granadas; grape=grapes=grape juice=uva=uvas=mosto; red
    wine=vino tinto; purple corn=maiz morado=chicha morada=blue corn=maiz azul; purple sweet
    potato=ube=camote morado=boniato morado=batata morada; purple carrot=black carrot=zanahoria morada;
    hibiscus=jamaica=flor de jamaica=roselle=zobo=bissap=sorrel petals=dried sorrel=sorrel
    flower=karkade=rosa de jamaica; butterfly pea=blue pea=blue pea flower=butterfly pea flower=guisante
    mariposa=flor azul=chicharo mariposa=flor de chicharo mariposa; cornflower=cornflowers=aciano; mallow
    flower=flor de malva; pansy=pansies=pensamientos; acai; maqui; mulberry=mulberries=morera; black
    rice=arroz negro; red onion=cebolla morada; rose petals=red rose=petalos de rosa=rosas rojas; muicle;
    radish skin; jambolan; aronia; sloe=sloes=endrina=endrinas
  `,
  betalains: spaced`
    beetroot=beet=beets=remolacha=betabel=betarraga=beterraba; dragon fruit=pitaya=pitahaya; prickly
    pear=tuna roja=cactus fruit=tunas rojas=higo chumbo; swiss chard stalk; pokeberry=pokeberries;
    bougainvillea=buganvilla=bugambilia; airampo; cockscomb flower=celosia
  `,
  chlorophyll: spaced`
    spinach=espinaca=espinacas=hojas de espinaca=hojitas de espinaca; parsley=perejil;
    nettle=nettles=ortiga=ortigas; kale=col rizada; moringa=malunggay; alfalfa=lucerne; wheatgrass=barley
    grass=pasto de trigo; matcha=te matcha; green tea=te verde; chlorella=clorela=chlorela;
    chlorophyll=clorofila; mint leaf=mint leaves=hierbabuena=yerbabuena; basil=albahaca; cilantro=coriander
    leaf; seaweed=kelp=nori=alga=algas=kombu=wakame=bladderwrack=rockweed=fucus=laminaria=cochayuyo=sargassum=sargazo=spirogyra;
    sea lettuce=lechuga de mar=ulva=luche verde; dill=eneldo; rosemary leaf; sage leaf; avocado
    flesh=aguacate=palta; cucumber=pepino; grass clippings=pasto=cesped; comfrey leaf; olive leaf=hoja de
    olivo; yerba mate; cactus pad=nopal=nopales; broccoli=brocoli; celery=apio; lettuce=lechuga;
    peas=arvejas=guisantes
  `,
  carotenoids: spaced`
    carrot=carrots=zanahoria=zanahorias; pumpkin=squash=calabaza=zapallo=ahuyama=auyama; sweet
    potato=batata=camote=boniato; tomato=tomato paste=tomate=pasta de tomate=salsa de tomate;
    saffron=azafran=kesar; marigold=marigolds=french marigold=french
    marigolds=calendula=cempasuchil=cempoalxochitl=flor de muerto=tagetes; annatto=achiote=urucum=onoto;
    paprika=pimenton=pimiento rojo; red palm oil; sea buckthorn=espino amarillo; mango; papaya=lechosa;
    persimmon=caqui; egg yolk=yolk=egg yolks=yema=yemas=yema de huevo; corn=maiz amarillo; lutein=luteina;
    lycopene=licopeno; astaxanthin=astaxantina; goji; cape gooseberry=uchuva=uvilla=aguaymanto; bee
    pollen=polen=polen molido=polen de abeja; sunflower petals=petalos de girasol; dandelion
    flower=dandelion=dandelions=dandelion heads=dandelion petals=diente de leon; passion
    fruit=maracuya=parcha; rosehip=escaramujo=rosa mosqueta; guajillo; tesu; nance
  `,
  curcumin: 'turmeric=curcuma=haldi=kurkuma=curcumin=curcumina; curry powder=curry',
  tannins: spaced`
    black tea=tea=te negro=rooibos=chai=tea bags; walnut husk=walnut husks=walnut hulls=walnut
    hull=walnut=nogalina=nogal=cascara de nuez; pomegranate rind=pomegranate peel=cascara de granada; oak
    bark=corteza de roble=acorn=acorns=bellotas; sumac=zumaque; avocado pit=avocado pits=avocado
    stone=hueso de aguacate=pepa de palta=semilla de aguacate; cutch=catechu; tara; banana
    peel=platano=banana=banano=cambur; apple=manzana=apples; pear=pera; oak gall; eucalyptus leaf=hoja de
    eucalipto; hazelnut skin; chestnut=castana; grape seed; cinchona; guava=guayaba; lulo=naranjilla;
    lavender buds=lavender flowers=dried lavender=lavanda seca=lavanda en flor=flor de lavanda=flores de
    lavanda; propolis=propoleo=propoleos; borojo; tamarind=tamarindo; quince=membrillo; henna=mehndi
  `,
  flavonoids: spaced`
    onion skin=onion skins=cascara de cebolla=piel de cebolla; weld=gualda; chamomile=manzanilla;
    safflower=cartamo; goldenrod=vara de oro; dyers broom=retama; mimosa flower; osage orange; buckthorn
    berry; gorse=tojo; chillca=chilca; tansy=tanaceto; ginger=jengibre; lemon peel=cascara de limon; orange
    peel=cascara de naranja
  `,
  quinones: spaced`
    alkanet=alkanna=alcanna=orcaneta=ratanjot=gromwell; madder=rubia=rubia tinctorum=manjistha=majith;
    cochineal=cochinilla=grana cochinilla=grana=carmine=carmin; lac dye; rhubarb root=rhubarb=ruibarbo; st
    johns wort=hiperico; sappan=sappanwood; ratania; walnut green juice; aloe ferox; dock root
  `,
  dyewood: spaced`
    logwood=palo de campeche=campeche; brazilwood=palo de brasil=palo brasil; red sandalwood=sandalo
    rojo=sandalwood=sandalo; fustic=palo amarillo; cudbear=orchil=lichen=liquen
  `,
  indigo:
    'woad leaf=woad leaves=hojas de anil=indigo leaf=indigo leaves=pastel de los tintoreros=woad=fresh indigo',
  phycocyanin: 'blue spirulina=espirulina azul=phycocyanin=ficocianina',
  phycoerythrin:
    'dulse=dillisk=dulse flakes=dulse seaweed=palmaria=red seaweed=alga roja=algas rojas=laver=luche=irish moss',
  'browned-sugar': spaced`
    coffee=espresso=cafe=coffee grounds=borra de cafe=cold brew; cocoa=cacao=chocolate;
    stout=beer=cerveza=porter=ale; molasses=melaza=treacle; panela=piloncillo=brown sugar=azucar
    morena=rapadura; honey=miel; caramel=caramelo; malt=malta; chicory=achicoria; maple syrup; soy sauce;
    cola; dates=datiles; carob=algarroba; dulce de leche
  `,
  'roasted-meal': spaced`
    toasted corn flour=gofio=gofio de millo=gofio de trigo=harina tostada=harina de maiz
    tostado=pinole=machica; oatmeal=oat flour=avena=harina de avena; toasted barley=cebada tostada
  `,
};

const BY_NAME: ReadonlyMap<string, { readonly plant: string; readonly of: PlantClass }> = new Map(
  PLANT_CLASSES.flatMap(of =>
    PLANTS[of].split('; ').flatMap(entry => {
      const names = entry.split('=');
      return names.map(name => [name, { plant: names[0]!, of }] as const);
    }),
  ),
);

/** Words of the longest name. */
export const LONGEST_PLANT = 4;

/**
 * The plant or food of a name, in either language, and what colours it; undefined where it is on no list of ours. `name`: lower
 * case without accents, one space between words.
 * @example plantNamed('col lombarda') // { plant: 'red cabbage', of: 'anthocyanins' }
 */
export const plantNamed = (name: string): { readonly plant: string; readonly of: PlantClass } | undefined =>
  BY_NAME.get(name);
