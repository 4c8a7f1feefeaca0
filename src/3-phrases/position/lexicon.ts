/** Where on the wall, looking the way the camera looks. "Crown" is kept as top, "invert" as bottom, "springline" as side. */

import type { Position } from '../../../shared/vocabulary/attributes.ts';
import { spoken } from '../../../shared/vocabulary/spoken.ts';

export const positionWords: Readonly<Record<Position, readonly string[]>> = {
  top: spoken`
    top; crown; overhead; up top; on top; roof of the pipe; roof of it|this; in|along|from|through the roof of_the_pipe|of_it?; ceiling; the ceiling; on the ceiling; ceiling of the pipe; from above; up above; upper|top wall|side|half|part|third|quarter of_the_pipe|of_it?; the? upper side|half|part;
    topside; soffit; obvert; from overhead; the top of the pipe; straight up; up high; facing up; pointing up; looking up; opening up top; goes straight up;
  `,
  bottom: spoken`
    bottom; lower|bottom half|third|quarter|part of_the_pipe|of_it?; invert; flowline; floor; underneath; belly of the pipe; trough; low down; down low; bottom side; lower side|half|part;
    from below; the bottom of the pipe; on the floor; from underneath; floor of the pipe; base of the pipe; on the floor of the pipe; on the floor of it; in the floor of it|this|that;
    in the floor of the pipe|line; floor line; the floor line;
    up|come|comes|came|coming|sticking|poking|pushed|pushing|driven|grown|growing|welling|bubbling|eaten|rotted|worn up? through the floor;
  `,
  left: ['left', 'left hand side', 'left side', 'left hand', 'left wall', 'lefthand'],
  right: spoken`
    right side; right hand side; right hand; right wall; on the right; the right; to the right; righthand;
    from right; right;
  `,
  side: spoken`
    both walls; either wall; left and right; left and the right; right and left; right and the left;
    left and right side; left and right sides; left side and right side; side walls; sidewalls; side wall; sidewall; springline; both sides; sides; either side; from the side; in the side; on the side;
    the side of the pipe; side;
  `,
  'all-around': spoken`
    all around; all the way around; all the way round; all round; full circumference; whole circumference;
    entire circumference; clean around; around the whole thing|opening|inside|way; right round; right around; the whole way around;
    the whole way round; from? all the|its|of_the|four sides; all four sides; circumferential; circles|circling|circled|encircles|encircling the|it|this pipe|joint?; full ring; ring around; around the pipe|joint|bell|hub|circumference; around the pipe the whole|entire way; going around the pipe the whole way; all the way round it; like a collar; three hundred sixty; clear around; circumferentially; all sides; every side; full circle; 360;
    three sixty; whole way round; top to bottom; 360 degrees; three hundred and sixty degrees; round|around the whole|entire|complete|full joint|pipe|bell|hub|socket|ring|circumference|bore; all round the joint|pipe|bell|hub|socket;
    around the entire joint; around the entire pipe;
    around the whole joint; around the whole pipe; all the way roun; wall to wall;
  `,
};

/** Words that hold a position and mean something else. */
export const notPositions: readonly string[] = spoken`
  left or the? right; right or the? left; top or the? bottom; bottom or the? top; which|what side; right across;
  washed|eroded|gone|scoured away? from around the pipe|joint;  slope|fall|grade|pitch|it|that|angle|level right on it|that|this; slope|fall|grade|pitch|job|repair|math|it done? right;
  left his|her|their|my|us|them|him; right smart; right as; is|'s|was|runs|goes|flows left to right; is|'s|was|runs|goes|flows right to left;
  cleanout|plug|cap|lid|cover|hatch|opening|one|it , from|from_the below|underneath|beneath|behind|inside|back|back_side; cleanout|plug|cap|lid|cover|hatch|opening|one|it from|from_the below|underneath|beneath|behind|inside|back|back_side; seen from below|underneath|above;
  find|see|seen|reach|look|looking|looks|tell|get_to|got_to it|that|this? from above|below|overhead|underneath;
  garage|bedroom|bathroom|bath|neighbor|neighbors|neighbour|driveway|porch|office|shop|park|creek|church|pool|patio|lake|field|uphill|downhill|high|low side;
  of the|it|this|our|my pipe|bore|opening|diameter left; pipe|bore|opening|room|space left; all that 's left; that 's left;
  on its|his|her own? side; on end; hinged * top|bottom|left|right|side; hinge|hinges at|on the top|bottom|left|right|side;
  squeeze|squeezed|squeezing|slide|slid|slip|slipped|sneak|snuck|sneaked|ease|eased|work|worked|get|got|getting|go|going|went|come|came|pass|passed|passing|scoot|wiggle|wiggled|steer|steered|room by|past|around|round on|along|over|down the left|right|top|bottom|side;
  squeeze|squeezed|squeezing|slide|slid|slip|slipped|sneak|snuck|sneaked|ease|eased|work|worked|get|got|getting|go|going|went|come|came|pass|passed|passing|scoot|wiggle|wiggled|steer|steered|room by|past|around|round it|that|this|them|him|her|these on|to|along|over|down the left|right|top|bottom|side;
  keep|keeping|kept|stay|staying|stayed|hug|hugging|aim|aiming|pan|panning|steer|steering to|on|toward the left|right|top|bottom|side; steer|pan left|right;
  flow|flows|flowing|runs|running|moving|going|coming|comes|crossing|across|goes from? left|right to left|right; from right to; from left to;
  right so; right then; right , so|then|now|okay|next; right now; right there; right here; right at; right away; right off; right from; right on the; right in the;
  right under; right after; right before; right behind; right through; right past; right up; right down;
  right by; right where; right over; right out; right into; right in; right about; right along; right beside;
  right next; right inside; right outside; right below; right above; right back; right to; all right;
  is|isn't|ain't|hear|get|got|do|did|read|say|heard that right; that right there|here|now|in|at; 's right; right one; right word|term|name; right way; right thing; right angle; got it right; right size;
  be right; is right $; do right; you right; right then; alright; left off; left over; left it; left the; left in;
  left behind; left to right; right to left; left a; is left; left of the|it|that|this|my|our|me|us|him|center|centre|here|there|a|where|him|them|what; i left; he left; she left; they left;
  left alone; leave left; what left; 's left; side yard; side of the house; street side; house side;
  side of the tree; this side; that side; one side; other side; far side; my side; your side; north side;
  south side; east side; west side; downstream side; upstream side; side cleanout; side connection; side inlet; side branch; side drain; side tap; side line; kitchen side;
  side of the street; alley side; side gate; side street; side passage; side porch; side door; side entrance;
  side sewer; by the side; side by side; side lot; side lawn; side of the garage; hill side; side of the;
  near side; back side; front side; left side of the house; right side of the house; left side of the garage;
  right side of the garage; on top of; top it off; top off; from the top of; over the top; top of the hill;
  top of the stack; back up top; at the top of the stairs; over my head; at the bottom of the stack;
  bottom of the stack; bottom of the drop; bottom line; bottom of the hill; basement floor; kneeling|kneel|knees|stand|stood|water|leaked|mopping|mop|wet|hands on the floor; on the floor in|next|beside|by|here|with|there; all over the floor;
  floor drain; the floor cleanout; second floor; first floor; ground floor; floor above; floor below;
  in the floor; at the floor level|drain|above|below; bathroom floor; kitchen floor; garage floor; your floor; my floor;
  the slab floor; upper floor; through the floor; bottom dollar; bottom of the steps; bottom of the stairs;
  roof vent; up top here; invert elevation; invert depth; depth to invert; to invert; at the bottom where;
`;
