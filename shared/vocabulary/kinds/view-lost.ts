import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const viewLost = {
  name: 'view-lost',
  group: 'limit',
  title: 'View lost',
  plural: 'views lost',
  takes: ['to'],
  words: spoken`
    view lost; lost view; lost visibility; loss of vision; view obscured; view obstructed; loss of view;
    lost the view; lost the picture; lost picture; lost the image; no picture; no view; no visibility;
    zero visibility; zero picture; dirty lens; foggy lens; fogged lens; lens fog; whiteout;
  `,
  signs: spoken`
    nose|face|head down|buried in|into the? muck|mud|sludge|water|grease|silt; not|ain't|aren't seeing much|a_lot|anything but|except brown|black|water|mud|murk;
    lose|loses|losing|lost the|my|all|our picture|view|image|vision|visibility|sight; lens|camera|head was|is|'s|goes|went|drops|gets? below|beneath|under the surface|water|waterline; lens|camera|screen|picture has gone|turned white|black|brown|grey|gray|milky|dark;
    it|everything|she|screen|all fogs|fogged|fogging|steams|steamed|steaming|mists|misted|clouds up|over|out;
    picture|image|screen|view|video|display|monitor 's|is|has|has_just|'s_just|'s_all|goes|went|gets|got|turned|turns|keeps gone|going|turned|went|turning? black|brown|white|dark|foggy|blank|milky|muddy|cloudy|murky|grey|gray|misty|fouled|lost|blurred|blurry|obscured|obstructed|gone;
    lens|glass 's|is|has|has_just|'s_just|'s_all|goes|went|gets|got|turned|turns gone|going|turned|went? black|brown|white|foggy|milky|muddy|cloudy|murky|fouled|blurred|blurry|obscured|obstructed|fogged|greasy|slimed|steamed;
    picture|image|screen|view|video|display|monitor|lens|glass|camera 's|is|are|has|keeps|starts|starting_to? misting|misted|mist|fogging|fogged|fog|fogs|mists|steaming|steamed|clouding|clouded|clouds up|over|out;
    picture|image|screen|view|video|display|monitor|visibility lost|obscured|obstructed|gone; visibility 's|is|down_to|drops_to|goes_to? zero|nil|nothing|gone|lost|none;
    i|we|i_'m|we_'re|i_am|we_are|pushing|run|running blind; blind at|for|from|through|here;
    see|seeing|saw nothing from|between #; nothing can be seen; nothing to be seen; take|takes|took|steal|steals|swallows|hide|hides|block|blocks|spoils|kills the|my|our view|picture|image; view|picture|image goes|gone|'s_gone|is_gone at|from|between #;
    water|mud|suds|foam|soap|grease|paper|sludge|muck covers|covered|covering|all_over the? camera|lens|head;
    all|it_'s_all mud|grease|paper|suds|soap|foam|water|muck|sludge|fog|steam on|over the? lens|lends|camera|head; just|pure|nothing_but murk|soup|muck|brown_water|fog|steam;
    camera|lens|head dip|dips|dipped|duck|goes|go|went|drops|'s_gone under|underwater|under_water|below_the_water|below_water;
    i|we|i_'ve|we_'ve|i_have|we_have|i_'m|we_'re lost|losing the|my|our? picture|view|image|visual|visibility; got|have|i_'ve|we_'ve|there_'s no|zero picture|view|visual|visibility|image;
    can't|cannot|couldn't see it all? mud|steam|suds|fog|murk|foam;
    can't|cannot|couldn't|can_not|can't_even see a_thing|anything|nothing|much|past_this|through_it|squat|beans|jack|diddly|past_it|zip|my_way;
    can't really see|see_anything; can't make out|anything;
    lens|glass|screen|picture|camera|head 's|is|all|has|got? full_of|plastered|packed|smothered|blocked|caked|coated with? muck|mud|grease|dirt|water|paper|gunk|crud|soap|slime|sludge|goo; grease|mud|muck|gunk|paper|dirt|water|slime|soap|crud|film all_over|on|over|across the|my glass|lens|screen|camera;
    ^ i? can't|cannot|couldn't see $; lens|glass dirty|fogged|covered|caked|smeared|submerged|coated;
    lens|camera is|'s|all fogged|dirty|covered|under|underwater|submerged|smeared|coated|caked|muddy|greasy;
    lens * fogged|covered|smeared|coated|caked|submerged; fogged up; fogging up; fogged over; fogged out;
    steam on the lens; steamed up; steam ,; steamy; all fog;
    picture 's|is|goes|went gone|black|brown|white|dark|out|milky; picture goes; screen goes; screen went;
    lens under; lens goes|went|dips|is under; under water; underwater; i 'm|we_'re under; i am under; by feel;
    going blind; flying blind; driving blind; blind from; blind through; blind here;
    nothing but brown|brown_water|water|black|mud|suds|foam|soap|bubbles; i see is brown|water|mud|suds|foam;
    all i see|can_see is; just brown; just black; just suds; lost sight; camera 's under; water over the lens;
    mud on the lens; grease on the lens; gunk on the lens; paper on the lens; suds on the lens;
    soap on the lens; lens is blind; picture 's|is all; no image; can't tell what i'm looking at; murky;
    too murky; too cloudy; too dirty to see; lost my picture; lost my view; lens is in the water;
    head's under; head 's under; head under; can not see nothing; can't see nothing;
    lens|camera|head|glass 's|is|got|gets|all|is_all|'s_all gunked|fogged|smeared|caked|dirty|muddy|slimed|filthy|coated|fouled|mucked|steamed|misted up|over|out?; can't|couldn't|cannot call|tell|say|make_out|read|log anything|what in|through|from|for|there|here that|this|there|it|#?;
    can't|couldn't|cannot see for|through|past|over the|all_the|all? suds|steam|mud|foam|soap|fog|muck|murk|water;
  `,
  notWords: spoken`
    drop|drip|bead|droplet|speck|bit|spot|smear|splash of water|mud|grease|dirt|soap on|across|over the|my lens|glass|camera;
    lens|camera|it is|'s|was|got? dirty|wet|muddy|foggy|smeared|covered|fogged , let|i|give|hang|hold|one|just; let me wipe|clean|clear|rinse the lens;
    you|you_'ll|you_'d|they|people lose|loses the|your picture|view|image|sight; lose sight of the;
    water is murky but; is murky but; 's murky but; water goes underwater; lens is white light; picture is gone quiet;
    view 's|is gone|blocked from; screen is|'s dark out|in|at; blind spot; blind bend|drive|corner; i|we|camera|head go|goes|went|dips|dip under the; murky but; blind as a; i|we dip|duck under the; view lost its;
    my glasses fogged; glasses fogged; can't see it; can't see that; can't see the; can't see there; windshield;
    fogged up my glasses; steam train; full steam; steam room; foggy morning; foggy out; window fogged;
    underwater on the; can't see why; camera is in; camera 's in; camera is on; camera 's on; all good;
    camera is back; camera 's back; camera is out; my window; lens is clean; lens is clear; clean lens;
    clean the lens; wiped the lens; half under; pipe under; glass of; glass pipe; window unit; camera just;
    camera got a; lens just; camera all; camera went in; camera goes in; camera goes up; camera goes down;
    camera goes out; glass all; camera gets; camera dirty; window is; window all; glass just; glass is; glasses;
    window just;
    lens|camera 's|is half|halfway|half_way|partly|a_third|a_quarter|mostly covered|under|submerged|in;
  `,
  examples: {
    says: [
      { text: 'Thirty. I cannot see a thing. Thirty three and I have my picture back.', gives: { at: 30, to: 33 } },
      { text: "I can't see for suds at fifteen.", gives: { at: 15 } },
      { text: 'Thirty feet, lens is full of muck.', gives: { at: 30 } },
      { text: 'I see nothing from thirty two to thirty four.', gives: { at: 32, to: 34 } },
      { text: 'Suds take the view at thirty one and it is regained at thirty three.', gives: { at: 31, to: 33 } },
      { text: 'We lose the picture at twenty eight.', gives: { at: 28 } },
      { text: 'It fogs up on me at forty.', gives: { at: 40 } },
      { text: 'The lens has gone white at 19 feet.', gives: { at: 19 } },
      { text: "I'm blind at 33.", gives: { at: 33 } },
      { text: 'At 26 the water covers the camera.', gives: { at: 26 } },
      { text: "Can't see a thing at thirty five feet.", gives: { at: 35 } },
      { text: 'Lost the picture at 47.', gives: { at: 47 } },
      { text: "Camera's fogged up at fifteen.", gives: { at: 15 } },
      { text: 'Nothing but suds from thirty to thirty four.', gives: { at: 30, to: 34 } },
    ],
    never: [
      'There is a drop of water on the lens.',
      'I see nothing wrong from here to the street.',
      'The water is murky but the wall shows fine.',
      "I can't see the street from here.",
      'My glasses fogged up.',
      'If the lens gets dirty you lose the picture, so wipe it first.',
      "I've lost my keys.",
    ],
  },
  report: {
    meaning: 'The camera could not see here, so nothing can be said about this part.',
    next: 'Have this part looked at again after cleaning or with less water in the line.',
    glossary: 'View lost: a part where the camera could not see, for water, steam or dirt on the lens.',
  },
} as const satisfies Kind;
