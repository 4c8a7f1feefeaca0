/** The fonts that come with lineword. Nothing is taken from the system, so a report looks the same everywhere. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);

const files = {
  regular: () =>
    require.resolve('@expo-google-fonts/atkinson-hyperlegible/400Regular/AtkinsonHyperlegible_400Regular.ttf'),
  bold: () => require.resolve('@expo-google-fonts/atkinson-hyperlegible/700Bold/AtkinsonHyperlegible_700Bold.ttf'),
  italic: () =>
    require.resolve(
      '@expo-google-fonts/atkinson-hyperlegible/400Regular_Italic/AtkinsonHyperlegible_400Regular_Italic.ttf',
    ),
  boldItalic: () =>
    require.resolve('@expo-google-fonts/atkinson-hyperlegible/700Bold_Italic/AtkinsonHyperlegible_700Bold_Italic.ttf'),
  /** For letters the first family lacks. */
  wide: () => require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
  wideBold: () => require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf'),
  wideItalic: () => require.resolve('dejavu-fonts-ttf/ttf/DejaVuSans-Oblique.ttf'),
} as const;

export type FontName = keyof typeof files;

/** Bytes of one font file. */
export function fontBytes(name: FontName): Buffer {
  return readFileSync(files[name]());
}

export const allFonts = Object.keys(files) as FontName[];
