/** The share of the bore: "thirty percent", "a third of the pipe", "half full". */

import { spoken } from '../../../shared/vocabulary/spoken.ts';
/** After a fraction: it is a share. */
export const shareAfter: readonly string[] = spoken`
  full; of the pipe; of the bore; of the height; of the diameter; of the line; of the opening; of the way;
  of the flow; of the wall; of the cross section; of the area; of the section; of the capacity; of the space;
  the pipe; the bore; the height; the line; the diameter; the opening; the flow; of it; of that; gone; blocked;
  closed; plugged; filled; the way up; of the lens; the lens; up the lens; up the pipe; up the wall; of this;
  closed off; choked; choked off; a pipe; a pipe of; of a pipe; of this pipe; of my pipe; my pipe; of the hole;
  of the channel; under water; full of; covered; of the lens covered; the hole; the capacity; shut; occluded; of our pipe; our pipe; of her;
  deep in the pipe; the cross section; the area; of the tube; the depth of the pipe; of the depth;
  of the inside; full of them; pipe; bore; depth; of the barrel; the barrel; of the conduit; capacity;
  of the profile; lost; submerged; of the channel; flattened; of the circle; obstructed; of its shape;
  of your|his|her|their pipe|bore|line; of its bore|size|section|opening|capacity; up the side|sides;
  of pipe|bore|line|diameter; from the pipe|bore; off the height|width|bore|diameter|top|pipe; deep; under; of its height; of its diameter; of the round; the lumen;
`;

/** Before a bare fraction: it is a share. */
export const shareBefore: readonly string[] = spoken`
  it 's about; about; call it; maybe; down about; lost about; down to about; roughly; taking up; takes up;
  takes up about; taking up about; filling; fills; fills about; blocking; blocks; blocks about; closing off;
  close to; nearly; almost; better than; over; closed down; i 'd say; i 'd call it; it 's; at about;
  that 's about; water is; the water was; water was; up to about; just over; just under; a good; let 's call it;
  let 's say; say;
`;
