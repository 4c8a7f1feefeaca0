/** The words of a grade: how bad, what follows, and who does it. Lists are in rising order. */

/** The published words (Seattle Public Utilities, City of Tacoma). */
export const severityNames = ['minor', 'moderate', 'severe'] as const;

export interface Action {
  readonly name: string;
  /** How the report heads the group of findings that call for it. */
  readonly title: string;
  readonly order: number;
}

export const actions = [
  { name: 'none', title: 'No repair needed', order: 0 },
  { name: 'watch', title: 'Look again later', order: 1 },
  { name: 'settle', title: 'Find out more', order: 2 },
  { name: 'clean', title: 'Clean', order: 3 },
  { name: 'repair', title: 'Repair', order: 4 },
  { name: 'act-now', title: 'Act now', order: 5 },
] as const satisfies readonly Action[];

export interface Trade {
  readonly name: string;
  readonly title: string;
}

export const trades = [
  { name: 'owner', title: 'Owner' },
  { name: 'inspector', title: 'Sewer inspector' },
  { name: 'drain-cleaner', title: 'Drain cleaner' },
  { name: 'plumber', title: 'Licensed plumber or sewer contractor' },
  { name: 'septic', title: 'Septic tank professional' },
] as const satisfies readonly Trade[];

export type SeverityName = (typeof severityNames)[number];
export type ActionName = (typeof actions)[number]['name'];
export type TradeName = (typeof trades)[number]['name'];
export const actionNames = actions.map((action) => action.name) as [ActionName, ...ActionName[]];
export const tradeNames = trades.map((trade) => trade.name) as [TradeName, ...TradeName[]];

/** Who usually does what an action asks for. */
export const tradeForAction: Readonly<Record<ActionName, TradeName>> = {
  none: 'owner',
  watch: 'inspector',
  settle: 'inspector',
  clean: 'drain-cleaner',
  repair: 'plumber',
  'act-now': 'plumber',
};
