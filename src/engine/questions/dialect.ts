/**
 * Small words as they are written in Scotland, northern England and Cornwall, in Jamaica and Nigeria, in South Africa and the
 * Philippines: none is a slip for a colour or an oil.
 */
export const DIALECT: ReadonlySet<string> = new Set(
  `wid wi dat di dem dis fi fe mek nuh inna pon deh weh yuh yuhself likkle ting mi im a o ah wah waan fah gwaan nah dey abeg oga una wetin dey abi sha sef
  fur tae frae aboot oot noo naw aye wee ken dinnae cannae didnae isnae wisnae havenae yer ya ye mah ma aw
  ane yin hauf hunner gonnae nae owt nowt summat thi thee tha mither nobbut
  ee un zur yon ansum boet bru ja nee lekker oke braai kindly tapos ko ba lang yung ng sa na kasi ate kuya tita salamat kumusta pala ho opo
  pa pal mae parce causita causa pe pues ñaño caserito caserita mijo mija vale quillo nomas nomás graciñas e carallo`.split(
    /\s+/u,
  ),
);
