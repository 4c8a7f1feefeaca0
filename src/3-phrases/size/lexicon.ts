/** Sizes in inches: of a defect, or the nominal size of the pipe. */

import { spoken } from '../../../shared/vocabulary/spoken.ts';
/** Nominal pipe sizes met in laterals, in inches. */
export const nominalInches: ReadonlySet<number> = new Set([1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 9, 10, 12, 15]);

/** After "N inch": it is the pipe's size. */
export const pipeAfterInch: readonly string[] = spoken`
  pipe; line; lateral; sewer; main; conduit; drain; stuff; diameter; nominal; schedule; sdr; soil; old; new;
  service; hub; no hub; dia; round; plain; bare; heavy; black; white; green; gray; grey; solid; pipe now;
  inside; throughout; all the way; from here; from there; this time; here; this way; to start; to begin; going;
  under; up here; in here; same; thin; thick; vitrified; size; corrugated; perforated; hard; smooth; bell; again; still; as before; like before; once more; also; too; as well; so far; only; nominal;
`;

/** Before "N inch" or a bare size: it is the pipe's size. */
export const pipeBefore: readonly string[] = spoken`
  size; size is; diameter; diameter is; nominal diameter; nominal; pipe is; pipe 's; it is; it 's; it 's a;
  that 's a; diameter ,; size ,; and that 's a; size also; up to; down to; up to a; down to a; steps up to;
  steps down to; step up to; opens up to; necks down to; still; into; in; from; to a; goes to; becomes; dia;
  bumps up to; reduces to; increases to; all; now; about a; running; is a; measures; measuring; bore; bore of;
  a; an; the; starts as; starts as a; starts out; starts out as; looks like; looks like a; it 's the; starts at;
`;

/** After "N inches": it is the size of a thing, not of the pipe. */
export const sizeAfter: readonly string[] = spoken`
  deep; long; wide; across; high; of water; tall; gap; offset; lip; drop; hole; crack; step; of it;
  into the bore; into the pipe; apart; of sag; displacement; separation; of grease; of scale; of debris;
  of sediment; of gravel; of mud; of standing; of sand; worth; thick; out of; of sludge; of silt; difference;
  or so of; of dirt; proud; of gap; square; round hole; opening; wye; tee;
`;
