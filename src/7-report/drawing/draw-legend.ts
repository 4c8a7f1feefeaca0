/** The legend of a sheet: every pattern and shape with its name. */
import type { MaterialName } from '../../../shared/vocabulary/materials.ts';
import { materialTitle } from '../wording/descriptions.ts';
import { sheetWidth } from './sheet-geometry.ts';
import { round, text } from './svg-text.ts';

export function legendMarkup(
  named: readonly MaterialName[],
  hasUnsaid: boolean,
  y: number,
  idPrefix: string,
): { markup: string; bottom: number } {
  const entries: { swatch: string; title: string }[] = [
    ...named.map((name) => ({
      swatch: `<rect width="22" height="12" fill="url(#${idPrefix}-${name})" stroke="#111" stroke-width="0.8"/>`,
      title: materialTitle(name),
    })),
    ...(hasUnsaid
      ? [
          {
            swatch: '<rect width="22" height="12" fill="#fff" stroke="#111" stroke-width="0.8"/>',
            title: 'material not said',
          },
        ]
      : []),
    {
      swatch: '<rect x="6" y="1.5" width="9" height="9" fill="#fff" stroke="#111" stroke-width="1.5"/>',
      title: 'fitting',
    },
    { swatch: '<path d="M0 6H22" stroke="#111" stroke-width="4"/>', title: 'limit of the inspection' },
    {
      swatch: '<path d="M11 -0.5L17.5 6L11 12.5L4.5 6Z" fill="#fff" stroke="#111" stroke-width="1.5"/>',
      title: 'minor or not graded',
    },
    {
      swatch:
        '<path d="M11 -0.5L17.5 6L11 12.5L4.5 6Z" fill="#fff" stroke="#111" stroke-width="1.5"/><path d="M11 -0.5L17.5 6L11 12.5Z" fill="#111"/>',
      title: 'moderate',
    },
    {
      swatch: '<path d="M11 -0.5L17.5 6L11 12.5L4.5 6Z" fill="#111" stroke="#111" stroke-width="1.5"/>',
      title: 'severe',
    },
    {
      swatch:
        '<path d="M11 -0.5L17.5 6L11 12.5L4.5 6Z" fill="#fff" stroke="#111" stroke-width="1.5" stroke-dasharray="2 2"/>',
      title: 'suspected or open',
    },
  ];
  const columns = 3;
  const out = entries.map(({ swatch, title }, index) => {
    const x = 10 + (index % columns) * (sheetWidth / columns);
    const rowY = y + Math.floor(index / columns) * 20;
    return `<g transform="translate(${round(x)} ${round(rowY)})">${swatch}${text(29, 10.5, title)}</g>`;
  });
  const rows = Math.ceil(entries.length / columns);
  return { markup: out.join(''), bottom: y + rows * 20 + 4 };
}
