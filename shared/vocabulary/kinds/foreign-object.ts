import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const foreignObject = {
  name: 'foreign-object',
  group: 'defect',
  title: 'Foreign object',
  plural: 'foreign objects',
  takes: ['position', 'clock'],
  weakNeeds: 'pointing',
  words: spoken`
    old? lid laid|laying|lying|sitting; toy figure;
    feed|burlap|sand|plastic|paper|grocery|trash|garbage|bin sack; sack of; wedge of wood|timber; wooden|timber|wood|metal|steel|plastic wedge|peg|dowel|batten|spike|block|handle; broom handle;
    teaspoon; tablespoon; mop string; string of mop; mop strands; lego; crayon; barbie; dinosaur; earring; ring box; pacifier; bib; washrag; scrubber; scouring pad; steel wool; brillo; bar of soap; soap bar; shampoo bottle; toilet bowl cleaner; toilet seat; wax ring; paint roller; roller cover; paint brush; caulk tube; caulking tube; utility knife; box cutter; drill; socket wrench; allen wrench; screw driver; hacksaw blade; saw blade; cable clamp; zip tie; zip ties; dog collar; cat toy; sunglasses; glasses case; remote control; playing card; poker chip; bottle of; spray can; aerosol can; coffee cup; mug; teacup; chopstick; chopsticks; corn cob; avocado pit; peach pit; chicken bone; rib bone;
    foreign object; bowling pin; wood stake; toy soldier; child's sock; baby sock; toy; lumber; two by four;
    2 by 4; two by two; two by six; 2 x 4; washcloth;
    soup spoon; spoon; fork; toothbrush; tennis ball; golf ball; rubber ball; rubber duck; rubber ducky; diaper;
    action figure; screwdriver; tape measure; bottle cap; beer can; soda can; plastic bottle; beer bottle;
    pill bottle; toy car; plastic horse; toy horse; hairbrush; t shirt; dish rag; dishcloth; mop head;
    snake head; cutter head; auger head; drill bit; chisel; pliers; putty knife; pencil; marble; cell phone;
    dog toy; chew toy; stuffed animal; plastic bag; grocery bag; toilet brush; air freshener; deodorant; razor;
    kids toy; shop towel; dish towel; sandal; work glove; quarter coin; necklace; broken auger; broken cable;
    piece of cable; length of chain; fish hook; tent stake; tin can; jar lid; bottle top; tennis shoe; hose clamp lying;
    piece|chunk|strip|sheet|scrap|length|lump|block|hunk of plastic|metal|wood|lumber|glass|brick|hose|rope|wire|cable|chain|conduit|fabric|cloth|carpet|rubber|foam|styrofoam|tubing;
    broken|busted|snapped|lost piece|length|bit|end|part * snake|auger|rod|cable|cutter; broken snake; snake cable;
    ping pong ball; baseball; softball; plastic fork; plastic spoon; hair tie; hair clip; scrub brush; light bulb;
    plastic cup; paint stick; paint stirrer; pipe wrench lying; wooden block; board; plank; soda bottle;
    water bottle; dog bone; tile spacer; hole saw plug; birthday candle; eyeglasses; dentures;
    snake|auger|cable|rod|cutter_head|drain_snake|drain_auger|jetter_nozzle|drill_bit|tip broken|snapped|busted|broke|left off|in;
  `,
  weakWords: spoken`
    ball; bottle; bag; knife; brush; bone; magnet; rope; plastic lid; jar; cloth; trowel; sponge; bracelet;
    button; flashlight; sock; doll; shoe; towel; cup; stake; wire; stick; ring; brick; glove; rag; comb; pen;
    key; chain; hammer; wrench; car; coupon; plastic plug; round plug; plug lying|laying|sitting|left; hose; candle;
    something|object|thing * lying|laying|sitting|wedged|lodged|stuck;
    tv remote; remote; a phone; cellphone; iphone; smartphone; wallet; pair of glasses|sunglasses|pliers|scissors|socks|panties|underwear; reading glasses; spectacles; dead|live|drowned rat|mouse|frog|toad|snake|squirrel|bird|possum|opossum|crab|crayfish|lizard|turtle|hamster|goldfish|vole|mole; bird|bird_'s|birds|wasp|rat|mouse|squirrel|hornet 's? nest; nozzle; jetter|jet|jetting nozzle|head; socket; knife blade; scissors; tweezers; lipstick; makeup brush; mascara; eyeliner; nail clippers; clippers; tampon applicator; applicator; condom; dice; domino; puzzle piece; doll head; doll arm; figurine; army man; whistle; kazoo; yo yo; balloon; frisbee; hockey puck; puck; shuttlecock; baby bottle; bottle nipple; sippy cup; spatula; ladle; whisk; peeler; vegetable peeler; tongs; straw; straws; bottle opener; corkscrew; cork; wine cork; pot lid; test balloon; belt; hat; scarf; underwear; pantyhose; nylons; shirt; pillowcase; flannel; scourer; mop; broom head; plunger; scrub pad; loofah; soap dish; toothpaste tube; tube of toothpaste; toothpaste cap; floss pick; flosser; razor blade; bulb; fuse; spark plug; wire nut; switch plate; paint stick|can|brush|roller|stirrer|tray; sandpaper; drywall knife; roll of tape|paper; duct tape; pencil stub; sharpie; marker; chalk; coin; penny; dime; medal; cuff link; cufflink; badge; name tag; safety pin; bobby pin; hair pin; barrette; scrunchie; hair comb; stick of wood; wood block; two_by_four|2_by_4|four_by_four|4_by_4; piece of lumber|board|plywood|two_by_four; shim; wedge; dowel; peg; slat; survey stake; golf tee; tent peg; picket; length of pipe|conduit|rebar|hose|wire; chunk of pipe|iron|concrete_block; gate valve handle; washer|nut|bolt|screw|nail|rebar lying|laying|sitting|loose|just_lying|just_sitting; cleanout plug|cap|lid lying|laying|sitting|loose|stuck|in_the_bottom; loose|broken brick|tile|nipple|bolt|nut|rebar|rod;
  `,
  notWords: spoken`
    toy with; key to; the key is; key thing; in the ring; ring me; ring the; phone ring; ring a bell;
    rings a bell; fork in the road; fork over; hammer it; hammer tap; hammer home; sock away; the glove;
    my glove; my gloves; gloves on; rubber gloves; gloves; throw in the towel; keys to the; my keys; my key;
    car keys; shoe box; key ring; razor thin; brick ranch; brick house; brick bungalow; brick colonial;
    brick wall; brick foundation; brick front; brick rancher; brick duplex; brick veneer; old brick; chain link;
    chain store; chain fence; lighter than; bit lighter; a lighter; pen and paper; my pen; a pen; marble floor;
    marble top; marble counter; towel bar; paper towel; wash cloth; lost a shoe; other shoe; brick building;
    food chain; onion ring; rag on; rag doll; clean rag; let me find a rag; get a rag; grab a rag; my rag;
    the rag; a rag over; with a rag; wrench on; get|need|grab|with|use|bring|hand a|the wrench; the wrench; my wrench; pipe wrench; big wrench;
    two hammers; my hammer; the hammer; a hammer; tape measure on; with a tape; hand me the; my screwdriver;
    flat screwdriver; a screwdriver; hearing aid; key the; key part; brick by; brick steps; brick planter;
    brick walk; brick sewer|main|manhole|tunnel|culvert|lined; candle wax; wax; hold a candle; ring road; phone rings; wedding ring on; fork lift; key west; pry bar; the key; house key;
    ring the bell; nose ring; chain saw; chainsaw; all brick; brick row; brick two; red brick; bricks;
    brick porch; the brick; block wall; the lighter; a brick; ball and chain; bowling ball;
    size of|like a|an|my golf|tennis|rubber|ping_pong? ball|bottle|brick|shoe|pencil|pen|spoon|fork|key|ring|button|marble|cup;
    big|large|round|thick|small|long as a|an|my golf|tennis|rubber|ping_pong? ball|bottle|brick|shoe|pencil|pen|spoon|fork|key|ring|button|marble|cup; smooth as a|an ball|bottle|glass;
    stick|stuck your|my|a|it|the|that|his|her|out|to|with|around|up; my|your|his|her|their|the phone|cell|cellphone|iphone|wallet|glasses|watch|hat|belt|battery|batteries|flashlight|remote|tie|shirt|mop|bucket|marker|chalk; battery 's|is|dies|died|pack|low|change|level|life; phone number|call|rang|ringing|rings; on the phone; watch the|it|out|this|that|for|your|my|how|where|me|and; lens|cleanout|gas|manhole|tank lid|cap; lid|cap|nest is|'s|was|came|come|off|on|of|egg; pin the|it|point|down; figure; quarter inch|turn|of|bend|to|past|mile|panel; a quarter; three quarter|quarters; dime a|on; penny pinch|lane|street; nest street|lane|road; ring it; jet nozzle|head on|in the|my truck|van|reel; nozzle on|in the|my truck|van|reel; belt and; hat off|on; coin flip|toss; wedge it; straw that|hat|poll; quarters; cork street|road; can of; tie in|into|off|back|it|the|that|to; bucket list|of; scissors up; beer battery; mole hill; snake it|the|that|this|guy|man|machine|them|here|out|was|had|came|line; a snake down|through|on|and|in_here|last; bird bath|dog|feeder; cat five|litter; rat out|race; frog in; turtle wax; watch it; a ring of|around|to|at_the; rings|ring of|round; plug lying about; shim it; level with; socket weld; hub socket; in|into|out_of|from|the|of|its socket; socket of|is|joint|end; medal for;
  `,
  misheard: [{ heard: 'two_before|2_before|two_by_for', said: 'two by four', needs: 'nothing' }],
  examples: {
    says: [
      { text: "There's a drain snake broken off in here at twenty seven.", gives: { at: 27 } },
      { text: 'A teaspoon at sixteen.', gives: { at: 16 } },
      { text: "Eleven feet down there's a golf ball sitting in it.", gives: { at: 11 } },
      { text: 'Fifteen feet down, a toothbrush.', gives: { at: 15 } },
      { text: "There's a toy at twenty six feet.", gives: { at: 26 } },
      { text: 'Two by four in the line at 40.', gives: { at: 40 } },
      { text: 'Screwdriver lying on the bottom at fifteen feet.', gives: { at: 15, position: 'bottom' } },
      { text: "There's a rag at thirty three feet.", gives: { at: 33 } },
      { text: "There's a broken piece of a drain snake at 15.", gives: { at: 15 } },
      { text: 'A chunk of brick lying in the invert at 48.', gives: { at: 48, position: 'bottom' } },
      { text: "There's something lying in the bottom at 22.", gives: { at: 22, position: 'bottom' } },
    ],
    unsure: [
      { text: "There's a tv remote at twelve feet.", gives: { at: 12 }, flag: 'word-unsure' },
      { text: "There's a two before at thirty feet.", gives: { at: 30 }, flag: 'word-unsure' },
      { text: 'Could be a bottle at 19.', gives: { at: 19, status: 'suspected' }, flag: 'suspected' },
      { text: 'At thirteen there is a little army man.', gives: { at: 13 }, flag: 'word-unsure' },
    ],
    never: [
      "The gap's about the size of a comb.",
      "You couldn't get a pencil down some of the ones I see.",
      "The pipe's as clean as a whistle at twenty.",
      'I dropped my screwdriver in the grass.',
      'No foreign objects.',
      'The ball went over the fence.',
      'A hole about the size of a golf ball at thirty six.',
      'You can see the candle wax of it at nine feet.',
    ],
    notYet: [{ text: 'Kids put toys down there all the time.', gives: [] }],
  },
  report: {
    meaning: 'Something that does not belong there lies in the pipe and can catch paper and solids.',
    next: 'Have it taken out before it causes a blockage.',
    glossary: 'Foreign object: a thing lying loose in the pipe, such as a toy, a rag or a tool.',
  },
} as const satisfies Kind;
