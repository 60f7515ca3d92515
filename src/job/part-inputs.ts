/**
 * The parts of an element and of a job, by name: which calculation each is, and what it is given.
 *
 * A part is the input of its calculation, less what follows from the rest of the document.
 */
import type { BaseTonnageInput } from '../base/base-tonnage-input';
import type { ExcavationInput } from '../base/excavation-input';
import type { VaporRetarderInput } from '../base/vapor-retarder';
import type { CurbVolumeInput } from '../concrete/curb-volume';
import type { FootingVolumeInput } from '../concrete/footing-input';
import type { PierVolumeInput } from '../concrete/pier-volume';
import type { ProbedVolumeInput } from '../concrete/probed-volume';
import type { SlabVolumeInput } from '../concrete/slab-volume';
import type { StepVolumeInput } from '../concrete/step-inputs';
import type { WallVolumeInput } from '../concrete/wall-input';
import type { BackfillInput } from '../finish/backfill';
import type { FinishMaterialsInput } from '../finish/finish-materials';
import type { FormMaterialsInput } from '../forms/form-materials';
import type { DrainageCheckInput } from '../grade/drainage-check';
import type { FormGradesInput } from '../grade/form-grades';
import type { JointSpacingInput } from '../joints/joint-spacing';
import type { JointLayoutInput } from '../joints/layout-input';
import type { MixRequirementsInput } from '../mix/mix-requirements';
import type { BagCountInput } from '../pour/bag-count';
import type { ConcreteOrderInput } from '../pour/concrete-order';
import type { SawWindowInput } from '../pour/saw-window';
import type { TruckPlanInput } from '../pour/truck-input';
import type { BarCuttingInput } from '../steel/cutting-input';
import type { DowelLayoutInput } from '../steel/dowel-layout';
import type { FiberDosageInput } from '../steel/fiber-dosage';
import type { MeshInput } from '../steel/mesh-layout';
import type { RebarInput } from '../steel/rebar-layout';
import type { RampLayoutInput } from '../steps/ramp-layout';
import type { StepLayoutInput } from '../steps/step-layout-input';

/** Any of the members of an input, of whichever kind it is. */
export type SomeOf<I> = I extends unknown ? Partial<I> : never;

/** What a part is given: members of its input; `true` where the document says all of it; `false` for none. */
export type PartInput<I> = SomeOf<I> | boolean;

/** Parts that an element may have. */
export interface ElementParts {
  /** Digging; a pit as large as the outline by default. */
  readonly excavation?: PartInput<ExcavationInput>;
  /** Gravel under it. */
  readonly base?: PartInput<BaseTonnageInput>;
  /** A sheet under it against damp. */
  readonly retarder?: PartInput<VaporRetarderInput>;
  /** Forms and stakes; of the edges of its outline, as high as it is thick, by default. */
  readonly forms?: PartInput<FormMaterialsInput>;
  /** Heights of the forms. */
  readonly stakes?: PartInput<FormGradesInput>;
  /** Whether the water runs off. */
  readonly fall?: PartInput<DrainageCheckInput>;
  /** Risers and treads. */
  readonly risers?: PartInput<StepLayoutInput>;
  /** Runs and landings of a ramp. */
  readonly ramp?: PartInput<RampLayoutInput>;
  /** Concrete of a slab. */
  readonly slab?: PartInput<SlabVolumeInput>;
  /** Concrete of steps. */
  readonly steps?: PartInput<StepVolumeInput>;
  /** Concrete of footings. */
  readonly footings?: PartInput<FootingVolumeInput>;
  /** Concrete of walls. */
  readonly walls?: PartInput<WallVolumeInput>;
  /** Concrete of piers. */
  readonly piers?: PartInput<PierVolumeInput>;
  /** Concrete of a curb. */
  readonly curb?: PartInput<CurbVolumeInput>;
  /** Concrete by depth probes. */
  readonly probed?: PartInput<ProbedVolumeInput>;
  /** Reinforcing bars. */
  readonly bars?: PartInput<RebarInput>;
  /** Welded wire mesh. */
  readonly mesh?: PartInput<MeshInput>;
  /** Fibers in the concrete of the element. */
  readonly fibers?: PartInput<FiberDosageInput>;
  /** Dowels or ties across a joint. */
  readonly dowels?: PartInput<DowelLayoutInput>;
  /** How far apart joints may be. */
  readonly spacing?: PartInput<JointSpacingInput>;
  /** Where joints run, as far apart as `spacing` says unless it says so itself. */
  readonly joints?: PartInput<JointLayoutInput>;
  /** When to saw. */
  readonly saw?: PartInput<SawWindowInput>;
  /** Curing, sealing and coloring of the surface. */
  readonly finish?: PartInput<FinishMaterialsInput>;
  /** Backfill, topsoil and seed. */
  readonly backfill?: PartInput<BackfillInput>;
}

/** Concrete of one mix, as the supplier is asked for it. */
export interface JobMixInput extends Partial<MixRequirementsInput> {
  /** The name by which elements call it. */
  readonly name: string;
}

/** Parts of the job as a whole. */
export interface JobParts {
  /** How concrete is ordered; each mix is ordered for itself. */
  readonly order?: PartInput<Omit<ConcreteOrderInput, 'volume' | 'allowance' | 'pour' | 'elements'>>;
  /** Bags in place of an order, where no truck comes; each mix is counted for itself. */
  readonly bags?: PartInput<Omit<BagCountInput, 'volume' | 'allowance'>>;
  /** Trucks for each order. */
  readonly trucks?: PartInput<Omit<TruckPlanInput, 'volume' | 'truckCapacity' | 'loads'>>;
  /** How bars are cut, all elements by one plan. */
  readonly cutting?: PartInput<Omit<BarCuttingInput, 'pieces'>>;
}

/** Parts of an element in the order of the work, each with its calculation. */
export const ELEMENT_PARTS = {
  excavation: 'excavation',
  base: 'base-tonnage',
  retarder: 'vapor-retarder',
  forms: 'form-materials',
  stakes: 'form-grades',
  fall: 'drainage-check',
  risers: 'step-layout',
  ramp: 'ramp-layout',
  slab: 'slab-volume',
  steps: 'step-volume',
  footings: 'footing-volume',
  walls: 'wall-volume',
  piers: 'pier-volume',
  curb: 'curb-volume',
  probed: 'probed-volume',
  bars: 'rebar-layout',
  mesh: 'mesh-layout',
  fibers: 'fiber-dosage',
  dowels: 'dowel-layout',
  spacing: 'joint-spacing',
  joints: 'joint-layout',
  saw: 'saw-window',
  finish: 'finish-materials',
  backfill: 'backfill',
} as const;

/** A part of an element. */
export type ElementPart = keyof typeof ELEMENT_PARTS;

/** Parts of the job, each with its calculation. */
export const JOB_PARTS = {
  order: 'concrete-order',
  bags: 'bag-count',
  trucks: 'truck-plan',
  cutting: 'bar-cutting',
} as const;

/** What the job puts into its own parts, and nobody else. */
export const FROM_JOB: Readonly<Record<string, readonly string[]>> = {
  order: ['volume', 'allowance', 'pour', 'elements'],
  bags: ['volume', 'allowance'],
  trucks: ['volume', 'truckCapacity', 'loads'],
  cutting: ['pieces'],
};
