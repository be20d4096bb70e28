/** What `/calibrate` says of itself where it is declared. */
export const says = {
  purpose: 'Test bars: which to pour, and what they say of your jars',
  bars: {
    purpose: 'Learn from your test bars how strong your own jar is',
    item: 'The jar by its name on your shelf; not needed where each bar names its jars',
    bar: '“1/4 tsp per cup #6b5aa8”, “Sky 1 tsp + White 1/2 tsp per cup #8899bb”, “plain #efe6cf”',
    photo: 'Or a photo of one bar beside white paper, by daylight; give its dose too',
    dose: 'The dose of the bar in the photo: “1/4 tsp per cup”',
    base: 'The soap of the bars without colour: white, cream, yellow, green, or your oils',
    gel: 'Did the bars go through gel?',
    share: 'Let others here with a jar of the same name start from your bars',
    afresh: 'Forget the earlier bars of this lot',
  },
  plan: {
    purpose: 'The fewest test bars that tell what your jars do, with labels to print',
    jars: 'Jars of your shelf: “Dusk, Sky”. Those not calibrated yet unless you say',
    portion: 'Batter in each test bar: “1/2 cup”, “100 g”. Half a cup unless you say',
    within: 'Known well enough: give or take so much. 5 unless you say; 2 just shows',
    mixes: 'May two jars share a bar? Fewer bars, and one bad bar harms two jars',
    base: 'The soap without colour: white, cream, yellow, green, or your oils',
    gel: 'Will they go through gel?',
  },
};
