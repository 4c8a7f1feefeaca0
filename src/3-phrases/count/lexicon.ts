/** Numbers that are no place in the pipe: what may stand after or before them, and what they then count. */
import { spoken } from '../../../shared/vocabulary/spoken.ts';
export const afterCount: Readonly<Record<string, readonly string[]>> = {
  years: spoken`
    year old; years old; years; year; year warranty; months; month; weeks; week; days; day; decades; some years;
    odd years;
  `,
  clockTime: spoken`
    minutes; minute; hours; hour; seconds; am; pm; a.m; p.m; in the morning; in the afternoon; sharp;
    this morning; tonight;
  `,
  money: ['dollars', 'bucks', 'grand', 'thousand', 'hundred dollars', 'hundred bucks', 'cents', 'k'],
  people: spoken`
    people; guys; kids; boys; girls; families; buyers; of them; of us; of you; tenants; brothers; sons;
    daughters;
  `,
  pieces: spoken`
    joints; lengths; sections; sticks; pieces; photographs; photos; pictures; runs; spots; places; repairs;
    bedrooms; bedroom; baths; bath house; bathrooms; units; unit; stories; story; floors; gallons; gallon;
    miles; times; acres; blocks; houses; homes; things; trees; dogs; cats; chickens; caps; items; findings;
    defects; issues; problems; volts; amps; watts; pounds; ounces; quarts; steps; rungs; flushes; buckets;
    bands; cylinder; millimeters; millimetres; mil; mils; mph; psi; points; different; separate; of those;
    of these; total; yards; meters; metres; fittings; rooms; doors; cars; calls; jobs; percent chance; dog; way;
    man; person; guy; maybe one; plus; odd; family; plex; car; weeks ago; lots; bags; inspections;
    scopes; feeders; of em; of 'em;
  `,
  temperature: spoken`
    below; above zero; degrees out; degrees outside; degrees already; outside; on the thermometer; fahrenheit;
    celsius;
  `,
  length: spoken`
    feet long; foot long; feet in length; feet of it; feet of that; feet of pipe; feet of cable; feet of rod;
    feet of belly; feet of hose; foot lengths; foot length; foot sections; foot section; foot sticks;
    foot stick; foot pieces; foot joints; foot centers; foot ladder; foot ceiling; feet wide; foot wide;
    feet tall; feet high; foot drop; foot rod; foot reel; foot cable; feet square; feet apart; feet total;
    feet thick; square feet; foot stretch; foot piece; foot run; foot sag; foot belly; foot tape; foot patch;
    foot repair; foot splice; feet or so of; feet worth; feet across; foot hole; foot lot; foot sewer;
    foot trench; foot setback; feet per; foot spool;
  `,
  depth: spoken`
    feet deep; foot deep; feet down; foot down; feet of cover; foot of cover; feet of dirt; feet below;
    foot below; feet under; feet underground; feet depth; feet in the ground; feet to the curb;
    feet to the street; feet to go; more feet to; feet from the house; feet from the curb; feet off the house;
    feet deep there; feet above; feet of water;
  `,
};

export const beforeCount: Readonly<Record<string, readonly string[]>> = {
  year: spoken`
    built in; constructed in; year of construction; circa; dated; installed in; permit from; remodeled in;
    built;
  `,
  ordinal: spoken`
    joint; joints; run; lot; number; no; unit; apartment; apt; suite; house; type; class; sdr; schedule; sched;
    str; photo; picture; item; job; day; step; page; exit; route; highway; building; line; defect; finding;
    crack number; age; aged; phone; extension; chapter; part; phase; option; plan; chamber; ward; district;
    channel; tape; clip; file; ticket; order; locator says; locator reads; locator puts it at;
    locator has it at; depth; temperature; battery; battery 's at; battery at; battery says; battery is at;
    thermometer; size; sizes; code; section; grade; manhole number; tree number; wye number; tee number;
    about page; slide; still number; root number; still; pole; hydrant;
  `,
  money: spoken`
    paid; cost; costs; charged; charge; price; quoted; quote; bid; spent; $; runs about; worth;
  `,
  clockTime: spoken`
    time of completion; time is; o clock; closing at; appointment at; meeting at; recital at; close on the;
    ended at; end of dictation at; started around;
  `,
};

/** Those of them that may end another name: "joint twelve" is counted, "offset joint twelve" is not. */
export const mayEndName: ReadonlySet<string> = new Set(['joint', 'joints']);

/** After a number: it is how long a thing is along the pipe. */
export const lengthAfter: readonly string[] = spoken`
  feet long; foot long; feet in length; feet of it; feet of that; feet of belly; feet of water; feet worth;
  foot stretch; foot sag; foot belly; foot run of it; foot dip; foot low spot; foot long;
  feet|foot of scale|corrosion|grease|debris|rust|sediment|gravel|mud|sand|silt|sludge|roots|standing_water|back_pitch|sag|rot;
`;
/** Before a number of feet: the same. */
export const lengthBefore: readonly string[] = spoken`
  for; for about; for another; for the next; for a good; goes on for; runs for; runs on for; lasts; lasts for;
  lasts about; the next; over the next; for the following; through the next; next; goes on for about; carries on for; about; length; length of; a length of;
`.filter((words) => words !== 'about');
/** The same, unless the number is the way from somewhere ("goes three feet past the wye"). */
export const lengthVerbs: readonly string[] = spoken`
  that runs; that runs about; runs about; running about; running for about; goes for; going for; it runs; runs; running; that goes; it goes; it goes about; it goes on; covers; it covers;
  spans; it spans; extends; it extends; stretches; it stretches; carries on; it carries on; continues; it continues;
  lasts maybe; it lasts; covering; extending; stretching; it keeps going; keeps going; keeps up;
`;
