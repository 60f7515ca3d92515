/**
 * Plain SVG: elements and escaping.
 *
 * No external resources, no scripts, no fonts to load, and nothing that is referred to by its id, so that several
 * plans on one page, hidden ones too, leave each other alone.
 */

/** Attributes of an element; numbers are written to two places. */
export type Attributes = Readonly<Record<string, string | number>>;

const escaped = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    // Characters that XML does not allow at all.
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, ' ');

/** A number as SVG wants it: at most two places, no trailing zeros, no minus zero. */
export const coordinate = (n: number): string => String(Number(n.toFixed(2)) + 0);

/** One element with its children, which are SVG already. */
export function element(name: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? coordinate(value) : escaped(value)}"`)
    .join('');
  return children.length > 0 ? `<${name}${written}>${children.join('')}</${name}>` : `<${name}${written}/>`;
}

/** An element that holds text, which is escaped. */
export const textElement = (name: string, attributes: Attributes, text: string): string =>
  element(name, attributes, escaped(text));

/** A path through points. */
export const pathThrough = (points: readonly { readonly x: number; readonly y: number }[]): string =>
  points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${coordinate(x)} ${coordinate(y)}`).join('');

/** A short name for a text, the same for the same text (FNV-1a, twice over, of 32 bits). */
export function fingerprint(text: string): string {
  const half = (seed: number): string => {
    let hash = seed;
    for (let i = 0; i < text.length; i += 1) {
      hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
    }
    return hash.toString(36);
  };
  return half(0x811c9dc5) + half(0x1b873593);
}
