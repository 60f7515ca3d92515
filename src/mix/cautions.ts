/** What to watch out for when a mix is chosen and when its ticket is read. */
import { paired } from '../quantity/paired';
import type { Quantity } from '../quantity/quantity';
import type { Caution } from '../reckoning/result';
import { COMMON_PRACTICE, type Source } from '../reckoning/source';
import { say, type Words } from '../reckoning/words';
import {
  ACI_318,
  FLOW_TOLERANCE,
  IRC_TROWELED_GARAGE,
  OUTDOOR_TROWEL,
  SLUMP_FLATWORK,
  SLUMP_TOLERANCE,
  STONE_BETWEEN_FORMS,
  STONE_BY_THICKNESS,
  TROWELED_AIR,
  WATER_ADDED,
  YIELD_FORMULA,
} from './sources';
import { C94_21 } from './time-limit';

type Ratio = Quantity<'ratio'>;
type Length = Quantity<'length'>;
type Pressure = Quantity<'pressure'>;

/** Where the concrete is judged: as offered before the day, or in the truck. */
export type When = 'offered' | 'delivered';

const instead = (when: When): string =>
  when === 'offered' ? 'ask the supplier for the mix with air' : 'do not discharge it: call the plant';

const LESS_AIR: Words = { says: 'Ask for the mix with less of it' };
const TEST_AGAIN: Words = {
  says: 'Have another portion tested at once; as high again, call the plant before it is discharged',
};

export const noAir = (when: When, limit: Ratio, actual: Ratio, source: Source): Caution => ({
  code: 'no-air',
  severity: 'stop',
  ...say`concrete with ${{ actual }} of air will scale where it freezes wet; it needs ${{ limit }} or more: ${{ instead: instead(when) }}. No sealer makes up for it`,
  limit,
  actual,
  source,
});

export const airUnsaid = (limit: Ratio, source: Source): Caution => ({
  code: 'air-unsaid',
  severity: 'warning',
  ...say`nothing is said of air, and what freezes wet needs ${{ limit }} or more: ask before it is ordered or discharged`,
  source,
});

export const littleAir = (when: When, limit: Ratio, actual: Ratio, source: Source): Caution => ({
  code: 'little-air',
  severity: 'warning',
  ...say`${{ actual }} of air is below the ${{ limit }} that this exposure needs: ${{ instead: when === 'offered' ? 'ask for more, by a test of the mix' : 'have it tested again, and have the plant add air or send another load' }}`,
  limit,
  actual,
  source,
});

export const muchAir = (when: When, limit: Ratio, actual: Ratio, source: Source): Caution => ({
  code: 'much-air',
  severity: 'warning',
  ...say`${{ actual }} of air is above ${{ limit }}: each point costs about a twentieth of the strength. ${when === 'offered' ? LESS_AIR : TEST_AGAIN}`,
  limit,
  actual,
  source,
});

export const troweledAir = (limit: Ratio, actual: Ratio): Caution => ({
  code: 'troweled-air',
  severity: 'warning',
  ...say`concrete with ${{ actual }} of air blisters and peels under a hard trowel; ${{ limit }} is the most for such a floor`,
  limit,
  actual,
  source: TROWELED_AIR,
});

export const outdoorTrowel: Caution = {
  code: 'outdoor-trowel',
  severity: 'warning',
  says: 'concrete with air is not hard-troweled where it freezes: the skin closes over the water, loses its air and scales. Float it and broom it',
  source: OUTDOOR_TROWEL,
};

export const slickFinish: Caution = {
  code: 'slick-finish',
  severity: 'warning',
  says: 'a hard trowel leaves concrete slick when it is wet, and people fall on it, on steps and slopes above all: broom or float what rain reaches',
  source: COMMON_PRACTICE,
};

/** Under a roof the residential code leaves a way that it has not outdoors. */
export const troweledGarage: Caution = {
  code: 'outdoor-trowel',
  severity: 'warning',
  ...say`a hard trowel closes the skin of a garage floor over its air and water: it blisters, and what cars drip scales it. Float it and broom it, or, where the residential code is kept, ask for air of 3% and a strength of ${{ strength: paired('pressure', '4000 psi', '28 MPa') }} at least, and trowel it late and lightly`,
  source: IRC_TROWELED_GARAGE,
};

export const weakMix = (when: When, limit: Pressure, actual: Pressure, source: Source): Caution => ({
  code: 'weak-mix',
  severity: when === 'offered' ? 'warning' : 'stop',
  ...say`${{ actual }} is weaker than the ${{ limit }} that is asked: ${{ instead: when === 'offered' ? 'ask for the stronger mix' : 'this is another mix; do not discharge it, call the plant' }}`,
  limit,
  actual,
  source,
});

