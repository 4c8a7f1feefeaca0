/** Where the columns of a drawing sheet stand, in units of which 680 make the width of a page. */

export const sheetWidth = 680;
export const labelGap = 17;
export const fontSize = 12.5;
export const pipe = { left: 318, right: 346 } as const;
export const leftColumn = { labelEnd: 270, leaderEnd: 276, roomStart: 54 } as const;
export const rightColumn = { labelStart: 396, leaderStart: 390 } as const;
export const scaleX = 44;
