import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const foreignObject = {
  name: 'foreign-object',
  group: 'defect',
  title: 'Foreign object',
  plural: 'foreign objects',
  takes: ['position', 'clock', 'inches'],
  weakNeeds: 'pointing',
  words: spoken`
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
  `,
  weakWords: spoken`
    ball; bottle; bag; knife; brush; bone; magnet; rope; plastic lid; jar; cloth; trowel; sponge; bracelet;
    button; flashlight; sock; doll; shoe; towel; cup; stake; wire; stick; ring; brick; glove; rag; comb; pen;
    key; chain; hammer; wrench; car; coupon; plastic plug; round plug; plug lying|laying|sitting|left; hose; candle;
    something|object|thing * lying|laying|sitting|wedged|lodged|stuck;
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
  `,
  misheard: [{ heard: 'two_before|2_before|two_by_for', said: 'two by four', needs: 'nothing' }],
  examples: {
    says: [
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
      { text: "There's a two before at thirty feet.", gives: { at: 30 }, flag: 'word-unsure' },
      { text: 'Could be a bottle at 19.', gives: { at: 19, status: 'suspected' }, flag: 'suspected' },
    ],
    never: [
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
