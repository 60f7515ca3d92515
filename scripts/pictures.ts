/**
 * Draws the pictures of docs/plans.md from the examples on that page.
 *
 *     npm run pictures
 */
import { writeFileSync } from 'node:fs';
import { pictures } from '../test/support/drawing/pictures';

for (const { file, svg } of pictures()) {
  writeFileSync(new URL(`../docs/${file}`, import.meta.url), svg);
  console.log(`docs/${file}: ${svg.length} signs`);
}
