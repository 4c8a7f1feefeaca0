import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const scale = {
  name: 'scale',
  group: 'defect',
  title: 'Scale',
  plural: 'scale',
  takes: ['to', 'position', 'clock', 'degree', 'percent'],
  words: spoken`
    scale; scaling; scaled; scaly; scale buildup; tuberculation; tuberculated; tubercles; mineral buildup;
    mineral deposits; mineral deposit; rust scale; rust buildup; crusty; crust; encrustation; encrusted; crusted;
    calcification; calcium; calcified; lime scale; limescale; barnacles; rust flakes; flaking; flaky; lime;
    rough and scaly; mineral; hard deposits; deposits; crud; build up; buildup; nodules; rusty crust; scaley;
    rust blister|knob|bump|nodule|tubercle|growth|deposit|barnacle|lump|crust;
    rust blisters|knobs|bumps|nodules|tubercles|growths|deposits|barnacles|lumps; rust build up; rust flake;
    rusted up; rusting up; rusty scale; rust and scale; furred; furred up; furring; fur;
    corrosion scale|buildup|deposits|nodules; iron scale; hard scale; scale deposit; scale and rust; oxidation;
    oxidized; incrustation; incrusted; encrustations; lime deposit; lime deposits; lime buildup; calcite;
    calcite deposits; stalactite; hard water deposit|scale|buildup; hard water deposits; uric scale; urine scale;
    urine salts; slag; pipe scale; scaled over; crusted up; crusted over; crusty walls; mineral scale;
    mineral crust; tuberculations; calcium deposit|buildup; calcium deposits; knobs of rust; lumps of rust;
    barnacled; surface rust; rust all|everywhere;
    heavy|light|hard|flaky|moderate|thick|bad|loose|some|lots_of|a_lot_of|layers_of|covered_in|covered_with|full_of rust;
    nearly|almost|half|practically|about|close_to|darn_near|damn_near|just_about|near rusted|scaled|furred|crusted shut|closed|over|up|solid; choked|closed|narrowed|necked|plugged|stopped|blocked|filled|packed|shut|caked|covered|coated up|down|off|in|over|to_half|down_to_half|solid? with|by|in rust|scale|iron_scale|crud|rust_scale|corrosion_buildup|minerals; scabby; scabs of rust; rust scabs; knobbly; knobby; rust growth|growths|coating|crust; coat|coating|layer|crust|skin|shell|flakes|chunks|sheets of rust|scale|lime|calcium; rust has taken; built up rust; corrosion product|products; scale and corrosion; flakes of rust;
  `,
  signs: spoken`
    rust|scale|crud 's|is|has|been|just|all? built|building|caked|grown|growing|closing|thickened|crusted up|in|on|it|over; rust|scale built|caked|closing up|in|on; walls|wall|inside|bore|iron|sides 's|is|are|getting? rough|bumpy|lumpy|knobbly with|from rust|scale|buildup; rust 's|is|has taken|taking|eaten_up|closed|cut|choked|left; rust on the walls|wall|sides|inside|top|bottom|roof;
  `,
  weakWords: spoken`
    rusted; rusting; rusty; rust;
  `,
  notWords: spoken`
    scale of one; scale of 1; on a scale; bathroom scale; to|will|would|usually|always|tends|tend|can|could scale up; scale up over|with|after|when|badly|pretty|like; to scale; full scale; rust belt; rust color;
    rust colored; rusted; rust stain; rust stains; rust never; scale the; large scale; fish scale; upper crust;
    pie crust; lime green; build up on the lens; economies of scale; pay scale; mineral water; scale model;
    tip the scale; scale back; grease buildup; buildup of grease; buildup of paper; time to scale; crud on my;
    key lime; pizza crust; buildup on the lens; calcium in; a lime;
    truck|car|van|railing|gate|lid|cap|cover|plug|tool|tools|fence|meter|heater|furnace|nail|screw|bolt|bolts|wrench|hinge|bucket|reel * rust|rusty|rusted;
    rusty lid|cap|cover|plug|tool|tools|nail|screw|bolt|truck|car|old_truck|gate|railing;
    rust on a|an|my|his|her; rust on a|an|his|her|my old? truck|car|cap|lid|plug; rust proof; rust bucket;
    rusted shut|closed|tight|over|solid|on|in_place; rusted through|out|away|thin; rusting out|through|away;
    i 'm rusty; a little rusty at; skills are rusty; remove the scale; descale; kitchen scale; mineral spirits;
    salts of; scaling a|the|these|this|back|down|up; scale it|them|this; deposits on the house; security deposit;
    deposit on; down payment; builds up rust; builds rust;
    full of rust stains; covered in rust from; rust on the lid|cap|plug|cover|tools|truck|camera|reel|grate|hinge;
  `,
  misheard: [
    { heard: 'kale|skill|skale|scales|scab|scail|skell|skull', said: 'scale', needs: 'distance' },
    { heard: 'sale|scare', said: 'scale', needs: 'article' },
  ],
  examples: {
    says: [
      { text: 'Scale on the walls, from nine to, let me keep going, to fifteen.', gives: { at: 9, to: 15 } },
      { text: "Around four there's a light scale.", gives: { at: 4, degree: 'light' } },
      { text: 'Rust is built up on the walls at thirteen.', gives: { at: 13 } },
      { text: 'The iron is nearly rusted shut at eight.', gives: { at: 8 } },
      {
        text: 'A tee at nine. Light scale from about that tee on to twenty one.',
        gives: [
          { kind: 'tee', at: 9 },
          { at: 9, to: 21, degree: 'light' },
        ],
      },
      { text: "Scale at ten feet. It's nothing too bad.", gives: { at: 10, degree: 'light' } },
      { text: "It's all rusted up from twelve to twenty.", gives: { at: 12, to: 20 } },
      { text: 'Walls are rusty at fourteen feet.', gives: { at: 14 } },
      { text: 'Rust knobs on both sides at ten.', gives: { at: 10, position: 'side' } },
      { text: 'Heavy scale from ten to twenty two feet.', gives: { at: 10, to: 22, degree: 'heavy' } },
      {
        text: 'Scaling on the bottom at 31, maybe twenty percent.',
        gives: { at: 31, position: 'bottom', percent: 20 },
      },
      { text: 'Rust buildup at fifteen.', gives: { at: 15 } },
      { text: "There's tuberculation all the way around at 8.5.", gives: { at: 8.5, position: 'all-around' } },
    ],
    unsure: [
      { text: "There's kale on the bottom at 27 feet.", gives: { at: 27, position: 'bottom' }, flag: 'word-unsure' },
      { text: 'Possibly scale at 19.', gives: { at: 19, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
      'The lid was nearly rusted shut, but it came.',
      'His truck has rust on it.',
      'The cleanout cap is rusty.',
      'Older iron builds up rust.',
      "On a scale of one to ten it's a six.",
      'Cast iron always scales up in time.',
      'No scale at all.',
      "The bathroom scale says I'm up five pounds.",
    ],
  },
  report: {
    meaning: 'Rust has built up on the wall of the pipe, which narrows it and gives paper something to catch on.',
    next: 'Have the line descaled if it runs slowly.',
    glossary: 'Scale: hard rust that builds up on the inside of iron pipe.',
  },
} as const satisfies Kind;