export const wetMix = (limit: Ratio, actual: Ratio, source: Source): Caution => ({
  code: 'wet-mix',
  severity: 'warning',
  ...say`water to cement of ${{ actual }} is above the ${{ limit }} that is asked: it will be weaker, shrink more and scale sooner`,
  limit,
  actual,
  source,
});

export const muchReplaced = (what: Words, limit: Ratio, actual: Ratio): Caution => ({
  code: 'much-replaced',
  severity: 'warning',
  ...say`${{ actual }} of the cement is ${{ what }}, above the ${{ limit }} that are the most where deicers come to it: such tops scale, and in cool weather they set late. Ask for a mix with less of it`,
  limit,
  actual,
  source: ACI_318,
});

export const waterOverLimit = (limit: Ratio, actual: Ratio): Caution => ({
  code: 'water-over-limit',
  severity: 'stop',
  ...say`with the water on the ticket, in the aggregate and added since, water to cement is ${{ actual }}, above the limit of ${{ limit }}: it does not meet the order. Refuse it, or have who ordered it accept it in writing`,
  limit,
  actual,
  source: WATER_ADDED,
});

/** All moisture was counted, and what sand and stone keep of it would bring the ratio below the limit. */
export const waterMayBeOver = (limit: Ratio, actual: Ratio): Caution => ({
  code: 'water-over-limit',
  severity: 'warning',
  ...say`with all moisture of the aggregate counted as water, since nobody has told its absorption, water to cement is ${{ actual }}, above the limit of ${{ limit }}; what sand and stone keep may bring it below. Ask the plant for their absorption before any of it is placed or sent back, and add no water`,
  limit,
  actual,
  source: WATER_ADDED,
});

export const waterWillBreakLimit = (limit: Ratio, actual: Ratio): Caution => ({
  code: 'water-will-break-limit',
  severity: 'stop',
  ...say`the water to be added would bring water to cement to ${{ actual }}, above the limit of ${{ limit }}: do not add it. Place it stiffer, or have the plant send a plasticizer`,
  limit,
  actual,
  source: WATER_ADDED,
});

const BY_PLASTICIZER: Words = { says: 'Ask for it with a plasticizer in place of water' };
/** What a class of EN 206 leaves to the site. */
const BY_THE_PLANT: Words = {
  says: 'Have the plant send a plasticizer and mix the whole drum again, no water but as the plant allows and writes on the ticket; else send the load back',
};
const SLUMP_AGAIN: Words = {
  says: 'Test another portion at once; as wet again, have the plant say whether a plasticizer makes it so, and send it back where none does',
};

export const highSlump = (when: When, limit: Length, actual: Length): Caution => ({
  code: 'high-slump',
  severity: 'warning',
  ...say`a slump of ${{ actual }} is above ${{ limit }}: unless a plasticizer makes it so, it is water, which bleeds, shrinks and weakens the top. ${when === 'offered' ? BY_PLASTICIZER : SLUMP_AGAIN}`,
  limit,
  actual,
  source: SLUMP_FLATWORK,
});

export const highFlow = (limit: Length, actual: Length, ordered: string): Caution => ({
  code: 'high-slump',
  severity: 'warning',
  ...say`a spread of ${{ actual }} is above the ${{ limit }} that an order of ${{ ordered }} lets pass: unless a plasticizer makes it so, it is water, which bleeds, shrinks and weakens the top. ${SLUMP_AGAIN}`,
  limit,
  actual,
  source: FLOW_TOLERANCE,
});

export const lowFlow = (limit: Length, actual: Length, ordered: string): Caution => ({
  code: 'low-slump',
  severity: 'warning',
  ...say`a spread of ${{ actual }} is stiffer than the ${{ limit }} that an order of ${{ ordered }} lets pass: it is hard to place and to close. ${BY_THE_PLANT}`,
  limit,
  actual,
  source: FLOW_TOLERANCE,
});

export const largeStoneInWall = (limit: Length, actual: Length): Caution => ({
  code: 'large-stone',
  severity: 'warning',
  ...say`stone of ${{ actual }} is more than a fifth of what is between the forms, ${{ limit }}: it hangs up and leaves hollows. Ask for smaller stone, and for the air that goes with it`,
  limit,
  actual,
  source: STONE_BETWEEN_FORMS,
});

