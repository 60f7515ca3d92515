/** What to watch out for when trucks come: people, waiting, old concrete and cold joints. */
import { C94_21 } from '../mix/time-limit';
import type { Paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { COMMON_PRACTICE } from '../reckoning/source';
import { say, type Words } from '../reckoning/words';
import * as sources from './truck-sources';

type Time = Quantity<'time'>;
type Length = Quantity<'length'>;
type Count = Quantity<'count'>;

export const reversingTrucks: Caution = {
  code: 'reversing-trucks',
  severity: 'warning',
  always: true,
  says: 'the driver sees nobody behind a reversing truck: one person in a bright vest guides each in, in sight of the mirrors, and everyone else stays clear; nobody stands between truck and forms, and the truck keeps back from trenches and fresh walls and off base that it ruts',
  source: sources.REVERSING_RULE,
};

export const washOut: Caution = {
  code: 'wash-out',
  severity: 'note',
  always: true,
  says: 'have a lined pit or a tub ready before the first truck: water from washing out is caustic and may not run onto the street or the base, into a drain or into water; ask what the local rules want',
  source: sources.WASH_OUT_RULE,
};

export const overheadLines = (clear: Paired<'length'>): Caution => ({
  code: 'overhead-lines',
  severity: 'warning',
  always: true,
  ...say`look up before the boom is unfolded: keep boom, hose and everyone at them at least ${{ clear }} from every power line until its owner says otherwise, have one person do nothing but watch it, and set the outriggers on firm ground away from trenches`,
  source: sources.POWER_LINE_RULE,
});

export const pumpHose: Caution = {
  code: 'pump-hose',
  severity: 'warning',
  always: true,
  says: 'the hose of a pump whips when air or a plug comes through, at the start and after every stop: nobody stands near its end or under a boom then, and only the operator opens a line under pressure. What primed the line goes into a tub and not into the forms',
  source: sources.PUMP_RULE,
};

export const stoneForLine = (limit: Length, actual: Length | undefined): Caution => ({
  code: 'stone-for-line',
  severity: 'warning',
  ...say`a line of this bore takes stone up to a third of it, ${{ limit }}: larger stone plugs it. Take a wider line, or a mix of small stone that the operator of the pump agrees to`,
  ...(actual ? { limit, actual } : {}),
  source: sources.PUMPED_STONE,
});

export const beyondChute = (limit: Length, actual: Length): Caution => ({
  code: 'beyond-chute',
  severity: 'warning',
  ...say`the chute reaches ${{ limit }} and the farthest concrete goes ${{ actual }} from the truck: find a firm place nearer, or have a buggy, wheelbarrows or a pump there. Concrete is not to be dragged or raked so far`,
  limit,
  actual,
  source: sources.READY_FOR_TRUCKS,
});

export const farToWheel = (limit: Length, actual: Length): Caution => ({
  code: 'far-to-wheel',
  severity: 'warning',
  ...say`wheelbarrows and hand carts are for up to about ${{ limit }}; for ${{ actual }} take power buggies or a pump`,
  limit,
  actual,
  source: sources.CART_RATES,
});

export const slowToUnload = (limit: Time, actual: Time, over: Time): Caution => ({
  code: 'slow-to-unload',
  severity: 'warning',
  ...say`a truck is at the site for up to ${{ actual }}, and ${{ limit }} are free: ${{ over }} are charged in all. Place faster, with more people, buggies or a pump, or order smaller loads`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const trucksQueue = (limit: Time, actual: Time, remedy: Words, hot: boolean): Caution => ({
  code: 'trucks-queue',
  severity: 'warning',
  ...say`a truck waits ${{ actual }} before it is unloaded: waiting is charged, and the concrete grows old and stiff in the drum. ${remedy}`,
  limit,
  actual,
  source: hot ? sources.HOT_TRUCKS : COMMON_PRACTICE,
});

export const spaceTrucks = (spacing: Time): Words => say`Have them sent ${{ spacing }} apart`;
export const spaceInTurn: Words = { says: 'Have each sent so that it comes as the one before is empty' };
export const fewerTrucks = (trucks: Count, spacing: Time): Words =>
  say`With ${{ trucks }} trucks sent ${{ spacing }} apart none waits, and placing goes as fast`;

export const placingWaits = (limit: Time, actual: Time, remedy: Words): Caution => ({
  code: 'placing-waits',
  severity: 'note',
  ...say`placing stands still for up to ${{ actual }} between loads. ${remedy}`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const moreTrucks = (trucks: Count): Words => say`With ${{ trucks }} trucks none waits for the next`;
export const closerTrucks = (spacing: Time): Words => say`Trucks ${{ spacing }} apart would keep it going`;
export const moreAndSpaced = (trucks: Count, spacing: Time): Words =>
  say`With ${{ trucks }} trucks ${{ spacing }} apart none waits for the next`;
export const trucksEachInTurn = (trucks: Count): Words =>
  say`With ${{ trucks }} trucks that each come as the one before is empty none waits for the next`;
export const trucksInTurn: Words = {
  says: 'Trucks that each come as the one before is empty would keep it going',
};
export const plantIsSlower = (loading: Time): Words =>
  say`The plant takes ${{ loading }} for each load, longer than placing it: ask whether two are loaded at once, or place at that pace`;

export const downToPlant = (trucks: Count, loading: Time, rest: Time): Words =>
  say`With ${{ trucks }} trucks ${{ loading }} apart it is down to ${{ rest }}, since the plant takes as long for each load: ask whether two are loaded at once, or place at that pace`;

export const coldJointRisk = (limit: Time, actual: Time, remedy: Words): Caution => ({
  code: 'cold-joint-risk',
  severity: 'warning',
  ...say`the open edge waits ${{ actual }} for the next load; past ${{ limit }} in this weather it may crust over, sooner in sun and wind. ${remedy}. Keep the edge short, covered and alive, and have a bulkhead ready to end at`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const oldEdge = (limit: Time, actual: Time, remedy: Words): Caution => ({
  code: 'cold-joint-risk',
  severity: 'warning',
  ...say`the concrete at the open edge is ${{ actual }} old when the next load comes, and past ${{ limit }} it knits badly in this weather. ${remedy}. Work the edge until then, and have a bulkhead ready to end at`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const coldJoint = (limit: Time, actual: Time, remedy: Words): Caution => ({
  code: 'cold-joint',
  severity: 'stop',
  ...say`the concrete at the open edge is ${{ actual }} old when the next load comes, and may set after ${{ limit }}: the two will not knit. ${remedy}, or plan a construction joint with its bulkhead and dowels there`,
  limit,
  actual,
  source: sources.SET_TIMES,
});

type Ends = readonly [from: Paired<'temperature'>, to: Paired<'temperature'>];

export const setRuleStretched = (
  [from, to]: Ends,
  limit: Quantity<'temperature'>,
  actual: Quantity<'temperature'>,
): Caution => ({
  code: 'set-rule-stretched',
  severity: 'note',
  ...say`set times are printed for concrete from ${{ from }} to ${{ to }}; at ${{ actual }} the rule is stretched, so go by a footprint and a trowel, not by the clock`,
  limit,
  actual,
  source: sources.SET_TIMES,
});

export const tooOld = (limit: Time, actual: Time, load: Count, remedy: Words): Caution => ({
  code: 'too-old',
  severity: 'warning',
  ...say`load ${{ load }} is ${{ actual }} old when it is out of the truck, and the limit is ${{ limit }}. ${remedy}; never make it placeable with water`,
  limit,
  actual,
  source: C94_21,
});

export const stiffLoad = (limit: Time, actual: Time, load: Count, remedy: Words): Caution => ({
  code: 'stiff-load',
  severity: 'warning',
  ...say`load ${{ load }} is ${{ actual }} old when it is out of the truck: within its limit, but past ${{ limit }} in this weather it may be stiff, hard to strike off and soon beyond finishing. ${remedy}; have everybody ready when it comes, and never make it placeable with water`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const oddLoad = (step: Quantity<'volume'>, actual: Quantity<'volume'>, load: Count): Caution => ({
  code: 'odd-load',
  severity: 'note',
  ...say`load ${{ load }} is for ${{ actual }}, and concrete is sold in steps of ${{ step }}: the plant makes it the next step up or down, so give increment and order loads that can be bought`,
  limit: step,
  actual,
  source: COMMON_PRACTICE,
});

export const flatChute = (limit: Quantity<'slope'>, actual: Quantity<'slope'>): Caution => ({
  code: 'flat-chute',
  severity: 'warning',
  ...say`the chute lies at ${{ actual }}, flatter than ${{ limit }}: concrete of an ordinary slump does not run down it. Raise the truck or take fewer extensions; water that makes it run is lost strength`,
  limit,
  actual,
  source: sources.CHUTE_SLOPES,
});

export const steepChute = (limit: Quantity<'slope'>, actual: Quantity<'slope'>): Caution => ({
  code: 'steep-chute',
  severity: 'warning',
  ...say`the chute lies at ${{ actual }}, steeper than ${{ limit }}: stones run ahead of the mortar, and the load comes down with a rush. Lay it flatter, and keep a baffle or a drop pipe at its end`,
  limit,
  actual,
  source: sources.CHUTE_SLOPES,
});

export const setsInTruck = (limit: Time, actual: Time, load: Count, remedy: Words): Caution => ({
  code: 'sets-in-the-truck',
  severity: 'stop',
  ...say`load ${{ load }} is ${{ actual }} old when the last of it is out, and may set after ${{ limit }}: it sets in the drum, the hopper or the barrow. ${remedy}`,
  limit,
  actual,
  source: sources.SET_TIMES,
});

export const youngerLoads: Words = {
  says: 'Order smaller loads closer together, place faster, take a nearer plant, or have the supplier say how long a retarder holds this concrete back',
};

export const smallLoad = (limit: Quantity<'volume'>, actual: Quantity<'volume'>, load: Count): Caution => ({
  code: 'small-load',
  severity: 'note',
  ...say`load ${{ load }} brings ${{ actual }}, less than a quarter of the largest: most suppliers charge more for it, so ask, or make the loads more even`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

/** What is small enough to be out in time; where that is no load to order, faster or nearer. */
export const smallerLoads = (most: Quantity<'volume'>): Words =>
  say`Take loads of at most ${{ most }}, a nearer plant or a faster way of placing, or agree on a retarder and another limit with the supplier`;
export const fasterPlacing: Words = {
  says: 'Take a nearer plant or a faster way of placing, or agree on a retarder and another limit with the supplier',
};
export const nearerPlant: Words = {
  says: 'Loading and the way alone use up that limit: take a nearer plant, or agree on a retarder and another limit with the supplier',
};
export const noWaiting: Words = { says: 'Space the trucks so that none waits' };
