/**
 * Where the work can hurt. Each caution says when it belongs in a report; the general ones always do.
 * Sources are those named beside each; the words are our own.
 */
import type { KindName } from '../kinds/index.ts';
import type { MaterialName } from '../materials.ts';

export interface Caution {
  readonly name: string;
  readonly title: string;
  readonly text: string;
  readonly source: string;
  /** Left out for a caution that belongs in every report. */
  readonly whenKinds?: readonly KindName[];
  readonly whenMaterials?: readonly MaterialName[];
}

export const cautions: readonly Caution[] = [
  {
    name: 'local-codes',
    title: 'Local codes and licensed trades',
    text: 'Local codes prevail over everything said here. Repairs, and in many places clearing, belong to licensed trades and need permits.',
    source: 'local codes differ; Carmel Area Wastewater District 36.068 asks for a licensed plumber',
  },
  {
    name: 'sewer-gas',
    title: 'Sewer gas and confined spaces',
    text: 'Sewers and tanks can hold gas that burns, poisons or leaves no oxygen. The nose soon stops smelling it, so smell is no warning. Nobody should enter a manhole, pit or tank without confined-space training and a gas meter.',
    source: '29 CFR 1910.146 (hazardous atmosphere); Nashville, Illinois, code 92.051 (odor is no adequate warning)',
  },
  {
    name: 'backed-up',
    title: 'A backed-up line',
    text: 'Behind the cap of a backed-up line sewage may stand under pressure. Stop all water use first, loosen the cap slowly, stand aside, and wear gloves and eye cover.',
    source: 'trade guides (read second hand); common practice',
    whenKinds: ['blockage', 'collapse', 'grease', 'debris', 'roots', 'stopped'],
  },
  {
    name: 'gas-line',
    title: 'Gas lines that cross sewers',
    text: 'A gas line may have been bored straight through a sewer. Treat whatever crosses the pipe as one: look with a camera before clearing, use no cutting tool on it, and call the gas utility. If there is a smell of gas, leave, and call 911 from a safe place.',
    source: 'Long Beach Energy Resources; Nebraska City Utilities (read)',
    whenKinds: ['intrusion', 'blockage', 'roots', 'foreign-object', 'hole', 'break', 'collapse'],
  },
  {
    name: 'digging',
    title: 'Before anybody digs',
    text: 'Call 811 (in the United States) two to three business days ahead and wait for the marks. Private lines are not marked by the utilities. Dig by hand near a mark.',
    source: 'utility pages; 24 inches by hand in Washington State (read)',
  },
  {
    name: 'asbestos',
    title: 'Asbestos cement',
    text: 'Pipe of asbestos cement must not be cut, broken or ground. Removal and replacement are regulated; tell every contractor before work starts.',
    source: '40 CFR 61 subpart M (read in 83 FR 18042 and 84 FR 26852)',
    whenMaterials: ['asbestos-cement'],
  },
  {
    name: 'air-test',
    title: 'No compressed air in cast iron',
    text: 'Cast-iron pipe must never be tested with compressed air.',
    source: "a pipe maker's care guide (read second hand)",
    whenMaterials: ['cast-iron'],
  },
];
