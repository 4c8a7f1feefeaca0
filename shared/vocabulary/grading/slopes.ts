/** The least fall a drain must have, by size. A local rule file may put its own rows in place of these. */
export interface SlopeRow {
  /** The row holds for nominal sizes up to and including this one, in inches; `null` for all larger ones. */
  readonly upToIn: number | null;
  readonly inchesPerFoot: number;
}

export interface SlopeTable {
  readonly rows: readonly SlopeRow[];
  readonly source: string;
}

export const slopeTable: SlopeTable = {
  rows: [
    { upToIn: 2.5, inchesPerFoot: 1 / 4 },
    { upToIn: 6, inchesPerFoot: 1 / 8 },
    { upToIn: null, inchesPerFoot: 1 / 16 },
  ],
  source: 'IPC table 704.1, read as Chicago Plumbing Code table 18-29-704.1',
};