export const largeStone = (limit: Length, actual: Length): Caution => ({
  code: 'large-stone',
  severity: 'warning',
  ...say`stone of ${{ actual }} is more than a third of the thickness, ${{ limit }}: it cannot be struck off and finished. Ask for smaller stone, and for the air that goes with it`,
  limit,
  actual,
  source: STONE_BY_THICKNESS,
});

export const otherStone = (limit: Length, actual: Length): Caution => ({
  code: 'other-stone',
  severity: 'warning',
  ...say`the ticket says stone of ${{ actual }}, and ${{ limit }} was ordered: ask the plant whether this is the mix that was ordered`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const sulfateCement: Caution = {
  code: 'sulfate-cement',
  severity: 'warning',
  says: 'sulfate attacks ordinary cement whatever its strength: ask for cement that resists it, and let the engineer or the supplier confirm the class by a test of the soil or the water',
  source: ACI_318,
};

export const pastTimeLimit = (limit: Quantity<'time'>, actual: Quantity<'time'>): Caution => ({
  code: 'past-time-limit',
  severity: 'warning',
  ...say`the load is ${{ actual }} old at discharge, and the limit is ${{ limit }}. It may be taken only if it can be placed without adding water, and if who ordered it agrees`,
  limit,
  actual,
  source: C94_21,
});

export const shortYield = (limit: Ratio, actual: Ratio): Caution => ({
  code: 'short-yield',
  severity: 'warning',
  ...say`the load makes ${{ actual }} of what the ticket says: one test proves little, so weigh two more loads, tell the plant, and measure what is left before the last load is ordered`,
  limit,
  actual,
  source: YIELD_FORMULA,
});

/** Where slump is ordered by a class, water is for the plant to allow. */
export const lowSlumpOfClass = (limit: Length, actual: Length, ordered: string): Caution => ({
  code: 'low-slump',
  severity: 'warning',
  ...say`a slump of ${{ actual }} is stiffer than the ${{ limit }} that an order of ${{ ordered }} lets pass: it is hard to place and to close. ${BY_THE_PLANT}`,
  limit,
  actual,
  source: SLUMP_TOLERANCE,
});

export const lowSlump = (limit: Length, actual: Length, ordered: Length): Caution => ({
  code: 'low-slump',
  severity: 'warning',
  ...say`a slump of ${{ actual }} is stiffer than the ${{ limit }} that an order of ${{ ordered }} lets pass: it is hard to place and to close. Add water once, only within what the ratio leaves and with the whole drum mixed again, or have the plant send a plasticizer; else send the load back`,
  limit,
  actual,
  source: SLUMP_TOLERANCE,
});

export const strongerMix = (limit: Pressure, actual: Pressure): Caution => ({
  code: 'stronger-mix',
  severity: 'note',
  ...say`the ticket says ${{ actual }}, more than a fifth above the ${{ limit }} that was ordered: it may be the load of another job. Ask the plant before it is discharged; a richer mix also stiffens sooner and shrinks more`,
  limit,
  actual,
  source: COMMON_PRACTICE,
});

export const slumpUnknown: Caution = {
  code: 'slump-unknown',
  severity: 'note',
  says: 'the water that may still go in is what the ratio alone leaves: measure the slump and give it with the slump that was ordered, for no more may go in than brings it there',
  source: WATER_ADDED,
};

export const slumpWillPass = (limit: Length, actual: Length): Caution => ({
  code: 'slump-will-pass',
  severity: 'warning',
  ...say`the water to be added would bring the slump to ${{ actual }}, above the ${{ limit }} that was ordered: it weakens the top and shrinks. Add less, or have the plant send a plasticizer`,
  limit,
  actual,
  source: WATER_ADDED,
});

export const waterUnknown: Caution = {
  code: 'water-unknown',
  severity: 'warning',
  says: 'how much water the mix would still bear cannot be told without cement and water of the ticket: add none until they are known, or who ordered it agrees',
  source: WATER_ADDED,
};

export const aggregatesUntold: Caution = {
  code: 'water-unknown',
  severity: 'note',
  ...say`the ratio counts the water of the ticket alone, and damp sand brings about ${{ brings: paired('volume', '5 gal', '25 L') }} to each ${{ each: paired('volume', '1 yd3', '1 m3') }}: ask the plant whether its water has that of sand and stone in it before any more goes in`,
  source: WATER_ADDED,
};

export const noWaterWhenOld: Caution = {
  code: 'no-water-when-old',
  severity: 'stop',
  says: 'water is wanted in a load past its time limit: it stiffens because it sets, and water then takes its strength. Place it as it is at once, or send it back',
  source: C94_21,
};
