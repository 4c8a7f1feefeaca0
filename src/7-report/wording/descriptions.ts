/** What was said of a finding, in words: its size, its materials, what it serves, and its title. */
import type { Finding } from '../../../shared/schemas/grade.ts';
import { plays } from '../../../shared/vocabulary/grading/roles.ts';
import { materials } from '../../../shared/vocabulary/materials.ts';
import { services } from '../../../shared/vocabulary/services.ts';
import { kindNamed } from './counting.ts';
import { inchSize, plainNumber, type Units } from './lengths.ts';

export function materialTitle(name: string | null): string {
  return materials.find((material) => material.name === name)?.title ?? 'not said';
}

/** "2 in", "25 % of the bore", "heavy"; empty when no size was said. */
export function sizeWords(finding: Finding, units: Units): string {
  const water = plays('holdsWater', finding.kind);
  const share = water ? 'of the diameter under water' : 'of the bore';
  const parts = [
    finding.inches !== null && `${inchSize(finding.inches, units)}${water ? ' of water' : ''}`,
    finding.percent !== null && `${plainNumber(finding.percent, 1)} % ${share}`,
    finding.degree !== null && `called ${finding.degree}`,
    finding.angleDeg !== null && `${plainNumber(finding.angleDeg, 1)}° turn`,
  ];
  return parts.filter((part) => part !== false).join('; ');
}

/** "4 in cast iron", "from cast iron to clay", "serves the laundry"; empty when nothing was said. */
export function detailWords(finding: Finding, units: Units): string {
  const size = finding.diameterIn === null ? '' : inchSize(finding.diameterIn, units);
  const material = finding.material === null ? '' : materialTitle(finding.material);
  const service = services.find((s) => s.name === finding.serves)?.title;
  const parts = [
    [size, material].filter(Boolean).join(' '),
    finding.fromMaterial === null ? '' : `from ${materialTitle(finding.fromMaterial)}`,
    finding.toMaterial === null ? '' : `to ${materialTitle(finding.toMaterial)}`,
  ].filter(Boolean);
  const change = parts.join(' ');
  return [change, service === undefined ? '' : `for the ${service}`].filter(Boolean).join(', ');
}

/** "Roots", "Possible crack". */
export function titleWords(finding: Finding): string {
  const title = kindNamed(finding.kind).title;
  if (finding.status === 'present') return title;
  return `Possible ${/^[A-Z]{2}/.test(title) ? title : title.charAt(0).toLowerCase() + title.slice(1)}`;
}
