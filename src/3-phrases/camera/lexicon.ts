/** What the camera and its counter do, and what part of the talk begins: the frame every distance is read in. */

import type { Direction } from '../../../shared/vocabulary/attributes.ts';
import { spoken } from '../../../shared/vocabulary/spoken.ts';

export type CameraCue =
  /** The camera is being pulled back: things are being seen again. */
  | 'pull-back'
  /** The counter is set to nought here. */
  | 'zero'
  /** Another run is announced. */
  | 'next-run'
  /** The same opening again, for the other direction. */
  | 'same-access'
  /** An opening the camera goes in by. */
  | 'access'
  /** The camera goes in, or goes on. */
  | 'enter'
  /** Everything is gone over once more. */
  | 'summary';

export const cameraCues: readonly { readonly cue: CameraCue; readonly words: readonly string[] }[] = [
  {
    cue: 'pull-back',
    words: spoken`
      pulling back; pulling it back; pulling her back; pull back; pulling out; coming back; come back out;
      coming home; comin' home; coming back out; coming out; on the way back; on my way back; on the way out;
      on the way home; backing up; backing out; backing it out; backing her out; reversing; withdrawing;
      withdraw; reeling in; reeling it in; reel it in; reel her in; reeling back; during retrieval; retrieval;
      retrieving; retracting; retract; heading back; heading home; bringing it back; bringing her back;
      bringing it home; winding in; winding it in; winding back; wind her up; return trip; the return;
      returning; way back; pulling the camera back; pulling the camera out; taking it back;
      back toward the cleanout; back to the cleanout; spooling back; spooling in; spool it in; hauling back;
      hauling it back; hauling in; hauling her in; drawing back; on the pullback; pullback; on the pull back;
      pulling up; coming in now; backing on out; pulling cable; on the return; on the retrieve;
      cranking it back; rolling it back; dragging it back; dragging her back; take her home; taking her home;
      on my way out; come on back; comes back; i come back; bring it back; bring her back; bring her home;
      coming on back; pulling her home; pulling her in; pulling it in; now pulling; reverse now;
    `,
  },
  {
    cue: 'zero',
    words: spoken`
      zero it; zeroed; zero the counter; counter zeroed; counter back to zero; counter back to 0;
      counter 's back to zero; counter 's back to 0; counter 's back at zero; counter 's back at 0;
      counter at zero; counters at zero; counters at 0; 0 it; it 's zero; counters on zero; counter at 0;
      counter to zero; counter to 0; counter is at 0; counter is at zero; counter set to zero; counter set to 0;
      counter is set to zero; counter 's at zero; counter 's at 0; counter 's zeroed; counter is zeroed;
      counter is zero; counter reset; reset the counter; resetting the counter; resetting to zero;
      resetting to 0; reset to zero; reset to 0; reset the footage; reset it to zero; station zero; station 0;
      zero again; 0 again; back to zero; back to 0; back at zero; back at 0; starting from zero; zero once more;
      zero on the; counter reads nothing; nothing on the counter; counter on nothing; zero once again;
      counter reads nought; back on zero; counter goes to zero; counter to nought; reading zero; reads zero;
      double zero; all zeros; counter at all zeros; counter cleared; clear the counter; cleared the counter;
      start the count over; counter on zero; counter on 0; counter again at; starting the count;
      starting at zero; start from zero; starts over; start over at; zeroing; zero out; zeroed out; zeroing out;
      re zero; re zeroed; rezero; rezeroed; set to zero; set to 0; set the counter; counter reads zero;
      counter says zero; counter reads 0; footage reset; footage zeroed; footage back to zero; fresh count;
      new count; at zero; zero on the counter; 0 on the counter; camera to zero; clock it at zero; i zero;
      zero here; from zero; counter , zero; counter zero; counter 's 0; counter 's zero; counter at nothing;
      counter starts at zero; counter starts at 0; counter 0; counter clear; counter cleared;
    `,
  },
  {
    cue: 'next-run',
    words: spoken`
      other way; the other one; the second one; do the other; other direction; opposite direction; opposite way;
      turning it around; turn it around; turn around; turned around; turning around; turning her around;
      turn her around; turned it around; spin it around; spin her around; spinning it around; flip it around;
      flipping around; flip around; swing it around; swinging around; second run; second traverse;
      third traverse; second opening; third opening; second hole; third hole; second trip; third trip;
      second push; third push; opening b; opening c; opening d; next opening; next hole; next line up;
      go again from; on to the next; onto the next; other leg; the upstream leg; the upstream half;
      the upstream side now; the downstream half; other half; the other half; third run; fourth run; run two;
      run three; run four; run 2; run 3; run 4; run number two; run number three; run number 2; run number 3;
      next run; last run; final run; second line; third line; next line; second one; third one; last one;
      next one up; next one is; second entry; second access; third access; other side now; second leg;
      third leg; second shot; third shot; second pass; new run; another run; one more run; one more and;
      and now the other; switching; switch to; switching to; now i 'm going; now going; now we 're going;
      now the other; now upstream; now downstream; now the house side; house side now; street side now;
      now the street side; i 've moved; i moved; moved over to; moving over to; moving to the; moved to the;
      set up again; setting up again; part two; part three; number two; now up; okay reverse; second 1;
      reverse going; now i turn it; second direction; the reverse direction; next up; next access;
      now for the other; starting over; start over from; start fresh from; try it from; try from; try the;
      trying the; trying it from; go at it from; come at it from;
    `,
  },
  {
    cue: 'same-access',
    words: spoken`
      same cleanout; same access; same opening; same hole; same cap; same riser; same spot going; from the same;
      same entry; same plug; same place going; same point; same stack; same port; same fitting going;
    `,
  },
  {
    cue: 'access',
    words: spoken`
      cleanout; cleanouts; roof vent; the vent; vent stack; the stack; main vent; plumbing vent; vent pipe;
      big vent; pulled toilet; pulled the toilet;
      yanked|pulled|lifted|removed|popped|took the|that|a * toilet|commode; toilet|commode off|out;
      shower drain; standpipe; laundry standpipe; yard drain; downspout boot; boot on the; opening a; opening b;
      opening c; opening d; access port; sink drain; tub drain; toilet pulled; toilet 's pulled; toilet 's off;
      toilet is off; take off the toilet; took off the toilet; took the toilet off; the toilet off;
      toilet flange; the flange; closet flange; flange; riser; the manhole; city manhole; access point;
      access port; house trap; the trap; floor drain; brass plug; the plug; cap by the; a cap; caps out front;
      the opening; basement stack; trap arm; unscrewed the trap; pulled the trap; fresh air inlet;
      fresh air vent; inspection port; inspection chamber; test tee; roof job; the roof; shower drain; hole in;
      access is; access ,; entry point; entering at; entering through; cellar; plug in the; lamp hole; the cap;
    `,
  },
  {
    cue: 'enter',
    words: spoken`
      i 'm in; we 're in at; we 're going in; i 'm going in; going in; going down; down i|we|she go|goes;
      down into the; down toward|towards the; down from the roof; down the main vent; in through; in at the;
      heading; headed; pushing; running; proceeding; shootin' her; shooting; shoot; launching; starting from;
      starting at; start at; started at; start from; dropping in; drop in; dropping the camera; feeding;
      sending; camera lowered; lowering; working; going out; going up; up i|we|she go|goes; going through;
      go up; go down; in by the; taking the; we go in; i go in; put camera; put the camera; inserting; insert;
      inserted; entered; entering; access by way of; accessed; ran it from; facing; pointed; aiming; aimed;
      looking up; looking down; came in; got in; poking; inching; bound for; pointing;
    `,
  },
  {
    cue: 'summary',
    words: spoken`
      to sum up; to sum it up; summing up; sum it up; in summary; summary; to summarize; summarizing; to recap;
      recap; recapping; in short; short version; long story short; bottom line; so for the record; all in all;
      all told; overall; in conclusion; to wrap up; wrapping up; wrap it up; so the list is; that 's your list;
      so what do i tell; tally; for the report; go over it once more; goes over it; here 's the deal; so to sum;
      the upshot; my findings; to conclude; big picture; at the end of the day; what we 've got is;
      what it comes down to; that is the report; that 's your report; that 's the report; final tally;
      final count; run down the list; rundown; the highlights; the takeaways; takeaway; in a nutshell;
      the punch list; punch list; builder 's list; for the builder 's list; hit list; the headlines; to review;
      reviewing; so my list; the list; totals; once more for the; in total; so in total; count them up;
      adding it up; adding up; the short of it; so we have got; the verdict; verdict; final word; closing notes;
      closing statement; let me sum; quick summary; wrap up; the rundown; so you have; so they have;
      recapitulation; recapitulating; the report card; the damage report; damage report;
    `,
  },
];

