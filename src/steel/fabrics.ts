/**
 * Welded fabric by its name, as metric jobs call for it: millimeters between and across the wires along, then those
 * across.
 *
 * In names as A193 and Q188A the number is the steel of the wires along in mm2 a meter, rounded; in names as SL82 and
 * RL818 it tells their size and spacing. BS 4483, DIN 488-4 and AS/NZS 4671, each from memory; areas and weights are
 * worked out from the wires, and the edges of some sheets are made of thinner ones.
 */

/** Wires of a fabric in millimeters. */
export type FabricWires = readonly [along: string, wire: string, across: string, wire: string];

const TABLE = `
A98 200 5 200 5
A142 200 6 200 6
A193 200 7 200 7
A252 200 8 200 8
A393 200 10 200 10
B196 100 5 200 7
B283 100 6 200 7
B385 100 7 200 7
B503 100 8 200 8
B785 100 10 200 8
B1131 100 12 200 8
C283 100 6 400 5
C385 100 7 400 5
C503 100 8 400 5
C636 100 9 400 6
C785 100 10 400 6
D49 100 2.5 100 2.5
D98 200 5 200 5
Q188A 150 6 150 6
Q257A 150 7 150 7
Q335A 150 8 150 8
Q424A 150 9 150 9
Q524A 150 10 150 10
Q636A 100 9 125 10
R188A 150 6 250 6
R257A 150 7 250 6
R335A 150 8 250 6
R424A 150 9 250 8
R524A 150 10 250 8
SL52 200 4.75 200 4.75
SL62 200 6 200 6
SL72 200 6.75 200 6.75
SL82 200 7.6 200 7.6
SL92 200 8.6 200 8.6
SL102 200 9.5 200 9.5
SL81 100 7.6 100 7.6
RL718 100 6.75 200 7.6
RL818 100 7.6 200 7.6
RL918 100 8.6 200 7.6
RL1018 100 9.5 200 7.6
RL1118 100 10.7 200 7.6
RL1218 100 11.9 200 7.6`;

/** Fabrics that have the same wires both ways, lightest first. */
export const SQUARE_FABRICS: readonly string[] =
  /*#__PURE__*/ 'A98 A142 SL62 SL72 Q188A A193 SL82 A252 Q257A SL92 Q335A SL102 A393 Q424A SL81 Q524A'.split(
    ' ',
  );

let table: ReadonlyMap<string, FabricWires> | undefined;

/** The wires of a fabric by its name in capitals; `undefined` for anything that is none. */
export function wiresOfFabric(name: string): FabricWires | undefined {
  table ??= new Map(
    TABLE.trim()
      .split('\n')
      .map((row) => {
        const [called = '', ...wires] = row.split(' ');
        return [called, wires as unknown as FabricWires];
      }),
  );
  return table.get(name);
}
