import type { Kind } from '../kind.ts';
import { spoken } from '../spoken.ts';

export const endOfLine = {
  name: 'end-of-line',
  group: 'fitting',
  title: 'End of the line',
  plural: 'ends of the line',
  takes: [],
  whenDownstream: 'stopped',
  ends: 'end-of-line',
  words: [
    'end of the line',
    'end of line',
    'end of the run upstream',
    'end of what i|we can push',
    'end of this line',
    'end of that line',
    'termination|extent|limit of the? accessible|reachable|surveyable|visible? line|pipe|drain|section|length',
  ],
  signs: spoken`
    that 's|is all she|he wrote; pipe|line|drain|it just|simply stops|ends|quits|finishes|terminates $; pipe|line|drain|it just|simply? stops|ends|finishes|terminates at|against|in|into|behind a|the|this wall|dirt|footing|foundation|slab|block|brick|soil;
    at|reach|reached|to|hit|this_is|that_'s the stack base|foot; foot|base of the stack|riser; stack base;
    that 's as far as i|we|it|she|this|the_camera get|got|can_get|could_get|can_go|could_go|'m_going|'ll_go|will_go|am_going|'re_going|can_push|'ll_push|will_push|goes|go|will_go|went;
    as far as i|we|it|she|he|the_camera|this|the_head can|could|will|would|'ll|'d|was_able_to|am_able_to go|get|push|make|make_it|run|reach|travel; as far as i|we|it|she|the_camera went|made_it|pushed|ran|gets|runs; as far as the|this line|pipe|drain|run|cable|camera goes|runs|went|gets;
    as far as i|we|it|she|the_camera|this get|got|go|can_get|could_get|can_go|will_go|'ll_go|'ll_push|can_push|goes|could_push|will_push;
    that 's as far as i|we can push it|her; far as she|it|this goes|go|will_go; as far as she|it|this goes;
    as far as i|we can push; as far as i|we can push it|her; as far as she 'll push|go;
    as far as it 'll push|go; turns|heads|goes|rises|shoots|climbs up|straight_up into|in|inside the|a wall|stack|kitchen|bathroom|cabinet; head of the drain|line|run|lateral|pipe; end of the building|house? drain|push|lateral; top of the line|run|drain; upstream end; as far up as; upper end; turns up into; turns up to|under|in; goes up the wall; goes up in|into the wall;
    goes up into; up into the wall; dead ends; dead end; end of the push; base of the stack;
    foot of the stack and; turns up the stack; end of what will push; up the wall and; stubs up; stub up;
    turns up at|and|behind|inside; end of my cable; end of the building drain; it turns up; up into the stack;
  `,
  signsUpstream: spoken`
    goes|turns|heads|rises|shoots|climbs straight|right up; goes|turns|heads|rises|runs vertical|vertically; up it goes; up she goes; where|and it|she|the_pipe|this|pipe|line goes|turns|heads|climbs|rises|stands up $; where|and it|she|the_pipe|this|pipe|line goes|turns|heads|climbs|rises|stands up to|into|through|the|inside|under|behind|between;
    stubs|stubbed|stub out|up|off at|here|there|under|in|with|and|, ; top|tops|topped|topping out $; top|tops|topped out at|here|there; rises|goes|climbs|heads up at|here|there , too|and|that|so; tub|toilet|closet|stack|riser|vent goes|runs|heads up at|here|there; underside|bottom of the|a|your toilet|tub|shower|closet;
    that 's|is all the|of_the pipe|line|run there is|was; comes up in|through|behind|under|into|inside the|a|your|their;
    ran|run|runs|running out of pipe|line|drain|lateral; capped|plugged|blanked|stopped|glued off at|here|there|under; dead|blind|glued|glued_on|end cap|blank|plug at|here|there; far|top|upper|house|other end $; far|top|upper|house end at|here|, #|at;
    bottom|base|foot|toe|heel of a|the|your|our|that|my? * stack|riser|soil_stack|stand; that 's|is all there is|was; end of pipe|lateral|drain|building_drain|house_drain; pipe|line|drain|run|she|it just? quits|stops|ends|finishes|dies|terminates|peters_out at|under|there|here|behind|below|in;
    # is|'s where it|she|this|the_line|the_pipe|everything ends|stops|quits; # is|'s where it|she|the_line|the_pipe goes|turns|heads|climbs|rises up|vertical;
    closet|toilet bend|flange|ell|elbow * end|last|far_as|top;
    the end; it ends|stops|finishes|terminates; line|pipe|run|drain ends|stops|finishes|terminates; last of it; end of it; end of the run; ends here|there|under|at|below;
    goes|turns|heads|comes|rises up to|into|at|under|inside the|a toilet|closet|flange|sink|tub|stack|bath|bathroom|kitchen|laundry|wall; up against a|the closet|toilet|flange;
    i|we 'm|'re done up_there|here|there;
    run|ran|runs|running|'ve_run out of pipe|house|line|room|drain; goes|heads|runs|shoots|turns|rises|climbs straight|right? up the|a|into|to? stack|riser|wall|floor|toilet|closet|flange; up the|a|into|to? stack|riser|wall|floor and i|it can't|won't|can|don't|doesn't; goes|turns|heads|it_'s|rises vertical|vertically|straight_up; can't follow it up|there|that?; no more pipe|line|house; nowhere left to|else go|push;
  `,
  notWords: [
    'turns|goes|heads|comes|runs up a little|bit|hair|touch|tad|foot',
    'clay|iron|cast|pvc|plastic|concrete|transite|liner|lining|orangeburg|abs|copper|lead|steel|tile|scale|water|belly|grease ends|stops|quits|finishes|terminates',
    "end of a|an|some|another|my|our|somebody_'s|old|copper|steel|iron|plastic copper|steel|iron|plastic|old|tap|pipe|line|screw|tool|rod|cable|bolt|conduit|tube|tubing|hose|stake|tail",
    'end of the line item',
    'end of this|that one',
    'at the end of the day',
    'end of the line was',
    'not the end of the line',
    'end of the street',
    'end of the world',
    'end of the line ,  folks',
    'the end of the day|week|month|video|story|report|world|street|pipe|patch|liner|repair|belly|joint|tunnel|block|year|job|sag|dip|stretch|water',
    'the end of this|that|it belly|sag|patch|liner|stretch|pipe|repair',
    'in|to|see|not|and|near|toward|until|other the end',
    'the end cap',
    'the end is cut|rough|clean',
  ],
  examples: {
    says: [
      {
        text: 'City main at fifty feet. Same cleanout, inbound now, zeroed. Twenty eight is the end, up against a closet flange.',
        gives: [{ kind: 'main-connection', at: 50 }, { at: 28 }],
      },
      {
        text: 'City main at fifty feet. Same cleanout, now going upstream, counter at zero. Thirty four feet, end of the line.',
        gives: [{ kind: 'main-connection', at: 50 }, { at: 34 }],
      },
      {
        text: "City main at fifty feet. Same cleanout, upstream now, zeroed out. Forty two feet and that's as far as I can push it.",
        gives: [{ kind: 'main-connection', at: 50 }, { at: 42 }],
      },
      { text: "That's as far as it goes, fifty five feet.", gives: { kind: 'stopped', at: 55 } },
    ],
    never: [
      'By the end of the day I want this wrapped up.',
      'At the end of the line you usually find the laundry.',
      "That's not the end of the line yet.",
    ],
    notYet: [{ text: 'He is at the end of the line for a permit.', gives: [] }],
  },
  report: {
    meaning: 'This is as far up the line as the camera can be pushed.',
    next: 'Nothing to do.',
    glossary: 'End of the line: the upper end, beyond which a camera cannot go.',
  },
} as const satisfies Kind;
