/** The words of a grade: how bad, what follows, and who does it. Lists are in rising order. */

/** The published words (Seattle Public Utilities, City of Tacoma). */
export const severityNames = ['minor', 'moderate', 'severe'] as const;

export interface Action {
  readonly name: string;
  /** How the report heads the group of findings that call for it. */
  readonly title: string;
  /** What to do, when the inspector set the action and no rule words it. */
  readonly step: string;
}

export const actions = [
  { name: 'none', title: 'No repair needed', step: 'No repair needed.' },
  { name: 'watch', title: 'Look again later', step: 'Have this place looked at again.' },
  { name: 'settle', title: 'Find out more', step: 'Have this place looked at before relying on it.' },
  { name: 'clean', title: 'Clean', step: 'Have the line cleaned here and looked at again.' },
  { name: 'repair', title: 'Repair', step: 'Have a licensed plumber repair this place.' },
  { name: 'act-now', title: 'Act now', step: 'Have a licensed plumber deal with this place at once.' },
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