/** Stretches that hold a cue of the camera and are none. */
export const notCameraCues: readonly string[] = spoken`
  come back and; coming back to; come back to; comes back up; backing up on; backed up; back up on them;
  backs up; it comes back; coming out of it; coming out of the; coming out of that; comes out of; come out of;
  came out; coming out here; come back later; i will come back; i 'll come back; we 'll come back;
  come back out here; the picture comes back; water coming back; coming out of here; coming out of there;
  coming out right there; coming out of one; running water; water running; running toward; running along;
  crack running; running the water; running a bath; running trap; running good; running clear; running slow;
  running late; running out of; running the wrong; last one before; last one i; the last one was; other end of;
  from the other end , smooth; heading into; below zero; degrees; poking through; poking in; poking out;
  poking pipe; one more thing; working fine; next one is at; other way around; the other way ,; i had to switch;
  the list price; drop in the; a drop in;
`;

/** Where the camera is going, said plainly or by what lies that way. */
export const headings: readonly {
  readonly direction: Direction;
  readonly isPlain: boolean;
  readonly words: readonly string[];
}[] = [
  {
    direction: 'downstream',
    isPlain: true,
    words: [
      'downstream',
      'with the flow',
      'going with the flow',
      'in the direction of flow',
      'direction of flow',
      'with flow',
      'down stream',
    ],
  },
  { direction: 'upstream', isPlain: true, words: ['upstream', 'against the flow', 'against flow'] },
  {
    direction: 'downstream',
    isPlain: false,
    words: spoken`
      toward|towards the street|road|curb|main|city|tank|septic|alley|sidewalk|lake|manhole|public|sewer;
      to the street|road|curb|main|tank|septic|alley|city;
      out to the street|road|curb|main|tank|septic|alley|city; for the street|road|curb|main|tank|septic|city;
      down to the street|road|curb|main|tank|septic|city; out the front; out under the * yard;
      out toward * street; direction of street; direction of the street; street side; out front; going down;
      heading down; headed down; going out; heading out; headed out; pushing out; pushing down; running down;
      down the vent; down the roof; down the stack; down the flange; down the line; down and out;
      out to the septic; toward the public; to the city; out to sea; to the public sewer; toward the back fence;
      to the main; toward our main; toward the city 's; down through the; down toward; down towards;
      to the septic tank; roadside; toward the right of way; out into the yard; toward the easement;
      to the easement; toward the property line; to the property line;
    `,
  },
  {
    direction: 'upstream',
    isPlain: false,
    words: spoken`
      toward|towards the house|building|kitchen|bath|stack|foundation|home|addition|garage; up to the house;
      to the house; up toward|towards the house; into the house; under the house; up under the house;
      back to the house; back toward the house; back into the house; going up; heading up; headed up;
      pushing up; working up; running up; up the line; house side; back under the house; up into the house;
      under the slab; up under; toward the building; toward the bathroom; back toward the building;
      back up toward; up towards; up toward; look up toward; to the building; toward the unit;
      into the building; uphill to the house; toward the residence;
    `,
  },
];
