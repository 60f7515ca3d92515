/**
 * Draws the pictures of docs/plans.md and the sheet of README.md from the examples on those pages.
 *
 *     npm run pictures
 */
import { writeFileSync } from 'node:fs';
import { pictures } from '../test/support/drawing/pictures';
import { sheetPicture } from '../test/support/drawing/sheet-picture';

for (const { file, svg } of [...pictures(), sheetPicture()]) {
  writeFileSync(new URL(`../docs/${file}`, import.meta.url), svg);
  console.log(`docs/${file}: ${svg.length} signs`);
}
