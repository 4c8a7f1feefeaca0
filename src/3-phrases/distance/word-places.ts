/** Places named without a number: the one at hand, the middle, an end. */
import { spoken } from '../../../shared/vocabulary/spoken.ts';

/** The place at hand once more. */
export const samePlace: readonly string[] = spoken`
  beside it; beside that; alongside it; alongside that; right alongside; right beside that; along with it;
  in with it; on the same joint; at the same one; in that spot; same spot; same place; same location;
  same joint; same hub; same footage; same distance; same point; same number; same station; right there;
  right here; right at that; at that same spot; same fitting; same bell; same foot; right beside it;
  right next to it; right with it; right behind it; behind it; at the same; that same spot; that same joint;
  the very same; at that joint; at that spot; in that same; right on it; right on top of it; next to it;
  same mark; right at it; same reading; same position; the same joint; in the same joint; just there;
  same exact spot; same stretch; same section; same length; same few feet; the whole length of it|that|them; all through it|that; all along it|that;
`;

/** The middle of a stretch, or half way between two things. */
export const middlePlace: readonly string[] = spoken`
  halfway between; half between; midway between; in the middle of; right in the middle of;
  smack in the middle of; halfway through; halfway along; halfway down; midway through; midway along;
  in the middle between; dead center of; center of; about halfway between; about the middle of;
  near the middle of; at the middle of; the midpoint of; midpoint of; at the midpoint of; dead middle of;
  the midpoint between; midpoint between; dead center between; split the difference between; middle of;
`;

/** Where a stretch lets go, or begins. */
export const endPlace: readonly string[] = spoken`
  right where it ends; where it ends; right where it stops; where it stops; right where it lets go;
  at the far end of; the far end of; at the end of; at the downstream end of; at the tail end of; at the tail of;
  the tail end of; at the street end of; at the far end; right at the end of; just at the end of;
  right where i come out of; right where we come out of; where i come out of; where we come out of;
  right where it comes up; where it comes back up; right where it clears; where it clears up; where that ends;
  right where that ends; at its far end; at its end; on the far end of; at the downstream end; by the end of;
`;
export const startPlace: readonly string[] = spoken`
  at the start of; at the beginning of; right at the start of; at the near end of; at the upstream end of;
  right where it starts; where it starts; right where it begins; where it begins; at the head of;
  going into; at the front of; right at the beginning of; on the near end of; just inside;
`;
