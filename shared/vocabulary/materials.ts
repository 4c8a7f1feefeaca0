/** Pipe materials: the name in the draft, how the report prints it, how it is said, and how it is misheard. */

import type { Misheard } from './kind.ts';
import { spoken } from './spoken.ts';

export interface Material {
  readonly name: string;
  readonly title: string;
  readonly words: readonly string[];
  readonly misheard?: readonly Misheard[];
  /** Stretches that hold a word of this material and mean something else. */
  readonly notWords?: readonly string[];
  readonly glossary: string;
}

export const materials = [
  {
    name: 'abs',
    title: 'ABS',
    words: [
      'abs',
      'black plastic',
      'black pipe',
      'black abs',
      'abs plastic',
      'black plastic abs',
      'black plastic pipe',
      'acrylonitrile butadiene styrene',
    ],
    misheard: [{ heard: 'a bs|abyss|abbess|abbas|abs_s', said: 'ABS', needs: 'nothing' }],
    glossary: 'ABS: a rigid black plastic drain pipe.',
  },
  {
    name: 'pvc',
    title: 'PVC',
    words: spoken`
      pvc; sdr 35; sdr 26; sdr 21; sdr; white plastic; green plastic; plastic; schedule 40; schedule 80; schedule forty; schedule eighty; p.v.c; polyvinyl chloride;
    `,
    misheard: [
      { heard: 'pbc|pvt|pvz|pdc|tvc|bvc|p_b_c', said: 'PVC', needs: 'nothing' },
      { heard: 'str 35|thirty_five', said: 'SDR 35', needs: 'nothing' },
    ],
    notWords: spoken`
      plastic horse; plastic bag; plastic toy; plastic bottle; plastic shavings; plastic lid; plastic cap;
      plastic flamingo; plastic cup; plastic spoon; plastic fork; little plastic; plastic car; plastic chair;
      plastic wrap; plastic army; plastic dinosaur; plastic ring; plastic ties; plastic sheet; it is plastic so;
      it 's plastic so; pvc shavings; pvc cleanout; plastic wheel; plastic tarp; plastic soldier; plastic egg;
      plastic fitting;
    `,
    glossary: 'PVC: a rigid plastic drain pipe, white or green.',
  },
  {
    name: 'cast-iron',
    title: 'cast iron',
    words: [
      'cast iron',
      'cast',
      'iron',
      'soil pipe',
      'no hub iron',
      'c i',
      'cast pipe',
      'cast ironed',
      'gray iron',
      'grey iron',
      'extra heavy',
      'extra heavy iron',
      'extra heavy cast',
      'extra heavy cast iron',
      'hub iron',
      'soil iron',
    ],
    notWords: [
      'extra heavy roots|root|scale|grease|debris|rust|corrosion|buildup|flow|rain|duty|belly|sag|cracking|deposits|load|stuff|truck|on|in|there|here|today|right',
    ],
    misheard: [
      {
        heard:
          'cost|caste|cassed|casting|cast|cash|cats|cassette iron|aaron|tire|ion|iran|urn|earn|irons|eye_on|hiring|ironed|urine',
        said: 'cast iron',
        needs: 'nothing',
      },
      { heard: 'cost', said: 'cast', needs: 'material' },
    ],
    glossary: 'Cast iron: heavy grey pipe, common under older houses; it rusts and scales with age.',
  },
  {
    name: 'clay',
    title: 'clay',
    words: spoken`
      clay; terra cotta; terracotta; vcp; vitrified clay; vitrified; clay tile; stoneware; earthenware; vc; vit clay; clayware;
      crock; glazed crock; clay crock; crock pipe; salt glaze; salt glazed; saltglaze; salt glazed clay; salt glaze clay; glazed clay; glazed tile;
      tile; tile pipe; sewer tile; vitrified tile; glazed clay tile; terra cotta tile; terracotta tile; red clay;
    `,
    notWords: spoken`
      a|an|another|next|each|every|per|one|this|that|floor|roof|bathroom|shower|kitchen|wall|ceramic|subway|field|ceiling|loose|broken|new|drain|the|of|carpet tile;
      tile floor|floors|job|guy|man|work|grout|saw|setter|store|shop|shower|roof|wall|walls|cutter|mortar|is|in_the|on_the|was|under|itself|length|lengths|joint|joints|section|by_tile;
      end|edge|lip|hub|bell|piece|bit|chunk of the? tile; spigot|bell end of the? tile; crock pot; crock of; what a crock; a crock; the crock lid;
      red clay soil|dirt|mud|ground|country|bank|everywhere;
    `,
    misheard: [
      { heard: 'terror cotta|cota', said: 'terra cotta', needs: 'nothing' },
      {
        heard: 'tera|terra|terror|tara|terrace|taro cotta|coda|kata|cota|cottage',
        said: 'terra cotta',
        needs: 'nothing',
      },
      { heard: 'play|klay|clade|claim|clave', said: 'clay', needs: 'material' },
    ],
    glossary: 'Clay: fired pipe in short lengths with many joints, where roots get in.',
  },
  {
    name: 'concrete',
    title: 'concrete',
    words: ['concrete', 'cement pipe', 'conc', 'concrete crock', 'concrete tile', 'cement tile', 'cement crock'],
    glossary: 'Concrete: cement pipe, usually in short lengths.',
  },
  {
    name: 'asbestos-cement',
    title: 'asbestos cement',
    words: ['asbestos cement', 'transite', 'asbestos', 'acpipe', 'ac pipe', 'fibro', 'fibro cement', 'ac cement'],
    misheard: [
      { heard: 'tran|trans|train site|sight|side', said: 'transite', needs: 'nothing' },
      { heard: 'transit', said: 'transite', needs: 'nothing' },
    ],
    glossary: 'Asbestos cement: grey cement pipe that holds asbestos fibres; it must not be cut or broken by hand.',
  },
  {
    name: 'bituminous-fiber',
    title: 'bituminous fiber',
    words: spoken`
      orangeburg; bituminous fiber; bituminous; pitch fiber; pitch fibre; fiber pipe; fibre pipe; fiber conduit;
      tar paper pipe; fibre conduit; pitch fibre pipe; pitch fiber pipe; tarpaper pipe; bermico;
    `,
    misheard: [
      {
        heard: 'orange|oranges|orangey berg|burg|bird|bergs|birds|bug|burger|burgh',
        said: 'Orangeburg',
        needs: 'nothing',
      },
      { heard: 'orangeberg|orangeburgh|orangebird', said: 'Orangeburg', needs: 'nothing' },
    ],
    glossary:
      'Bituminous fiber: pressed wood fibre and tar, used from the 1940s to the 1970s; it softens and flattens with age.',
  },
  {
    name: 'ductile-iron',
    title: 'ductile iron',
    words: ['ductile iron', 'ductile', 'd i p', 'dip pipe'],
    glossary: 'Ductile iron: a tough iron pipe, used under roads and at crossings.',
  },
  {
    name: 'galvanized',
    title: 'galvanized steel',
    words: ['galvanized', 'galvanized steel', 'galvanised', 'galv', 'galvanize', 'galvanized iron', 'galvanised iron'],
    glossary: 'Galvanized steel: zinc-coated steel pipe, found in old drains above ground.',
  },
  {
    name: 'copper',
    title: 'copper',
    words: ['copper', 'copper dwv'],
    glossary: 'Copper: thin-walled metal drain pipe.',
  },
  {
    name: 'lead',
    title: 'lead',
    words: ['lead', 'lead pipe'],
    notWords: spoken`
      lead time; lead me; lead the way; lead to; leads to; lead and oakum; the lead and; lead joint;
      lead joints; lead packed; take the lead; in the lead; my lead; leaded;
    `,
    glossary: 'Lead: soft metal pipe in very old drains.',
  },
  {
    name: 'hdpe',
    title: 'HDPE',
    words: [
      'hdpe',
      'poly pipe',
      'black poly',
      'black poly pipe',
      'black polyethylene',
      'polyethylene',
      'high density polyethylene',
      'fused poly',
    ],
    glossary: 'HDPE: flexible black plastic pipe with fused joints, often from a pipe-bursting job.',
  },
  {
    name: 'liner',
    title: 'liner',
    words: [
      'liner',
      'lining',
      'lined',
      'cipp',
      'epoxy',
      'cured in place',
      'cured in place liner',
      'cured in place lining',
      'cured in place pipe',
      'epoxy liner',
      'epoxy lining',
    ],
    glossary: 'Liner: a resin sleeve cured inside the old pipe.',
  },
] as const satisfies readonly Material[];

export type MaterialName = (typeof materials)[number]['name'];

/** Words of one material by which others are also called, once it is known which pipe it is. */
export const looseNames: Readonly<Record<string, readonly MaterialName[]>> = {
  iron: ['ductile-iron', 'galvanized'],
  plastic: ['abs', 'hdpe'],
  'black plastic': ['hdpe'],
  'black pipe': ['hdpe', 'bituminous-fiber'],
  'black plastic pipe': ['hdpe'],
  concrete: ['asbestos-cement'],
  'cement pipe': ['asbestos-cement'],
};
export const materialNames = materials.map((m) => m.name) as [MaterialName, ...MaterialName[]];
