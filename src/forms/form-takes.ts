/** What forms take: boards by their length with the pieces of each, sheets, stakes, braces, nails and release. */
import type { Quantity } from '../quantity/quantity';
import type { TakeNote } from '../reckoning/takes';
import type { Curves } from './bending';
import type { FormMaterialsFigures } from './form-figures';

/** What of the input tells things from others of their kind. */
interface Told {
  readonly kind: string;
  readonly curves: Curves | undefined;
  readonly stakes: { readonly kind: string | undefined } | undefined;
  readonly fasteners: { readonly kind: string } | undefined;
  readonly release: { readonly container: Quantity<'volume'> | undefined } | undefined;
}

/** What is to be bought for forms. */
export function formsTaken(figures: FormMaterialsFigures, told: Told): TakeNote[] {
  const { board, order, plan, stakeLength } = figures;
  const { kind, curves, stakes, fasteners, release } = told;
  const sheet = curves?.kind === 'layers' ? curves : undefined;
  return [
    ...order.map(
      ({ length }, i): TakeNote => ({
        item: 'board',
        from: `order[${i}].boards`,
        of: { ...board, length },
        cuts: plan
          .filter(({ stock }) => stock.compareTo(length) === 0)
          .flatMap(({ boards, cuts }) =>
            cuts.map((cut) => ({ length: cut.length, count: cut.count.times(boards) })),
          ),
      }),
    ),
    { item: 'sheet', from: 'layered.sheets', of: { thickness: sheet?.thickness, ...sheet?.sheet } },
    // Supports under risers are cut from what is at hand.
    ...(kind === 'riser'
      ? []
      : [
          {
            item: 'stake',
            from: 'stakes',
            of: { kind: stakes?.kind ?? 'wood', length: stakeLength },
          } as const,
        ]),
    { item: 'brace', from: 'braces' },
    { item: 'nail', from: 'fasteners', of: { kind: fasteners?.kind } },
    { item: 'release-oil', from: 'release.volume', of: { container: release?.container } },
  ];
}
